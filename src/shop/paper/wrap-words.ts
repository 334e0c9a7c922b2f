import { textWidth } from '../drawing/text-width.ts';

/** A word cut into pieces that fit: long names without blanks occur in catalogs. */
const broken = (word: string, height: number, width: number): readonly string[] => {
  const pieces: string[] = [];
  let piece = '';
  for (const sign of word) {
    if (piece !== '' && textWidth(piece + sign, height) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += sign;
  }
  return [...pieces, piece];
};

/** The words in lines that run no wider than the width; line breaks in the words are kept. At least one line. */
export const wrapWords = (words: string, height: number, width: number): readonly string[] =>
  words.split('\n').flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    for (const word of paragraph.split(/\s+/u).filter((each) => each !== '')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (textWidth(longer, height) <= width) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const pieces = broken(word, height, width);
      lines.push(...pieces.slice(0, -1));
      line = pieces.at(-1) ?? '';
    }
    return [...lines, line];
  });
