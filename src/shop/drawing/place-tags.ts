import type { Vec2 } from '../../base/index.ts';
import { TEXT_MM } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';

/** Something that wants its tag beside it, on paper. */
export interface Tagged {
  readonly tag: string;
  readonly at: Vec2;
  readonly half: Vec2;
}
export interface PlacedTag {
  readonly tag: string;
  /** Left end of the base line. */
  readonly at: Vec2;
}

const OFF = 0.6;

/** Up right first, as a hand would; then round. */
const SIDES: readonly Vec2[] = [
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
  [0, 1],
  [0, -1],
  [1, 0],
  [-1, 0],
];

const overlap = (a: Area, b: Area): number =>
  Math.max(0, Math.min(a.to[0], b.to[0]) - Math.max(a.from[0], b.from[0])) *
  Math.max(0, Math.min(a.to[1], b.to[1]) - Math.max(a.from[1], b.from[1]));

const boxBeside = ({ at, half, tag }: Tagged, side: Vec2, height: number): Area => {
  const width = textWidth(tag, height);
  const x = at[0] + side[0] * (half[0] + OFF) - (side[0] < 0 ? width : side[0] === 0 ? width / 2 : 0);
  const y = at[1] + side[1] * (half[1] + OFF) - (side[1] < 0 ? height : side[1] === 0 ? height / 2 : 0);
  return { from: [x, y], to: [x + width, y + height] };
};

/** Overlap of a box with everything that is there already; the fewer mm², the better the place. */
export const crowding = (box: Area, taken: readonly Area[]): number =>
  taken.reduce((sum, other) => sum + overlap(box, other), 0);

/** Puts each tag where it covers least of the holes and the tags before it; the first such place in reading order. */
export const placeTags = (tagged: readonly Tagged[], taken: readonly Area[]): readonly PlacedTag[] => {
  const busy: Area[] = [...taken];
  return tagged.map((item) => {
    let best: { box: Area; cost: number } | null = null;
    for (const side of SIDES) {
      const box = boxBeside(item, side, TEXT_MM.note);
      const cost = crowding(box, busy);
      if (best === null || cost < best.cost) best = { box, cost };
      if (cost === 0) break;
    }
    const box = best?.box ?? { from: item.at, to: item.at };
    busy.push(box);
    return { tag: item.tag, at: box.from };
  });
};
