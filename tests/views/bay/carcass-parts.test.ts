import { describe, expect, test } from 'vitest';
import { HOME } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import type { NodeId } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { bayFitOut } from '../../../src/views/editor/bay/bay-fit-out.ts';
import { createPartition } from '../../../src/views/editor/bay/solids/carcass-parts.ts';
import { NOTHING_SOLVED } from '../cabinet/solved-face.ts';

const carcass = (id: string): FitOut['carcasses'][number] => ({
  id: id as NodeId,
  name: id,
  pose: HOME,
  size: [100, 100, 100],
  massKg: 1,
});

const body = (id: string, home: string | null): FitOut['bodies'][number] => ({
  id,
  origin: id as NodeId,
  carcass: home as NodeId | null,
  kind: home === null ? 'device' : 'gear',
  name: id,
  shape: boxShape({ min: [0, 0, 0], max: [1, 1, 1] }),
  mover: null,
});

const fitOut: FitOut = {
  ...NOTHING_SOLVED,
  carcasses: [carcass('one'), carcass('two')],
  bodies: [body('a', 'one'), body('b', 'two'), body('speaker', null)],
  devices: [
    {
      id: 'speaker/device',
      origin: 'speaker' as NodeId,
      device: 'speaker-4',
      at: [0, 0, 0],
      opening: null,
      mover: 'hatch',
    },
  ],
};

describe('createPartition', () => {
  test('every body belongs to its carcass, or to none', () => {
    const parts = createPartition()(fitOut, []);
    expect(parts.map(({ carcass: id, fitOut: own }) => [id, own.bodies.map((one) => one.id)])).toEqual([
      [null, ['speaker']],
      ['one', ['a']],
      ['two', ['b']],
    ]);
  });

  test('a carcass in which nothing changed is the same object, the changed one is another', () => {
    const partition = createPartition();
    const [, one, two] = partition(fitOut, []);
    const moved = { ...fitOut, bodies: fitOut.bodies.map((each) => (each.id === 'b' ? { ...each } : each)) };
    const [, oneAgain, twoAgain] = partition(moved, []);
    expect(oneAgain).toBe(one);
    expect(twoAgain).not.toBe(two);
  });
});

describe('bayFitOut', () => {
  test('a device on a closure goes with it; everything else is the same object', () => {
    const shown = bayFitOut(fitOut);
    expect(shown.bodies.find((one) => one.id === 'speaker')?.mover).toBe('hatch');
    expect(shown.bodies[0]).toBe(fitOut.bodies[0]);
    expect(bayFitOut(fitOut)).toBe(shown);
  });
});
