import type { Piece, Problem } from '../engine/problem.ts';
import type { Solution, SolvedPiece, SolvedSheet } from '../engine/solution.ts';
import type { Lie, Pattern, Strip } from './pricing.ts';
import type { StripProof } from './strip-patterns.ts';

interface Placed {
  readonly number: number;
  readonly turned: boolean;
  readonly length: number;
  readonly width: number;
}

const rest = (length: number, width: number): readonly SolvedPiece[] =>
  length > 0 && width > 0 ? [{ kind: 'rest', length, width }] : [];

/** The pieces of a divided rectangle, or the one piece that fills it. */
const divided = (
  by: 'rip' | 'crosscut',
  length: number,
  width: number,
  pieces: readonly SolvedPiece[],
): SolvedPiece => {
  const only = pieces[0];
  return pieces.length === 1 && only !== undefined ? only : { kind: by, length, width, pieces };
};

const partIn = ({ number, turned, length, width }: Placed, rips: boolean, across: number): SolvedPiece => {
  const part: SolvedPiece = { kind: 'part', piece: number, turned, length, width };
  return rips
    ? divided('rip', length, across, [part, ...rest(length, across - width)])
    : divided('crosscut', across, width, [part, ...rest(across - length, width)]);
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** A strip across the sheet for these pieces, as wide as the widest of them. */
const stripOf = (placed: readonly Placed[], rips: boolean, along: number): SolvedPiece => {
  const across = Math.max(...placed.map(({ length, width }) => (rips ? width : length)));
  const parts = placed.map((each) => partIn(each, rips, across));
  const left = along - sum(placed.map(({ length, width }) => (rips ? length : width)));
  return rips
    ? divided('crosscut', along, across, [...parts, ...rest(left, across)])
    : divided('rip', across, along, [...parts, ...rest(across, left)]);
};

const sheetOf = (problem: Problem, { kind, first }: Pattern, strips: readonly (readonly Placed[])[]): SolvedSheet => {
  const { length, width } = problem.sheets[kind] ?? { length: 0, width: 0 };
  const rips = first === 'rip';
  const pieces = strips.map((placed) => stripOf(placed, rips, rips ? length : width));
  const left = (rips ? width : length) - sum(pieces.map((piece) => (rips ? piece.width : piece.length)));
  const spare = rips ? rest(length, left) : rest(left, width);
  return { kind, tree: divided(first, length, width, [...pieces, ...spare]) };
};

/** Takes real pieces for the places of a strip; places beyond the demand stay empty. */
const take = (problem: Problem, { lies }: Strip, stores: readonly number[][]): readonly Placed[] =>
  lies.flatMap(({ type, turned }: Lie): readonly Placed[] => {
    const number = stores[type]?.pop();
    if (number === undefined) return [];
    const { length, width } = problem.pieces[number] as Piece;
    return [{ number, turned, length: turned ? width : length, width: turned ? length : width }];
  });

/** Sheets from patterns and how often each is used; null when they do not hold every piece. */
export const buildSheets = (problem: Problem, { used, types }: StripProof): Solution | null => {
  if (used === null) return null;
  const stores = types.map(({ numbers }) => [...numbers].reverse());
  const sheets: SolvedSheet[] = [];
  for (const { pattern, times } of used) {
    for (let i = 0; i < times; i++) {
      const strips = pattern.strips.map((strip) => take(problem, strip, stores)).filter((placed) => placed.length > 0);
      if (strips.length > 0) sheets.push(sheetOf(problem, pattern, strips));
    }
  }
  if (stores.some((store) => store.length > 0)) return null;
  return { sheets, leftOut: [], cost: sum(sheets.map(({ kind }) => problem.sheets[kind]?.price ?? 0)) };
};
