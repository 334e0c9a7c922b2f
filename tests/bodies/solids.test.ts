import { describe, expect, it } from 'vitest';
import { boxAt, ROUNDING_MM3, seededRandom, type Vec2 } from '../../src/base/index.ts';
import {
  boxShape,
  capsuleShape,
  loadSolids,
  loftShell,
  type Shell,
  type Solid,
  shapeAt,
  shellIsClosed,
  shellVolume,
} from '../../src/bodies/index.ts';
import { SEED, someBox, somePose } from './scenes.ts';

const solids = await loadSolids();
const board = boxShape(boxAt([1234.56789, -321.987654, 17.123456789], [600, 500, 18]));

describe('solids', () => {
  it('measures a board to rounding, far from the origin and turned', () => {
    const turned = shapeAt(board, somePose(seededRandom(SEED), 3000));
    const volumes = solids.scope(() => [board, turned].map((shape) => solids.volume(solids.fromConvex(shape))));
    for (const volume of volumes) expect(Math.abs(volume - 5_400_000)).toBeLessThan(ROUNDING_MM3); // 600 · 500 · 18
  });

  it('keeps doubles on the way in from a shell and on the way out', () => {
    const ring: readonly Vec2[] = [
      [-400.123456, 0.1],
      [400.123456, 0.1],
      [400.123456, 250.7654321],
      [550.5, 250.7654321],
      [550.5, 900.3],
      [-550.5, 900.3],
    ];
    const shell = loftShell([
      { x: 0.1, ring },
      { x: 911.37, ring },
    ]);
    const [volume, back] = solids.scope((): [number, Shell] => {
      const solid = solids.fromShell(shell);
      return [solids.volume(solid), solids.toShell(solid)];
    });
    expect(Math.abs(volume - shellVolume(shell))).toBeLessThan(ROUNDING_MM3);
    expect(shellIsClosed(back)).toBe(true);
    const known = new Set(shell.positions);
    expect([...back.positions].every((value) => known.has(value))).toBe(true); // not one coordinate rounded
  });

  it('sees a slice of a hundredth of a micrometre that single precision would lose', () => {
    const lifted = shapeAt(board, {
      turn: [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      at: [0, 0, 1e-5],
    });
    const slice = solids.scope(() => {
      const shell = solids.toShell(solids.fromConvex(board));
      return solids.volume(solids.difference(solids.fromShell(shell), [solids.fromConvex(lifted)]));
    });
    expect(slice).toBeCloseTo(3, 3); // 600 · 500 · 1e-5
  });

  it('keeps the volumes of union, difference and intersection in step', () => {
    const random = seededRandom(SEED);
    for (let i = 0; i < 60; i++) {
      const [a, b] = [someBox(random, 200), shapeAt(someBox(random, 200), somePose(random, 100))];
      const [va, vb, both, either, left] = solids.scope(() => {
        const [p, q] = [solids.fromConvex(a), solids.fromConvex(b)];
        return [p, q, solids.intersection(p, q), solids.union([p, q]), solids.difference(p, [q])].map(solids.volume);
      });
      expect((either ?? 0) - ((va ?? 0) + (vb ?? 0) - (both ?? 0))).toBeCloseTo(0, 2);
      expect((left ?? 0) - ((va ?? 0) - (both ?? 0))).toBeCloseTo(0, 2);
    }
  });

  it('gives a closed skin after boxes are taken out', () => {
    const cut = solids.scope(() => {
      const holes = [0, 1, 2].map((i) => solids.fromConvex(boxShape(boxAt([100 + 200 * i, 100, -5], [90, 90, 40]))));
      const sheet = solids.fromConvex(boxShape(boxAt([0, 0, 0], [800, 400, 18])));
      return solids.toShell(solids.difference(sheet, holes));
    });
    expect(shellIsClosed(cut)).toBe(true);
    expect(shellVolume(cut)).toBeCloseTo((800 * 400 - 3 * 90 * 90) * 18, 3);
  });

  it('makes round bodies a little fat, never thin', () => {
    const volume = solids.scope(() => solids.volume(solids.fromConvex(capsuleShape([0, 0, 0], [100, 0, 0], 20))));
    const true3 = Math.PI * 20 ** 2 * 100 + (4 / 3) * Math.PI * 20 ** 3;
    expect(volume).toBeGreaterThan(true3);
    expect(volume).toBeLessThan(true3 * 1.03);
  });

  it('refuses an open shell and a solid that was let go', () => {
    const open: Shell = { positions: [0, 0, 0, 9, 0, 0, 0, 9, 0], triangles: [0, 1, 2] };
    expect(() => solids.scope(() => solids.fromShell(open))).toThrow(RangeError);
    const dead: Solid = solids.scope(() => solids.fromConvex(board));
    expect(() => solids.volume(dead)).toThrow(RangeError);
  });
});
