import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Box, boxUnion } from '../../src/base/index.ts';
import { shapeBox } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Carcass, Design } from '../../src/design/index.ts';
import { type Panel, solveFitOut } from '../../src/fitout/index.ts';
import { partDxf } from '../../src/shop/dxf/index.ts';
import { randomDesign } from './arbitrary.ts';
import { boxOf, type Kernel, loadKernel } from './kernel.ts';

/**
 * What leaves for the saw is put together again: each part is cut out of its sheet as its router file says, set where it
 * stands, and all are joined. That must be the bodies that were judged: the same volume, in the same place.
 */
let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const catalog = standardCatalog();

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

/** A slope that leaves a land is known from its angle, to a twentieth of a degree: what that is over its length. */
const slopesMm3 = ({ bevels = [], length, width }: Panel): number =>
  bevels.reduce((sum, { setMm, tiltRad, landMm = 0 }) => {
    const off = landMm === 0 ? 0 : (setMm * 0.001) / Math.sin(tiltRad) ** 2;
    return sum + (off * setMm * Math.max(length, width)) / 2;
  }, 0);

/** What 256 corners leave of the rounds of a panel: 1 − sin(2π/256)/(2π/256) = 1.004e-4 of each full circle. */
const ofRounds = ({ cuts, thickness }: Panel): number =>
  cuts.reduce((sum, cut) => {
    if (cut.kind !== 'cutout' || cut.outline.shape === 'polygon') return sum;
    const radius = cut.outline.shape === 'circle' ? cut.outline.diameter / 2 : cut.outline.cornerRadius;
    return sum + 1.01e-4 * Math.PI * radius ** 2 * thickness;
  }, 0);

/** What a reader leaves standing that cuts round corners as their chords: (π − 2) r² of the four of a rectangle. */
const ofChords = ({ cuts, thickness }: Panel): number =>
  cuts.reduce(
    (sum, cut) =>
      cut.kind === 'cutout' && cut.outline.shape === 'rectangle'
        ? sum + (Math.PI - 2) * cut.outline.cornerRadius ** 2 * thickness
        : sum,
    0,
  );

interface Tally {
  joints: number;
  compared: number;
  readonly seen: Map<string, number>;
}

const noteStructure = ({ seen }: Tally, { chamfers, chases, wheelhouses, stand, anchors }: Carcass): void => {
  const has = { chamfers, chases, wheelhouses, anchors, stand: stand.kind === 'none' ? [] : [stand] };
  for (const [what, list] of Object.entries(has)) if (list.length > 0) seen.set(what, (seen.get(what) ?? 0) + 1);
};

const putTogether = (design: Design, tally: Tally): void => {
  const fitOut = solveFitOut(design, catalog, houseRules(catalog, design.houseRules));
  // What found no room is drawn where it has none: two things in one place are a problem that is told.
  if (fitOut.problems.length > 0) return;
  const panels = fitOut.panels as readonly Panel[];
  const files = panels.map((panel) => partDxf(panel, 'mm'));
  tally.joints += panels.flatMap(({ cuts }) => cuts.filter((cut) => 'takes' in cut && cut.takes !== null)).length;
  const [carcass] = design.cabinet.carcasses;
  if (!carcass) return;
  noteStructure(tally, carcass);
  const allowed = panels.reduce((sum, panel) => sum + allowedMm3([panel]) + slopesMm3(panel), 0);
  panels.forEach((panel, i) => {
    const part = kernel.cutPart(panel, files[i] ?? '', 'true');
    const rounds = 1.001 * ofChords(panel) + ofRounds(panel);
    const spare = allowedMm3([panel]) + slopesMm3(panel);
    expect(Math.abs(part.volume() - panel.volumeMm3)).toBeLessThan(spare + rounds);
    // Its record alone, without the rounding of the file.
    expect(Math.abs(kernel.wood(panel).volume() - panel.volumeMm3)).toBeLessThan(1 + ofRounds(panel));
  });
  // A body ends at the rectangle that a hole touches, so that what passes meets no wood.
  const parts = panels.map((panel, i) => kernel.cutPart(panel, files[i] ?? '', 'touched'));
  // No two parts in one place.
  const shared = parts.reduce((sum, part, i) => {
    const others = parts.slice(i + 1);
    return sum + (part.volume() - kernel.less(part, others).volume());
  }, 0);
  expect(shared).toBeLessThan(allowed);
  // A joint may run on where the board that sits in it is cut off for a corner or a wheel; elsewhere it is filled.
  const cutOff = carcass.chamfers.length + carcass.wheelhouses.length > 0;
  const pockets = cutOff ? panels.flatMap((panel) => kernel.recesses(panel)) : [];
  // A plate is judged as whole: what stands in its cut-outs closes them.
  const plates = panels.filter(({ role }) => role === 'plate').flatMap((panel) => kernel.cutouts(panel));
  panels.forEach((panel, i) => {
    // A slat goes round the roll, which no rigid body does.
    if (panel.role === 'slat') return;
    const own = fitOut.bodies.filter(
      ({ id }) => id === panel.id || id.startsWith(`${panel.id}/piece-`) || id.startsWith(`${panel.id}/flange-`),
    );
    const [first, ...more] = own.map(({ shape }) => shapeBox(shape));
    const part = parts[i];
    if (!first || !part) throw new Error(`${panel.id} has no body`);
    const solids = own.map(({ shape }) => kernel.body(shape));
    // The same volume in the same place: what one has and the other has not is what rounding a depth leaves.
    expect(kernel.less(part, solids).volume()).toBeLessThan(allowed);
    for (const solid of solids)
      expect(kernel.less(solid, [...parts, ...pockets, ...plates]).volume()).toBeLessThan(allowed);
    expect(worstOff(boxOf(part), more.reduce(boxUnion, first))).toBeLessThan(0.06);
    tally.compared++;
  });
};

describe('cut parts put together', () => {
  it('are the bodies: their volume, their middle and their extents, with no two parts in one place', () => {
    const tally: Tally = { joints: 0, compared: 0, seen: new Map() };
    fc.assert(
      fc.property(randomDesign(fc, { maxCarcasses: 1, depth: 2, gentle: true }), (design) =>
        putTogether(design, tally),
      ),
      { seed: 314_159, numRuns: 120 },
    );
    expect(tally.joints).toBeGreaterThan(100);
    expect(tally.compared).toBeGreaterThan(100);
  });

  it('are the bodies of carcasses with cut-off corners, wheelhouses, chases, stands and anchors', () => {
    const tally: Tally = { joints: 0, compared: 0, seen: new Map() };
    const made = randomDesign(fc, { maxCarcasses: 1, maxGear: 0, depth: 1, gentle: true, structured: true });
    fc.assert(
      fc.property(made, (design) => putTogether(design, tally)),
      { seed: 31_415, numRuns: 500 },
    );
    for (const what of ['chamfers', 'chases', 'wheelhouses', 'stand', 'anchors'])
      expect(tally.seen.get(what)).toBeGreaterThan(15);
  });
});
