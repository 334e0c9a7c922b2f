import { CROSSCUT, type CutNode, REST, RIPPED } from './cut-node.ts';
import { NO_LIMITS, type Piece, type Problem, type SawLimits } from './problem.ts';

/** True when a cut of this kind through the rest belongs to the first round of its sheet. */
const isFirstRound = (rest: CutNode, kind: number): boolean =>
  rest.parent === null || (rest.parent.parent === null && rest.parent.kind === kind);

/**
 * Width of the strip to cut off a rest for a piece of this size: at least the narrowest strip in the first round. More
 * than the rest has means: no such strip.
 */
export const stripFor = (limits: SawLimits | null, rest: CutNode, kind: number, size: number): number =>
  limits !== null && size < limits.strip && isFirstRound(rest, kind) ? limits.strip : size;

const goesFirst = ({ first }: SawLimits, kind: number): boolean =>
  first === null || (first === 'crosscut') === (kind === CROSSCUT);

const isFenced = (limits: SawLimits, rest: CutNode, size: number): boolean => {
  if (size <= limits.rip || rest.parent === null || rest.parent.kind !== RIPPED) return true;
  for (let child = rest.parent.first; child !== null; child = child.next) {
    if (child !== rest && child.kind !== REST && child.width > limits.rip) return false;
  }
  return true;
};

/**
 * Whether the saw's limits, and the cuts inside a matched run, let the piece stand in the rest with its two cuts in
 * this order. Follows the steps of CutForest.insert.
 */
export const isAllowed = (
  problem: Problem,
  piece: Piece,
  rest: CutNode,
  turned: boolean,
  crosscutFirst: boolean,
): boolean => {
  const limits = problem.limits ?? NO_LIMITS;
  const { stages } = problem;
  const along = turned ? piece.width : piece.length;
  const high = turned ? piece.length : piece.width;
  let length = rest.length;
  let width = rest.width;
  let level = rest.level;
  let parentKind = rest.parent === null ? 0 : rest.parent.kind;
  let widened = false;
  let divided = false;
  // Size of the strip that the parent of the rest gives up: all of the rest, unless it is cut off first.
  let taken = parentKind === CROSSCUT ? length : width;
  for (let step = 0; step < 2; step++) {
    const kind = crosscutFirst === (step === 0) ? CROSSCUT : RIPPED;
    const size = kind === CROSSCUT ? along : high;
    const room = kind === CROSSCUT ? length : width;
    if (size === room) continue;
    const strip = divided ? size : stripFor(limits, rest, kind, size);
    if (strip > room) return false;
    if (!divided && kind === parentKind) taken = strip;
    if (strip > size) widened = true;
    if (strip < room) {
      if (parentKind !== kind) {
        if ((kind === CROSSCUT ? width : length) > limits.cut) return false;
        if (!divided && rest.parent === null && !goesFirst(limits, kind)) return false;
        level++;
      }
      parentKind = kind;
      divided = true;
    }
    if (kind === CROSSCUT) length = strip;
    else width = strip;
  }
  if (!isFenced(limits, rest, taken)) return false;
  if (rest.parent !== null && rest.parent.parent === null && taken < limits.strip) return false;
  if (widened) {
    const kind = along < length ? CROSSCUT : RIPPED;
    if (parentKind === kind || (kind === CROSSCUT ? width : length) > limits.cut) return false;
    level++;
    parentKind = kind;
  }
  if (level > stages + 1) return false;
  if (!piece.matched || level < stages) return true;
  // The cuts inside a run need a round of their own unless they continue those of the parent, as they can when the run
  // follows the parent's cuts, or is only trimmed to its width inside such a parent.
  const follows = parentKind === (turned ? RIPPED : CROSSCUT);
  return level === stages ? follows : !follows;
};

/** True when this problem needs the guard at all. */
export const needsGuard = (problem: Problem, piece: Piece): boolean => problem.limits !== null || piece.matched;
