import { describe, expect, it } from 'vitest';
import type { Panel } from '../../src/fitout/index.ts';
import reference from '../reference/carcass-parts.json' with { type: 'json' };
import { carcass, divided, empty, openingOf, panelOf, share, solved } from './designs.ts';

/** Reference sheets by measured thickness. */
const SHEETS: ReadonlyMap<number, string> = new Map([
  [17.7, 'birch-ply-18'],
  [14.9, 'birch-ply-15'],
]);

describe('carcass parts against the reference', () => {
  for (const { outsideMm, sheetMm, dadoDepthMm, back, expect: parts } of reference.cases) {
    const fitOut = solved([
      carcass(
        divided('opening-1', 'columns', [
          [share(), empty('opening-2')],
          [share(), empty('opening-3')],
        ]),
        {
          size: outsideMm,
          material: SHEETS.get(sheetMm),
          joints: {
            corner: 'dado',
            dadoDepthMm,
            back: { kind: 'groove', grooveDepthMm: back.grooveDepthMm, setbackMm: back.setbackMm },
          },
        },
      ),
    ]);
    const size = (id: string): readonly number[] => {
      const panel: Panel = panelOf(fitOut, id);
      return [panel.length, panel.width];
    };
    const near = (got: readonly number[], want: readonly number[]): void =>
      want.forEach((value, i) => {
        expect(Math.abs((got[i] ?? Number.NaN) - value)).toBeLessThanOrEqual(reference.tolerance);
      });

    it(`${outsideMm.width} × ${outsideMm.height} × ${outsideMm.depth}`, () => {
      expect(fitOut.problems).toEqual([]);
      near(size('carcass-1/side-left'), parts.side);
      near(size('carcass-1/side-right'), parts.side);
      near(size('carcass-1/top'), parts.topBottom);
      near(size('carcass-1/bottom'), parts.topBottom);
      near(size('carcass-1/back'), parts.back);
      near(size('opening-1/divider-1'), parts.divider);
      const clear = openingOf(fitOut, 'opening-2').size[0] + openingOf(fitOut, 'opening-3').size[0];
      near([clear], [parts.clearColumnsTotalWidthMm]);
    });
  }
});
