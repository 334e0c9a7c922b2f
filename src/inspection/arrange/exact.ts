import { type Goal, type Minimise, type Picks, scoresOf, type Table, type Within } from './goals.ts';
import type { Column, Program, ProgramRow, ProgramSolver } from './program.ts';

/** The goals that are worst values, each a column above all that it is the worst of. */
const WORST = ['side', 'index', 'motions', 'arms'] as const;

interface Spot {
  readonly item: number;
  readonly pick: number;
}

const spotsOf = ({ items }: Table): readonly Spot[] =>
  items.flatMap(({ choices }, item) => choices.map((_, pick): Spot => ({ item, pick })));

/**
 * An arrangement as a program: a column of zero or one for each item in each of its places, one place for each item, one
 * item at most for each place, and a column above each worst value.
 */
export const programOf = (table: Table, goal: Goal, { caps, bans }: Within): Program => {
  const spots = spotsOf(table);
  const choice = ({ item, pick }: Spot) => table.items[item]?.choices[pick];
  const column = new Map(spots.map(({ item, pick }, at) => [`${item} ${pick}`, at]));
  const above = (name: (typeof WORST)[number]): number => spots.length + WORST.indexOf(name);
  const strain = spots.map((spot) => choice(spot)?.index ?? 0);
  const moved = spots.map(({ pick }) => (pick === 0 ? 0 : 1));
  const costOf = (spot: number): number =>
    goal === 'strain' ? (strain[spot] ?? 0) : goal === 'moves' ? (moved[spot] ?? 0) : 0;
  const least = { side: 0, ...table.staying };
  const columns: readonly Column[] = [
    ...spots.map((_, at) => ({ cost: costOf(at), least: 0, most: 1, whole: true })),
    ...WORST.map((name) => ({
      cost: name === goal ? 1 : 0,
      least: least[name],
      most: Math.max(least[name], caps[name] ?? Infinity),
      whole: false,
    })),
  ];
  const all = spots.map((_, at) => at);
  const places = new Map<number, readonly number[]>();
  for (const at of all) {
    const berth = choice(spots[at] as Spot)?.berth ?? 0;
    places.set(berth, [...(places.get(berth) ?? []), at]);
  }
  const ofItem = (item: number): readonly number[] => all.filter((at) => spots[at]?.item === item);
  const worstRows = (['index', 'motions', 'arms'] as const).flatMap((name) =>
    table.items.map((_, item): ProgramRow => {
      const at = ofItem(item);
      return {
        least: 0,
        most: Infinity,
        at: [above(name), ...at],
        weights: [1, ...at.map((own) => -(choice(spots[own] as Spot)?.[name] ?? 0))],
      };
    }),
  );
  const sideRows = table.leans.flatMap((rest, load) =>
    [1, -1].map(
      (sign): ProgramRow => ({
        least: sign * rest,
        most: Infinity,
        at: [above('side'), ...all],
        weights: [1, ...all.map((own) => -sign * (choice(spots[own] as Spot)?.leans[load] ?? 0))],
      }),
    ),
  );
  const capped = (weights: readonly number[], cap: number | undefined): readonly ProgramRow[] =>
    cap === undefined ? [] : [{ least: -Infinity, most: cap, at: all, weights }];
  return {
    columns,
    rows: [
      ...table.items.map((_, item): ProgramRow => {
        const at = ofItem(item);
        return { least: 1, most: 1, at, weights: at.map(() => 1) };
      }),
      ...[...places.values()].flatMap((at): readonly ProgramRow[] =>
        at.length < 2 ? [] : [{ least: -Infinity, most: 1, at, weights: at.map(() => 1) }],
      ),
      ...worstRows,
      ...sideRows,
      ...capped(strain, caps.strain),
      ...capped(moved, caps.moves),
      ...bans.map((ban): ProgramRow => {
        const at = ban.flatMap(({ item, pick }) => column.get(`${item} ${pick}`) ?? []);
        return { least: -Infinity, most: at.length - 1, at, weights: at.map(() => 1) };
      }),
    ],
  };
};

/** The place of each item whose column is one. */
const picksFrom = (table: Table, values: readonly number[]): Picks => {
  const spots = spotsOf(table);
  return table.items.map(
    (_, item) => spots.find((spot, at) => spot.item === item && (values[at] ?? 0) > 0.5)?.pick ?? 0,
  );
};

/** The best of all arrangements, by the solver of programs; its bound tells whether that is proved. */
export const exactly =
  (solver: ProgramSolver): Minimise =>
  (table, goal, within) => {
    if (table.items.length === 0) return { picks: [], bound: scoresOf(table, [])[goal] };
    const answer = solver(programOf(table, goal, within));
    return answer && { picks: picksFrom(table, answer.values), bound: answer.bound };
  };
