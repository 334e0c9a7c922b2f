import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shareUnchanged } from '../../../../src/views/editor/worker/share.ts';

it('gives back the very same object for a copy of it', () => {
  const before = { a: [1, 2, { b: 'c' }], d: null };
  expect(shareUnchanged(before, structuredClone(before))).toBe(before);
});

it('shares what did not change and nothing else', () => {
  const before = { left: { x: 1 }, right: [{ y: 1 }, { y: 2 }] };
  const after = shareUnchanged(before, { left: { x: 1 }, right: [{ y: 1 }, { y: 3 }] });
  expect(after.left).toBe(before.left);
  expect(after.right[0]).toBe(before.right[0]);
  expect(after.right[1]).not.toBe(before.right[1]);
  expect(after).toEqual({ left: { x: 1 }, right: [{ y: 1 }, { y: 3 }] });
});

it('notices a key that went away and an entry that went away', () => {
  expect(shareUnchanged({ a: 1, b: 2 }, { a: 1 })).toEqual({ a: 1 });
  expect(shareUnchanged([1, 2], [1])).toEqual([1]);
});

it('never changes what a value is, whatever it is compared with', () => {
  const plain = fc.jsonValue();
  fc.assert(
    fc.property(plain, plain, (before, after) => {
      expect(shareUnchanged(before, after)).toEqual(after);
    }),
    { seed: 20310314, numRuns: 400 },
  );
});
