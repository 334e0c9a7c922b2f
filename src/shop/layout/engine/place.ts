import type { CutForest } from './cut-forest.ts';
import { CROSSCUT, type CutNode, RIPPED } from './cut-node.ts';
import { isAllowed, needsGuard } from './guard.ts';
import type { Piece } from './problem.ts';
import type { SearchRandom } from './search-random.ts';

/** The best place found for a piece; one object, used again for every search. */
export class Place {
  loss = Number.POSITIVE_INFINITY;
  rest: CutNode | null = null;
  turned = false;
  crosscutFirst = false;
}

/**
 * Hot: looks at every usable rest, both ways to turn the piece and both orders of its two cuts, and keeps the place
 * that loses the least worth. With chance `blink` a better place is overlooked. The worth of what would remain is
 * written out as in CutForest.worth: a call for each would cost a third of the speed.
 */
export const findPlace = (forest: CutForest, piece: Piece, blink: number, random: SearchRandom, best: Place): void => {
  best.loss = Number.POSITIVE_INFINITY;
  best.rest = null;
  const { problem, rests, restLengths, restWidths, restValues, leastLength, leastWidth, valueScale } = forest;
  const stages = problem.stages;
  const guarded = needsGuard(problem, piece);
  const count = forest.restCount;
  for (let way = 0; way < 2; way++) {
    if (way === 0 ? !piece.straight : !piece.turned) continue;
    const along = way === 0 ? piece.length : piece.width;
    const across = way === 0 ? piece.width : piece.length;
    for (let i = 0; i < count; i++) {
      const length = restLengths[i] as number;
      const width = restWidths[i] as number;
      if (along > length || across > width) continue;
      const node = rests[i] as CutNode;
      const value = restValues[i] as number;
      const dl = length - along;
      const dw = width - across;
      const kind = node.parent === null ? 0 : node.parent.kind;
      const level = node.level;

      // Crosscut first: dl × width remains of the rest, along × dw of the strip.
      const c1 = dl === 0 || kind === CROSSCUT ? level : level + 1;
      const c2 = dw === 0 ? c1 : dl === 0 && kind === RIPPED ? level : c1 + 1;
      if (c2 <= stages + 1) {
        let loss = value;
        if (dl >= leastLength && c1 <= stages) {
          const share = dl * width * valueScale;
          loss -= share * Math.sqrt(share);
        }
        if (dw >= leastWidth && c2 <= stages) {
          const share = along * dw * valueScale;
          loss -= share * Math.sqrt(share);
        }
        if (
          loss < best.loss &&
          random.next() >= blink &&
          (!guarded || isAllowed(problem, piece, node, way === 1, true))
        ) {
          best.loss = loss;
          best.rest = node;
          best.turned = way === 1;
          best.crosscutFirst = true;
        }
      }
      if (dl === 0 || dw === 0) continue;

      // Rip first: length × dw remains of the rest, dl × across of the strip.
      const r1 = kind === RIPPED ? level : level + 1;
      const r2 = r1 + 1;
      if (r2 > stages + 1) continue;
      let loss = value;
      if (dw >= leastWidth && r1 <= stages) {
        const share = dw * length * valueScale;
        loss -= share * Math.sqrt(share);
      }
      if (dl >= leastLength && r2 <= stages) {
        const share = dl * across * valueScale;
        loss -= share * Math.sqrt(share);
      }
      if (
        loss < best.loss &&
        random.next() >= blink &&
        (!guarded || isAllowed(problem, piece, node, way === 1, false))
      ) {
        best.loss = loss;
        best.rest = node;
        best.turned = way === 1;
        best.crosscutFirst = false;
      }
    }
  }
};
