/**
 * Advance widths as shares of the height of a capital, by groups of characters, after the drawing face (Barlow
 * Condensed Medium: capitals 0.70 em). The last entry is every other character.
 */
const GROUPS: readonly (readonly [RegExp, number])[] = [
  [/[ijlI|'.,:;!·]/u, 0.33],
  [/[ frt()[\]/"-]/u, 0.42],
  [/[mwMW@%]/u, 0.95],
  [/[×°a-z]/u, 0.6],
  [/[A-Z0-9+−=–]/u, 0.64],
];
const OTHER = 0.95;

/** How wide a line of text runs, in mm, on a machine that has the drawing face; others run a little wider. */
export const textWidth = (words: string, height: number): number => {
  let width = 0;
  for (const sign of words) width += GROUPS.find(([pattern]) => pattern.test(sign))?.[1] ?? OTHER;
  return width * height;
};

/** The text, shortened with an ellipsis where it would run wider. */
export const fitted = (words: string, height: number, width: number): string => {
  if (textWidth(words, height) <= width) return words;
  const signs = Array.from(words);
  while (signs.length > 0 && textWidth(`${signs.join('')}…`, height) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
};
