import { describe, expect, test } from 'vitest';
import { faceLayout } from '../../../src/views/editor/sheets/cabinet/face/face-layout.ts';
import { PX_PER_MM_FULL, trueScale } from '../../../src/views/editor/sheets/cabinet/face/true-scale.ts';

describe('trueScale', () => {
  test('the largest usual scale that fits: 600 × 500 mm into 400 × 300 px is 1 : 8', () => {
    // at 1 : 6 the face is 600 / 6 × 96 / 25.4 = 378 px wide but 315 px high; at 1 : 8 it is 283 × 236 px
    expect(trueScale({ width: 600, height: 500 }, { width: 400, height: 300 }).oneTo).toBe(8);
  });

  test('a centimetre at full scale is 96 / 2.54 pixels', () => {
    expect(PX_PER_MM_FULL * 10).toBeCloseTo(37.795, 3);
  });
});

describe('faceLayout', () => {
  const piece = { from: 0, to: 10, sets: { kind: 'carcass', side: 'width' }, room: null } as const;
  const chains = [
    { side: 'left', rank: 0, pieces: [piece] },
    { side: 'bottom', rank: 0, pieces: [piece] },
    { side: 'bottom', rank: 1, pieces: [piece] },
    { side: 'right', rank: 0, pieces: [piece] },
  ] as const;
  const layout = faceLayout({ width: 600, height: 500 }, chains, { width: 560, tallest: 420 });

  test('across runs right and up runs up, both in scale', () => {
    expect(layout.x(600) - layout.x(0)).toBeCloseTo(600 * layout.pxPerMm, 9);
    expect(layout.y(0) - layout.y(500)).toBeCloseTo(500 * layout.pxPerMm, 9);
  });

  test('face and chains stay on the board', () => {
    expect(layout.x(0)).toBeGreaterThan(0);
    expect(layout.x(600)).toBeLessThan(560);
    expect(layout.chainAt({ side: 'left', rank: 0 })).toBeLessThan(layout.x(0));
    expect(layout.chainAt({ side: 'left', rank: 0 })).toBeGreaterThan(0);
    expect(layout.chainAt({ side: 'right', rank: 0 })).toBeGreaterThan(layout.x(600));
    expect(layout.chainAt({ side: 'bottom', rank: 1 })).toBeLessThan(layout.height);
  });
});
