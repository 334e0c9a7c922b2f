import type { CutForest } from './cut-forest.ts';
import { CROSSCUT, type CutNode, RIPPED } from './cut-node.ts';
import { isAllowed, needsGuard } from './guard.ts';
import { type Piece, UNLIMITED_STAGES } from './problem.ts';
import type { SearchRandom } from './search-random.ts';
import { ROOM_BITS } from './side-ranks.ts';

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
 * written out as in RestList.worthOf: a call for each would cost a third of the speed.
 */
export const findPlace = (
  forest: CutForest,
  number: number,
  blink: number,
  random: SearchRandom,
  best: Place,
): void => {
  best.loss = Number.POSITIVE_INFINITY;
  best.rest = null;
  const { problem } = forest;
  const { nodes, lengths, widths, worths, leastLength, leastWidth, worthScale } = forest.rests;
  const stages = problem.stages;
  const piece = problem.pieces[number] as Piece;
  if (stages >= UNLIMITED_STAGES && !needsGuard(problem, piece)) {
    findFreePlace(forest, number, blink, random, best);
    return;
  }
  const guarded = needsGuard(problem, piece);
  const count = forest.rests.count;
  for (let way = 0; way < 2; way++) {
    if (way === 0 ? !piece.straight : !piece.turned) continue;
    const along = way === 0 ? piece.length : piece.width;
    const across = way === 0 ? piece.width : piece.length;
    for (let i = 0; i < count; i++) {
      const length = lengths[i] as number;
      const width = widths[i] as number;
      if (along > length || across > width) continue;
      const node = nodes[i] as CutNode;
      const value = worths[i] as number;
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
          const share = dl * width * worthScale;
          loss -= share * Math.sqrt(share);
        }
        if (dw >= leastWidth && c2 <= stages) {
          const share = along * dw * worthScale;
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
        const share = dw * length * worthScale;
        loss -= share * Math.sqrt(share);
      }
      if (dl >= leastLength && r2 <= stages) {
        const share = dl * across * worthScale;
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

/** The same where neither stages nor limits of the saw restrict the cuts: nothing but the sizes of the rests is read. */
const findFreePlace = (forest: CutForest, number: number, blink: number, random: SearchRandom, best: Place): void => {
  const { lengths, widths, worths, leastLength, leastWidth, worthScale, sides, count } = forest.rests;
  const piece = forest.problem.pieces[number] as Piece;
  const straight = sides.straight[number] as number;
  const turned = sides.turned[number] as number;
  const either = sides.either[number] as number;
  const need = either >= 0 ? either : piece.straight ? straight : turned;
  const room = either >= 0 ? forest.rests.sortedCodes : forest.rests.codes;
  let leastLoss = Number.POSITIVE_INFINITY;
  let slot = -1;
  for (let i = 0; i < count; i++) {
    if ((((room[i] as number) - need) & ROOM_BITS) !== ROOM_BITS) continue;
    const code = forest.rests.codes[i] as number;
    const fitsStraight = ((code - straight) & ROOM_BITS) === ROOM_BITS;
    const fitsTurned = ((code - turned) & ROOM_BITS) === ROOM_BITS;
    const length = lengths[i] as number;
    const width = widths[i] as number;
    const value = worths[i] as number;
    for (let way = fitsStraight ? 0 : 1; way < (fitsTurned ? 2 : 1); way++) {
      const along = way === 0 ? piece.length : piece.width;
      const across = way === 0 ? piece.width : piece.length;
      const dl = length - along;
      const dw = width - across;
      // Crosscut first: dl × width remains of the rest, along × dw of the strip.
      let loss = value;
      if (dl >= leastLength) {
        const part = dl * width * worthScale;
        loss -= part * Math.sqrt(part);
      }
      if (dw >= leastWidth) {
        const part = along * dw * worthScale;
        loss -= part * Math.sqrt(part);
      }
      if (loss < leastLoss && random.next() >= blink) {
        leastLoss = loss;
        slot = i;
        best.turned = way === 1;
        best.crosscutFirst = true;
      }
      if (dl === 0 || dw === 0) continue;
      // Rip first: length × dw remains of the rest, dl × across of the strip.
      loss = value;
      if (dw >= leastWidth) {
        const part = dw * length * worthScale;
        loss -= part * Math.sqrt(part);
      }
      if (dl >= leastLength) {
        const part = dl * across * worthScale;
        loss -= part * Math.sqrt(part);
      }
      if (loss < leastLoss && random.next() >= blink) {
        leastLoss = loss;
        slot = i;
        best.turned = way === 1;
        best.crosscutFirst = false;
      }
    }
  }
  if (slot < 0) return;
  best.loss = leastLoss;
  best.rest = forest.rests.nodes[slot] as CutNode;
};
