import type { Design } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { inspect } from '../../../src/inspection/index.ts';
import { carcass, designOf, empty, fitted } from '../../fitout/designs.ts';
import { type Anchor, anchor, catalog, mass, node, panel, rules, spaceOf } from '../fixture.ts';
import { FACING_REAR } from './access.ts';

/** A carcass 1000 deep and 600 wide with its low corner at the sill, its gear 350 above the floor, four anchors. */
export const held = (rest: Partial<Anchor> = {}, kg = 220): Partial<FitOut> => ({
  carcasses: [
    {
      id: node('carcass-1'),
      name: 'bay',
      pose: { turn: FACING_REAR, at: [0, 300, 0] },
      size: [600, 1000, 700],
      massKg: 0,
    },
  ],
  panels: [panel('carcass-1/bottom', 600, 1000, { role: 'bottom' })],
  masses: [mass('load', kg, [500, 0, 350], { kind: 'gear' })],
  anchors: [
    anchor('anchor-1', [50, -200, 0], rest),
    anchor('anchor-2', [50, 200, 0], rest),
    anchor('anchor-3', [950, -200, 0], rest),
    anchor('anchor-4', [950, 200, 0], rest),
  ],
});

export const holdTo = (...sets: Design['holdTo']): Partial<Design> => ({ holdTo: sets });

type Plain = Readonly<Record<string, unknown>>;

/** One carcass that looks to the rear, solved and inspected; in its vehicle where the design has a survey. */
export const solvedScene = (opening: Plain, rest: { readonly carcass?: Plain; readonly design?: Plain } = {}) => {
  const design = designOf([carcass(opening, { facing: 'rear', ...rest.carcass })], rest.design);
  const fitout = solveFitOut(design, catalog, rules);
  const space = design.survey.stations.length > 0 ? spaceOf(design.survey) : null;
  return inspect({ design, space, fitout, catalog, rules });
};

export const drawer = (rest: Plain) =>
  fitted('opening-1', {
    kind: 'drawer',
    slideLengthMm: 500,
    boxMaterial: 'birch-ply-12',
    bottomMaterial: 'birch-ply-6',
    boxHeightMm: 200,
    inside: empty('opening-2'),
    ...rest,
  });

export const storage = (restraint: string | null, lipHeightMm = 0) =>
  fitted('opening-2', { kind: 'open-storage', shelfMaterial: 'birch-ply-12', restraint, lipHeightMm });

/** A gear list of one item with its place. */
export const stowed = (massKg: number, opening = 'opening-2', at = [0, 0, 0], rest: Plain = {}) => ({
  gear: [
    {
      id: 'gear-1',
      name: 'irons',
      sizeMm: [300, 200, 100],
      massKg,
      massFrom: 'measured',
      place: { opening, at },
      ...rest,
    },
  ],
});
