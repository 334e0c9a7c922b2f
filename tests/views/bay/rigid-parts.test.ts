import { describe, expect, test } from 'vitest';
import { HOME } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import type { NodeId } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { bayFitOut } from '../../../src/views/editor/bay/bay-fit-out.ts';
import { createPartition } from '../../../src/views/editor/bay/rigid-parts.ts';
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
  test('every body belongs to its carcass, or to none, and to what carries it', () => {
    const drawer = { ...body('c', 'two'), mover: 'drawer' as NodeId };
    const parts = createPartition()({ ...fitOut, bodies: [...fitOut.bodies, drawer] }, []);
    expect(parts.map(({ carcass: id, mover, fitOut: own }) => [id, mover, own.bodies.map((one) => one.id)])).toEqual([
      ['one', null, ['a']],
      ['two', null, ['b']],
      [null, null, ['speaker']],
      ['two', 'drawer', ['c']],
    ]);
  });

  test('parts that hold the same are the same object, however often they are solved anew; others are not', () => {
    const partition = createPartition();
    const [one, two] = partition(fitOut, []);
    const anew = structuredClone(fitOut);
    const moved = { ...anew, bodies: anew.bodies.map((each) => (each.id === 'b' ? { ...each, name: 'c' } : each)) };
    const [oneAgain, twoAgain] = partition(moved, []);
    expect(oneAgain).toBe(one);
    expect(twoAgain).not.toBe(two);
  });

  test('what stands still in a carcass is made anew when the light in it changes, a drawer is not', () => {
    const partition = createPartition();
    const bodies = [...fitOut.bodies, { ...body('c', 'two'), mover: 'drawer' as NodeId }];
    const of = (from: FitOut) =>
      new Map(partition({ ...from, bodies }, []).map((parts) => [`${parts.carcass} ${parts.mover}`, parts]));
    const before = of(fitOut);
    const wider = {
      ...fitOut,
      carcasses: fitOut.carcasses.map((each) => ({ ...each, size: [200, 100, 100] as const })),
    };
    const after = of(wider);
    expect(after.get('two null')).not.toBe(before.get('two null'));
    expect(after.get('two drawer')).toBe(before.get('two drawer'));
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
