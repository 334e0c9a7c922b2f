import type { Box, Vec2, Vec3 } from '../base/index.ts';
import { type PlateFlange, plateBends } from './fittings/plate-edges.ts';
import type { BendLine, CutoutOutline, PanelCut } from './parts.ts';

/** A plate as it is cut, and where it is once its edges are bent. */
export interface FlatPattern {
  /** Of the sheet before it is bent. */
  readonly width: number;
  readonly cuts: readonly PanelCut[];
  readonly bends: readonly BendLine[];
  /** What lies below the plate's lower edge in the flat. */
  readonly below: number;
  /** What takes room when it is bent, in plate coordinates, drawn with sharp edges; the plate itself first. */
  readonly boxes: readonly Box[];
  /** Middle of the mass of a plate without cuts, in plate coordinates. */
  readonly middle: Vec3;
}

const outlineUp = (outline: CutoutOutline, by: number): CutoutOutline => {
  const up = ([x, y]: Vec2): Vec2 => [x, y + by];
  switch (outline.shape) {
    case 'rectangle':
      return { ...outline, from: up(outline.from), to: up(outline.to) };
    case 'circle':
      return { ...outline, at: up(outline.at) };
    case 'polygon':
      return { ...outline, corners: outline.corners.map(up) };
  }
};

const cutUp = (cut: PanelCut, by: number): PanelCut => {
  const up = ([x, y]: Vec2): Vec2 => [x, y + by];
  if (cut.kind === 'cutout') return { ...cut, outline: outlineUp(cut.outline, by) };
  if (cut.kind === 'hole') return { ...cut, at: up(cut.at) };
  return { ...cut, from: up(cut.from), to: up(cut.to) };
};

/**
 * The flat of a plate of length × height whose cuts are in plate coordinates: two flanges and the plate less two
 * deductions. A point of the plate lies flange − deduction higher in the flat.
 */
export const flatPattern = (
  [length, height]: Vec2,
  thickness: number,
  cuts: readonly PanelCut[],
  flange: PlateFlange | null,
): FlatPattern => {
  const plate: Box = { min: [0, 0, 0], max: [length, height, thickness] };
  if (flange === null)
    return {
      width: height,
      cuts,
      bends: [],
      below: 0,
      boxes: [plate],
      middle: [length / 2, height / 2, thickness / 2],
    };
  const { outsideMm, bend } = flange;
  const below = outsideMm - bend.deductionMm;
  const behind = outsideMm - thickness;
  const box = (y: number): Box => ({ min: [0, y, -behind], max: [length, y + thickness, 0] });
  const z = (height * thickness - 2 * behind * behind) / 2 / (height + 2 * behind);
  return {
    width: 2 * outsideMm + height - 2 * bend.deductionMm,
    cuts: cuts.map((cut) => cutUp(cut, below)),
    bends: plateBends(flange, length, height),
    below,
    boxes: [plate, box(0), box(height - thickness)],
    middle: [length / 2, height / 2, z],
  };
};
