import { HOME, type Vec3 } from '../../../src/base/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { type BodyRow, body, inspectScene, node, room } from '../fixture.ts';

/** Bodies of a cabinet by themselves, without a vehicle round them. */
export const cabinetScene = (rows: readonly BodyRow[], rest: Partial<FitOut> = {}) =>
  inspectScene({ survey: null, fitout: { bodies: rows.map(body), ...rest } });

/** The side of a carcass, 18 thick from the middle line on. */
export const SIDE: BodyRow = { id: 'carcass-1/side', min: [0, 0, 0], max: [600, 18, 800] };

/** The box of a drawer beside that side, from a place across on. */
export const drawerBox = (from: number): BodyRow => ({
  id: 'box',
  mover: 'drawer-1',
  min: [20, from, 100],
  max: [500, 200, 200],
});

/** A second carcass on the other side of the middle line, up to a place across. */
export const secondCarcass = (upTo: number): BodyRow => ({
  id: 'second',
  carcass: node('carcass-2'),
  min: [0, upTo - 298, 0],
  max: [600, upTo, 800],
});

/** An item of gear from a corner of its room on, and the room 400 wide, 600 deep and 300 high at [10, 20, 30]. */
export const ROOM: Vec3 = [400, 600, 300];
export const stowedScene = (from: Vec3, size: Vec3, keeps: 'nothing' | 'bracket' = 'nothing', of = ROOM) =>
  inspectScene({
    survey: null,
    fitout: {
      rooms: [room('opening-1', of, { keeps, pose: { ...HOME, at: [10, 20, 30] } })],
      gear: [{ gear: node('gear-1'), opening: node('opening-1'), level: 0, from, size, body: 'gear-1/body' }],
    },
  });
