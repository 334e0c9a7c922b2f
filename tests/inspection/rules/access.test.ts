import { describe, expect, it } from 'vitest';
import type { FitOut } from '../../../src/fitout/index.ts';
import { sayFinding } from '../../../src/says/index.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';
import { body, findingsOf, inspectScene, linesOf, node } from '../fixture.ts';
import { blindBayScene, deviceScene, frontAt, latchAt, latchScene, leafScene } from '../scenes/access.ts';
import { beaconScene, hatched, moving, roofScene, sliding } from '../scenes/vehicle.ts';

const flow = await wholeFlow();
const said = (inspection: ReturnType<typeof inspectScene>, rule: string): readonly string[] =>
  findingsOf(inspection, rule).map((finding) => sayFinding(finding, 'mm', (id) => id).title);

describe('closure-swing', () => {
  it('stops a hatch that swings into something behind the hinge, by as much as it would go in', () => {
    // Open by 90°, the outer face of the hatch lies 40 over the hinge at 900: 940, 10 into a beacon from 930 up.
    expect(linesOf(beaconScene(930), 'closure-swing')).toEqual(['stop beacon+hatch -10']);
    expect(said(beaconScene(930), 'closure-swing')[0]).toMatch(
      /^Hatch meets beacon on its swing, at 8\d(\.\d)?° from closed$/,
    );
  });

  it('cautions within what is known of the gap, and says nothing from limit and doubt on', () => {
    // 955 − 940 = 15, the limit, less than the doubt of it away; 25 is further than 15 and the doubt of 5.4.
    expect(linesOf(beaconScene(955), 'closure-swing')).toEqual(['caution beacon+hatch 15']);
    expect(linesOf(beaconScene(965), 'closure-swing')).toEqual([]);
  });

  it('leaves what is too near where the hatch is closed to the check of closed closures', () => {
    const inspection = inspectScene({
      survey: hatched,
      fitout: { bodies: [body({ id: 'box', min: [-30, -50, 200], max: [200, 50, 400] })] },
    });
    expect(linesOf(inspection, 'hatch-closed')).toEqual(['stop carcass-1+hatch -10']);
    expect(linesOf(inspection, 'closure-swing')).toEqual([]);
  });
});

describe('low-roof', () => {
  it('knows how high the swing reaches above ground', () => {
    // 800 + 900 + 40 = 1,740; the roof less 50 is wanted.
    expect(linesOf(roofScene(1790), 'low-roof')).toEqual([]);
    expect(linesOf(roofScene(1780), 'low-roof')).toEqual(['caution hatch 1740']);
    expect(said(roofScene(1700), 'low-roof')).toEqual(['Hatch does not open fully under a roof at 1700 mm']);
  });

  it('is silent without the height of the floor, and says so', () => {
    const inspection = inspectScene({ survey: hatched });
    expect(findingsOf(inspection, 'low-roof')).toEqual([]);
    const note = findingsOf(inspection, 'figures-missing').find(({ parts }) => parts[0] === 'floor-height');
    expect(note?.facts.silent).toContain('low-roof');
  });
});

describe('first-due and gear-out', () => {
  it('finds first-due gear behind hatch, latch and drawer one motion over, and none over its limit in open bays', () => {
    const { findings } = flow.inspection(demoDesign('harrow-fell'));
    const over = findings.filter(({ rule }) => rule === 'first-due');
    expect(over.map(({ parts, value, limit }) => [parts[0], value, limit])).toEqual(
      ['gear-18', 'gear-21', 'gear-22', 'gear-3'].map((gear) => [gear, 3, 2]),
    );
    expect(findings.filter(({ rule }) => rule === 'gear-out')).toEqual([]);
  });

  it('cautions gear that no straight way leads out of, without calling it impossible', () => {
    const inspection = blindBayScene(400);
    expect(linesOf(inspection, 'gear-out')).toEqual(['caution bag+bay 0']);
    expect(said(inspection, 'gear-out')).toEqual(['No straight way out was found for bag']);
  });
});

describe('mover-pairs and working-triple', () => {
  /** A door hung at y = 120 before a drawer, and one that swings across the lane of the drawer beside it. */
  it('notes that the door goes before the drawer behind it', () => {
    const inspection = leafScene(120, 90, 0);
    expect(said(inspection, 'mover-pairs')).toEqual(['Door must open before box']);
    expect(findingsOf(inspection, 'mover-pairs').map(({ severity }) => severity)).toEqual(['note']);
    expect(findingsOf(inspection, 'working-triple')).toEqual([]);
  });

  it('cautions two that can never both be out, and the working person who wants both', () => {
    // Turned by 180° the leaf lies before the drawer beside it: y from 120 to 250, x under 100.
    const inspection = leafScene(120, 180, 130);
    expect(said(inspection, 'mover-pairs')).toEqual(['Door and box cannot be out together']);
    expect(findingsOf(inspection, 'working-triple').map(({ severity }) => severity)).toEqual(['caution']);
  });

  it('is quick with two hundred drawers side by side, and counts every pair', () => {
    const many = Array.from({ length: 200 }, (_, i) => `box-${i}`);
    const inspection = inspectScene({
      survey: null,
      fitout: {
        bodies: many.map((id, i) =>
          body({ id, origin: node(id), mover: id, min: [100, 110 * i, 0], max: [400, 110 * i + 100, 100] }),
        ),
        movers: many.map((id) => sliding(id)),
      },
    });
    expect(findingsOf(inspection, 'mover-pairs')).toEqual([]);
    expect(inspection.checked.moverPairs).toBe(19_900); // 200 × 199 / 2
  });
});

describe('hand-room and device-out', () => {
  it('wants 75 mm before a latch for a glove', () => {
    expect(linesOf(latchScene(30), 'hand-room')).toEqual(['caution box+post 50']); // 80 − 30
    expect(linesOf(latchScene(5), 'hand-room')).toEqual([]); // 80 − 5 = 75
  });

  describe('before a door, where a hand comes in nearly along an axis of the vehicle', () => {
    // Hung about an upright at y = 300, its latch at x = 80, y = 150: 150 from the hinge across, `proud` of it along x.
    // The turn starts along (−150, −proud): atan(proud / 150) off the axis, 15° at 150 · tan 15° = 40.19.
    const hung = (proud: number) =>
      inspectScene({
        survey: null,
        fitout: {
          bodies: [
            frontAt(80),
            body({ id: 'post', carcass: node('carcass-2'), min: [10, 100, 0], max: [30, 200, 400] }),
          ],
          movers: [
            moving('box', { kind: 'turn', point: [80 - proud, 300, 0], axis: [0, 0, -1], travelRad: Math.PI / 2 }),
          ],
          hardware: [latchAt(80)],
        },
      });

    it('takes a way within 15° of the axis for the axis', () => {
      for (const proud of [0, 20, 40]) {
        expect(linesOf(hung(proud), 'hand-room')).toEqual(['caution box+post 50']); // 80 − 30
        expect(findingsOf(hung(proud), 'hand-room')[0]?.facts).toMatchObject({ 'out-x': -1, 'out-y': 0, 'out-z': 0 });
      }
    });

    it('keeps a way further off as it is', () => {
      // √(150² + 41²) = 155.50: out is (−0.9646, −0.2637). Along it the foremost corner of the front, (80, 0), lies at
      // −77.17 and that of the post, (30, 200), at −81.67: nothing is left between them.
      const [finding] = findingsOf(hung(41), 'hand-room');
      expect(finding?.value).toBe(0);
      expect(finding?.facts['out-x']).toBeCloseTo(-150 / Math.hypot(150, 41), 12);
      expect(finding?.facts['out-y']).toBeCloseTo(-41 / Math.hypot(150, 41), 12);
    });

    it('does the same about a level hinge', () => {
      const lifted = (proud: number) =>
        inspectScene({
          survey: null,
          fitout: {
            bodies: [
              frontAt(80),
              body({ id: 'post', carcass: node('carcass-2'), min: [10, 100, 0], max: [30, 200, 400] }),
            ],
            movers: [
              moving('box', { kind: 'turn', point: [80 - proud, 0, 300], axis: [0, 1, 0], travelRad: Math.PI / 2 }),
            ],
            hardware: [latchAt(80)],
          },
        });
      expect(findingsOf(lifted(40), 'hand-room')[0]?.facts).toMatchObject({ 'out-x': -1, 'out-z': 0 });
      const [slanted] = findingsOf(lifted(41), 'hand-room');
      // Down and out: (−150, 0, −41) again.
      expect(slanted?.facts['out-z']).toBeCloseTo(-41 / Math.hypot(150, 41), 12);
    });
  });

  it('draws a device out by its own depth, past what stands before its plate', () => {
    // 150 deep and from 100: it comes out to −50.
    expect(linesOf(deviceScene(-40), 'device-out')).toEqual(['caution radio+post 0']);
    expect(linesOf(deviceScene(-60), 'device-out')).toEqual([]);
  });
});

describe('movers that cannot be judged', () => {
  const inspected = (motion: FitOut['movers'][number]['motion']) =>
    inspectScene({
      survey: hatched,
      fitout: {
        bodies: [body({ id: 'box', origin: node('box'), mover: 'box', min: [100, 0, 10], max: [400, 100, 100] })],
        movers: [moving('box', motion), sliding('bare')],
      },
    });

  it('are told in words, and everything else is still judged', () => {
    const turn = (axis: readonly [number, number, number], travelRad: number) =>
      said(inspected({ kind: 'turn', point: [0, 0, 0], axis, travelRad }), 'mover-travel');
    expect(turn([0, 0, 0], 1)).toEqual(['Box cannot be judged: its direction or axis has no length']);
    // 400° = 6.98 rad, over 2π = 6.28.
    expect(turn([0, 0, 1], (400 / 180) * Math.PI)).toEqual(['Box cannot be judged: it turns more than once round']);
    expect(said(inspected({ kind: 'slide', direction: [-1, 0, 0], travel: Number.NaN }), 'mover-travel')).toEqual([
      'Box cannot be judged: how far it goes is not a number',
    ]);
  });
});
