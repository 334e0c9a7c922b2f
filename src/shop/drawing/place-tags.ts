import type { Vec2 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import { TEXT_MM } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';
import { writtenAreas } from './written-areas.ts';

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
  /** From what is tagged to a tag that has no room close by, or null. */
  readonly leader: readonly [Vec2, Vec2] | null;
}

/** From what is tagged to its tag: close by, else farther off on a leader. */
const OFF = 0.6;
const FAR_OFF = [3, 5.5] as const;

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

const boxBeside = ({ half, tag }: Tagged, at: Vec2, side: Vec2, height: number, off: number): Area => {
  const width = textWidth(tag, height);
  const x = at[0] + side[0] * (half[0] + off) - (side[0] < 0 ? width : side[0] === 0 ? width / 2 : 0);
  const y = at[1] + side[1] * (half[1] + off) - (side[1] < 0 ? height : side[1] === 0 ? height / 2 : 0);
  return { from: [x, y], to: [x + width, y + height] };
};

/** Overlap of a box with everything that is there already; the fewer mm², the better the place. */
export const crowding = (box: Area, taken: readonly Area[]): number =>
  taken.reduce((sum, other) => sum + overlap(box, other), 0);

/** Words on words cannot be read; words on a line can. */
const WORDS_WEIGH = 20;

interface Place {
  readonly box: Area;
  readonly leader: PlacedTag['leader'];
  readonly cost: number;
}

/** The place beside one of the anchors, so far off, that covers least; the first such one in reading order. */
const bestPlace = (item: Tagged, busy: readonly Area[], written: readonly Area[], off: number): Place | null => {
  let best: Place | null = null;
  for (const at of item.anchors)
    for (const side of SIDES) {
      const box = boxBeside(item, at, side, TEXT_MM.note, off);
      const cost = crowding(box, busy) + WORDS_WEIGH * crowding(box, written);
      if (best !== null && cost >= best.cost) continue;
      const end: Vec2 = [
        Math.min(box.to[0], Math.max(box.from[0], at[0])),
        Math.min(box.to[1], Math.max(box.from[1], at[1])),
      ];
      best = { box, cost, leader: off === OFF ? null : [at, end] };
      if (cost === 0) return best;
    }
  return best;
};

/** Close by where no words stand in the way, else as near as none do. */
const chosenPlace = (item: Tagged, busy: readonly Area[], written: readonly Area[]): Place | null => {
  const near = bestPlace(item, busy, written, OFF);
  if (near === null || crowding(near.box, written) === 0) return near;
  const far = FAR_OFF.flatMap((off) => bestPlace(item, busy, written, off) ?? []);
  return far.find(({ box }) => crowding(box, written) === 0) ?? near;
};

/** The first of the shapes whose words stand on no others, else the one that covers least of them. */
export const offWords = <Each extends Shape>(shapes: readonly [Each, ...Each[]], written: readonly Area[]): Each => {
  const cost = (shape: Shape): number => writtenAreas([shape]).reduce((sum, area) => sum + crowding(area, written), 0);
  return shapes.reduce((best, shape) => (cost(shape) < cost(best) ? shape : best));
};

/**
 * Puts each tag where it covers least of what is there already, and least of all words and the tags before it. Tags with
 * one place to stand beside choose first.
 */
export const placeTags = (
  tagged: readonly Tagged[],
  taken: readonly Area[],
  words: readonly Area[] = [],
): readonly PlacedTag[] => {
  const written: Area[] = [...words];
  const choosing = tagged.toSorted((a, b) => Number(a.anchors.length > 1) - Number(b.anchors.length > 1));
  return choosing.flatMap((item) => {
    const place = chosenPlace(item, taken, written);
    if (place === null) return [];
    written.push(place.box);
    return [{ tag: item.tag, at: place.box.from, leader: place.leader }];
  });
};
