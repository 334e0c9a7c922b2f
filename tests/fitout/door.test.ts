import { describe, expect, it } from 'vitest';
import { radians } from '../../src/base/index.ts';
import { carcass, empty, fitted, openingOf, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;

const door = (rest: Plain = {}): Plain => ({
  kind: 'door',
  material: 'birch-ply-18',
  hinge: 'hinge-piano-32',
  inside: empty('opening-2'),
  ...rest,
});

/** 864.6 × 664.6 × 581.6 clear (across × up × deep), facing right: across runs along −x, deep along +y. */
const one = (rest: Plain = {}, gear: readonly Plain[] = []) =>
  solved([carcass(fitted('opening-1', door(rest)))], { gear });

/** Sheet 17.7 on both sides; back 6.4 in a groove 12 from the rear. */
const around = (width: number, height: number, depth: number): Plain => ({
  size: { width: width + 2 * 17.7, height: height + 2 * 17.7, depth: depth + 6.4 + 12 },
});

/**
 * Width of a leaf of 17.7 hung at the side of 864.6: its inner corner stays 3 from the far side, the line being 2 from
 * the near one and 1.5 before the leaf.
 */
const WIDE = Math.sqrt((864.6 - 2 - 3) ** 2 - (17.7 + 1.5) ** 2);

const tenths = (values: readonly number[]): readonly number[] => values.map((value) => Math.round(value * 10) / 10);

describe('a door', () => {
  it('has an inset leaf that is the opening less the reveal, and swings past the free side with the gap of moving parts', () => {
    const fitOut = one();
    expect(fitOut.problems).toEqual([]);
    const leaf = panelOf(fitOut, 'opening-1/front');
    // Grain upright: 664.6 − 4 long.
    expect(leaf.length).toBeCloseTo(660.6, 9);
    expect(leaf.width).toBeCloseTo(WIDE, 9);
    // At 695 kg/m³.
    expect(leaf.massKg).toBeCloseTo((660.6 * WIDE * 17.7 * 695) / 1e9, 9);
  });

  it('has an overlay leaf over half of what surrounds it, and stands the reveal before the face', () => {
    const fitOut = one({ front: 'overlay' });
    const leaf = panelOf(fitOut, 'opening-1/front');
    // Over (17.7 − 2) / 2 = 7.85 on each side: 664.6 + 15.7 high; 864.6 + 15.7 wide, and 2 on to what stands beside it.
    expect(leaf.length).toBeCloseTo(680.3, 9);
    expect(leaf.width).toBeCloseTo(Math.sqrt((880.3 + 2 - 3) ** 2 - 19.2 ** 2), 9);
    const body = fitOut.bodies.find(({ id }) => id === 'opening-1/front');
    const box = bodyBox(body as never);
    expect([box.min[1], box.max[1]].map((mm) => Math.round(mm * 10) / 10)).toEqual([-19.7, -2]);
  });

  it('turns about a line before its outer edge at the hung side, a positive turn out of the face', () => {
    const points = (hung: string) => {
      const motion = one({ hung, opensDeg: 90 }).movers[0]?.motion;
      return motion?.kind === 'turn' ? { at: tenths(motion.point), axis: motion.axis, by: motion.travelRad } : null;
    };
    // The viewer looks along +y, so across runs along +x: left 17.7 + 2, right 882.3 − 2, up 17.7 + 2 … 682.3 − 2; 1.5 before it.
    expect(points('left')).toEqual({ at: [19.7, -1.5, 19.7], axis: [0, 0, -1], by: radians(90) });
    expect(points('right')).toEqual({ at: [880.3, -1.5, 19.7], axis: [0, 0, 1], by: radians(90) });
    expect(points('top')).toEqual({ at: [19.7, -1.5, 680.3], axis: [-1, 0, 0], by: radians(90) });
    expect(points('bottom')).toEqual({ at: [19.7, -1.5, 19.7], axis: [1, 0, 0], by: radians(90) });
    expect(one().movers[0]?.rests.map(({ name, share }) => [name, share])).toEqual([
      ['closed', 0],
      ['open', 1],
    ]);
  });

  it('drills a piano hinge at its pitch into leaf and side, and takes it by the metre', () => {
    const fitOut = one();
    // Edge 660.6: from 30 to 630.6 at no more than 60 apart is 600.6 / 60, so 11 gaps and 12 screws on each flange.
    const holes = (id: string) => panelOf(fitOut, id).cuts.filter((cut) => cut.kind === 'hole');
    expect([holes('opening-1/front').length, holes('carcass-1/side-left').length]).toEqual([12, 12]);
    expect(holes('carcass-1/side-right')).toHaveLength(0);
    const hinge = fitOut.hardware.find(({ id }) => id === 'opening-1/hinge');
    expect(hinge?.quantity).toBeCloseTo(0.6606, 9);
    expect(fitOut.masses.find(({ id }) => id === 'opening-1/hinge')?.massKg).toBeCloseTo(0.6606 * 0.45, 9);
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/hinge-screws')?.quantity).toBe(24);
    // Flange 32 / 2 wide, screwed in its middle: 8 from the edge of the leaf; grain upright, so on the width.
    const [first] = holes('opening-1/front');
    expect(first?.kind === 'hole' && tenths([first.at[0], Math.min(first.at[1], WIDE - first.at[1])])).toEqual([30, 8]);
    expect(first?.kind === 'hole' && [first.diameter, first.depth]).toEqual([3, 8.85]);
  });

  it('hangs single hinges the first distance from the ends and no further apart than the shop lets them', () => {
    const count = (height: number): number | undefined =>
      solved([
        carcass(fitted('opening-1', door({ hinge: 'hinge-strap-100' })), around(500, height, 400)),
      ]).hardware.find(({ id }) => id === 'opening-1/hinge')?.quantity;
    // 664.6 − 4 − 160 = 500.6 between the outer two; 900 − 4 − 160 = 736 is more than 700.
    expect([count(664.6), count(900)]).toEqual([2, 3]);
  });

  it('keeps what stands behind it clear of the leaf and of what its latch reaches', () => {
    // 17.7 leaf + 3 between moving parts: 581.6 − 20.7.
    expect(openingOf(one(), 'opening-2').size[1]).toBeCloseTo(560.9, 9);
    // A slam latch reaches 40 from the outer face: 581.6 − 43; an overlay leaf stands 19.7 further out.
    expect(openingOf(one({ latch: 'latch-slam' }), 'opening-2').size[1]).toBeCloseTo(538.6, 9);
    expect(openingOf(one({ latch: 'latch-slam', front: 'overlay' }), 'opening-2').size[1]).toBeCloseTo(558.3, 9);
    expect(openingOf(one(), 'opening-2').mover).toBeNull();
    expect(one().rooms.map(({ opening, keeps }) => [opening, keeps])).toEqual([['opening-2', 'closed']]);
  });

  it('carries latch and lock one over the other at the free edge, set back so that they swing past the side', () => {
    const fitOut = one({ latch: 'latch-slam', lock: 'latch-cam-lock' });
    const [latch, lock] = ['latch', 'lock'].map((role) =>
      bodyBox(fitOut.bodies.find(({ id }) => id === `opening-1/${role}`) as never),
    );
    // 859.6 from the line; the latch reaches 40 from the face, which is 1.5 behind it.
    expect(latch?.max[0]).toBeCloseTo(17.7 + 2 + Math.sqrt(859.6 ** 2 - 41.5 ** 2), 9);
    // A lock of 35 may stand nearer to the edge.
    expect(lock?.max[0]).toBeCloseTo(17.7 + 2 + Math.sqrt(859.6 ** 2 - 36.5 ** 2), 9);
    // 80 + 25 in the middle of 664.6: from 17.7 + 332.3 − 52.5.
    expect([latch?.min[2], lock?.min[2]].map((mm) => Math.round((mm ?? 0) * 10) / 10)).toEqual([297.5, 377.5]);
    // In an opening of 204: 204 − 2 − 3 from the line.
    const small = solved([carcass(fitted('opening-1', door({ latch: 'latch-slam' })), around(204, 400, 400))]);
    const edge = bodyBox(small.bodies.find(({ id }) => id === 'opening-1/latch') as never).max[0];
    expect(edge).toBeCloseTo(17.7 + 2 + Math.sqrt(199 ** 2 - 41.5 ** 2), 9);
  });

  it('says the least width that a leaf turns out of', () => {
    const narrow = solved([carcass(fitted('opening-1', door()), around(45, 400, 400))]);
    // A leaf of 40: √(40² + 19.2²) from the line, 3 on to the far side, 2 from the near one.
    expect(narrow.problems).toMatchObject([{ code: 'too-small', at: 'opening-1', axis: 'across' }]);
    expect(narrow.problems[0]?.needMm).toBeCloseTo(Math.hypot(40, 19.2) + 5, 9);
  });

  it('has a gas spring on each side of a leaf hung at the top, and the room beside them', () => {
    const fitOut = one({ hung: 'top', opensDeg: 90, stay: 'gas-spring-130' });
    expect(fitOut.problems).toEqual([]);
    const springs = fitOut.hardware.filter(({ item }) => item === 'gas-spring-130');
    expect(springs.map(({ quantity }) => quantity)).toEqual([1, 1]);
    // 22 thick and 3 between moving parts on each side: 864.6 − 50.
    expect(openingOf(fitOut, 'opening-2').size[0]).toBeCloseTo(814.6, 9);
    const shape = fitOut.bodies.find(({ id }) => id === 'opening-1/spring-left')?.shape;
    const [wall, leaf] = shape?.vertices ?? [];
    if (!wall || !leaf) throw new Error('no spring');
    const apart = (b: readonly number[]): number => Math.hypot(wall[1] - (b[1] ?? 0), wall[2] - (b[2] ?? 0));
    // 300 long, stroke 0.4: 180 while shut; open, the point on the leaf has turned a quarter about (−1.5, 680.3).
    expect(apart(leaf)).toBeCloseTo(180, 6);
    const turned = [0, -1.5 - (680.3 - leaf[2]), 680.3 - (leaf[1] + 1.5)];
    expect(apart(turned)).toBeCloseTo(300, 6);
    expect(shape?.radius).toBe(11);
  });

  it('holds a flap at the bottom by two straps, and names a door without a panel to hang on', () => {
    const straps = one({ hung: 'bottom', stay: 'strap-cam-25' }).hardware.find(({ id }) => id === 'opening-1/stay');
    expect(straps?.quantity).toBe(2);
    const line = solved([
      carcass({
        id: 'opening-9',
        name: '',
        content: {
          kind: 'divided',
          along: 'columns',
          divider: 'none',
          parts: [
            { size: { rule: 'share', weight: 1 }, opening: fitted('opening-1', door({ hung: 'right' })) },
            { size: { rule: 'share', weight: 1 }, opening: empty('opening-3') },
          ],
        },
      }),
    ]);
    expect(line.problems).toMatchObject([
      { code: 'bad-joint', at: 'opening-1', because: ['hinge-piano-32 meets no panel at its right'] },
    ]);
  });

  it('rolls up: slats between a rail and a box as large as the roll', () => {
    const fitOut = one({ hung: 'roll', material: 'birch-ply-6', latch: 'latch-slide-bolt' });
    expect(fitOut.problems).toEqual([]);
    const coil = bodyBox(fitOut.bodies.find(({ id }) => id === 'opening-1/coil') as never);
    const size = coil.max[2] - coil.min[2];
    const clear = 664.6 - size;
    // Turns of 6.4 + 2 round a core of 60, 5 of air: (box − 10)² = 60² + 4 × 8.4 × clear / π.
    expect((size - 10) ** 2).toBeCloseTo(60 ** 2 + (4 * 8.4 * clear) / Math.PI, 6);
    expect(openingOf(fitOut, 'opening-2').size[2]).toBeCloseTo(clear, 9);
    const slats = fitOut.panels.filter(({ role }) => role === 'slat');
    // Rail 60 high on a reveal of 2; the rest in slats of 45 or more.
    expect(slats).toHaveLength(Math.floor((clear - 62) / 45));
    expect(slats.reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(clear - 62, 6);
    const motion = fitOut.movers[0]?.motion;
    // The rail stops a reveal under the box: clear − 2 − 60 − 2.
    expect(motion?.kind === 'slide' && motion.direction).toEqual([0, 0, 1]);
    expect(motion?.kind === 'slide' && motion.travel).toBeCloseTo(clear - 64, 9);
  });

  it('needs the room of the gear behind it, which stays with the carcass', () => {
    const weights: Plain = {
      id: 'gear-1',
      name: 'Weights',
      sizeMm: [200, 200, 100],
      massKg: 5,
      massFrom: 'measured',
      place: { opening: 'opening-2', level: 0, at: [10, 10, 0] },
    };
    const fitOut = one({}, [weights]);
    // Across 10 + 200 + 3; deep 17.7 + 3 before it, 10 + 200 + 3; up 100 + 15 of hand room.
    expect(tenths(openingOf(fitOut, 'opening-1').least)).toEqual([213, 233.7, 115]);
    // Deep 20.7 + 10.
    const body = fitOut.bodies.find(({ origin }) => origin === 'gear-1');
    expect(tenths([bodyBox(body as never).min[1], body?.mover === null ? 1 : 0])).toEqual([30.7, 1]);
  });

  it('weighs its parts and pieces', () => {
    const fitOut = one({ latch: 'latch-slam', lock: 'latch-cam-lock' });
    const own = fitOut.masses.filter(({ origin, kind }) => origin === 'opening-1' && kind !== 'finish');
    const fasteners = own.filter(({ name }) => name === 'fasteners').reduce((sum, { massKg }) => sum + massKg, 0);
    // Cut out of the leaf: 92 × 52 with corners of 5 for the latch, a bore of 19 for the lock.
    const cut = 92 * 52 - (4 - Math.PI) * 5 ** 2 + (Math.PI / 4) * 19 ** 2;
    const leaf = ((660.6 * WIDE - cut) * 17.7 * 695) / 1e9;
    // Leaf + hinge 0.6606 × 0.45 + latch 0.28 + lock 0.09, and 2 % of the leaf for screws and glue.
    expect(own.reduce((sum, { massKg }) => sum + massKg, 0) - fasteners).toBeCloseTo(
      leaf + 0.6606 * 0.45 + 0.28 + 0.09,
      9,
    );
    expect(fasteners).toBeCloseTo(0.02 * leaf, 9);
  });

  it('names what the catalog does not have', () => {
    const fitOut = one({ hinge: 'hinge-none', latch: 'latch-none', material: 'paper' });
    expect(fitOut.problems.map(({ code, because }) => [code, because[0]])).toEqual([
      ['unknown-material', 'paper'],
      ['unknown-hardware', 'hinge-none'],
      ['unknown-hardware', 'latch-none'],
    ]);
  });
});
