import { describe, expect, it } from 'vitest';
import { convexVolume } from '../../src/bodies/index.ts';
import {
  addBrace,
  changeBrace,
  type NodeId,
  printDesign,
  readDesign,
  removeBrace,
  removeCarcass,
} from '../../src/design/index.ts';
import { carcass, designOf, empty, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;

/** Two carcasses 900 × 700 × 600, faces to the right, the second 1,500 further forward. */
const bay = (id: string, x: number, z = 0): Plain =>
  carcass(empty(`opening-${id}`), {
    id,
    name: id,
    place: { x: { rule: 'at', mm: x }, y: { rule: 'at', mm: 0 }, z: { rule: 'at', mm: z } },
  });
const PAIR = [bay('carcass-1', 0), bay('carcass-2', 1500)];
const BRACE = {
  id: 'brace-1',
  item: 'brace-bar-30',
  lies: 'top',
  from: { carcass: 'carcass-1', at: [600, 100, 0] },
  to: { carcass: 'carcass-2', at: [0, 500, 0] },
};
const braced = (change: Plain = {}, pair: readonly Plain[] = PAIR) =>
  solved([], { cabinet: { carcasses: pair, braces: [{ ...BRACE, ...change }] } });

describe('a brace between two carcasses', () => {
  const fitOut = braced();

  it('is a bar flat on both tops, beyond its bolts at both ends', () => {
    expect(fitOut.problems).toEqual([]);
    // From 600 to 1500 and from 100 to 500: √(900² + 400²) = 984.886, and 25 at each end.
    const bar = fitOut.hardware.find(({ id }) => id === 'brace-1');
    expect(bar?.quantity).toBeCloseTo(1.034886, 6);
    const body = fitOut.bodies.find(({ id }) => id === 'brace-1');
    expect(convexVolume(body?.shape as never).volumeMm3).toBeCloseTo(1034.886 * 30 * 4, 0);
    // On the tops, 700 up.
    const { min, max } = bodyBox(body as never);
    expect([min[2], max[2]]).toEqual([700, 704]);
    expect(fitOut.masses.find(({ id }) => id === 'brace-1')?.massKg).toBeCloseTo(0.94 * 1.034886, 6);
    expect(fitOut.hardware.find(({ id }) => id === 'brace-1/bolts')?.quantity).toBe(4);
  });

  it('lies on whichever face of both is named', () => {
    const { min, max } = bodyBox(
      braced({
        lies: 'right',
        from: { carcass: 'carcass-1', at: [600, 0, 650] },
        to: { carcass: 'carcass-2', at: [50, 0, 650] },
      }).bodies.find(({ id }) => id === 'brace-1') as never,
    );
    expect([min[1], max[1]].map((y) => Math.round(y * 1000) / 1000)).toEqual([-4, 0]);
  });

  it('names an end beside its carcass, faces that are not flush, and what it cannot join', () => {
    const off = braced({ to: { carcass: 'carcass-2', at: [-20, 500, 0] } });
    expect(off.problems).toMatchObject([{ at: 'brace-1', because: ['an end of the brace lies 20 mm off carcass-2'] }]);
    const high = braced({}, [bay('carcass-1', 0), bay('carcass-2', 1500, 12)]);
    expect(high.problems).toMatchObject([{ code: 'bad-joint', needMm: 1, haveMm: 12 }]);
    expect(braced({ to: BRACE.from }).problems).toMatchObject([{ because: ['a brace joins two carcasses'] }]);
    expect(braced({ item: 'nothing-such' }).problems).toMatchObject([{ code: 'unknown-hardware', at: 'brace-1' }]);
  });
});

describe('edits of braces', () => {
  it('add one between a carcass and another, change it, and take it out with its carcass', () => {
    const start = designOf(PAIR);
    const { design, id } = addBrace(start, 'carcass-2' as NodeId);
    expect(design.cabinet.braces).toMatchObject([{ from: { carcass: 'carcass-2' }, to: { carcass: 'carcass-1' } }]);
    const read = readDesign(printDesign(design));
    expect(read.ok && read.value).toEqual(design);
    expect(changeBrace(design, id, { item: 'brace-alu-40' }).cabinet.braces[0]?.item).toBe('brace-alu-40');
    expect(removeBrace(design, id).cabinet.braces).toEqual([]);
    expect(removeCarcass(design, 'carcass-1' as NodeId).cabinet.braces).toEqual([]);
    expect(() => addBrace(designOf([bay('carcass-1', 0)]), 'carcass-1' as NodeId)).toThrow(RangeError);
    const strange = { ...design, cabinet: { ...design.cabinet, carcasses: design.cabinet.carcasses.slice(0, 1) } };
    expect(readDesign(printDesign(strange)).ok).toBe(false);
  });
});
