import type { Faceplate, NodeId } from '../../../design/index.ts';

export type DeviceRows = Faceplate['rows'];
type PlacedDevice = DeviceRows[number][number];

/** Rows without the empty ones, which a plate does not have. */
const tidy = (rows: DeviceRows): DeviceRows => rows.filter((row) => row.length > 0);

/** Adds a device at the end of a row, or as a row of its own below the others. */
export const withDevice = (rows: DeviceRows, row: number, device: PlacedDevice): DeviceRows =>
  row >= rows.length ? [...rows, [device]] : rows.map((one, i) => (i === row ? [...one, device] : one));

export const withoutDevice = (rows: DeviceRows, id: NodeId): DeviceRows =>
  tidy(rows.map((row) => row.filter((device) => device.id !== id)));

/** Another device in the place of one; what stood behind a grille does so no longer. */
export const changedDevice = (rows: DeviceRows, id: NodeId, device: string): DeviceRows =>
  rows.map((row) => row.map((one) => (one.id === id ? { id, device } : one)));

/** A speaker behind the plate, or with its own face before it. */
export const withGrille = (rows: DeviceRows, id: NodeId, on: boolean): DeviceRows =>
  rows.map((row) =>
    row.map((one) => {
      if (one.id !== id) return one;
      const { grille: _, ...bare } = one;
      return on ? { ...bare, grille: true } : bare;
    }),
  );

export type DeviceMove = 'left' | 'right' | 'up' | 'down';

const STEPS: Readonly<Record<DeviceMove, readonly [number, number]>> = {
  left: [0, -1],
  right: [0, 1],
  up: [-1, 0],
  down: [1, 0],
};

/** Moves a device by one place: along its row, or to the end of the row above or below, or to a new last row. */
export const movedDevice = (rows: DeviceRows, id: NodeId, move: DeviceMove): DeviceRows => {
  const row = rows.findIndex((one) => one.some((device) => device.id === id));
  const place = rows[row]?.findIndex((device) => device.id === id) ?? -1;
  const device = rows[row]?.[place];
  if (!device) return rows;
  const [down, right] = STEPS[move];
  if (right !== 0) {
    const other = rows[row]?.[place + right];
    if (!other) return rows;
    return rows.map((one, i) => (i === row ? one.with(place, other).with(place + right, device) : one));
  }
  const to = row + down;
  if (to < 0 || (to >= rows.length && rows[row]?.length === 1)) return rows;
  const without = rows.map((one) => one.filter((each) => each.id !== id));
  return tidy(withDevice(without, to, device));
};
