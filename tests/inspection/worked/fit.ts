import { gearListSchema } from '../../../src/design/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { inspectScene, panel } from '../fixture.ts';
import { cabinetScene, drawerBox, SIDE, secondCarcass, stowedScene } from '../scenes/cabinet.ts';
import { startedScene } from '../scenes/survey.ts';
import { BLOCK, inspectBoxes, obstacle, roomTo, zone } from '../scenes/vehicle.ts';
import { example, worked } from './example.ts';

const upTo = (max: readonly [number, number, number]) => ({ ...BLOCK, max });

/** An obstacle beside a carcass that reaches so far to the left. */
const besideScene = (kind: string, side: number, from: number) => {
  const own = obstacle('thing', kind, [300, from, 0], [900, from + 40, 300]);
  return inspectBoxes([upTo([900, side, 600])], boxSurvey({ obstacles: [own] }));
};

/** Gaps, places and the survey that they are measured to. */
export const FIT = [
  example(
    'body-in-space',
    [
      worked({
        given: { wall: 600, side: 590 },
        run: ({ wall, side }) => inspectBoxes([upTo([900, side, 600])], roomTo(wall)),
        words:
          'sections taped to 1.5: u = 2 √(1.5² + 2² + 1²) = 5.4; a wall at 600, a side up to 590: 600 − 590 = 10; 10 − 6 = 4 over the limit, less than u: caution',
        expects: { severity: 'caution', value: '10', limit: '6', u: '5.4' },
      }),
      worked({
        given: { wall: 600, side: 610 },
        run: ({ wall, side }) => inspectBoxes([upTo([900, side, 600])], roomTo(wall)),
        words: 'a side up to 610: 600 − 610 = −10, through the wall: stop',
        expects: { severity: 'stop', value: '−10' },
      }),
    ],
    { house: ['gap-sigma-factor', 'tape-sigma', 'vehicle-allowance-sigma', 'build-sigma'] },
  ),
  example('body-obstacle', [
    worked({
      given: { seat: 914, face: 900 },
      run: ({ seat, face }) => {
        const back = obstacle('seat', 'seat-back', [seat, -300, 100], [seat + 100, 300, 500]);
        return inspectBoxes([upTo([face, 300, 600])], boxSurvey({ obstacles: [back] }));
      },
      words: 'a seat-back from 914 on, a carcass up to 900: 914 − 900 = 14; 20 − 14 = 6 short, more than u = 5.4: stop',
      expects: { severity: 'stop', value: '14', limit: '20', u: '5.4' },
    }),
    worked({
      given: { side: 300, wheel: 304 },
      run: ({ side, wheel }) => besideScene('wheelhouse', side, wheel),
      words: 'a side up to 300, a wheelhouse from 304 on: 304 − 300 = 4 of 6, less than u from it: caution',
      expects: { severity: 'caution', value: '4', limit: '6' },
    }),
    worked({
      given: { side: 300, strut: 309 },
      run: ({ side, strut }) => besideScene('strut', side, strut),
      words: 'a strut from 309 on: 309 − 300 = 9 of 15: stop',
      expects: { severity: 'stop', value: '9', limit: '15' },
    }),
    worked({
      given: { side: 300, latch: 305 },
      run: ({ side, latch }) => besideScene('latch', side, latch),
      words: 'the striker of a latch from 305 on: 305 − 300 = 5 of 6: caution',
      expects: { severity: 'caution', value: '5', limit: '6' },
    }),
  ]),
  example('body-zone', [
    worked({
      given: { curtain: 340, side: 300 },
      run: ({ curtain, side }) => {
        const zones = [zone('curtain', 'nothing-stands', [0, curtain, 300], [1500, 600, 900])];
        return inspectBoxes([upTo([900, side, 600])], boxSurvey({ zones }));
      },
      words:
        'a curtain zone from 340 on, a side up to 300: 340 − 300 = 40; 50 − 40 = 10 short, more than u = 5.4: stop',
      expects: { severity: 'stop', value: '40', limit: '50', u: '5.4' },
    }),
    worked({
      given: { seat: 899, face: 900 },
      run: ({ seat, face }) => {
        const zones = [zone('seat', 'seat-travel', [seat, -300, 0], [1200, 300, 600])];
        return inspectBoxes([upTo([face, 300, 600])], boxSurvey({ zones }));
      },
      words: 'a zone that a seat sweeps from 899 on, a carcass up to 900: 899 − 900 = −1 of 0: stop',
      expects: { severity: 'stop', value: '−1', limit: '0' },
    }),
  ]),
  example('hatch-closed', [
    worked({
      given: { trim: 20, face: 11 },
      run: ({ trim, face }) => {
        const hinge = { from: [-trim, -550, 900], to: [-trim, 550, 900] };
        const row = { ...BLOCK, min: [-face, -300, 0] as const, max: [900, 300, 500] as const };
        return inspectBoxes([row], boxSurvey({ closures: [{ ...HATCH, hinge }] }));
      },
      words:
        'trim that hangs 20 behind the sill, a face 11 behind it: 20 − 11 = 9; 15 − 9 = 6 short, more than u = 5.4: stop',
      expects: { severity: 'stop', value: '9', limit: '15', u: '5.4' },
    }),
    worked({
      given: { glass: 20, face: 2 },
      run: ({ glass, face }) => {
        const hinge = { from: [-glass, -550, 900], to: [-glass, 550, 900] };
        const pane = { ...HATCH, id: 'glass', name: 'Glass', kind: 'hatch-glass', hinge };
        const row = { ...BLOCK, min: [face, -300, 0] as const, max: [900, 300, 500] as const };
        return inspectBoxes([row], boxSurvey({ closures: [pane] }));
      },
      words: 'glass 20 behind the sill, a face 2 before it: 20 + 2 = 22 of 20, not clear of it by u: caution',
      expects: { severity: 'caution', value: '22', limit: '20' },
    }),
    worked({
      given: { strut: 10, face: 18 },
      run: ({ strut, face }) => {
        const rod = obstacle('strut', 'strut', [strut - 30, -50, 300], [strut, 50, 340], 'hatch');
        const row = { ...BLOCK, min: [face, -300, 0] as const, max: [900, 300, 500] as const };
        return inspectBoxes([row], boxSurvey({ closures: [HATCH], obstacles: [rod] }));
      },
      words: 'a strut of the hatch up to 10 before the sill, a face 18 before it: 18 − 10 = 8 of 15: stop',
      expects: { severity: 'stop', value: '8', limit: '15' },
    }),
  ]),
  example('body-body', [
    worked({
      given: { side: 18, bag: 13 },
      run: ({ side, bag }) =>
        cabinetScene([
          { ...SIDE, max: [600, side, 800] },
          { id: 'gear-1', kind: 'gear', min: [100, bag, 0], max: [300, 200, 300] },
        ]),
      words: 'a side up to 18, a bag from 13 on: 13 − 18 = −5 of 0: stop',
      expects: { severity: 'stop', value: '−5', limit: '0' },
    }),
    worked({
      given: { side: 18, bag: 18 },
      run: ({ side, bag }) =>
        cabinetScene([
          { ...SIDE, max: [600, side, 800] },
          { id: 'gear-1', kind: 'gear', min: [100, bag, 0], max: [300, 200, 300] },
        ]),
      words: 'a bag from 18 on touches it: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example('moving-gap', [
    worked({
      given: { side: 18, box: 20 },
      run: ({ side, box }) => cabinetScene([{ ...SIDE, max: [600, side, 800] }, drawerBox(box)]),
      words: 'a fixed side up to 18, the box of a drawer from 20 on: 20 − 18 = 2 of 3: caution',
      expects: { severity: 'caution', value: '2', limit: '3' },
    }),
    worked({
      given: { side: 18, box: 21 },
      run: ({ side, box }) => cabinetScene([{ ...SIDE, max: [600, side, 800] }, drawerBox(box)]),
      words: 'a box from 21 on: 21 − 18 = 3: nothing',
      expects: { severity: 'nothing' },
    }),
    worked({
      given: { side: 18, front: 19.9 },
      run: ({ side, front }) =>
        cabinetScene([{ ...SIDE, max: [600, side, 800] }, drawerBox(front)], {
          panels: [panel('box', 100, 100, { role: 'front', mover: 'drawer-1' })],
        }),
      words: 'the front of a drawer from 19.9 on: 19.9 − 18 = 1.9 of 2: caution',
      expects: { severity: 'caution', value: '1.9', limit: '2' },
    }),
  ]),
  example('carcass-gap', [
    worked({
      given: { first: 300, second: 298 },
      run: ({ first, second }) =>
        cabinetScene([{ ...SIDE, min: [0, first, 0], max: [600, first + 18, 800] }, secondCarcass(second)]),
      words: 'one carcass from 300 on, another up to 298: 300 − 298 = 2 of 3: caution',
      expects: { severity: 'caution', value: '2', limit: '3' },
    }),
  ]),
  example(
    'gear-in-room',
    [
      worked({
        given: { room: 400, from: 50, wide: 370 },
        run: ({ room, from, wide }) => stowedScene([from, 0, 0], [wide, 500, 250], 'nothing', [room, 600, 300]),
        words: 'a room of 400, an item 370 wide from 50 on: 400 − (50 + 370) = −20: stop',
        expects: { severity: 'stop', value: '−20' },
      }),
      worked({
        given: { room: 400, wide: 396 },
        run: ({ room, wide }) => stowedScene([4, 50, 0], [wide, 500, 250], 'nothing', [room, 600, 300]),
        words: '396 wide: (400 − 396) / 2 = 2 on each side, of 3: caution',
        expects: { severity: 'caution', value: '2', limit: '3' },
      }),
    ],
    { formula: [2] },
  ),
  example('gear-unplaced', [
    worked({
      given: { listed: 2, placed: 1 },
      run: ({ listed, placed }) => {
        const row = { name: 'Bag', sizeMm: [1, 1, 1], massKg: 1, massFrom: 'measured', firstDue: true };
        const rows = Array.from({ length: listed }, (_, i) => ({
          ...row,
          id: `gear-${i + 1}`,
          ...(i < placed ? { place: { opening: 'opening-1', at: [0, 0, 0] } } : {}),
        }));
        return inspectScene({ survey: null, design: { gear: gearListSchema.parse(rows) } });
      },
      words: '2 first-due bags of which 1 has a place: of the other 0 places: a note that names it',
      expects: { severity: 'note', value: '0', limit: '1', told: { gear: 'Bag', firstDue: 'yes' }, of: 'gear-2' },
    }),
  ]),
  example('space-missing', [
    worked({
      given: { panels: 1 },
      run: ({ panels }) => cabinetScene(Array.from({ length: panels }, () => SIDE)),
      words: '1 panel and 0 stations, so 0 of 1 cargo space: caution',
      expects: { severity: 'caution', value: '0', limit: '1', facts: { stations: '0' } },
    }),
    worked({
      given: { panels: 0 },
      run: ({ panels }) => cabinetScene(Array.from({ length: panels }, () => SIDE)),
      words: '0 panels either: note',
      expects: { severity: 'note', value: '0' },
    }),
  ]),
  example('start-values', [
    worked({
      given: { measured: 700, depth: 690 },
      run: ({ measured, depth }) => startedScene([0, measured, 1500], depth),
      words:
        'a measured section at 700 and 1 with start values beyond it, which shapes what lies forward of 700: 1 of 0, with a panel up to 690 caution',
      expects: { severity: 'caution', value: '1', limit: '0' },
    }),
    worked({
      given: { measured: 700, depth: 710 },
      run: ({ measured, depth }) => startedScene([0, measured, 1500], depth),
      words: 'up to 710 stop',
      expects: { severity: 'stop', value: '1' },
    }),
  ]),
];
