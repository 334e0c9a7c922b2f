import { describe, expect, it } from 'vitest';
import { HOME, type Vec3 } from '../../../../../src/base/index.ts';
import {
  addGear,
  type Design,
  emptyDesign,
  type Gear,
  type NodeId,
  placeGear,
} from '../../../../../src/design/index.ts';
import type { GearRoom } from '../../../../../src/fitout/index.ts';
import { placeIn } from '../../../../../src/views/editor/sheets/gear/stow.ts';

const room: GearRoom = {
  opening: 'opening-1' as NodeId,
  level: 0,
  carcass: 'carcass-1' as NodeId,
  mover: null,
  pose: HOME,
  size: [500, 600, 300],
  keeps: 'nothing',
};

const piece = (sizeMm: Vec3): Omit<Gear, 'id'> => ({
  name: 'piece',
  kind: null,
  sizeMm,
  massKg: 1,
  massFrom: 'measured',
  massSigmaKg: 0,
  needs: [],
  firstDue: false,
  user: '',
  note: '',
  place: null,
});

const GAP = 10;

/** Places the pieces one after another; upright, a piece is width across and length deep. */
const stowed = (sizes: readonly Vec3[]): readonly (readonly number[] | undefined)[] => {
  const filled = addGear(emptyDesign('any', 'mm'), sizes.map(piece));
  const design = filled.ids.reduce<Design>((now, id) => {
    const gear = now.gear.find((one) => one.id === id);
    return gear ? placeGear(now, id, placeIn(now, room, gear, GAP)) : now;
  }, filled.design);
  return design.gear.map((gear) => gear.place?.at);
};

describe('stowing gear', () => {
  it('begins at the face on the left, goes on to the right, then behind', () => {
    // 200 wide each, 10 apart: 10 and 10 + 200 + 10 = 220 fit into 500; the third, at 430, would end at 630 and goes
    // behind, at 10 + 250 + 10 = 270.
    const size: Vec3 = [250, 200, 100];
    expect(stowed([size, size, size])).toEqual([
      [10, 10, 0],
      [220, 10, 0],
      [10, 270, 0],
    ]);
  });

  it('puts what fits nowhere into the near low left corner, for the inspection to say', () => {
    expect(
      stowed([
        [600, 500, 100],
        [300, 200, 100],
      ]),
    ).toEqual([
      [0, 0, 0],
      [0, 0, 0],
    ]);
  });
});
