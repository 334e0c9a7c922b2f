import { textWidth } from '../../../src/shop/drawing/text-width.ts';
import type { PageWords, Word } from './poppler.ts';

/** The face: capitals 0.729 em, 0.928 em above the base line and 0.236 em below it in a line (DejaVu Sans Condensed). */
const LINE_EM = 0.928 + 0.236;
const CAPITAL_EM = 0.729;
/** Of a line's height, what lies over its capitals and what lies under its base line. */
const OVER = (0.928 - CAPITAL_EM) / LINE_EM;
const UNDER = 0.236 / LINE_EM;
/** Points: boxes that meet by less only touch. */
const TOUCH_PT = 0.5;

interface Ink {
  readonly words: string;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** How far a run of that length is from what the words take in a line of that height, as a factor of 1 or more. */
const misfit = (words: string, lineHigh: number, long: number): number => {
  const share = long / textWidth(words, (lineHigh * CAPITAL_EM) / LINE_EM);
  return Math.max(share, 1 / share);
};

/** The box of a word's capitals; words turned upright are told by their proportions. */
const inkOf = ({ words, x0, y0, x1, y1 }: Word): Ink => {
  const [wide, high] = [x1 - x0, y1 - y0];
  return misfit(words, high, wide) <= misfit(words, wide, high)
    ? { words, from: [x0, y0 + high * OVER], to: [x1, y1 - high * UNDER] }
    : { words, from: [x0 + wide * OVER, y0], to: [x1 - wide * UNDER, y1] };
};

const meets = (a: Ink, b: Ink): boolean =>
  [0, 1].every(
    (axis) => Math.min(a.to[axis] ?? 0, b.to[axis] ?? 0) - Math.max(a.from[axis] ?? 0, b.from[axis] ?? 0) > TOUCH_PT,
  );

/** Words of a page that run over its edge, and pairs of words that stand on each other: none on a good page. */
export const textFaults = ({ width, height, words }: PageWords): readonly string[] => {
  const inks = words.map(inkOf).toSorted((a, b) => a.from[0] - b.from[0]);
  const faults = inks.flatMap(({ words: each, from, to }) =>
    from[0] < 0 || from[1] < 0 || to[0] > width || to[1] > height ? [`"${each}" runs over the edge`] : [],
  );
  inks.forEach((ink, i) => {
    for (let k = i + 1; k < inks.length; k++) {
      const other = inks[k];
      if (!other || other.from[0] >= ink.to[0]) break;
      if (meets(ink, other))
        faults.push(`"${ink.words}" stands on "${other.words}" at ${ink.from.map(Math.round).join(', ')} pt`);
    }
  });
  return faults;
};
