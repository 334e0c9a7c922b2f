import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FitOut } from '../../src/fitout/index.ts';
import {
  type Board,
  boardRemarks,
  cutList,
  cutRows,
  cutSequenceCsv,
  layoutSheets,
  markParts,
  proofText,
  sheetJobs,
  sheetStrips,
  validateLayout,
} from '../../src/shop/index.ts';
import { catalog, emptyFitOut, fitOutOf, panel, rules, twoColumns } from './fixture.ts';
import { anyFitOut } from './random-fit-out.ts';

const BUDGET = { seed: 7, steps: 40 };
const jobsOf = (fitout: FitOut): readonly Board[] =>
  sheetJobs(cutList({ fitout, marks: markParts(fitout), catalog, rules }), catalog, rules, []);

describe('jobs of a cut list', () => {
  it('makes one job a board, from cut sizes, with kerf, trim and limits of the house rules', () => {
    const jobs = jobsOf(twoColumns());
    expect(jobs.map(({ key, thickness }) => [key, thickness])).toEqual([
      ['ply-18', 17.7],
      ['ply-6', 6.4],
    ]);
    const [ply] = jobs;
    expect(ply?.job).toMatchObject({
      kerf: 3.2,
      trim: { left: 10, right: 10, bottom: 10, top: 10 },
      stages: 3,
      ripLimit: 1300,
      longestCut: 3200,
      minStrip: 40,
      keep: { minSide: 250, minAreaMm2: 150_000, valueShare: 0.5 },
    });
    // Top and bottom carry one band of 1 mm on a long edge: 600 − 1.
    const flat = ply?.job.parts.find(({ quantity }) => quantity === 2);
    expect(flat).toMatchObject({ length: 876.6, width: 599, grain: 'length' });
  });

  it('shears metal, trims it by its own rule and keeps smaller offcuts of it', () => {
    const [board] = jobsOf(fitOutOf([panel('plate', { material: 'alu-3', thickness: 3.2, grain: 'any' })]));
    expect(board?.job).toMatchObject({ trim: { left: 3 }, keep: { minAreaMm2: 50_000 } });
    expect(board?.job.parts[0]?.grain).toBe('any');
    // No strip narrower than 8 × 3.2 mm.
    expect([board?.job.cut, board?.job.minStrip]).toEqual(['shear', 25.6]);
    // Nothing is taken away between two halves of a sheet.
    const usable = (board?.job.stock[0]?.length ?? 0) - 2 * 3;
    const two = fitOutOf(
      ['p', 'q'].map((id) =>
        panel(id, { material: 'alu-3', thickness: 3.2, grain: 'any', length: usable / 2, width: 1000 }),
      ),
    );
    expect(layoutSheets(jobsOf(two), BUDGET).sheets).toBe(1);
  });

  it('gives two thicknesses of one material two boards with names of their own', () => {
    const jobs = jobsOf(fitOutOf([panel('p'), panel('q', { thickness: 18.1 })]));
    expect(jobs.map(({ key }) => key)).toEqual(['ply-18', 'ply-18-no2']);
  });
});

describe('layouts of a design', () => {
  it('lays out every panel, and the sheets and prices add up', () => {
    const layouts = layoutSheets(jobsOf(twoColumns()), BUDGET);
    const placed = layouts.boards.flatMap(({ layout }) => layout.sheets).flatMap(({ parts }) => parts);
    // Seven panels; 2 sheets of ply 18 and 1 of ply 6 at 100 each.
    expect(placed).toHaveLength(7);
    expect(layouts).toMatchObject({ sheets: 3, price: 300, unplaced: 0 });
  });

  it('says in words why a part is not placed', () => {
    const [huge] = layoutSheets(jobsOf(fitOutOf([panel('huge', { length: 2500 })])), BUDGET).boards;
    if (huge === undefined) throw new Error('no board');
    // 2440 − 2 × 10 by 1220 − 2 × 10.
    expect(boardRemarks(huge, 'mm')).toEqual([
      '1 of A1 (2500 mm × 600 mm) is missing: it is larger than every sheet; the largest offers 2420 mm × 1200 mm after trimming.',
    ]);
    const [strange] = layoutSheets(jobsOf(fitOutOf([panel('p', { material: 'oak' })])), BUDGET).boards;
    expect(strange && boardRemarks(strange, 'mm')[0]).toContain('no sheet of oak is in the stock list');
  });

  it('has nothing to lay out in an empty cabinet', () => {
    expect(layoutSheets(jobsOf(emptyFitOut), BUDGET)).toEqual({
      boards: [],
      sheets: 0,
      offcuts: 0,
      price: 0,
      unplaced: 0,
    });
  });

  it.each([
    ['optimal', 0, 'proved least'],
    ['optimal-2-stage', 1, 'proved least for 2-stage'],
    ['within', 0, 'no layout has fewer sheets'],
    ['within', 1, 'within 1 sheet of any layout'],
    ['within', 2, 'within 2 sheets of any layout'],
  ] as const)('calls %s with %i above %s', (verdict, sheetsAbove, words) => {
    expect(proofText({ verdict, sheetsAbove, lowerBoundPrice: 0, lowerBoundSheets: 0, by: 'area' })).toBe(words);
  });
});

describe('laws of the layouts', () => {
  it('passes the validator, cuts every part once in its sequence, and comes out the same again', () => {
    fc.assert(
      fc.property(anyFitOut, (fitout) => {
        const layouts = layoutSheets(jobsOf(fitout), BUDGET);
        expect(layoutSheets(jobsOf(structuredClone(fitout)), BUDGET)).toEqual(layouts);
        let parts = layouts.unplaced;
        for (const { board, layout, sequences } of layouts.boards) {
          expect(validateLayout(board.job, layout)).toEqual([]);
          for (const sequence of sequences)
            for (const [place, at] of sequence.sheets.entries()) {
              const sheet = layout.sheets[at];
              const marks = cutRows(sequence, place, 'mm').flatMap((row) => row.marks);
              expect(marks.toSorted()).toEqual(sheet?.parts.map(({ mark }) => mark).toSorted());
              parts += marks.length;
              for (const { piece } of sheet ? sheetStrips(sheet, sequence) : [])
                expect(piece.x + piece.length).toBeLessThanOrEqual((sheet?.length ?? 0) - board.job.trim.right + 0.01);
            }
        }
        expect(parts).toBe(fitout.panels.length);
        const lines = layouts.boards.flatMap(({ sequences }) =>
          sequences.map(({ sheets, lines: each }) => sheets.length * each.length),
        );
        const csvLines = cutSequenceCsv(layouts, 'in').trimEnd().split('\r\n').length - 1;
        expect(csvLines).toBe(lines.reduce((sum, each) => sum + each, 0));
      }),
      { seed: 271_828, numRuns: 15 },
    );
  });
});
