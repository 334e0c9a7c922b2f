import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { carryScene } from '../scenes/carry.ts';
import { drawer, solvedScene, stowed } from '../scenes/hold.ts';
import { strikerScene } from '../scenes/travel.ts';
import { beaconScene, roofScene } from '../scenes/vehicle.ts';
import { example, worked } from './example.ts';

interface Swing {
  readonly thick: number;
  readonly hinge: number;
  readonly opens: number;
}

const hatchOf = ({ thick, hinge, opens }: Swing) => ({
  ...HATCH,
  thicknessMm: thick,
  opensDeg: opens,
  hinge: { from: [-20, -550, hinge], to: [-20, 550, hinge] },
});

/** An item in a drawer behind the hatch. */
const inDrawer = (latch: string | null, firstDue: boolean) =>
  solvedScene(drawer({ latch }), {
    carcass: { place: { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: -450 }, z: { rule: 'at', mm: 0 } } },
    design: {
      ...stowed(5, 'opening-2', [0, 0, 0], { firstDue }),
      survey: boxSurvey({ closures: [HATCH] }),
    },
  });

const SWING = { thick: 40, hinge: 900, opens: 90 };

/** Travel of drawers, swing of closures, ways in. */
export const MOTION = [
  example('mover-travel', [
    worked({
      given: { lip: 62, travel: 950, face: 34, lipUp: 30, top: 40 },
      run: ({ lip, travel, face, lipUp, top }) => strikerScene({ x: lip, z: lipUp }, travel, [face, 40, top]),
      words:
        'a lip at x = 62 and 30 up, a striker up to x = 34 and 40 high: 30 is under 40, so it is met 62 − 34 = 28 out of 950: stop',
      expects: { severity: 'stop', value: '28', limit: '950', told: { what: 'meets' } },
    }),
    worked({
      given: { lip: 62, travel: 950, face: 34, lipUp: 41, top: 40 },
      run: ({ lip, travel, face, lipUp, top }) => strikerScene({ x: lip, z: lipUp }, travel, [face, 40, top]),
      words: 'a lip 41 up passes at 41 − 40 = 1 of 3: caution',
      expects: { severity: 'caution', value: '1', limit: '3', told: { what: 'close' } },
    }),
  ]),
  example('closure-swing', [
    worked({
      given: { ...SWING, beacon: 930 },
      run: ({ beacon, ...swing }) => beaconScene(beacon, hatchOf(swing)),
      words:
        'a hatch 40 thick, hinge 900 up, opened by 90°: its outer face lies at 900 + 40 = 940; a beacon from 930 up: 930 − 940 = −10: stop',
      expects: { severity: 'stop', value: '−10' },
    }),
    worked({
      given: { ...SWING, beacon: 955 },
      run: ({ beacon, ...swing }) => beaconScene(beacon, hatchOf(swing)),
      words: 'from 955 up: 955 − 940 = 15 of 15, not clear of it by u = 5.4: caution',
      expects: { severity: 'caution', value: '15', limit: '15', u: '5.4' },
    }),
  ]),
  example(
    'low-roof',
    [
      worked({
        given: { ...SWING, floor: 800, roof: 1780 },
        run: ({ floor, roof, ...swing }) => roofScene(roof, floor, hatchOf(swing)),
        words:
          'a floor at 800, a hatch 40 thick, hinge 900 up, opened by 90°: 800 + 900 + 40 = 1,740 under a roof at 1,780, of 1,780 − 50 = 1,730: caution',
        expects: { severity: 'caution', value: '1,740', limit: '1,730' },
      }),
    ],
    { house: ['roof-gap'] },
  ),
  example(
    'first-due',
    [
      worked({
        given: { firstDue: 1 },
        run: ({ firstDue }) => inDrawer('latch-slam', firstDue === 1),
        words:
          '1 first-due item in a drawer: 1 for the hatch, 1 for the latch, 1 for the drawer: 1 + 1 + 1 = 3 of 2: caution',
        expects: { severity: 'caution', value: '3', limit: '2', told: { acts: 'open undo open take' } },
      }),
      worked({
        given: { firstDue: 1 },
        run: ({ firstDue }) => inDrawer(null, firstDue === 1),
        words: 'without a latch 1 + 1 = 2 of 2: nothing',
        expects: { severity: 'nothing', value: '2', limit: '2' },
      }),
    ],
    { house: ['motion-open', 'motion-latch', 'motion-slide'] },
  ),
  example(
    'carry-in',
    [
      worked({
        given: { opening: 590, carcass: 600 },
        run: ({ opening, carcass }) => carryScene(opening, carcass),
        words: 'an opening 590 wide, a carcass 600 wide: 590 − 600 = −10, no way is found: caution',
        expects: { severity: 'caution', told: { what: 'not-found', by: 'the frame of the opening' } },
      }),
      worked({
        given: { opening: 610, carcass: 600 },
        run: ({ opening, carcass }) => carryScene(opening, carcass),
        words: 'an opening 610 wide: (610 − 600) / 2 = 5 on each side, proven to 0.5, of 10: caution',
        expects: { severity: 'caution', value: '5', short: '0.5', limit: '10', told: { what: 'tight' } },
      }),
    ],
    { formula: [2] },
  ),
];
