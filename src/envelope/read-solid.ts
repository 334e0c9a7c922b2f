import {
  bad,
  good,
  type Polygon,
  type Problem,
  type Result,
  ROUNDING_MM,
  ROUNDING_MM2,
  selfCrossing,
  signedArea,
} from '../base/index.ts';
import { boxShape, type ConvexShape, capsuleShape } from '../bodies/index.ts';
import type { Solid } from '../design/index.ts';
import { extruded } from './extruded.ts';

type SolidOf<Shape extends Solid['shape']> = Extract<Solid, { readonly shape: Shape }>;

/** How far the outline turns the wrong way at its worst corner, as twice the area of that corner's triangle. */
const turnsInward = (outline: Polygon): boolean => {
  const turn = signedArea(outline) < 0 ? -1 : 1;
  return outline.some((corner, i) => {
    const next = outline[(i + 1) % outline.length] ?? corner;
    const before = outline.at(i - 1) ?? corner;
    return turn * signedArea([before, corner, next]) < -ROUNDING_MM2;
  });
};

const readBox = (solid: SolidOf<'box'>, at: string): Result<ConvexShape> => {
  const flat = ([0, 1, 2] as const).filter((axis) => solid.max[axis] - solid.min[axis] <= ROUNDING_MM);
  return flat.length === 0
    ? good(boxShape({ min: solid.min, max: solid.max }))
    : bad(
        flat.map((axis) => ({
          at: `${at}.max[${axis}]`,
          code: 'no-size',
          expected: `more than ${solid.min[axis]} mm`,
          got: `${solid.max[axis]} mm`,
        })),
      );
};

const readPrism = (solid: SolidOf<'side-prism'>, at: string): Result<ConvexShape> => {
  const { outline, fromY, toY } = solid;
  const problems: Problem[] = [];
  if (Math.abs(toY - fromY) <= ROUNDING_MM)
    problems.push({ at: `${at}.toY`, code: 'no-size', expected: `other than ${fromY} mm`, got: `${toY} mm` });
  if (Math.abs(signedArea(outline)) <= ROUNDING_MM2)
    problems.push({ at: `${at}.outline`, code: 'no-area', expected: 'an outline with an area', got: '0 mm²' });
  else if (selfCrossing(outline) !== null)
    problems.push({ at: `${at}.outline`, code: 'self-crossing', expected: 'an outline that does not cross itself' });
  else if (turnsInward(outline))
    problems.push({ at: `${at}.outline`, code: 'not-convex', expected: 'an outline without inward corners' });
  if (problems.length > 0) return bad(problems);
  // The outline's axes are x and z; x × z points to −y, so the near end is the one of greater y.
  const [near, far] = [Math.max(fromY, toY), Math.min(fromY, toY)];
  return good(
    extruded(
      outline,
      ([x, z]) => [x, near, z],
      ([x, z]) => [x, far, z],
    ),
  );
};

const READERS: { readonly [Shape in Solid['shape']]: (solid: SolidOf<Shape>, at: string) => Result<ConvexShape> } = {
  box: readBox,
  capsule: (solid) => good(capsuleShape(solid.from, solid.to, solid.radiusMm)),
  'side-prism': readPrism,
};

/** A solid of the survey as a convex shape in vehicle axes, or what is wrong with it and where. */
export const readSolid = <Shape extends Solid['shape']>(solid: SolidOf<Shape>, at: string): Result<ConvexShape> => {
  const read: (solid: SolidOf<Shape>, at: string) => Result<ConvexShape> = READERS[solid.shape as Shape];
  return read(solid, at);
};
