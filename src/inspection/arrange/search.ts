import { seededRandom } from '../../base/index.ts';
import { programOf } from './exact.ts';
import { choiceOf, type Goal, keeps, type Minimise, type Picks, scoresOf, type Table, type Within } from './goals.ts';
import { type ProgramSolver, relaxed } from './program.ts';

/** Starts from other arrangements, and steps of each: how long a search takes, without asking a clock. */
const STARTS = 6;
const MOST_STEPS = 60;
/** Items set elsewhere for another start. */
const SHAKEN = 4;
const SEED = 1;

/** Every arrangement that is one move away: an item in a free place, or two items that change places. */
const neighbours = (table: Table, picks: Picks): readonly Picks[] => {
  const at = new Map(table.items.map((item, i) => [choiceOf(item, picks[i]).berth, i]));
  const changed = (...to: readonly (readonly [number, number])[]): Picks => {
    const next = [...picks];
    for (const [item, pick] of to) next[item] = pick;
    return next;
  };
  return table.items.flatMap((item, i) =>
    item.choices.flatMap(({ berth }, pick): readonly Picks[] => {
      if (pick === picks[i]) return [];
      const other = at.get(berth);
      if (other === undefined) return [changed([i, pick])];
      if (other < i) return [];
      const here = choiceOf(item, picks[i]).berth;
      const back = table.items[other]?.choices.findIndex((choice) => choice.berth === here) ?? -1;
      return back < 0 ? [] : [changed([i, pick], [other, back])];
    }),
  );
};

/** Down from an arrangement by the best move each time, while one helps: first towards what must be kept, then on. */
const descend = (table: Table, goal: Goal, within: Within, start: Picks): Picks => {
  // Among equals the one with the smaller sum goes on: a worst value often hides that something got better.
  const worth = (picks: Picks): readonly number[] => {
    const scores = scoresOf(table, picks);
    const over = keeps(table, picks, within, scores) ? 0 : 1;
    return [over, scores[goal], scores.strain + scores.arms + scores.side];
  };
  const better = (a: readonly number[], b: readonly number[]): boolean => {
    const i = a.findIndex((own, place) => own !== b[place]);
    return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
  };
  let [best, value] = [start, worth(start)];
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = neighbours(table, best)
      .map((picks) => ({ picks, worth: worth(picks) }))
      .reduce<{ picks: Picks; worth: readonly number[] } | null>(
        (least, own) => (least === null || better(own.worth, least.worth) ? own : least),
        null,
      );
    if (!next || !better(next.worth, value)) break;
    [best, value] = [next.picks, next.worth];
  }
  return best;
};

/**
 * A bounded search for cabinets that are too large to be settled: down from the arrangement as it is and from shaken ones.
 * How far it can be from the best is told by the same program with fractions of items.
 */
export const bySearch =
  (solver: ProgramSolver): Minimise =>
  (table, goal, within, start) => {
    const random = seededRandom(SEED);
    const shaken = (): Picks => {
      let picks = start;
      for (let i = 0; i < SHAKEN; i++) {
        const options = neighbours(table, picks);
        picks = options[Math.floor(random() * options.length)] ?? picks;
      }
      return picks;
    };
    const found = Array.from({ length: STARTS }, (_, i) => descend(table, goal, within, i === 0 ? start : shaken()))
      .filter((picks) => keeps(table, picks, within))
      .map((picks) => ({ picks, value: scoresOf(table, picks)[goal] }));
    const best = found.reduce<(typeof found)[number] | null>(
      (least, own) => (least === null || own.value < least.value ? own : least),
      null,
    );
    if (!best) return null;
    return { picks: best.picks, bound: solver(relaxed(programOf(table, goal, within)))?.bound ?? -Infinity };
  };
