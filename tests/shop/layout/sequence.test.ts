import { describe, expect, test } from 'vitest';
import { createImprover, cutSequences, type LayoutJob, type SequenceResult } from '../../../src/shop/layout/index.ts';
import { cabinetJob, part, plainJob } from './jobs.ts';

const solve = (job: LayoutJob, turns = 300) => {
  const improver = createImprover(job, 3);
  improver.step(turns);
  return improver.best();
};

const partsOf = (results: readonly SequenceResult[]) => results.filter((result) => result.kind === 'part');

describe('the sequence for the saw', () => {
  test('a strip of three equal parts: one rip, then one setting three times', () => {
    // 1000 × 500 sheet, kerf 4: strip of 300, three parts of 300 leave 1000 − 3 × 304 = 88
    const job = plainJob([part('a', 300, 300, 3, { grain: 'length' })], {
      stock: [{ name: 's', length: 1000, width: 500, quantity: null, price: 1 }],
      kerf: 4,
      stages: 2,
    });
    const [sequence] = cutSequences(job, solve(job));
    expect(sequence?.lines.map(({ by, from, setting, repeats }) => [by, from, setting, repeats])).toEqual([
      ['rip', 'sheet', 300, 1],
      ['crosscut', 'A', 300, 3],
    ]);
    expect(sequence?.lines[0]?.results.map(({ kind, width }) => [kind, width])).toEqual([
      ['strip', 300],
      ['waste', 196],
    ]);
    expect(sequence?.lines[1]?.results.map(({ kind, length }) => [kind, length])).toEqual([
      ['part', 300],
      ['part', 300],
      ['part', 300],
      ['waste', 88],
    ]);
  });

  test('trims come first, each with the fence on what remains', () => {
    const job = plainJob([part('a', 980, 480)], {
      stock: [{ name: 's', length: 1000, width: 500, quantity: null, price: 1 }],
      trim: { left: 10, right: 10, bottom: 10, top: 10 },
    });
    const [sequence] = cutSequences(job, solve(job));
    // width 500 − 10 = 490, then 480; length 1000 − 10 = 990, then 980
    expect(sequence?.lines.map(({ stage, setting }) => [stage, setting])).toEqual([
      [0, 490],
      [0, 480],
      [0, 990],
      [0, 980],
    ]);
  });

  test('two equal sheets are one sequence, with the marks of both', () => {
    const job = plainJob([part('a', 1200, 600, 4, { grain: 'length' }), part('b', 1200, 600, 4, { grain: 'length' })]);
    const layout = solve(job);
    // eight parts of 1200 × 600, four a sheet of 2440 × 1220
    expect(layout.repeats).toEqual([[0, 1]]);
    const sequences = cutSequences(job, layout);
    expect(sequences).toHaveLength(1);
    const marks = sequences
      .flatMap(({ lines }) => lines.flatMap(({ results }) => partsOf(results)))
      .map((one) => one.marks);
    expect(marks.every((pair) => pair.length === 2)).toBe(true);
    expect(marks.flat().sort()).toEqual(['a', 'a', 'a', 'a', 'b', 'b', 'b', 'b']);
  });

  test.each([1, 2, 3, 4])('cabinet job %i: every part comes off once, every strip that is named is cut up', (seed) => {
    const job = cabinetJob(seed, { stages: 3, ripLimit: 760 });
    const layout = solve(job);
    for (const { sheets, lines } of cutSequences(job, layout)) {
      const results = lines.flatMap((line) => line.results);
      const expected = sheets.flatMap((at) => layout.sheets[at]?.parts.map(({ mark }) => mark) ?? []).sort();
      expect(
        partsOf(results)
          .flatMap((one) => one.marks)
          .sort(),
      ).toEqual(expected);
      const named = results.filter((result) => result.kind === 'strip').map(({ name }) => name);
      expect(new Set(lines.map(({ from }) => from))).toEqual(new Set(['sheet', ...named]));
      expect(lines.map(({ number }) => number)).toEqual(lines.map((_, i) => i + 1));
      for (const line of lines.filter(({ stage, by }) => stage > 0 && by === 'rip'))
        expect(line.setting).toBeLessThanOrEqual(760);
    }
  });
});
