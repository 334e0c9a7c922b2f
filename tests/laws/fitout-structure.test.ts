import fc from 'fast-check';
import type { Manifold } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Box, boxUnion, dot, placed, ROUNDING_KG, type Vec3 } from '../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Carcass, Design, Wheelhouse } from '../../src/design/index.ts';
import { type FitOut, type Panel, solveFitOut } from '../../src/fitout/index.ts';
import { depthInto, isSquare, openingBox, volumeOf, woodOf } from '../fitout/measures.ts';
import { randomDesign } from './arbitrary.ts';
import { frameOf, isCutOff, leavesOf } from './frames.ts';
import { type Kernel, loadKernel } from './kernel.ts';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const SEED = 20261127;
const catalog = standardCatalog();
const solve = (design: Design): FitOut => solveFitOut(design, catalog, houseRules(catalog, design.houseRules));

/** A box of carcass coordinates in the vehicle. */
const inVehicle = (fitOut: FitOut, carcass: string, { min, max }: Box): Box => {
  const pose = fitOut.carcasses.find(({ id }) => id === carcass)?.pose;
  if (!pose) throw new Error(`no carcass ${carcass}`);
  const [a, b] = [placed(pose, min), placed(pose, max)];
  const pick = (of: (...list: number[]) => number): Vec3 => [of(a[0], b[0]), of(a[1], b[1]), of(a[2], b[2])];
  return { min: pick(Math.min), max: pick(Math.max) };
};

const thicknessOf = (material: string): number => catalog.materials.get(material)?.thicknessMm ?? Number.NaN;
const standOf = ({ stand }: Carcass): number =>
  stand.kind === 'riser' ? stand.heightMm : stand.kind === 'sub-floor' ? thicknessOf(stand.material) : 0;

/** The clear room of a wheelhouse that was cut, in carcass coordinates; it runs out where no board closes its end. */
const clearOf = (fitOut: FitOut, { id, side, ...at }: Wheelhouse, [w, d]: Vec3): Box => {
  const closed = (end: string): boolean => fitOut.panels.some((panel) => panel.id === `${id}/${end}`);
  const run = side === 'back' ? w : d;
  const from = closed('near-end') ? at.fromMm : 0;
  const to = closed('far-end') ? at.fromMm + at.lengthMm : run;
  if (side === 'back') return { min: [from, d - at.inMm, 0], max: [to, d, at.upMm] };
  return side === 'left'
    ? { min: [0, from, 0], max: [at.inMm, to, at.upMm] }
    : { min: [w - at.inMm, from, 0], max: [w, to, at.upMm] };
};

const chamferPanels = (fitOut: FitOut, { chamfers }: Carcass): readonly Panel[] =>
  chamfers.flatMap(({ id }) => fitOut.panels.filter((panel) => panel.id === `${id}/panel`)) as readonly Panel[];

/** The same carcasses with nothing cut off: their rooms reach from wall to wall. */
const uncut = (design: Design): Design => ({
  ...design,
  cabinet: {
    ...design.cabinet,
    carcasses: design.cabinet.carcasses.map((carcass) => ({ ...carcass, chamfers: [], wheelhouses: [] })),
  },
});

/** Where two panels mitre across a carcass its sides end at the inner face: a triangle at each end stays empty. */
const mitreGaps = (carcass: Carcass, made: readonly Panel[]): number =>
  carcass.chamfers.reduce((sum, chamfer) => {
    const panel = made.find(({ id }) => id === `${chamfer.id}/panel`);
    if (!panel || chamfer.along !== 'across') return sum;
    return sum + (panel.thickness ** 3 * Math.hypot(chamfer.upMm, chamfer.deepMm)) / chamfer.upMm;
  }, 0);

/** Boards of the uncut carcass as far as a wheelhouse and its lining take of them: out of a board, through all of it. */
const takenByWheels = (plain: readonly Panel[], taken: readonly Box[]): readonly Box[] =>
  plain.filter(isSquare).flatMap((panel) => {
    const boxes = woodOf(panel);
    const whole = boxes.reduce<Box | null>((sum, own) => (sum ? boxUnion(sum, own) : own), null);
    const through = ([0, 1, 2] as const).find((axis) => Math.abs(panel.pose.turn[2][axis]) === 1) ?? 0;
    return taken.flatMap((box): readonly Box[] => {
      if (!whole || depthInto(whole, box) <= 0) return [];
      const along = (end: 'min' | 'max'): Vec3 => {
        const of = end === 'min' ? Math.max : Math.min;
        const at = (axis: 0 | 1 | 2): number =>
          axis === through ? whole[end][axis] : of(whole[end][axis], box[end][axis]);
        return [at(0), at(1), at(2)];
      };
      return [{ min: along('min'), max: along('max') }];
    });
  });

/** What nothing fills of the outside of a carcass: neither wood nor joints, rooms, corners cut off, wheels or the stand. */
const leftOver = (design: Design, carcass: Carcass, fitOut: FitOut): number => {
  const { id, joints } = carcass;
  const { width: w, depth: d, height: h } = carcass.size;
  const box = (own: Box): Manifold => kernel.box(inVehicle(fitOut, id, own));
  const low = standOf(carcass);
  const frame = frameOf(fitOut, id);
  const plain = solve(uncut(design));
  const rooms = leavesOf(plain, id)
    .map((opening) => openingBox(plain, opening))
    .filter((room) => volumeOf(room) > 0);
  const chamfers = chamferPanels(fitOut, carcass);
  const shell = box({ min: [0, 0, low], max: [w, d, h] });
  const corners = chamfers.map(({ pose }) => kernel.beyond(shell, pose.turn[2], dot(pose.turn[2], pose.at)));
  const t = thicknessOf(carcass.material);
  const clear = carcass.wheelhouses
    .filter((wheel) => fitOut.panels.some((panel) => panel.id === `${wheel.id}/top`))
    .map((wheel) => clearOf(fitOut, wheel, [w, d, h]));
  const lined = clear.map(({ min, max }) => ({
    min: [min[0] - t, min[1] - t, min[2]] as const,
    max: [max[0] + t, max[1] + t, max[2] + t] as const,
  }));
  const notched = takenByWheels(
    frameOf(plain, id),
    lined.map((own) => inVehicle(fitOut, id, own)),
  );
  const behind =
    joints.back.kind === 'groove' && joints.back.setbackMm > 0
      ? [box({ min: [t, d - joints.back.setbackMm, low + t], max: [w - t, d, h - t] })]
      : [];
  const under = carcass.stand.kind === 'riser' ? [box({ min: [0, 0, 0], max: [w, d, low] })] : [];
  return kernel
    .less(box({ min: [0, 0, 0], max: [w, d, h] }), [
      ...frame.map((panel) => kernel.wood(panel)),
      ...frame.flatMap((panel) => [...kernel.recesses(panel), ...kernel.cutouts(panel)]),
      ...rooms.map((room) => kernel.box(room)),
      ...corners,
      ...clear.map(box),
      ...notched.map((own) => kernel.box(own)),
      ...behind,
      ...under,
    ])
    .volume();
};

const designs = [
  ['any designs', randomDesign(fc, { maxGear: 0 }), 60],
  ['carcasses that can be made', randomDesign(fc, { maxGear: 0, depth: 2, gentle: true, structured: true }), 40],
] as const;

describe.each(designs)('carcasses with cut-off corners and wheelhouses, of %s', (_name, any, numRuns) => {
  const lawful = (law: (design: Design, carcass: Carcass, fitOut: FitOut) => void): number => {
    let cut = 0;
    fc.assert(
      fc.property(any, (design) => {
        const fitOut = solve(design);
        for (const carcass of design.cabinet.carcasses.filter(isCutOff)) {
          if (frameOf(fitOut, carcass.id).length === 0) continue;
          cut++;
          law(design, carcass, fitOut);
        }
      }),
      { seed: SEED, numRuns },
    );
    return cut;
  };

  it('are filled by wood, rooms, corners and wheels, and by nothing twice', () => {
    const cut = lawful((design, carcass, fitOut) => {
      const frame = frameOf(fitOut, carcass.id);
      // What would fall into pieces is told, and drawn whole; a hole where something is housed is told too.
      const told = (words: RegExp): boolean =>
        fitOut.problems.some(({ because }) => because.some((each) => words.test(each)));
      const inPieces = new Set(
        fitOut.problems.flatMap(({ because }) =>
          because.flatMap((words) => /^(.*) would be cut into pieces$/.exec(words)?.[1] ?? []),
        ),
      );
      const wood = frame.filter(({ name }) => !inPieces.has(name)).map((panel) => kernel.wood(panel));
      const rooms = leavesOf(fitOut, carcass.id)
        .map((opening) => openingBox(fitOut, opening))
        .filter((room) => volumeOf(room) > 0)
        .map((room) => kernel.box(room));
      // The kernel rounds to 1e-9 of a metre: over faces of a square metre that is less than 10 mm³.
      wood.forEach((own, i) => {
        const shared = own.volume() - kernel.less(own, [...wood.slice(i + 1), ...rooms]).volume();
        expect(Math.abs(shared)).toBeLessThan(10);
      });
      if (told(/meets what is cut|cut into pieces|lies in a corner/)) return;
      const gaps = mitreGaps(carcass, chamferPanels(fitOut, carcass));
      expect(leftOver(design, carcass, fitOut)).toBeLessThan(gaps + 10);
    });
    expect(cut).toBeGreaterThan(25);
  });
});

describe('what a carcass weighs', () => {
  it('is the sum of what it is made of, without its gear', () => {
    fc.assert(
      fc.property(randomDesign(fc), (design) => {
        const fitOut = solve(design);
        for (const { id, massKg } of fitOut.carcasses) {
          const own = fitOut.masses.filter(({ carcass, kind }) => carcass === id && kind !== 'gear');
          expect(Math.abs(own.reduce((sum, item) => sum + item.massKg, 0) - massKg)).toBeLessThan(ROUNDING_KG);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('has anchors, trim of chases and braces as the catalog weighs them', () => {
    let weighed = 0;
    fc.assert(
      fc.property(randomDesign(fc, { maxGear: 0 }), (design) => {
        const fitOut = solve(design);
        const own = [
          ...design.cabinet.carcasses.flatMap(({ anchors, chases }) => [...anchors, ...chases]),
          ...design.cabinet.braces,
        ];
        for (const { id } of own) {
          const mine = (part: string): boolean => part === id || part.startsWith(`${id}/`);
          const masses = fitOut.masses.filter((item) => mine(item.id));
          const bought = fitOut.hardware
            .filter((piece) => mine(piece.id))
            .reduce(
              (sum, { item, quantity }) => sum + quantity * (catalog.hardware.get(item)?.massKg ?? Number.NaN),
              0,
            );
          expect(Math.abs(masses.reduce((sum, { massKg }) => sum + massKg, 0) - bought)).toBeLessThan(ROUNDING_KG);
          if (bought > 0) weighed++;
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
    expect(weighed).toBeGreaterThan(60);
  });
});
