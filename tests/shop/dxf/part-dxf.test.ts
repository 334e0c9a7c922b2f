import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/base/index.ts';
import type { BendLine, Panel } from '../../../src/fitout/index.ts';
import { layerTableCsv, partDxf } from '../../../src/shop/dxf/index.ts';
import { markParts } from '../../../src/shop/marks.ts';
import { panel, twoColumns } from '../fixture.ts';
import { anyFitOut } from '../random-fit-out.ts';
import { byEzdxf, byParser, type Found } from './readers.ts';

const board: Panel = panel('p', {
  length: 700,
  width: 600,
  cuts: [
    { kind: 'hole', face: 'a', at: [37, 50], diameter: 5, depth: 12, why: 'pin' },
    { kind: 'hole', face: 'b', at: [200, 50], diameter: 8, depth: null, why: 'cable' },
    { kind: 'dado', face: 'a', from: [300, 0], to: [318, 600], depth: 6.5, takes: null },
    { kind: 'pocket', face: 'b', from: [400, 100], to: [460, 140], depth: 3, takes: null },
    {
      kind: 'cutout',
      outline: { shape: 'rectangle', from: [500, 200], to: [600, 260], cornerRadius: 10 },
      why: 'radio',
    },
    { kind: 'cutout', outline: { shape: 'circle', at: [550, 400], diameter: 76 }, why: 'gauge' },
  ],
});

const areaOn = (found: Found, layer: string): number =>
  found.outlines.filter((each) => each.layer === layer).reduce((sum, { area }) => sum + area, 0);

describe('DXF of a part', () => {
  it('reads the same in two independent readers, millimetres and inches', () => {
    const [mm, inch] = [partDxf(board, 'mm'), partDxf(board, 'in')];
    const [ezMm, ezInch] = byEzdxf([mm, inch]);
    for (const [found, unit, one] of [
      [byParser(mm), 4, 1],
      [ezMm, 4, 1],
      [byParser(inch), 1, 25.4],
      [ezInch, 1, 25.4],
    ] as const) {
      if (found === undefined) throw new Error('nothing read');
      expect(found.unit).toBe(unit);
      expect(found.others).toBe(0);
      expect(found.layers).toEqual(['DADO-A-6_5', 'DRILL-A-12', 'DRILL-THROUGH', 'INNER-CUT', 'OUTLINE', 'POCKET-B-3']);
      const square = one * one;
      // 700 × 600; 18 × 600; 60 × 40; 100 × 60 less the corners, (4 − π) × 10².
      expect(areaOn(found, 'OUTLINE') * square).toBeCloseTo(420_000, 3);
      expect(areaOn(found, 'DADO-A-6_5') * square).toBeCloseTo(10_800, 4);
      expect(areaOn(found, 'POCKET-B-3') * square).toBeCloseTo(2400, 4);
      expect(areaOn(found, 'INNER-CUT') * square).toBeCloseTo(6000 - (4 - Math.PI) * 100, 4);
      const edge = found.outlines.find(({ layer }) => layer === 'OUTLINE');
      expect(edge?.extent.map((each) => Math.round(each * one * 1e6) / 1e6)).toEqual([0, 0, 700, 600]);
      const holes = found.circles.map(({ layer, at, radius }) => [
        layer,
        ...[...at, radius].map((n) => Math.round(n * one * 1e6) / 1e6),
      ]);
      expect(holes).toEqual([
        ['DRILL-A-12', 37, 50, 2.5],
        ['DRILL-THROUGH', 200, 50, 4],
        ['INNER-CUT', 550, 400, 38],
      ]);
    }
  });

  it('of a packet that is held back is the same work, with words on a layer of their own that nothing is cut along', () => {
    const [free, held] = [partDxf(board, 'mm', 'A1'), partDxf(board, 'mm', 'A1', 'NOT RELEASED FOR CUTTING')];
    const [ezFree, ezHeld] = byEzdxf([free, held]);
    for (const [plain, found] of [
      [byParser(free), byParser(held)],
      [ezFree, ezHeld],
    ] as const) {
      if (!plain || !found) throw new Error('nothing read');
      expect(found.layers).toEqual([...plain.layers, 'HELD-DO-NOT-CUT'].toSorted());
      expect(found.others).toBe(0);
      const words = found.lines.filter(({ layer }) => layer === 'HELD-DO-NOT-CUT');
      // Strokes of N1 O1 T2, R2 E2 L1 E2 A2 S1 E2 D1, F2 O1 R2, C1 U1 T2 T2 I1 N1 G1.
      expect(words.length).toBe(4 + 13 + 5 + 9);
      const points = words.flatMap((each) => each.points);
      for (const [x = -1, y = -1] of points) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(700);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(600);
      }
      // 24 letters, 23 · 6 + 4 = 142 steps of a sixth of the height, in 0.9 of 700: 630.
      const across = points.map(([x = 0]) => x);
      expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(630, 3);
      expect(found.outlines).toEqual(plain.outlines);
      expect(found.circles).toEqual(plain.circles);
      expect(found.lines.filter(({ layer }) => layer !== 'HELD-DO-NOT-CUT')).toEqual(plain.lines);
    }
  });

  it('gives the same bytes again', () => {
    expect(partDxf(structuredClone(board), 'mm')).toBe(partDxf(board, 'mm'));
  });

  it('says in a table what every layer is for', () => {
    const table = layerTableCsv(markParts(twoColumns()));
    expect(table).toContain('DADO-A-6,dado across the part,a,6,,as seen on face a,A1 A2');
    expect(table).toContain('OUTLINE,"finished edge of the part, closed","a, through",through,,');
  });
});

interface BendCase {
  readonly thicknessMm: number;
  readonly insideRadiusMm: number;
  readonly bendDeg: number;
  readonly outsideFlangesMm: readonly number[];
  readonly expect: {
    readonly bendAllowanceMm: number;
    readonly bendDeductionMm: number;
    readonly flatLengthMm: number;
  };
}
const bendCases = (
  JSON.parse(readFileSync(new URL('../../reference/bends.json', import.meta.url), 'utf8')) as {
    readonly cases: readonly BendCase[];
  }
).cases;

/** Middles of the bends along the flat: each outside length less its set-backs is flat, each bend takes its allowance. */
const bendMiddles = ({ thicknessMm, insideRadiusMm, bendDeg, outsideFlangesMm, expect: known }: BendCase) => {
  const setback = (insideRadiusMm + thicknessMm) * Math.tan(radians(bendDeg) / 2);
  let end = 0;
  return outsideFlangesMm.slice(0, -1).map((outside, i) => {
    end += outside - (i === 0 ? 1 : 2) * setback;
    const middle = end + known.bendAllowanceMm / 2;
    end += known.bendAllowanceMm;
    return middle;
  });
};

describe('DXF of a bent part', () => {
  it('is as long as the flat that was worked out apart from this program, with the bends where they belong', () => {
    const flats = bendCases.map((each, n): Panel => {
      const bends = bendMiddles(each).map(
        (y): BendLine => ({
          from: [0, y],
          to: [700, y],
          angleRad: radians(each.bendDeg),
          towards: 'b',
          insideRadiusMm: each.insideRadiusMm,
          allowanceMm: each.expect.bendAllowanceMm,
          deductionMm: each.expect.bendDeductionMm,
        }),
      );
      return panel(`flat-${n}`, { width: each.expect.flatLengthMm, thickness: each.thicknessMm, bends });
    });
    const texts = flats.map((each) => partDxf(each, 'mm'));
    const second = byEzdxf(texts);
    bendCases.forEach((each, i) => {
      for (const found of [byParser(texts[i] ?? ''), second[i]]) {
        const edge = found?.outlines.find(({ layer }) => layer === 'OUTLINE');
        expect(edge?.extent[3]).toBeCloseTo(each.expect.flatLengthMm, 3);
        expect(found?.lines.map(({ layer }) => layer)).toEqual(bendMiddles(each).map(() => `BEND-B-${each.bendDeg}`));
        // By the other way round: an outside length less half a deduction lies before the middle of its bend.
        const [first = Number.NaN] = found?.lines[0]?.points.map(([, y]) => y ?? Number.NaN) ?? [];
        expect(first).toBeCloseTo((each.outsideFlangesMm[0] ?? 0) - each.expect.bendDeductionMm / 2, 3);
        expect(found?.lines.flatMap(({ points }) => points.map(([x]) => x))).toEqual(
          bendMiddles(each).flatMap(() => [0, 700]),
        );
      }
    });
  });

  it('shows a bevel as a line where the shorter face ends, on the layer of its tilt', () => {
    const bevelled = panel('p', {
      bevels: [{ edge: 'l2', tiltRad: radians(22.5), longFace: 'a', setMm: 7.3 }],
    });
    // 600 − 7.3 = 592.7
    for (const found of [byParser(partDxf(bevelled, 'mm')), ...byEzdxf([partDxf(bevelled, 'mm')])])
      expect(found.lines).toEqual([
        {
          layer: 'BEVEL-B-22_5',
          points: [
            [0, 592.7],
            [700, 592.7],
          ],
        },
      ]);
  });

  it('engraves the mark clear of every cut, and not where there is no room', () => {
    const found = byParser(partDxf(board, 'mm', 'A12'));
    const engraved = found.lines.filter(({ layer }) => layer === 'ENGRAVE');
    // A of two strokes; 1 of two; 2 of one.
    expect(engraved).toHaveLength(5);
    const points = engraved.flatMap((each) => each.points);
    const [xs, ys] = [points.map(([x = 0]) => x), points.map(([, y = 0]) => y)];
    // Three letters of 8 high on a grid of 4 × 6: from the first to the last 2 · 8 and one 16/3 wide.
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(16 + 16 / 3, 6);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(8, 6);
    for (const [x = 0, y = 0] of points) {
      expect(x < 300 || x > 318).toBe(true);
      expect(x > 500 && x < 600 && y > 200 && y < 260).toBe(false);
      expect(Math.hypot(x - 550, y - 400)).toBeGreaterThan(38);
    }
    expect(byParser(partDxf(panel('s', { length: 15, width: 15 }), 'mm', 'A1')).lines).toEqual([]);
  });
});

describe('laws of DXF', () => {
  it('both readers find every cut of every part, and the area of its outline', () => {
    const panels = fc.sample(anyFitOut, { seed: 141_421, numRuns: 8 }).flatMap(({ panels: all }) => all);
    expect(panels.length).toBeGreaterThan(10);
    const texts = panels.map((each) => partDxf(each, 'mm'));
    const second = byEzdxf(texts);
    panels.forEach((each, i) => {
      for (const found of [byParser(texts[i] ?? ''), second[i]]) {
        if (found === undefined) throw new Error('nothing read');
        expect(found.outlines.length + found.circles.length).toBe(each.cuts.length + 1);
        if (each.outline === null) expect(areaOn(found, 'OUTLINE')).toBeCloseTo(each.length * each.width, 2);
        expect(found.circles.filter(({ layer }) => layer.startsWith('DRILL'))).toHaveLength(
          each.cuts.filter(({ kind }) => kind === 'hole').length,
        );
      }
    });
  });
});
