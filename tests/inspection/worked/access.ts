import { blindBayScene, deviceScene, latchScene, leafScene } from '../scenes/access.ts';
import { mountScene, SWITCHES } from '../scenes/mounts.ts';
import { example, worked } from './example.ts';

/** Movers in each other's way, hands, and what comes out straight. */
export const ACCESS = [
  example('mover-pairs', [
    worked({
      given: { hinge: 120, turns: 90, box: 0 },
      run: ({ hinge, turns, box }) => leafScene(hinge, turns, box),
      words:
        'a leaf hung at 120 across and turned by 90°, before a drawer from 0 on: shut it stands in the way, open it does not: the door first: note',
      expects: { severity: 'note', told: { verdict: 'first-leads' } },
    }),
    worked({
      given: { long: 130, hinge: 120, turns: 180, box: 130 },
      run: ({ long, hinge, turns, box }) => leafScene(hinge, turns, box, long),
      words:
        '130 long and turned by 180° it lies from 120 to 120 + 130 = 250, before a drawer from 130 on: never both out: caution',
      expects: { severity: 'caution', told: { verdict: 'never-together' } },
    }),
  ]),
  example('working-triple', [
    worked({
      given: { long: 130, hinge: 120, turns: 180, box: 150 },
      run: ({ long, hinge, turns, box }) => leafScene(hinge, turns, box, long),
      words:
        'a leaf 130 long, hung at 120 across and turned by 180°, lies from 120 to 120 + 130 = 250, before a drawer from 150 on; with the drawer out it does not open: no order brings out both: caution',
      expects: { severity: 'caution' },
    }),
    worked({
      given: { hinge: 120, turns: 90, box: 150 },
      run: ({ hinge, turns, box }) => leafScene(hinge, turns, box),
      words: 'turned by 90° it stands off beside it: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example(
    'hand-room',
    [
      worked({
        given: { front: 80, post: 30 },
        run: ({ front, post }) => latchScene(post, front),
        words: 'a latch in a front at 80, a post up to 30: 80 − 30 = 50 of 75: caution',
        expects: { severity: 'caution', value: '50', limit: '75' },
      }),
      worked({
        given: { front: 80, post: 5 },
        run: ({ front, post }) => latchScene(post, front),
        words: 'up to 5: 80 − 5 = 75: nothing',
        expects: { severity: 'nothing' },
      }),
      worked({
        given: { aside: 70 },
        run: ({ aside }) => latchScene(30, 80, aside),
        words: 'up to 30 but 70 to the side of it, more than 135 / 2 = 67.5: nothing',
        expects: { severity: 'nothing' },
      }),
    ],
    { house: ['hand-glove-width'], formula: [2] },
  ),
  example('device-out', [
    worked({
      given: { plate: 100, deep: 150, post: -40 },
      run: ({ plate, deep, post }) => deviceScene(post, plate, deep),
      words: 'a radio 150 deep in a plate at 100 comes out to 100 − 150 = −50; a post up to −40 is in its way: caution',
      expects: { severity: 'caution' },
    }),
    worked({
      given: { plate: 100, deep: 150, post: -60 },
      run: ({ plate, deep, post }) => deviceScene(post, plate, deep),
      words: 'a post up to −60: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example('mount-off', [
    worked({
      given: { hinge: 900, post: 765 },
      run: ({ hinge, post }) => mountScene({}, { low: post - 65, high: post }, { hingeUp: hinge }),
      words:
        'a speaker 85 deep on the trim of an open hatch at 900 hangs down to 900 − 85 = 815; a post up to 765: it comes off by 815 − 765 = 50 of 85: caution',
      expects: { severity: 'caution', value: '50', limit: '85' },
    }),
  ]),
  example('mount-height', [
    worked({
      given: { floor: 800, up: 1000 },
      run: ({ floor, up }) =>
        mountScene({ ...SWITCHES, on: null, at: [100, 0, up] }, null, { floorAboveGroundMm: floor }),
      words: 'switches 1,000 above a floor at 800: 800 + 1,000 = 1,800 of 1,750: caution',
      expects: { severity: 'caution', value: '1,800', limit: '1,750' },
    }),
  ]),
  example('gear-out', [
    worked({
      given: { bag: 100, bay: 200, panel: 150 },
      run: ({ bag, bay, panel }) => blindBayScene(panel, bag, bay),
      words:
        'a bag 100 high in a bay 200 high can be lifted by 200 − 100 = 100; a panel before it up to 150: no way, 0 of 1: caution',
      expects: { severity: 'caution', value: '0', limit: '1' },
    }),
    worked({
      given: { bag: 100, bay: 200, panel: 90 },
      run: ({ bag, bay, panel }) => blindBayScene(panel, bag, bay),
      words: 'a panel up to 90, lifted over it: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
];
