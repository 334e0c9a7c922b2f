import { encode } from 'uqr';
import type { Polygon, Vec2 } from '../../base/index.ts';
import type { Patch } from '../drawing/drawing.ts';
import { patch } from '../drawing/shapes.ts';

/** Modules that stay empty round the code (ISO/IEC 18004). */
const QUIET = 4;

/** A square code as one filled area in a square, its quiet zone inside. Error correction M or, where there is room, more. */
export const qrPatch = (words: string, [x, y]: Vec2, side: number): Patch => {
  const { data, size } = encode(words, { ecc: 'M', border: QUIET, boostEcc: true });
  const module = side / size;
  const top = y + side;
  const rings = data.flatMap((row, i): readonly Polygon[] => {
    const runs: Polygon[] = [];
    for (let from = 0; from < row.length; from++) {
      if (row[from] !== true) continue;
      let to = from;
      while (row[to] === true) to++;
      const [left, right] = [x + from * module, x + to * module];
      const [high, low] = [top - i * module, top - (i + 1) * module];
      runs.push([
        [left, low],
        [right, low],
        [right, high],
        [left, high],
      ]);
      from = to;
    }
    return runs;
  });
  return patch('text', rings);
};
