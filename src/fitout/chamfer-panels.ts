import { add, type Box, cross, dot, type Pose, placed, scale, subtract, type Vec3 } from '../base/index.ts';
import { convexHull } from '../bodies/index.ts';
import { withAxis } from './axes.ts';
import type { ChamferCut } from './chamfers.ts';
import type { CarcassContext } from './context.ts';
import { fastenersOf, screwsAlong } from './hardware.ts';
import { sheetMassKg, sheetSigmaShare } from './masses.ts';
import type { Bevel, EdgeBands, Panel } from './parts.ts';
import { type FittingParts, NO_PARTS, together } from './solved.ts';
import { PIECES } from './standard-pieces.ts';
import { steepEdges } from './steep-edges.ts';

type Edge = Extract<keyof EdgeBands, 'l1' | 'l2'>;

/** What the two corners of one end of a cross-section, outer and inner, make of the edge there: y grows away from l1. */
const bevelAt = (edge: Edge, outerY: number, innerY: number, thickness: number): readonly Bevel[] => {
  const setMm = Math.abs(outerY - innerY);
  const outerLonger = edge === 'l1' ? outerY < innerY : outerY > innerY;
  return [{ edge, tiltRad: Math.atan(setMm / thickness), longFace: outerLonger ? 'b' : 'a', setMm }];
};

/** Where a chamfer's panel lies: x along its run, y across it from the first outer corner's side, z inward. */
const lie = (cut: ChamferCut): { readonly pose: Pose; readonly ys: readonly number[]; readonly low: number } => {
  const x = withAxis([0, 0, 0], cut.run, 1);
  const z = scale(cut.inner.normal, -1);
  const y = cross(z, x);
  const [hub] = cut.outer;
  const ys = [...cut.outer, ...cut.innerEdges].map((point) => dot(subtract(point, hub), y));
  const low = Math.min(...ys);
  return { pose: { turn: [x, y, z], at: add(hub, scale(y, low)) }, ys, low };
};

const bodyShape = (cut: ChamferCut, length: number) => {
  const ends = [...cut.outer, ...cut.innerEdges];
  const by: Vec3 = withAxis([0, 0, 0], cut.run, length);
  return convexHull([...ends, ...ends.map((point) => add(point, by))]);
};

/** Area (mm²) and middle of the cross-section, a trapezium between outer and inner edge. */
const sectionOf = (ys: readonly number[], low: number, t: number) => {
  const [o1 = 0, o2 = 0, i1 = 0, i2 = 0] = ys.map((y) => y - low);
  const [outer, inner] = [Math.abs(o2 - o1), Math.abs(i2 - i1)];
  const area = ((outer + inner) / 2) * t;
  const z = (t * (outer + 2 * inner)) / (3 * (outer + inner));
  // The middles of the two edges joined: the centre lies on that line at its height.
  const y = (o1 + o2) / 2 + (((i1 + i2) / 2 - (o1 + o2) / 2) * z) / t;
  return { area, y, z };
};

/** The panel across one cut-off corner: it laps over what it closes, its long edges mitred to its neighbours. */
const chamferPanel = (cut: ChamferCut, length: number, context: CarcassContext): FittingParts => {
  const { carcass, material } = context;
  const t = material.thicknessMm;
  const { pose, ys, low } = lie(cut);
  const [o1 = 0, o2 = 0, i1 = 0, i2 = 0] = ys.map((y) => y - low);
  const width = Math.max(o1, o2, i1, i2);
  const { area, y, z } = sectionOf(ys, low, t);
  const volumeMm3 = area * length;
  const massKg = sheetMassKg(volumeMm3, material);
  const id = `${cut.chamfer.id}/panel`;
  const owner = carcass.name === '' ? carcass.id : carcass.name;
  const common = {
    id,
    origin: carcass.id,
    carcass: carcass.id,
    name: `${owner} chamfer ${cut.chamfer.corner.replace('-', ' ')}`,
    mover: null,
  };
  const firstLow = o1 < o2;
  const panel: Panel = {
    ...common,
    role: 'chamfer',
    material: material.id,
    thickness: t,
    length,
    width,
    outline: null,
    grain: material.grain,
    bands: { l1: null, l2: null, w1: null, w2: null },
    bevels: [...bevelAt(firstLow ? 'l1' : 'l2', o1, i1, t), ...bevelAt(firstLow ? 'l2' : 'l1', o2, i2, t)],
    hand: null,
    cuts: [],
    pose,
    volumeMm3,
    massKg,
  };
  const at = placed(pose, [length / 2, y, z]);
  return together([
    {
      problems: steepEdges(context, panel, panel.bevels ?? []),
      panels: [panel],
      bodies: [{ ...common, kind: 'panel', shape: bodyShape(cut, length) }],
      masses: [{ ...common, kind: 'panel', massKg, sigmaKg: massKg * sheetSigmaShare(material, context), at }],
    },
    fastenersOf(context, {
      id: `${cut.chamfer.id}/screws`,
      origin: carcass.id,
      item: PIECES.joint,
      quantity: 2 * screwsAlong(context, length),
      mover: null,
    }),
  ]);
};

/** The panels of all chamfers of a carcass whose shell fills the box. */
export const chamferPanels = (cuts: readonly ChamferCut[], box: Box, context: CarcassContext): FittingParts =>
  cuts.length === 0
    ? NO_PARTS
    : together(cuts.map((cut) => chamferPanel(cut, box.max[cut.run] - box.min[cut.run], context)));
