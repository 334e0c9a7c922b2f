import { ROUNDING_MM, type Vec3 } from '../../base/index.ts';

/** A box in a room, from its low corner. */
export interface Cell {
  readonly from: Vec3;
  readonly size: Vec3;
}

const AXES = [0, 1, 2] as const;

const overlaps = (a: Cell, b: Cell, axis: 0 | 1 | 2): boolean =>
  a.from[axis] < b.from[axis] + b.size[axis] - ROUNDING_MM && b.from[axis] < a.from[axis] + a.size[axis] - ROUNDING_MM;

/** Straight above or below each other. */
const stacked = (a: Cell, b: Cell): boolean => a !== b && overlaps(a, b, 0) && overlaps(a, b, 1);

/** Stands on the floor of its room with nothing on top of it: what stands in a pile is not taken out of it. */
export const standsAlone = (cell: Cell, all: readonly Cell[]): boolean =>
  cell.from[2] <= ROUNDING_MM && !all.some((other) => stacked(cell, other));

const withAxis = (v: Vec3, axis: 0 | 1 | 2, value: number): Vec3 => [
  axis === 0 ? value : v[0],
  axis === 1 ? value : v[1],
  axis === 2 ? value : v[2],
];

/** The cell made as long along one axis as the room and its neighbours let it. */
const grown = (cell: Cell, others: readonly Cell[], room: Vec3, axis: 0 | 1 | 2): Cell => {
  const beside = others.filter((other) => AXES.every((own) => own === axis || overlaps(cell, other, own)));
  const [start, end] = [cell.from[axis], cell.from[axis] + cell.size[axis]];
  const low = Math.max(
    0,
    ...beside.flatMap(({ from, size }) =>
      from[axis] + size[axis] <= start + ROUNDING_MM ? [from[axis] + size[axis]] : [],
    ),
  );
  const high = Math.min(
    room[axis],
    ...beside.flatMap(({ from }) => (from[axis] >= end - ROUNDING_MM ? [from[axis]] : [])),
  );
  // What sticks out of its room does not shrink to it.
  const [least, most] = [Math.min(low, start), Math.max(high, end)];
  return { from: withAxis(cell.from, axis, least), size: withAxis(cell.size, axis, most - least) };
};

/**
 * The room shared out among the boxes that stand in it: each in turn takes what is free across, then deep, then up.
 * Boxes that did not overlap have cells that do not.
 */
export const shareRoom = (room: Vec3, boxes: readonly Cell[]): readonly Cell[] =>
  boxes.reduce<readonly Cell[]>(
    (cells, _, i) =>
      cells.map((cell, at) =>
        at === i
          ? AXES.reduce<Cell>(
              (own, axis) =>
                grown(
                  own,
                  cells.filter((_other, place) => place !== i),
                  room,
                  axis,
                ),
              cell,
            )
          : cell,
      ),
    boxes,
  );
