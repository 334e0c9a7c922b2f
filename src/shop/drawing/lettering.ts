import type { Vec2 } from '../../base/index.ts';
import type { LayerName, Stroke } from './drawing.ts';

/**
 * Letters as strokes that one pass of a tool makes: points of a grid 4 wide and 6 high as two figures each, strokes
 * parted by bars. Marks have no I and no O.
 */
const LETTERS: Readonly<Record<string, string>> = {
  A: '00 26 40|12 32',
  B: '00 06 36 45 44 33 03|33 42 41 30 00',
  C: '45 36 16 05 01 10 30 41',
  D: '00 06 26 44 42 20 00',
  E: '40 00 06 46|03 33',
  F: '00 06 46|03 33',
  G: '45 36 16 05 01 10 30 41 43 23',
  H: '00 06|40 46|03 43',
  I: '20 26',
  J: '46 41 30 10 01',
  K: '00 06|46 03 40',
  L: '06 00 40',
  M: '00 06 23 46 40',
  N: '00 06 40 46',
  O: '10 01 05 16 36 45 41 30 10',
  P: '00 06 36 45 44 33 03',
  Q: '10 01 05 16 36 45 41 30 10|22 40',
  R: '00 06 36 45 44 33 03|23 40',
  S: '45 36 16 05 04 13 33 42 41 30 10 01',
  T: '06 46|20 26',
  U: '06 01 10 30 41 46',
  V: '06 20 46',
  W: '06 10 23 30 46',
  X: '00 46|06 40',
  Y: '06 23 46|23 20',
  Z: '06 46 00 40',
  0: '10 01 05 16 36 45 41 30 10|01 45',
  1: '15 26 20|10 30',
  2: '05 16 36 45 44 00 40',
  3: '05 16 36 45 44 33 13|33 42 41 30 10 01',
  4: '30 36 02 42',
  5: '46 06 03 33 42 41 30 10 01',
  6: '45 36 16 05 01 10 30 41 42 33 03',
  7: '06 46 10',
  8: '13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33',
  9: '01 10 30 41 45 36 16 05 04 13 43',
};

const GRID_HIGH = 6;
const GRID_WIDE = 4;
/** From one letter to the next, in steps of the grid. */
const ADVANCE = 6;

/** How wide the words run, mm, at a height of their letters. */
export const letteringWidth = (words: string, heightMm: number): number =>
  ((Array.from(words).length * ADVANCE - (ADVANCE - GRID_WIDE)) * heightMm) / GRID_HIGH;

/** Words as open strokes with their low left corner at a place; what is no capital or figure is left blank. */
export const lettering = (layer: LayerName, words: string, [left, low]: Vec2, heightMm: number): readonly Stroke[] => {
  const step = heightMm / GRID_HIGH;
  return Array.from(words).flatMap((letter, i) =>
    (LETTERS[letter] ?? '').split('|').flatMap((path): readonly Stroke[] => {
      const corners = path
        .split(' ')
        .filter((pair) => pair.length === 2)
        .map((pair) => ({
          at: [left + (i * ADVANCE + Number(pair[0])) * step, low + Number(pair[1]) * step] as const,
          bulge: 0,
        }));
      return corners.length < 2 ? [] : [{ kind: 'polyline', layer, corners, closed: false }];
    }),
  );
};
