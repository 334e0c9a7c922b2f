import { catalog, vehicleWith } from '../fixture.ts';
import {
  antennaScene,
  drawerTopScene,
  glassScene,
  openBoardScene,
  openHatchScene,
  plateScene,
  pullScene,
  REAR_VIEW,
} from '../scenes/heights.ts';
import { BAY, generator, reachScene } from '../scenes/reach.ts';
import { example, worked } from './example.ts';

interface Item {
  readonly kg: number;
  readonly long: number;
  readonly high: number;
  readonly floor: number;
  readonly from?: number;
}

/** A bay so high above ground with one item in it, so far behind its face. */
const inBay = ({ kg, long, high, floor, from = 0 }: Item, rest: object = {}) =>
  reachScene(BAY, {
    ...generator(kg, 'opening-1', { sizeMm: [long, 300, high], place: { at: [0, from, 0] }, ...rest }),
    vehicle: vehicleWith({ floorAboveGroundMm: floor }),
  }).inspection;

const BOARD = { board: catalog.materials.get('birch-ply-18')?.thicknessMm ?? Number.NaN };

/** Lifts, heights and what is seen. */
export const REACH = [
  example(
    'lifting',
    [
      worked({
        given: { kg: 20, long: 400, high: 300, floor: 800 },
        run: inBay,
        words:
          '20 kg, 400 long and 300 high, at the face of a bay on a board of 17.7 over a floor at 800: H = (400 / 2 + 150) / 10 = 35, V = (800 + 17.7 + 300 / 2) / 10 = 96.77; 23 · 25 / 35 · (1 − 0.003 · (96.77 − 75)) = 15.36 kg, with 0.82 + 4.5 / 25 = 1 for the travel, since 96.77 − 75 = 21.77 is less; 20 / 15.36 = 1.30 of 1: caution',
        expects: {
          severity: 'caution',
          value: '1.30',
          limit: '1',
          facts: { limitKg: '15.36' },
          told: { outside: 'no' },
        },
      }),
      worked({
        given: { kg: 3, long: 400, from: 300 },
        run: ({ kg, long, from }) => inBay({ kg, long, from, high: 300, floor: 800 }),
        words:
          '3 kg, the least that is judged, 300 behind the face: 300 + 400 / 2 + 150 = 650, beyond 630: outside, not allowed: caution',
        expects: { severity: 'caution', facts: { reachMm: '650' }, told: { outside: 'yes' } },
      }),
    ],
    {
      house: ['sill-reach-add', 'lifting-load-constant', 'lifting-reach-max', 'lifting-grip-good'],
      looked: BOARD,
      formula: [2, 10, 25, 1, 0.003, 75, 0.82, 4.5],
    },
  ),
  example(
    'heavy-gear',
    [
      worked({
        given: { kg: 25, long: 400, from: 150 },
        run: ({ kg, long, from }) => inBay({ kg, long, from, high: 300, floor: 800 }),
        words: '25 kg, over 20, 400 long and 150 behind the face: 150 + 400 / 2 + 150 = 500 of 450: caution',
        expects: { severity: 'caution', value: '500', limit: '450', told: { what: 'deep' } },
      }),
      worked({
        given: { kg: 25, high: 300, floor: 850 },
        run: ({ kg, high, floor }) => inBay({ kg, high, floor, long: 400 }),
        words: '300 high on a board of 17.7 over a floor at 850: 850 + 17.7 + 300 / 2 = 1,017.7 of 1,000: caution',
        expects: { severity: 'caution', value: '1,017.7', limit: '1,000', told: { what: 'high' } },
      }),
      worked({
        given: { kg: 25, high: 300, floor: 400 },
        run: ({ kg, high, floor }) => inBay({ kg, high, floor, long: 400 }),
        words: 'over a floor at 400: 400 + 17.7 + 300 / 2 = 567.7 of 600: caution',
        expects: { severity: 'caution', value: '567.7', limit: '600', told: { what: 'low' } },
      }),
    ],
    { house: ['heavy-mass', 'sill-reach-add'], looked: BOARD, formula: [2] },
  ),
  example(
    'reach-far',
    [
      worked({
        given: { long: 400, high: 300, floor: 800, from: 380 },
        run: (own) => inBay({ ...own, kg: 5 }, { firstDue: true }),
        words:
          'first-due, 400 long and 300 high, 380 behind the face, on a board of 17.7 over a floor at 800: 380 + 400 / 2 + 150 = 730 out; hands at 800 + 17.7 + 300 / 2 = 967.7, shoulder at 1,140 + 30 = 1,170: √(730² + (1,170 − 967.7)²) = 757.5 of 735: caution',
        expects: { severity: 'caution', value: '757.5', limit: '735' },
      }),
    ],
    { house: ['sill-reach-add', 'shoulder-small', 'boots-height'], looked: BOARD, formula: [2] },
  ),
  example('control-height', [
    worked({
      given: { up: 300, floor: 800 },
      run: ({ up, floor }) => plateScene([300, 0, up], floor),
      words: 'controls 300 over a floor at 800: 300 + 800 = 1,100 of 1,150: caution',
      expects: { severity: 'caution', value: '1,100', limit: '1,150' },
    }),
    worked({
      given: { up: 700, floor: 800 },
      run: ({ up, floor }) => plateScene([300, 0, up], floor),
      words: '700 over it: 700 + 800 = 1,500 of 1,450: caution',
      expects: { severity: 'caution', value: '1,500', limit: '1,450' },
    }),
  ]),
  example(
    'reading-angle',
    [
      worked({
        given: { forward: 300, up: 500, floor: 800 },
        run: ({ forward, up, floor }) => plateScene([forward, 0, up], floor),
        words:
          'an upright plate 300 forward of the sill, its controls 500 over a floor at 800, a tall eye at 1,756 + 30 = 1,786, half of 600 behind the sill: atan((1,786 − 800 − 500) / (300 + 600 / 2)) = 39.0° of 35: caution',
        expects: { severity: 'caution', value: '39.0', limit: '35' },
      }),
      worked({
        given: { forward: 600, up: 500, floor: 800 },
        run: ({ forward, up, floor }) => plateScene([forward, 0, up], floor),
        words: '600 forward: atan((1,786 − 800 − 500) / (600 + 600 / 2)) = 28.4°: nothing',
        expects: { severity: 'nothing' },
      }),
    ],
    { house: ['eye-large', 'boots-height', 'stand-depth'], formula: [2] },
  ),
  example('head-clear', [
    worked({
      given: { hinge: 900, floor: 800 },
      run: ({ hinge, floor }) => openHatchScene(floor, hinge),
      words: 'a level hatch with its hinge 900 over a floor at 800: 900 + 800 = 1,700 of 1,900: caution',
      expects: { severity: 'caution', value: '1,700', limit: '1,900' },
    }),
  ]),
  example('pull-height', [
    worked({
      given: { hinge: 900, floor: 900 },
      run: ({ hinge, floor }) => openHatchScene(floor, hinge),
      words: 'a level hatch with its hinge 900 over a floor at 900: 900 + 900 = 1,800 of 1,750: caution',
      expects: { severity: 'caution', value: '1,800', limit: '1,750' },
    }),
    worked({
      given: { up: 960, floor: 800 },
      run: ({ up, floor }) => pullScene(up, floor),
      words: 'a pull 960 over a floor at 800: 960 + 800 = 1,760: caution',
      expects: { severity: 'caution', value: '1,760', limit: '1,750' },
    }),
  ]),
  example('see-in', [
    worked({
      given: { top: 310, floor: 800 },
      run: ({ top, floor }) => drawerTopScene(top, true, floor),
      words: 'the box of a drawer with gear in it up to 310 over a floor at 800: 310 + 800 = 1,110 of 1,100: note',
      expects: { severity: 'note', value: '1,110', limit: '1,100' },
    }),
  ]),
  example(
    'write-height',
    [
      worked({
        given: { hinge: 100, thick: 12, floor: 800 },
        run: ({ hinge, thick, floor }) => openBoardScene(hinge, Math.PI / 2, { floor, thick }),
        words: 'a board 12 thick hung 100 over a floor at 800, folded flat: 800 + 100 + 12 / 2 = 906 of 950: caution',
        expects: { severity: 'caution', value: '906', limit: '950', told: { lies: 'flat' } },
      }),
      worked({
        given: { hinge: 360, thick: 12, floor: 800 },
        run: ({ hinge, thick, floor }) => openBoardScene(hinge, Math.PI / 2, { floor, thick }),
        words: 'hung 360 over it: 800 + 360 + 12 / 2 = 1,166 of 1,150: caution',
        expects: { severity: 'caution', value: '1,166', limit: '1,150', told: { lies: 'flat' } },
      }),
      worked({
        given: { hinge: 900, high: 400, floor: 800 },
        run: ({ hinge, high, floor }) => openBoardScene(hinge, Math.PI, { floor, high }),
        words: 'one 400 high hung 900 over it, turned right round: 800 + 900 − 400 / 2 = 1,500 of 1,450: caution',
        expects: { severity: 'caution', value: '1,500', limit: '1,450', told: { lies: 'upright' } },
      }),
    ],
    { formula: [2] },
  ),
  example('mirror-view', [
    worked({
      given: { wide: 1000, covered: 750 },
      run: ({ wide, covered }) => glassScene(covered / wide, { rearView: { ...REAR_VIEW, glassWidthMm: wide } }, wide),
      words: 'a box right before 750 of a glass 1,000 wide, over its whole height: 750 / 1,000 = 75 % of 50 %: caution',
      expects: { severity: 'caution', value: '75 %', limit: '50 %' },
    }),
    worked({
      given: { wide: 1000, covered: 450 },
      run: ({ wide, covered }) => glassScene(covered / wide, { rearView: { ...REAR_VIEW, glassWidthMm: wide } }, wide),
      words: 'before 450 of it: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example(
    'rf-distance',
    [
      worked({
        given: { watts: 50, forward: 800, up: 1000 },
        run: ({ watts, forward, up }) => antennaScene(watts, [forward, 0, up]),
        words:
          '50 W, up to 110, at 800 forward of the sill and 1,000 over the floor, where people stand: 800 of 900: caution',
        expects: { severity: 'caution', value: '800', limit: '900' },
      }),
      worked({
        given: { watts: 50, forward: 400, up: 1460, floor: 800 },
        run: ({ watts, forward, up, floor }) => antennaScene(watts, [forward, 0, up], floor),
        words:
          '400 forward and 1,460 over a floor at 800, helmets up to 1,870 + 30 + 60 = 1,960: √(400² + (1,460 + 800 − 1,960)²) = 500 of 900: caution',
        expects: { severity: 'caution', value: '500', limit: '900' },
      }),
      ...[
        { watts: 39, forward: 590, limit: '600' },
        { watts: 15, forward: 290, limit: '300' },
        { watts: 7, forward: 190, limit: '200' },
      ].map(({ limit, ...given }) =>
        worked({
          given,
          run: ({ watts, forward }) => antennaScene(watts, [forward, 0, 1000]),
          words: `${given.watts} W at ${given.forward}: ${given.forward} of ${limit}: caution`,
          expects: { severity: 'caution', value: String(given.forward), limit },
        }),
      ),
    ],
    { house: ['rf-power-110w', 'stature-large', 'boots-height', 'helmet-height'] },
  ),
];
