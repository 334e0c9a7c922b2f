import { SETTLED_SHARE } from '../../../base/index.ts';
import type { Problem } from '../engine/problem.ts';
import type { PooledSheet } from '../engine/sheet-pool.ts';
import type { Solution, SolvedPiece, SolvedSheet } from '../engine/solution.ts';
import type { LinearSolver, Master, Row } from './solver.ts';
import { type PieceType, typesOf } from './types-of.ts';

/** Sheets with which the linear programme begins, and how many it takes in at a time after that. */
const FIRST_COLUMNS = 3000;
const MORE_COLUMNS = 1500;
/** Rounds of taking in: the linear optimum hardly falls after that. */
const MOST_ROUNDS = 40;
/** Sheets from which whole numbers are chosen, and nodes of that search. */
const MOST_WHOLE_COLUMNS = 8000;
const WHOLE_NODES = 2000;
/** Of the time, for the linear optimum: without some left for whole numbers it is of no use. */
const MOST_LINEAR_SHARE = 0.6;

interface Column {
  readonly sheet: PooledSheet;
  readonly rows: readonly number[];
  readonly counts: readonly number[];
  readonly price: number;
}

const columnOf = (sheet: PooledSheet, typeAt: readonly number[], stockAt: readonly number[], price: number): Column => {
  const counts = new Map<number, number>();
  for (const piece of sheet.pieces) {
    const row = typeAt[piece] as number;
    counts.set(row, (counts.get(row) ?? 0) + 1);
  }
  const stock = stockAt[sheet.kind] as number;
  if (stock >= 0) counts.set(stock, 1);
  return { sheet, rows: [...counts.keys()], counts: [...counts.values()], price };
};

const reducedCost = ({ rows, counts, price }: Column, duals: Float64Array): number =>
  rows.reduce((cost, row, i) => cost - (duals[row] as number) * (counts[i] as number), price);

const addTo = (master: Master, { price, rows, counts }: Column): void => master.addColumn(price, rows, counts);

/** The linear optimum over all columns, taken in as they are asked for; null where they cannot hold all pieces. */
const linearOptimum = (
  master: Master,
  columns: readonly Column[],
  noise: number,
): { readonly value: number; readonly duals: Float64Array } | null => {
  const waiting = new Set(columns.slice(FIRST_COLUMNS));
  for (const column of columns.slice(0, FIRST_COLUMNS)) addTo(master, column);
  let optimum = master.solve();
  for (let round = 0; optimum !== null && round < MOST_ROUNDS; round++) {
    const { duals } = optimum;
    const asked = [...waiting]
      .map((column) => ({ column, cost: reducedCost(column, duals) }))
      .filter(({ cost }) => cost < -noise)
      .sort((a, b) => a.cost - b.cost)
      .slice(0, MORE_COLUMNS);
    if (asked.length === 0) break;
    for (const { column } of asked) {
      waiting.delete(column);
      addTo(master, column);
    }
    optimum = master.solve();
  }
  return optimum;
};

/** The pieces of a divided rectangle, its rests as one. */
const withOneRest = (tree: Extract<SolvedPiece, { readonly pieces: unknown }>): SolvedPiece => {
  const { length, width } = tree;
  const kept = tree.pieces.filter(({ kind }) => kind !== 'rest');
  if (kept.length === 0) return { kind: 'rest', length, width };
  const rests = tree.pieces.filter(({ kind }) => kind === 'rest');
  if (rests.length === 0) return tree;
  const size = (of: 'length' | 'width'): number => rests.reduce((sum, rest) => sum + rest[of], 0);
  const rest: SolvedPiece =
    tree.kind === 'crosscut'
      ? { kind: 'rest', length: size('length'), width }
      : { kind: 'rest', length, width: size('width') };
  return { ...tree, pieces: [...kept, rest] };
};

/** Gives the places of a sheet to real pieces of their types; a place that nobody needs any more is a rest. */
const filled = (tree: SolvedPiece, typeAt: readonly number[], stores: readonly number[][]): SolvedPiece => {
  if (tree.kind === 'rest') return tree;
  if (tree.kind !== 'part')
    return withOneRest({ ...tree, pieces: tree.pieces.map((piece) => filled(piece, typeAt, stores)) });
  const piece = stores[typeAt[tree.piece] as number]?.pop();
  return piece === undefined ? { kind: 'rest', length: tree.length, width: tree.width } : { ...tree, piece };
};

const holdsPart = (tree: SolvedPiece): boolean =>
  tree.kind === 'part' || (tree.kind !== 'rest' && tree.pieces.some(holdsPart));

const solutionOf = (
  problem: Problem,
  types: readonly PieceType[],
  typeAt: readonly number[],
  chosen: readonly PooledSheet[],
): Solution => {
  const stores = types.map(({ numbers }) => [...numbers].reverse());
  const sheets: SolvedSheet[] = [];
  for (const { kind, tree } of chosen) {
    const own = filled(tree, typeAt, stores);
    if (holdsPart(own)) sheets.push({ kind, tree: own });
  }
  return {
    sheets,
    leftOut: stores.flat(),
    cost: sheets.reduce((sum, { kind }) => sum + (problem.sheets[kind]?.price ?? 0), 0),
  };
};

/**
 * Chooses among these sheets some that hold every piece, for at most the price; null where none is found. A piece that
 * two chosen sheets hold lies in one of them, its other place is a rest. `seconds`: of the solver's clock,
 * the linear optimum included.
 */
export const coverBySheets = (
  problem: Problem,
  pool: readonly PooledSheet[],
  price: number,
  solver: LinearSolver,
  seconds: number,
): Solution | null => {
  const types = typesOf(problem);
  const typeAt: number[] = [];
  types.forEach(({ numbers }, row) => {
    for (const number of numbers) typeAt[number] = row;
  });
  const rows: Row[] = types.map(({ numbers }) => ({ least: numbers.length, most: Number.POSITIVE_INFINITY }));
  const stockAt = problem.sheets.map(({ count }) =>
    Number.isFinite(count) ? rows.push({ least: Number.NEGATIVE_INFINITY, most: count }) - 1 : -1,
  );
  const columns = pool
    .map((sheet) => columnOf(sheet, typeAt, stockAt, problem.sheets[sheet.kind]?.price ?? 0))
    .sort((a, b) => b.sheet.yield - a.sheet.yield);
  if (columns.length === 0) return null;

  // What the solver leaves open of a price.
  const noise = SETTLED_SHARE * Math.max(...problem.sheets.map((sheet) => sheet.price));
  const master = solver.open(rows, seconds * MOST_LINEAR_SHARE);
  const optimum = linearOptimum(master, columns, noise);
  const left = seconds - master.spent();
  master.close();
  if (optimum === null || left <= 0) return null;
  const room = price - optimum.value;
  if (room < -noise) return null;
  // A sheet that costs more than this over what it is worth is in no layout of that price.
  const useful = columns
    .map((column) => ({ column, cost: reducedCost(column, optimum.duals) }))
    .filter(({ cost }) => cost <= room + noise)
    .sort((a, b) => a.cost - b.cost || b.column.sheet.yield - a.column.sheet.yield)
    .slice(0, MOST_WHOLE_COLUMNS)
    .map(({ column }) => column);
  const whole = solver.open(rows);
  for (const column of useful) addTo(whole, column);
  const found = whole.solveWhole(WHOLE_NODES, left);
  whole.close();
  if (found === null) return null;
  const chosen = useful.flatMap(({ sheet }, i) => Array.from({ length: found.counts[i] as number }, () => sheet));
  const solution = solutionOf(problem, types, typeAt, chosen);
  return solution.leftOut.length === 0 && solution.cost <= price ? solution : null;
};
