import type { Vec2, Vec3 } from '../../../../base/index.ts';
import type { Reading } from '../../../../design/index.ts';
import { FROM_ABOVE, FROM_REAR, FROM_SIDE, type Plane } from './outlines.ts';
import type { ReadingRow } from './readings-rows.ts';

/** One drawing of readings: the floor from above, one depth from the rear, or the side. */
export interface ReadingView {
  readonly key: string;
  readonly plane: Plane;
  /** The depth of a view from the rear; null otherwise. */
  readonly xMm: number | null;
  readonly rows: readonly ReadingRow[];
}

export interface Segment {
  readonly from: Vec3;
  readonly to: Vec3;
}

/** Where a reading is drawn: a width, depth, height or offset along its own axis, beside the mark it ends at. */
export const segmentOf = ({ kind, from, to }: Reading, points: ReadonlyMap<string, Vec3>): Segment | null => {
  const a = points.get(from);
  if (!a) return null;
  if (kind === 'offset') return { from: [a[0], 0, a[2]], to: a };
  const b = to === null ? undefined : points.get(to);
  if (!b) return null;
  if (kind === 'height') return { from: [b[0], b[1], a[2]], to: b };
  if (kind === 'along') return { from: [a[0], b[1], b[2]], to: b };
  return { from: a, to: b };
};

/** Shares of the whole room under which marks count as lying at one depth, or on the floor. */
const ONE_DEPTH = 0.02;
const ON_FLOOR = 0.1;

const spanOf = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);

/** The views of a survey, each with the readings that show in it; a reading may show in two. */
export const readingViews = (
  rows: readonly ReadingRow[],
  points: ReadonlyMap<string, Vec3>,
): readonly ReadingView[] => {
  const all = [...points.values()];
  const deep = spanOf(all.map((point) => point[0])) * ONE_DEPTH;
  const low = Math.min(0, ...all.map((point) => point[2])) + spanOf(all.map((point) => point[2])) * ON_FLOOR;
  const drawn = rows.flatMap((row) => {
    const segment = segmentOf(row.reading, points);
    return segment ? [{ row, segment }] : [];
  });
  const onFloor = drawn.filter(({ segment: { from, to } }) => Math.max(from[2], to[2]) <= low);
  const across = drawn.filter(({ segment: { from, to } }) => Math.abs(from[0] - to[0]) <= deep);
  const depths: number[] = [];
  for (const { segment } of across.toSorted((a, b) => a.segment.to[0] - b.segment.to[0])) {
    const last = depths.at(-1);
    if (last === undefined || segment.to[0] - last > deep) depths.push(segment.to[0]);
  }
  const taken = new Set([...onFloor, ...across].map(({ row }) => row));
  const rest = drawn.filter(({ row }) => !taken.has(row));
  const rowsOf = (list: typeof drawn): readonly ReadingRow[] => list.map(({ row }) => row);
  return [
    { key: 'plan', plane: FROM_ABOVE, xMm: null, rows: rowsOf(onFloor) },
    ...depths.map((xMm, i) => ({
      key: `depth-${i + 1}`,
      plane: FROM_REAR,
      xMm,
      rows: rowsOf(across.filter(({ segment }) => segment.to[0] >= xMm && segment.to[0] - xMm <= deep)),
    })),
    { key: 'side', plane: FROM_SIDE, xMm: null, rows: rowsOf(rest) },
  ].filter((view) => view.rows.length > 0);
};

export interface Label {
  readonly id: string;
  readonly text: string;
  readonly from: Vec2;
  readonly to: Vec2;
}

export interface PlacedLabel extends Label {
  readonly at: Vec2;
}

/** Shares of a line at which its figure may stand, the best first: off the middle, where diagonals cross. */
const SPOTS = [0.6, 0.35, 0.75, 0.22, 0.5] as const;

/**
 * Figures on their lines so that none lies on another: each in turn takes the first free spot of its line, and one
 * that finds none is left off. `text` is the height of a line of lettering, `wide` the width of a letter, in mm.
 */
export const placeLabels = (labels: readonly Label[], text: number, wide: number): readonly PlacedLabel[] => {
  const placed: PlacedLabel[] = [];
  for (const label of labels) {
    const free = SPOTS.map(
      (share): Vec2 => [
        label.from[0] + (label.to[0] - label.from[0]) * share,
        label.from[1] + (label.to[1] - label.from[1]) * share,
      ],
    ).find((at) =>
      placed.every(
        (other) =>
          Math.abs(other.at[0] - at[0]) >= ((other.text.length + label.text.length) * wide) / 2 ||
          Math.abs(other.at[1] - at[1]) >= text,
      ),
    );
    if (free) placed.push({ ...label, at: free });
  }
  return placed;
};
