import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { degrees, signedArea } from '../../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../../src/catalog/index.ts';
import { type FitOut, type Panel, solveFitOut } from '../../../src/fitout/index.ts';
import { partDxf } from '../../../src/shop/dxf/index.ts';
import { markParts } from '../../../src/shop/marks.ts';
import { carcass, fitted, solved } from '../../fitout/designs.ts';
import { demoDesign } from '../../golden/flow.ts';
import { GOLDEN_DESIGNS } from '../../golden/produce.ts';
import { randomDesign } from '../../laws/arbitrary.ts';
import { byEzdxf, byParser, type Found } from './readers.ts';

const catalog = standardCatalog();

/** A plate with both edges bent back, in a carcass with a corner cut off: bends and bevels together. */
const bentAndBevelled = (): FitOut =>
  solved([
    carcass(fitted('opening-1', { kind: 'faceplate', material: 'aluminium-32', tiltDeg: 0, flangeMm: 30 }), {
      chamfers: [{ id: 'chamfer-1', along: 'deep', corner: 'top-right', acrossMm: 120, upMm: 160 }],
    }),
  ]);

const fitOutsOf = (): readonly FitOut[] => [
  bentAndBevelled(),
  ...[
    ...GOLDEN_DESIGNS.map(demoDesign),
    ...fc.sample(randomDesign(fc, { maxCarcasses: 1, depth: 2 }), { seed: 271_828, numRuns: 6 }),
  ].map((design) => solveFitOut(design, catalog, houseRules(catalog, design.houseRules))),
];

interface Read {
  readonly panel: Panel;
  readonly found: Found;
}
const read: Read[] = [];

beforeAll(() => {
  const parts = fitOutsOf().flatMap((fitOut) => markParts(fitOut).parts);
  const texts = parts.map(({ panel, mark }) => partDxf(panel, 'mm', mark));
  const second = byEzdxf(texts);
  parts.forEach(({ panel }, i) => {
    for (const found of [byParser(texts[i] ?? ''), second[i]]) if (found) read.push({ panel, found });
  });
});

/** Area of everything cut that the part's own record says, by what the layers are for. */
const areasOf = ({ cuts }: Panel): ReadonlyMap<string, number> => {
  const areas = new Map<string, number>();
  const add = (work: string, area: number): void => {
    areas.set(work, (areas.get(work) ?? 0) + area);
  };
  for (const cut of cuts) {
    if (cut.kind === 'hole') add('DRILL', Math.PI * (cut.diameter / 2) ** 2);
    else if (cut.kind !== 'cutout') add(cut.kind.toUpperCase(), (cut.to[0] - cut.from[0]) * (cut.to[1] - cut.from[1]));
    else if (cut.outline.shape === 'circle') add('INNER', Math.PI * (cut.outline.diameter / 2) ** 2);
    else if (cut.outline.shape === 'polygon') add('INNER', Math.abs(signedArea(cut.outline.corners)));
    else {
      const { from, to, cornerRadius } = cut.outline;
      const [w, h] = [to[0] - from[0], to[1] - from[1]];
      const r = Math.min(cornerRadius, w / 2, h / 2);
      add('INNER', w * h - (4 - Math.PI) * r * r);
    }
  }
  return areas;
};

const workOfLayer = (layer: string): string => layer.split('-')[0] ?? '';

describe('every part of the demo designs and of random ones, in both readers', () => {
  it('has a file for each reader', () => {
    expect(read.length).toBeGreaterThan(200);
  });

  it('has the outline of the part: its extents and its area', () => {
    for (const { panel, found } of read) {
      const edges = found.outlines.filter(({ layer }) => layer === 'OUTLINE');
      expect(edges).toHaveLength(1);
      const [x0 = 1, y0 = 1, x1 = 0, y1 = 0] = edges[0]?.extent ?? [];
      expect(
        Math.max(Math.abs(x0), Math.abs(y0), Math.abs(x1 - panel.length), Math.abs(y1 - panel.width)),
      ).toBeLessThan(1e-6);
      const area = panel.outline === null ? panel.length * panel.width : Math.abs(signedArea(panel.outline));
      expect(Math.abs(Math.abs(edges[0]?.area ?? 0) - area)).toBeLessThan(0.01);
    }
  });

  it('has every cut with its area, and every hole as a circle at its place', () => {
    for (const { panel, found } of read) {
      const areas = new Map<string, number>();
      for (const { layer, area } of found.outlines)
        if (layer !== 'OUTLINE') areas.set(workOfLayer(layer), (areas.get(workOfLayer(layer)) ?? 0) + Math.abs(area));
      for (const { layer, radius } of found.circles)
        areas.set(workOfLayer(layer), (areas.get(workOfLayer(layer)) ?? 0) + Math.PI * radius * radius);
      const wanted = areasOf(panel);
      expect([...areas.keys()].sort()).toEqual([...wanted.keys()].sort());
      for (const [work, area] of wanted) expect(Math.abs((areas.get(work) ?? 0) - area)).toBeLessThan(0.01);
      const holes = panel.cuts.filter((cut) => cut.kind === 'hole');
      const drilled = found.circles.filter(({ layer }) => layer.startsWith('DRILL'));
      expect(drilled).toHaveLength(holes.length);
      for (const { at, diameter, depth } of holes) {
        const there = drilled.find(
          (circle) =>
            Math.hypot((circle.at[0] ?? 0) - at[0], (circle.at[1] ?? 0) - at[1]) < 1e-6 &&
            Math.abs(circle.radius * 2 - diameter) < 1e-6 &&
            circle.layer.endsWith('THROUGH') === (depth === null),
        );
        expect(there).toBeDefined();
      }
    }
  });

  it('has every bevel as a line, and every bend as one at its place on the layer of its angle', () => {
    let [bent, bevelled] = [0, 0];
    for (const { panel, found } of read) {
      const lines = found.lines.filter(({ layer }) => layer.startsWith('BEND'));
      expect(lines).toHaveLength(panel.bends?.length ?? 0);
      const bevels = found.lines.filter(({ layer }) => layer.startsWith('BEVEL'));
      expect(bevels).toHaveLength(panel.bevels?.length ?? 0);
      bevelled += bevels.length;
      for (const { from, to, angleRad, towards } of panel.bends ?? []) {
        bent++;
        const there = lines.find(({ layer, points: [a = [], b = []] }) => {
          const off = Math.hypot(
            (a[0] ?? 0) - from[0],
            (a[1] ?? 0) - from[1],
            (b[0] ?? 0) - to[0],
            (b[1] ?? 0) - to[1],
          );
          return off < 1e-6 && layer === `BEND-${towards.toUpperCase()}-${degrees(angleRad)}`;
        });
        expect(there).toBeDefined();
      }
    }
    // Two bends of one plate, in two readers.
    expect(bent).toBe(4);
    expect(bevelled).toBeGreaterThanOrEqual(8);
  });

  it('has nothing in it that no layer is for', () => {
    for (const { found } of read) {
      expect(found.others).toBe(0);
      const used = [...found.outlines, ...found.circles, ...found.lines].map(({ layer }) => layer);
      expect([...new Set(used)].sort()).toEqual(found.layers);
    }
  });
});
