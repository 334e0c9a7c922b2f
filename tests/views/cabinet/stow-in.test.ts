import { describe, expect, test } from 'vitest';
import { HOME } from '../../../src/base/index.ts';
import { addGear, type Design, type Gear } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { stowIn } from '../../../src/views/editor/sheets/cabinet/stow-in.ts';
import { NOTHING_SOLVED, workedFace } from './solved-face.ts';

const { design: bare, carcass } = workedFace();

const bag: Omit<Gear, 'id'> = {
  name: 'bag',
  kind: null,
  // length × width × height: at turn 0 the width lies across and the length deep
  sizeMm: [300, 200, 100],
  massKg: 4,
  massFrom: 'measured',
  massSigmaKg: 0,
  needs: [],
  firstDue: false,
  user: '',
  note: '',
  place: null,
};

const withBag = (change: Partial<Gear>): { readonly design: Design; readonly gear: Gear } => {
  const { design, ids } = addGear(bare, [{ ...bag, ...change }]);
  const gear = design.gear.find((item) => item.id === ids[0]);
  if (!gear) throw new Error('not added');
  return { design, gear };
};

const roomOf = (across: number, deep: number, up: number): FitOut => ({
  ...NOTHING_SOLVED,
  rooms: [
    {
      opening: carcass.opening.id,
      level: 0,
      carcass: carcass.id,
      mover: null,
      pose: HOME,
      size: [across, deep, up],
      keeps: 'net',
    },
  ],
});

describe('stowIn', () => {
  test('takes the first free spot as it lies', () => {
    const { design, gear } = withBag({});
    const stowed = stowIn(design, roomOf(400, 400, 200), gear, carcass.opening.id, 5);
    expect(stowed).toEqual({
      place: { opening: carcass.opening.id, level: 0, at: [5, 5, 0], stance: 'upright', turnDeg: 0 },
      free: true,
    });
  });

  test('is turned where it only fits the other way', () => {
    const { design, gear } = withBag({});
    // 300 across × 200 deep is all there is room for
    expect(stowIn(design, roomOf(320, 220, 200), gear, carcass.opening.id, 5)?.place.turnDeg).toBe(90);
  });

  test('is laid down only where it may be', () => {
    const tall = { sizeMm: [100, 100, 300] as const };
    const low = roomOf(400, 400, 150);
    const loose = withBag(tall);
    expect(stowIn(loose.design, low, loose.gear, carcass.opening.id, 5)?.place.stance).not.toBe('upright');
    const upright = withBag({ ...tall, needs: ['upright'] });
    expect(stowIn(upright.design, low, upright.gear, carcass.opening.id, 5)?.free).toBe(false);
  });

  test('where no gear can stand there is no place', () => {
    const { design, gear } = withBag({});
    expect(stowIn(design, NOTHING_SOLVED, gear, carcass.opening.id, 5)).toBeNull();
  });
});
