import type { Vec2 } from '../../base/index.ts';
import { TEXT_MM } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';

/** Something that wants its tag beside it, on paper. */
export interface Tagged {
  readonly tag: string;
  /** Points that the tag may stand beside, the best first. */
  readonly anchors: readonly Vec2[];
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

const boxBeside = ({ half, tag }: Tagged, at: Vec2, side: Vec2, height: number): Area => {
  const width = textWidth(tag, height);
  const x = at[0] + side[0] * (half[0] + OFF) - (side[0] < 0 ? width : side[0] === 0 ? width / 2 : 0);
  const y = at[1] + side[1] * (half[1] + OFF) - (side[1] < 0 ? height : side[1] === 0 ? height / 2 : 0);
  return { from: [x, y], to: [x + width, y + height] };
};

/** Overlap of a box with everything that is there already; the fewer mm², the better the place. */
export const crowding = (box: Area, taken: readonly Area[]): number =>
  taken.reduce((sum, other) => sum + overlap(box, other), 0);

/** The box beside one of the anchors that covers least; the first such one in reading order. */
const bestBox = (item: Tagged, busy: readonly Area[]): Area | null => {
  let best: { box: Area; cost: number } | null = null;
  for (const at of item.anchors)
    for (const side of SIDES) {
      const box = boxBeside(item, at, side, TEXT_MM.note);
      const cost = crowding(box, busy);
      if (cost === 0) return box;
      if (best === null || cost < best.cost) best = { box, cost };
    }
  return best?.box ?? null;
};

/** Puts each tag where it covers least of what is there already and of the tags before it. */
export const placeTags = (tagged: readonly Tagged[], taken: readonly Area[]): readonly PlacedTag[] => {
  const busy: Area[] = [...taken];
  return tagged.flatMap((item) => {
    const box = bestBox(item, busy);
    if (box === null) return [];
    busy.push(box);
    return [{ tag: item.tag, at: box.from }];
  });
};
