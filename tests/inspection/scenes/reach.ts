import { houseRules } from '../../../src/catalog/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { inspect } from '../../../src/inspection/index.ts';
import { carcass, designOf, fitted } from '../../fitout/designs.ts';
import { catalog, vehicleWith } from '../fixture.ts';

type Plain = Readonly<Record<string, unknown>>;

/** One carcass that looks to the rear in a vehicle whose floor is known, solved and inspected with its own house rules. */
export const reachScene = (opening: Plain, design: Plain = {}, rest: Plain = {}) => {
  const made = designOf([carcass(opening, { facing: 'rear', ...rest })], {
    vehicle: vehicleWith({ floorAboveGroundMm: 800 }),
    ...design,
  });
  const own = houseRules(catalog, made.houseRules);
  const fitout = solveFitOut(made, catalog, own);
  return { made, fitout, inspection: inspect({ design: made, space: null, fitout, catalog, rules: own }) };
};

/** A list of one generator, 400 long and 300 high, with its place. */
export const generator = (massKg: number, opening: string, rest: Plain = {}) => ({
  gear: [
    {
      id: 'gear-1',
      name: 'generator',
      sizeMm: [400, 300, 300],
      massKg,
      massFrom: 'measured',
      ...rest,
      place: { opening, at: [0, 0, 0], ...(rest.place as object) },
    },
  ],
});

/** A bay that one stows in behind a strap. */
export const BAY = fitted('opening-1', {
  kind: 'open-storage',
  shelfMaterial: 'birch-ply-12',
  restraint: 'strap-quick-50',
});
