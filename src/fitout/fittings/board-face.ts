import { type Box, boxMiddle, boxSize, type Vec3 } from '../../base/index.ts';
import { boxShape } from '../../bodies/index.ts';
import { ACROSS, UP, withAxis, withSpan } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import { pieceOf } from '../hardware.ts';
import { squareMetres } from '../masses.ts';
import { type FittingParts, NO_PARTS, together } from '../solved.ts';
import { type BoardMake, type CommandBoard, clearEdges, faceDepth, isUpended, lightDepth } from './board-make.ts';
import { alongEdge, hungAt, hungLow, type Leaf, overLeaf, overWithin } from './leaf.ts';

const MM_PER_METRE = 1000;

/** The part of the working face that something may lie on, from the board's inner face to `deep` behind it. */
const workingArea = (fitting: CommandBoard, leaf: Leaf, make: BoardMake, context: CarcassContext): Box => {
  const { box, hung } = leaf;
  const clear = clearEdges(fitting, make, context);
  const [over, along] = [overLeaf(hung), alongEdge(hung)];
  const size = box.max[over] - box.min[over];
  const deep = make.sheet.thicknessMm + faceDepth(make);
  const far = Math.min(size - clear.free, overWithin(leaf.radius, deep, leaf.proud));
  const at = (from: number): number => hungAt(leaf) + (hungLow(hung) ? from : -from);
  const [one, other] = [at(clear.hung), at(far)];
  const behind: Box = {
    min: withAxis(box.min, 1, box.max[1]),
    max: withAxis(box.max, 1, box.max[1] + faceDepth(make)),
  };
  const narrowed = withSpan(behind, over, Math.min(one, other), Math.max(one, other));
  return withSpan(narrowed, along, box.min[along] + clear.other, box.max[along] - clear.other);
};

/** A box of the size across × deep × up in the middle of the low or the high edge of the area, `from` behind it. */
const atEdge = (area: Box, edge: 'low' | 'high', [across, deep, up]: Vec3, from: number): Box => {
  const x = (area.min[ACROSS] + area.max[ACROSS] - across) / 2;
  const z = edge === 'low' ? area.min[UP] : area.max[UP] - up;
  return { min: [x, area.min[1] + from, z], max: [x + across, area.min[1] + from + deep, z + up] };
};

const steelParts = (leaf: Leaf, make: BoardMake, area: Box, context: CarcassContext): FittingParts => {
  if (make.steel <= 0) return NO_PARTS;
  const { id } = leaf.room.opening;
  const box = withSpan(area, 1, area.min[1], area.min[1] + make.steel);
  const [across, , up] = boxSize(box);
  const massKg = squareMetres(across * up) * context.rule('magnetic-face-mass');
  const common = {
    id: `${id}/steel-face`,
    origin: id,
    carcass: context.carcass.id,
    name: 'steel face',
    mover: leaf.mover,
  };
  const sigmaKg = massKg * context.rule('hardware-mass-sigma-share');
  return {
    ...NO_PARTS,
    bodies: [{ ...common, kind: 'hardware', shape: boxShape(box) }],
    masses: [{ ...common, kind: 'hardware', massKg, sigmaKg, at: boxMiddle(box) }],
  };
};

const trayParts = (
  fitting: CommandBoard,
  leaf: Leaf,
  make: BoardMake,
  area: Box,
  context: CarcassContext,
): FittingParts => {
  const { id } = leaf.room.opening;
  const { tray } = make;
  const full = area.max[ACROSS] - area.min[ACROSS];
  const [long, up, deep] = tray?.sizeMm ?? [0, 0, 0];
  const across = tray?.by === 'metre' ? full : long;
  return pieceOf(context, {
    id: `${id}/marker-tray`,
    origin: id,
    item: fitting.markerTray,
    quantity: tray?.by === 'metre' ? across / MM_PER_METRE : 1,
    at: atEdge(area, isUpended(make) ? 'high' : 'low', [across, deep, up], make.steel),
    mover: leaf.mover,
  });
};

const lightParts = (leaf: Leaf, make: BoardMake, area: Box, context: CarcassContext): FittingParts => {
  const { light } = make;
  if (!light) return NO_PARTS;
  const { id } = leaf.room.opening;
  const size: Vec3 = [light.faceMm.width, lightDepth(light), light.faceMm.height];
  const box = atEdge(area, isUpended(make) ? 'low' : 'high', size, make.steel);
  const at = boxMiddle(box);
  const { mover } = leaf;
  const common = { id: `${id}/worklight`, origin: id, carcass: context.carcass.id, name: light.name, mover };
  return {
    ...NO_PARTS,
    bodies: [{ ...common, kind: 'device', shape: boxShape(box) }],
    masses: [{ ...common, kind: 'device', massKg: light.massKg, sigmaKg: light.massSigmaKg, at }],
    hardware: [{ ...common, from: 'device', item: light.id, quantity: 1, lengthMm: null, at }],
    devices: [{ id: common.id, origin: id, device: light.id, at, opening: id, mover }],
  };
};

/**
 * What lies on the working face of a board, stowed with it behind: the steel sheet over the whole of it, the marker
 * tray along the edge that is low when the board is used, the light along the edge that is high then.
 */
export const boardFace = (
  fitting: CommandBoard,
  leaf: Leaf,
  make: BoardMake,
  context: CarcassContext,
): FittingParts => {
  const area = workingArea(fitting, leaf, make, context);
  return together([
    steelParts(leaf, make, area, context),
    trayParts(fitting, leaf, make, area, context),
    lightParts(leaf, make, area, context),
  ]);
};
