import { seededRandom } from '../../../src/base/index.ts';
import type { Choice, Movable, Picks, Table } from '../../../src/inspection/arrange/goals.ts';

/** A table of items that each fit most of the places, in figures as a cabinet has them. */
export const randomTable = (seed: number, items: number, places: number): Table => {
  const random = seededRandom(seed);
  const between = (low: number, high: number): number => low + random() * (high - low);
  const rows = Array.from({ length: items }, (_, item): Movable => {
    const kg = between(1, 25);
    const at = (berth: number): Choice => {
      const y = ((berth * 2) / (places - 1) - 1) * 500;
      return {
        berth,
        leans: [(kg * y) / 20000, (kg * y) / 24000],
        index: kg < 3 ? 0 : between(0.3, 1.8),
        motions: item % 3 === 0 ? 1 + Math.floor(random() * 3) : 0,
        arms: item % 3 === 0 ? between(4, 9) : 0,
      };
    };
    const others = Array.from({ length: places }, (_, berth) => berth).filter((own) => own !== item && random() < 0.7);
    return { id: `gear-${item}`, choices: [at(item), ...others.map(at)] };
  });
  return { items: rows, leans: [1.5, -0.4], staying: { index: 0.4, motions: 1, arms: 3 } };
};

/** Every arrangement there is: for small tables. */
export const everyPick = (table: Table): readonly Picks[] => {
  const { items } = table;
  const from = (item: number, taken: ReadonlySet<number>): readonly (readonly number[])[] =>
    item === items.length
      ? [[]]
      : (items[item]?.choices ?? []).flatMap(({ berth }, pick) =>
          taken.has(berth) ? [] : from(item + 1, new Set([...taken, berth])).map((rest) => [pick, ...rest]),
        );
  return from(0, new Set());
};
