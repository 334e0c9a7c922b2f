import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { EdgeBands, Panel } from '../fitout/index.ts';

/** What edges take off and add to the sawn size; bands of a thickness that nobody knows are named. */
export interface CutSize {
  readonly length: number;
  readonly width: number;
  /** Bands that the catalog does not hold with a size: nothing was taken off for them. */
  readonly unknownBands: readonly string[];
}

/** Thickness of an edge band: the thin side of its record. Null where the catalog does not know it. */
const bandThickness = (catalog: Catalog, band: string): number | null => {
  const size = catalog.hardware.get(band)?.sizeMm ?? null;
  return size === null ? null : Math.min(...size);
};

const EDGES = ['l1', 'l2', 'w1', 'w2'] as const satisfies readonly (keyof EdgeBands)[];

/**
 * The size to saw: finished size less the bands on it, plus what the banding machine mills off each banded edge first
 * (house rule `edge-premill`). Bands along the length narrow the width, bands across it shorten the length. Without
 * bands it is the finished size.
 */
export const cutSize = (panel: Panel, catalog: Catalog, rules: HouseRules): CutSize => {
  const unknownBands: string[] = [];
  const takenAt = (edge: keyof EdgeBands): number => {
    const band = panel.bands[edge];
    if (band === null) return 0;
    const thickness = bandThickness(catalog, band);
    if (thickness === null) {
      if (!unknownBands.includes(band)) unknownBands.push(band);
      return 0;
    }
    return thickness - rules.value('edge-premill');
  };
  const [l1, l2, w1, w2] = EDGES.map(takenAt);
  return {
    length: panel.length - (w1 ?? 0) - (w2 ?? 0),
    width: panel.width - (l1 ?? 0) - (l2 ?? 0),
    unknownBands,
  };
};
