import fc from 'fast-check';
import loadManifold, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Box, boxUnion, type Pose, type Vec3 } from '../../src/base/index.ts';
import { shapeBox } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type FitOut, type Panel, solveFitOut } from '../../src/fitout/index.ts';
import { partDxf } from '../../src/shop/dxf/index.ts';
import { byParser } from '../shop/dxf/readers.ts';
import { randomDesign } from './arbitrary.ts';

/**
 * What leaves for the saw is put together again: each part is cut out of its sheet as its router file says, set where it
 * stands, and all are joined. That must be the bodies that were judged: the same volume, in the same place.
 */
let kernel: ManifoldToplevel;
beforeAll(async () => {
  kernel = await loadManifold();
  kernel.setup();
});

const catalog = standardCatalog();

/** Row by row, as the kernel takes a placement: the first three columns are the axes. */
const matrixOf = ({ turn: [x, y, z], at }: Pose) =>
  [...x, 0, ...y, 0, ...z, 0, ...at, 1] as unknown as Parameters<Manifold['transform']>[0];

const DEPTH = /-([AB])-([\d_]+)$/;

/** The part as the machine cuts it, from the file alone and the thickness of its sheet; screw holes are filled by screws. */
const cutPart = ({ thickness, pose }: Panel, dxf: string, through: 'true' | 'touched'): Manifold => {
  const read = byParser(dxf);
  const prism = (points: readonly (readonly number[])[], from: number, to: number): Manifold => {
    const flat = new kernel.CrossSection([points.map(([x = 0, y = 0]) => [x, y] as [number, number])], 'Positive');
    return flat.extrude(to - from).translate([0, 0, from]);
  };
  const rectangle = ([x0 = 0, y0 = 0, x1 = 0, y1 = 0]: readonly number[]) => [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  const round = ([x = 0, y = 0]: readonly number[], radius: number) =>
    Array.from({ length: 256 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 256;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    });
  const outline = read.outlines.find(({ layer }) => layer === 'OUTLINE');
  if (!outline) throw new Error('no outline');
  const past = 1;
  const taken = read.outlines.flatMap(({ layer, points, extent }): readonly Manifold[] => {
    if (layer === 'OUTLINE') return [];
    if (layer === 'INNER-CUT') return [prism(through === 'true' ? points : rectangle(extent), -past, thickness + past)];
    const [, face, figure = ''] = DEPTH.exec(layer) ?? [];
    const deep = Number(figure.replace('_', '.'));
    return [face === 'A' ? prism(points, thickness - deep, thickness + past) : prism(points, -past, deep)];
  });
  const bored = read.circles
    .filter(({ layer }) => layer === 'INNER-CUT')
    .map(({ at: [x = 0, y = 0], radius: r }) =>
      prism(through === 'true' ? round([x, y], r) : rectangle([x - r, y - r, x + r, y + r]), -past, thickness + past),
    );
  return prism(outline.points, 0, thickness)
    .subtract(kernel.Manifold.union([...taken, ...bored]))
    .transform(matrixOf(pose));
};

const boxOf = (solid: Manifold): Box => {
  const { min, max } = solid.boundingBox();
  return { min: [...min] as unknown as Vec3, max: [...max] as unknown as Vec3 };
};

const bodyOf = (shape: FitOut['bodies'][number]['shape']): Manifold =>
  kernel.Manifold.hull(shape.vertices.map(([x, y, z]) => [x, y, z] as [number, number, number]));

const worstOff = (a: Box, b: Box): number =>
  Math.max(...([0, 1, 2] as const).flatMap((i) => [Math.abs(a.min[i] - b.min[i]), Math.abs(a.max[i] - b.max[i])]));

/** Depths are on the layers to a tenth of a millimetre: what half of that is over all recesses, and the kernel's rounding. */
const allowedMm3 = (panels: readonly Panel[]): number =>
  panels.reduce(
    (sum, { cuts }) =>
      cuts.reduce(
        (own, cut) =>
          cut.kind === 'hole' || cut.kind === 'cutout'
            ? own
            : own + 0.05 * (cut.to[0] - cut.from[0]) * (cut.to[1] - cut.from[1]),
        sum,
      ),
    10,
  );

describe('cut parts put together', () => {
  it('are the bodies: their volume, their middle and their extents, with no two parts in one place', () => {
    let [joints, compared] = [0, 0];
    fc.assert(
      fc.property(randomDesign(fc, { maxCarcasses: 1, depth: 2, gentle: true }), (design) => {
        const fitOut = solveFitOut(design, catalog, houseRules(catalog, design.houseRules));
        // What found no room is drawn where it has none: two things in one place are a problem that is told.
        const refused = new Set<string>(fitOut.problems.map(({ at }) => at));
        if (refused.size > 0) return;
        const panels = fitOut.panels as readonly Panel[];
        const files = panels.map((panel) => partDxf(panel, 'mm'));
        joints += panels.flatMap(({ cuts }) => cuts.filter((cut) => 'takes' in cut && cut.takes !== null)).length;
        const allowed = allowedMm3(panels);
        panels.forEach((panel, i) => {
          const part = cutPart(panel, files[i] ?? '', 'true');
          // A round corner is cut as its chord by the reader of these tests.
          const rounds = panel.cuts.some(({ kind }) => kind === 'cutout') ? panel.volumeMm3 * 1e-2 : 0;
          expect(Math.abs(part.volume() - panel.volumeMm3)).toBeLessThan(allowedMm3([panel]) + rounds);
        });
        // A body ends at the rectangle that a hole touches, so that what passes meets no wood.
        const parts = panels.map((panel, i) => cutPart(panel, files[i] ?? '', 'touched'));
        const judgedAs = (panel: Panel) =>
          fitOut.bodies.filter(({ id }) => id === panel.id || id.startsWith(`${panel.id}/piece-`));
        const bodies = fitOut.bodies.filter(({ kind }) => kind === 'panel');
        if (bodies.length === 0) return;
        const whole = kernel.Manifold.union(parts);
        const judged = kernel.Manifold.union(bodies.map(({ shape }) => bodyOf(shape)));
        const sum = parts.reduce((total, part) => total + part.volume(), 0);
        // No two parts in one place: together they are as much as one by one.
        expect(Math.abs(whole.volume() - sum)).toBeLessThan(allowed);
        expect(Math.abs(whole.volume() - judged.volume())).toBeLessThan(allowed);
        // The same volume in the same place: what one has and the other has not is what rounding a depth leaves.
        expect(whole.subtract(judged).volume()).toBeLessThan(allowed);
        expect(judged.subtract(whole).volume()).toBeLessThan(allowed);
        panels.forEach((panel, i) => {
          const [first, ...more] = judgedAs(panel).map(({ shape }) => shapeBox(shape));
          const part = parts[i];
          if (!first || !part) throw new Error(`${panel.id} has no body`);
          expect(worstOff(boxOf(part), more.reduce(boxUnion, first))).toBeLessThan(0.06);
          compared++;
        });
      }),
      { seed: 314_159, numRuns: 120 },
    );
    expect(joints).toBeGreaterThan(100);
    expect(compared).toBeGreaterThan(100);
  });
});
