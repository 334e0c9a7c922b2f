import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { exactly } from '../../../src/inspection/arrange/exact.ts';
import {
  GIVE,
  GOALS,
  keeps,
  minimiseInTurn,
  ORDER,
  scoresOf,
  type Table,
} from '../../../src/inspection/arrange/goals.ts';
import { bySearch } from '../../../src/inspection/arrange/search.ts';
import { highsProgram } from '../../../src/inspection/index.ts';
import { everyPick, randomTable } from './tables.ts';

const solver = highsProgram(await loadHighs());
const exact = exactly(solver);
const search = bySearch(solver);
const FREE = { caps: {}, bans: [] } as const;
const NEAR = 6;

const still = (table: Table) => table.items.map(() => 0);

describe('one goal, settled by the solver of programs', () => {
  test('20 kg left and 2 kg right of a vehicle that leans to the left change places', () => {
    // leans +2 % as it stands: rest 0.2, 20 kg at +400 gives 2.0, 2 kg at −400 −0.2; changed over 0.2 − 2.0 + 0.2 = −1.6
    const table: Table = {
      items: [
        {
          id: 'heavy',
          choices: [
            { berth: 0, leans: [2], index: 0, motions: 0, arms: 0 },
            { berth: 1, leans: [-2], index: 0, motions: 0, arms: 0 },
          ],
        },
        {
          id: 'light',
          choices: [
            { berth: 1, leans: [-0.2], index: 0, motions: 0, arms: 0 },
            { berth: 0, leans: [0.2], index: 0, motions: 0, arms: 0 },
          ],
        },
      ],
      leans: [0.2],
      staying: { index: 0, motions: 0, arms: 0 },
    };
    expect(scoresOf(table, [0, 0]).side).toBeCloseTo(2, NEAR);
    const best = exact(table, 'side', FREE, [0, 0]);
    expect(best?.picks).toEqual([1, 1]);
    expect(best?.bound).toBeCloseTo(1.6, NEAR);
  });

  test.each([1, 2, 3, 4, 5, 6])('agrees with every arrangement tried by hand, seed %i', (seed) => {
    const table = randomTable(seed, 5, 7);
    const all = everyPick(table).map((picks) => scoresOf(table, picks));
    expect(all.length).toBeGreaterThan(50);
    for (const goal of GOALS) {
      const least = Math.min(...all.map((scores) => scores[goal]));
      const best = exact(table, goal, FREE, still(table));
      expect(scoresOf(table, best?.picks ?? [])[goal], goal).toBeCloseTo(least, 4);
      expect(best?.bound, goal).toBeCloseTo(least, 4);
    }
  });

  test('what is not to stand together does not', () => {
    const table = randomTable(3, 5, 7);
    const best = exact(table, 'side', FREE, still(table));
    const ban = (best?.picks ?? []).map((pick, item) => ({ item, pick }));
    const second = exact(table, 'side', { caps: {}, bans: [ban] }, still(table));
    expect(second?.picks).not.toEqual(best?.picks);
    const left = everyPick(table).filter((picks) => picks.join() !== best?.picks.join());
    const least = Math.min(...left.map((picks) => scoresOf(table, picks).side));
    expect(scoresOf(table, second?.picks ?? []).side).toBeCloseTo(least, 4);
  });

  test('caps that nothing keeps have no answer', () => {
    const table = randomTable(2, 4, 5);
    expect(exact(table, 'moves', { caps: { strain: -1 }, bans: [] }, still(table))).toBeNull();
  });
});

describe('goals in turn', () => {
  test.each(['balance', 'lifting', 'first-due'] as const)(
    '%s: as good as any on the first goal, then on the next',
    (first) => {
      const table = randomTable(7, 5, 7);
      const staged = minimiseInTurn(table, ORDER[first], [], exact);
      if (!staged) throw new Error('nothing found');
      const all = everyPick(table).map((picks) => scoresOf(table, picks));
      let left = all;
      for (const goal of ORDER[first].slice(0, 2)) {
        const least = Math.min(...left.map((scores) => scores[goal]));
        expect(staged.scores[goal], goal).toBeLessThanOrEqual(least + GIVE[goal] + 1e-5);
        left = left.filter((scores) => scores[goal] <= least + GIVE[goal] + 1e-5);
      }
      expect(keeps(table, staged.picks, FREE)).toBe(true);
    },
  );
});

describe('a bounded search', () => {
  test.each([1, 2, 3, 4])('its bound is below the best, and what it finds is not below that, seed %i', (seed) => {
    const table = randomTable(seed, 6, 8);
    const least = Math.min(...everyPick(table).map((picks) => scoresOf(table, picks).side));
    const found = search(table, 'side', FREE, still(table));
    if (!found) throw new Error('nothing found');
    const { side } = scoresOf(table, found.picks);
    expect(side).toBeGreaterThanOrEqual(least - 1e-6);
    expect(found.bound).toBeLessThanOrEqual(least + 1e-6);
    expect(side).toBeLessThanOrEqual(scoresOf(table, still(table)).side);
    const taken = found.picks.map((pick, item) => table.items[item]?.choices[pick]?.berth);
    expect(new Set(taken).size).toBe(taken.length);
  });

  test('a large cabinet comes near the bound, the same way each time', () => {
    const table = randomTable(11, 40, 45);
    const [once, again] = [1, 2].map(() => search(table, 'side', FREE, still(table)));
    expect(once).toEqual(again);
    expect(scoresOf(table, once?.picks ?? []).side).toBeLessThan((once?.bound ?? 0) + 0.5);
  });

  test('starts from what breaks a cap and ends where it is kept', () => {
    const table = randomTable(5, 6, 8);
    const caps = { side: scoresOf(table, search(table, 'side', FREE, still(table))?.picks ?? []).side + 0.2 };
    const found = search(table, 'strain', { caps, bans: [] }, still(table));
    expect(found && keeps(table, found.picks, { caps, bans: [] })).toBe(true);
  });
});
