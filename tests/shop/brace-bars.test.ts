import { describe, expect, it } from 'vitest';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Design, designSchema, emptyDesign } from '../../src/design/index.ts';
import { solveFitOut } from '../../src/fitout/index.ts';
import { createDrawings } from '../../src/shop/drawings.ts';
import { hardwareList } from '../../src/shop/hardware-list.ts';
import { operationsOf } from '../../src/shop/operations.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const carcass = (id: string, x: number) => ({
  id,
  name: id,
  place: { x: { rule: 'at', mm: x }, y: { rule: 'at', mm: 0 }, z: { rule: 'at', mm: 0 } },
  facing: 'right',
  size: { width: 900, height: 700, depth: 600 },
  material: 'birch-ply-18',
  backMaterial: 'birch-ply-6',
  joints: { corner: 'dado', dadoDepthMm: 6, back: { kind: 'groove', grooveDepthMm: 6, setbackMm: 12 } },
  opening: { id: `opening-${id}`, content: { kind: 'empty' } },
});
const designOf = (braces: readonly object[]): Design =>
  designSchema.parse({
    ...emptyDesign('Test', 'mm'),
    cabinet: { carcasses: [carcass('carcass-1', 0), carcass('carcass-2', 903)], braces },
  }) as Design;
const design = designOf([
  {
    id: 'brace-1',
    item: 'brace-bar-30',
    lies: 'top',
    from: { carcass: 'carcass-1', at: [700, 100, 0] },
    to: { carcass: 'carcass-2', at: [197, 100, 0] },
  },
]);
const fitout = solveFitOut(design, catalog, rules);
const drawings = createDrawings({ design, fitout, catalog, rules, space: null });

describe('a brace in the shop', () => {
  it('is drilled in the tops that it lies on, and in no other part', () => {
    const drills = fitout.panels
      .map((panel) => [panel.id, operationsOf(panel).find(({ kind }) => kind === 'drill')?.count ?? 0] as const)
      .filter(([, count]) => count > 0);
    expect(drills).toEqual([
      ['carcass-1/top', 2],
      ['carcass-2/top', 2],
    ]);
    // The two tops are drilled alike on opposite ends: each has its own mark and drawing.
    const marks = ['carcass-1/top', 'carcass-2/top'].map((id) => drawings.marks.markOf.get(id));
    const text = drawings.draw(marks[0] ?? '')?.flatMap(({ shapes }) => shapes) ?? [];
    expect(text.filter((shape) => shape.kind === 'circle').length).toBeGreaterThanOrEqual(2);
    expect(new Set(marks).size).toBe(2);
  });

  it('has a drawing of its bar and a file for the drill', () => {
    expect(drawings.papers).toContain('brace-brace-1');
    const [sheet] = drawings.draw('brace-brace-1') ?? [];
    // Without a name of its own it goes by its number.
    expect(sheet?.title).toBe('BR1 brace 1');
    // Bolts from 700 to 903 + 197 = 1,100: 400, and 25 beyond each end. Holes at 25, 65, 385 and 425 on the middle of 30.
    const circles = [
      ...(drawings.templateFile('brace-brace-1') ?? '').matchAll(
        /CIRCLE[\s\S]*?\n10\n([\d.]+)\n20\n([\d.]+)[\s\S]*?\n40\n([\d.]+)/g,
      ),
    ];
    expect(circles.map(([, x, y, r]) => [Number(x), Number(y), Number(r)])).toEqual([
      [25, 15, 4.25],
      [65, 15, 4.25],
      [385, 15, 4.25],
      [425, 15, 4.25],
    ]);
  });

  it('is on the pick list with its bolts, washers and nuts', () => {
    const rows = hardwareList({ fitout, catalog, rules });
    const row = (item: string) => rows.find((each) => each.item === item);
    expect(row('brace-bar-30')?.quantity).toBeCloseTo(0.45, 9);
    expect(['bolt-m8x40', 'washer-m8-30', 'lock-nut-m8'].map((item) => row(item)?.quantity)).toEqual([4, 4, 4]);
  });

  it('leaves every part without braces as it was', () => {
    const bare = solveFitOut(designOf([]), catalog, rules);
    const undrilled = fitout.panels.map((panel) => ({
      ...panel,
      cuts: panel.cuts.filter((cut) => cut.kind !== 'hole'),
    }));
    expect(undrilled).toEqual(bare.panels);
    expect(createDrawings({ design, fitout: bare, catalog, rules, space: null }).papers).toEqual(['assembly-order']);
  });
});
