import { type Pose, placed, signedArea, type Vec2 } from '../base/index.ts';
import { boxShape, shapeAt } from '../bodies/index.ts';
import type { Material } from '../catalog/index.ts';
import type { NodeId } from '../design/index.ts';
import type { CarcassContext } from './context.ts';
import type { PlateFlange } from './fittings/plate-edges.ts';
import { flatPattern } from './flat-pattern.ts';
import { sheetMassKg, sheetSigmaShare } from './masses.ts';
import type { CutoutOutline, Panel, PanelCut, PartId } from './parts.ts';
import { type FittingParts, NO_PARTS } from './solved.ts';

/** Area of a cut-out (mm²); rounded corners take less than square ones. */
export const cutoutArea = (outline: CutoutOutline): number => {
  if (outline.shape === 'circle') return (Math.PI * outline.diameter ** 2) / 4;
  if (outline.shape === 'polygon') return Math.abs(signedArea(outline.corners));
  const { from, to, cornerRadius } = outline;
  return (to[0] - from[0]) * (to[1] - from[1]) - (4 - Math.PI) * cornerRadius ** 2;
};

export interface PlateJob {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly role: string;
  readonly name: string;
  readonly sheet: Material;
  /** Length (panel x) × width (panel y). */
  readonly size: Vec2;
  readonly cuts: readonly PanelCut[];
  /** From panel to carcass coordinates. */
  readonly pose: Pose;
  readonly mover: PartId | null;
  /** Both edges along the length bent square to the rear; null or left out for a flat plate. */
  readonly flange?: PlateFlange | null;
}

/**
 * A plate that stands at any angle in the carcass, with its body and its mass. Cut-outs are taken off its volume,
 * screw holes are not; cut-outs must not overlap.
 */
export const platePanel = (job: PlateJob, context: CarcassContext): FittingParts => {
  const { id, origin, name, sheet, size, pose, mover } = job;
  const [length] = size;
  const t = sheet.thicknessMm;
  const carcass = context.carcass.id;
  const { width, cuts, bends, below, boxes, middle } = flatPattern(size, t, job.cuts, job.flange ?? null);
  const taken = cuts.reduce((area, cut) => (cut.kind === 'cutout' ? area + cutoutArea(cut.outline) : area), 0);
  const volumeMm3 = (length * width - taken) * t;
  const massKg = sheetMassKg(volumeMm3, sheet);
  const panel: Panel = {
    id,
    origin,
    carcass,
    role: job.role,
    name,
    material: sheet.id,
    thickness: t,
    length,
    width,
    outline: null,
    grain: sheet.grain,
    bands: { l1: null, l2: null, w1: null, w2: null },
    ...(bends.length > 0 ? { bends } : {}),
    hand: null,
    cuts,
    // Of the flat, so that the plate between its bends lies where it stands.
    pose: { ...pose, at: placed(pose, [0, -below, 0]) },
    mover,
    volumeMm3,
    massKg,
  };
  const common = { id, origin, carcass, name, mover };
  return {
    ...NO_PARTS,
    panels: [panel],
    bodies: boxes.map((box, i) => ({
      ...common,
      id: i === 0 ? id : `${id}/flange-${i}`,
      kind: 'panel',
      shape: shapeAt(boxShape(box), pose),
    })),
    masses: [
      { ...common, kind: 'panel', massKg, sigmaKg: massKg * sheetSigmaShare(sheet, context), at: placed(pose, middle) },
    ],
  };
};
