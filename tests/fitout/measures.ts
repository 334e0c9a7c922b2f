import { type Box, boxSize, boxVolume, ROUNDING_MM, type Vec3 } from '../../src/base/index.ts';
import { shapeBox } from '../../src/bodies/index.ts';
import type { Body, FitOut, Panel } from '../../src/fitout/index.ts';

/**
 * A plain twin of the solver's exact volumes: solids as lists of boxes in vehicle axes, made from a panel and its
 * recesses by cutting the panel's face along every recess. Only for panels that stand square to the axes.
 */
const placedBox = (panel: Panel, from: Vec3, to: Vec3): Box => {
  const { turn, at } = panel.pose;
  const corner = (p: Vec3): Vec3 =>
    [0, 1, 2].map(
      (i) => (turn[0][i] ?? 0) * p[0] + (turn[1][i] ?? 0) * p[1] + (turn[2][i] ?? 0) * p[2] + (at[i] ?? 0),
    ) as unknown as Vec3;
  const [a, b] = [corner(from), corner(to)];
  return {
    min: [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.min(a[2], b[2])],
    max: [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.max(a[2], b[2])],
  };
};

const sorted = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

/** The rectangle that a cut-out touches on all sides. */
const cutRect = (
  cut: Panel['cuts'][number],
): readonly { readonly from: readonly [number, number]; readonly to: readonly [number, number] }[] => {
  if (cut.kind !== 'cutout') return [];
  const { outline } = cut;
  if (outline.shape === 'rectangle') return [outline];
  if (outline.shape === 'polygon') throw new Error('no rectangle');
  const [x, y, r] = [outline.at[0], outline.at[1], outline.diameter / 2];
  return [{ from: [x - r, y - r], to: [x + r, y + r] }];
};

/** The wood of a square panel as boxes that do not overlap; what a cut-out touches is none. */
export const woodOf = (panel: Panel): readonly Box[] => {
  const through = panel.cuts.flatMap(cutRect);
  const recesses = panel.cuts.flatMap((cut) => (cut.kind === 'hole' || cut.kind === 'cutout' ? [] : [cut]));
  const xs = sorted([0, panel.length, ...[...recesses, ...through].flatMap(({ from, to }) => [from[0], to[0]])]);
  const ys = sorted([0, panel.width, ...[...recesses, ...through].flatMap(({ from, to }) => [from[1], to[1]])]);
  return xs.slice(1).flatMap((x1, i) =>
    ys.slice(1).flatMap((y1, j): readonly Box[] => {
      const [x0, y0] = [xs[i] ?? x1, ys[j] ?? y1];
      const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
      if (through.some(({ from, to }) => from[0] < x && x < to[0] && from[1] < y && y < to[1])) return [];
      const over = recesses.filter(({ from, to }) => from[0] < x && x < to[0] && from[1] < y && y < to[1]);
      const depth = (face: 'a' | 'b'): number =>
        Math.max(0, ...over.filter((cut) => cut.face === face).map((cut) => cut.depth));
      const [low, high] = [depth('b'), panel.thickness - depth('a')];
      return high - low > ROUNDING_MM ? [placedBox(panel, [x0, y0, low], [x1, y1, high])] : [];
    }),
  );
};

export const isSquare = (panel: Panel): boolean =>
  panel.pose.turn.every((column) => column.every((value) => Math.abs(value) === 1 || value === 0));

/** Volume that two boxes share (mm³). */
export const sharedVolume = (a: Box, b: Box): number =>
  [0, 1, 2].reduce((volume, axis) => {
    const low = Math.max(a.min[axis] ?? 0, b.min[axis] ?? 0);
    const high = Math.min(a.max[axis] ?? 0, b.max[axis] ?? 0);
    return volume * Math.max(0, high - low);
  }, 1);

/** How far two boxes go into each other: the least overlap over the axes, negative when apart. */
export const depthInto = (a: Box, b: Box): number =>
  Math.min(
    Math.min(a.max[0], b.max[0]) - Math.max(a.min[0], b.min[0]),
    Math.min(a.max[1], b.max[1]) - Math.max(a.min[1], b.min[1]),
    Math.min(a.max[2], b.max[2]) - Math.max(a.min[2], b.min[2]),
  );

export const bodyBox = (body: Body): Box => shapeBox(body.shape);

/** The box of a solved opening in vehicle axes. */
export const openingBox = (fitOut: FitOut, opening: FitOut['openings'][number]): Box => {
  const carcass = fitOut.carcasses.find(({ id }) => id === opening.carcass);
  if (!carcass) throw new Error(`no carcass ${opening.carcass}`);
  const { turn, at } = carcass.pose;
  const corner = (p: readonly [number, number, number]): Vec3 =>
    [0, 1, 2].map(
      (i) => (turn[0][i] ?? 0) * p[0] + (turn[1][i] ?? 0) * p[1] + (turn[2][i] ?? 0) * p[2] + (at[i] ?? 0),
    ) as unknown as Vec3;
  const { from, size } = opening;
  const [a, b] = [corner(from), corner([from[0] + size[0], from[1] + size[1], from[2] + size[2]])];
  return {
    min: [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.min(a[2], b[2])],
    max: [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.max(a[2], b[2])],
  };
};

export const volumeOf = (box: Box): number => (boxSize(box).every((side) => side > 0) ? boxVolume(box) : 0);
