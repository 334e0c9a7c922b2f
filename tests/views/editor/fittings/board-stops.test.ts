import { describe, expect, it } from 'vitest';
import { readStops } from '../../../../src/views/editor/fittings/board-stops.ts';

describe('stops typed for a command board', () => {
  it('are read in rising order, each once, with or without degree signs', () => {
    expect(readStops('180, 90°; 120 90')).toEqual([90, 120, 180]);
  });

  it('are refused where one is no angle from 1 to 180, where there is none, and where there are too many', () => {
    for (const text of ['', 'wide', '90, 181', '0', '1 2 3 4 5 6 7 8 9 10 11 12 13'])
      expect(readStops(text)).toBeNull();
  });
});
