import type { Vec2 } from '../../base/index.ts';
import type { Stroke } from '../drawing/drawing.ts';
import { lettering, letteringWidth } from '../drawing/lettering.ts';

/** The layer of words that no tool follows; its name says it to whoever sees nothing but a list of layers. */
export const HELD_LAYER = 'HELD-DO-NOT-CUT';

const LETTER_MM = { most: 40, ofWidth: 0.9, ofHeight: 0.5 } as const;

/** Words across the middle of a rectangle, as large as it takes them. */
export const heldStrokes = (words: string, from: Vec2, to: Vec2): readonly Stroke[] => {
  const [wide, high] = [to[0] - from[0], to[1] - from[1]];
  const height = Math.min(
    LETTER_MM.most,
    high * LETTER_MM.ofHeight,
    (wide * LETTER_MM.ofWidth) / letteringWidth(words, 1),
  );
  const left = from[0] + (wide - letteringWidth(words, height)) / 2;
  return lettering('engrave', words, [left, from[1] + (high - height) / 2], height);
};
