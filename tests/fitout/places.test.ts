import { describe, expect, it } from 'vitest';
import { cross } from '../../src/base/index.ts';
import { carcassPose } from '../../src/fitout/frames.ts';
import { placesOf } from '../../src/fitout/places.ts';
import { carcass, designOf, empty } from './designs.ts';

type Plain = Readonly<Record<string, unknown>>;
const at = (mm: number): Plain => ({ rule: 'at', mm });
const beside = (id: string, side: 'plus' | 'minus', gapMm = 0): Plain => ({ rule: 'beside', carcass: id, side, gapMm });

const row = (id: string, x: Plain, y: Plain, rest: Plain = {}): Plain =>
  carcass(empty(`opening-${id}`), { id, place: { x, y, z: at(0) }, facing: 'rear', ...rest });

const places = (...carcasses: readonly Plain[]) => placesOf(designOf(carcasses).cabinet.carcasses);
const low = (result: ReturnType<typeof placesOf>, id: string) => result.lows.get(id as never);

describe('places of carcasses', () => {
  it('stands one beside another on the side of greater or smaller coordinates', () => {
    // Facing rear a carcass is 600 along x and 900 along y.
    const result = places(
      row('a', at(40), at(-450)),
      row('b', at(40), beside('a', 'plus', 5)),
      row('c', at(40), beside('a', 'minus', 5), { size: { width: 300, height: 700, depth: 600 } }),
    );
    expect(result.problems).toEqual([]);
    // −450 + 900 + 5; −450 − 300 − 5.
    expect(low(result, 'b')).toEqual([40, 455, 0]);
    expect(low(result, 'c')).toEqual([40, -755, 0]);
  });

  it('resolves each axis on its own', () => {
    const result = places(row('a', at(0), beside('b', 'plus')), row('b', beside('a', 'plus'), at(100)));
    expect(result.problems).toEqual([]);
    expect(low(result, 'a')).toEqual([0, 1000, 0]);
    expect(low(result, 'b')).toEqual([600, 100, 0]);
  });

  it('names a circle at each carcass in it, and an unknown neighbour', () => {
    const circle = places(
      row('a', at(0), beside('b', 'plus')),
      row('b', at(0), beside('a', 'plus')),
      row('c', at(0), beside('a', 'plus')),
    );
    expect(circle.problems.map(({ code, at: node, because }) => [code, node, because])).toEqual([
      ['circle-of-places', 'a', ['a', 'b']],
      ['circle-of-places', 'b', ['b', 'a']],
    ]);
    expect(low(circle, 'c')?.every(Number.isFinite)).toBe(true);
    const stray = places(row('a', at(0), beside('nobody', 'plus')));
    expect(stray.problems).toMatchObject([{ code: 'no-such-carcass', at: 'a', because: ['nobody'] }]);
  });
});

describe('frames of carcasses', () => {
  for (const [facing, across, deep] of [
    ['rear', [0, -1, 0], [1, 0, 0]],
    ['left', [-1, 0, 0], [0, -1, 0]],
    ['right', [1, 0, 0], [0, 1, 0]],
    ['front', [0, 1, 0], [-1, 0, 0]],
  ] as const) {
    it(`facing ${facing}: right-handed, with the low corner where the place says`, () => {
      const [only] = designOf([carcass(empty('opening-1'), { facing })]).cabinet.carcasses;
      if (!only) throw new Error('no carcass');
      const { turn, at: origin } = carcassPose(only, [100, 200, 300]);
      expect(turn[0]).toEqual(across);
      expect(turn[1]).toEqual(deep);
      // Across × deep = up.
      expect(cross(turn[0], turn[1]).map((value) => value + 0)).toEqual([0, 0, 1]);
      // The far corner, 900 across, 600 deep and 700 up, and the origin span a box from the low corner.
      const far = [0, 1, 2].map(
        (i) => (origin[i] ?? 0) + 900 * (turn[0][i] ?? 0) + 600 * (turn[1][i] ?? 0) + 700 * (turn[2][i] ?? 0),
      );
      expect(far.map((value, i) => Math.min(value, origin[i] ?? 0))).toEqual([100, 200, 300]);
    });
  }
});
