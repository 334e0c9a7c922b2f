import { type Box, boxMiddle, type Vec3 } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { Hardware } from '../catalog/index.ts';
import type { NodeId } from '../design/index.ts';
import type { CarcassContext } from './context.ts';
import type { FitProblem, PartId } from './parts.ts';
import { type FittingParts, NO_PARTS } from './solved.ts';
import { unknown } from './stock.ts';

export interface FoundHardware {
  readonly record: Hardware | null;
  readonly problems: readonly FitProblem[];
}

/** A hardware record, or the problem that the catalog has none of that id; null asks for nothing. */
export const hardwareOf = (context: CarcassContext, id: string | null, at: NodeId): FoundHardware => {
  if (id === null) return { record: null, problems: [] };
  const record = context.catalog.hardware.get(id) ?? null;
  return { record, problems: record ? [] : [unknown('unknown-hardware', at, id)] };
};

/** Length of a bolt under its head, from the size in its id (`bolt-m8x40`), else with its head. */
export const boltLengthMm = ({ id, sizeMm }: Hardware): number => Number(/x(\d+)$/.exec(id)?.[1] ?? sizeMm?.[0] ?? 0);

export interface PieceWish {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly item: string | null;
  /** Pieces or metres, as the record counts. */
  readonly quantity: number;
  /** Where it is: the room that it takes, or a point where it takes none worth counting. */
  readonly at: Box | Vec3;
  readonly mover: PartId | null;
}

const isBox = (at: Box | Vec3): at is Box => 'min' in at;

/** A piece of hardware with its mass, and its body where it takes room. */
export const pieceOf = (context: CarcassContext, wish: PieceWish): FittingParts => {
  const { id, origin, quantity, mover } = wish;
  const { record, problems } = hardwareOf(context, wish.item, origin);
  if (!record) return { ...NO_PARTS, problems };
  const at = isBox(wish.at) ? boxMiddle(wish.at) : wish.at;
  const massKg = record.massKg * quantity;
  const common = { id, origin, carcass: context.carcass.id, name: record.name, mover };
  return {
    ...NO_PARTS,
    hardware: [{ ...common, from: 'hardware', item: record.id, quantity, lengthMm: null, at }],
    masses: [{ ...common, kind: 'hardware', massKg, sigmaKg: massKg * context.rule('hardware-mass-sigma-share'), at }],
    bodies: isBox(wish.at) ? [{ ...common, kind: 'hardware', shape: boxShape(wish.at) }] : [],
  };
};

/**
 * Screws and bolts for the pick list. Their mass is in the allowance for fasteners that each assembly carries, so
 * they have none of their own here.
 */
export const fastenersOf = (context: CarcassContext, wish: Omit<PieceWish, 'at'>): FittingParts => {
  if (wish.quantity <= 0) return NO_PARTS;
  const { id, origin, quantity, mover } = wish;
  const { record, problems } = hardwareOf(context, wish.item, origin);
  if (!record) return { ...NO_PARTS, problems };
  const carcass = context.carcass.id;
  const use = { id, origin, carcass, from: 'hardware', item: record.id, name: record.name, quantity } as const;
  return { ...NO_PARTS, hardware: [{ ...use, lengthMm: null, at: null, mover }] };
};

/** How many screws hold a joint of this length: one near each end and no two further apart than the pitch. */
export const screwsAlong = (context: CarcassContext, length: number): number => {
  const between = Math.max(0, length - 2 * context.rule('screw-first'));
  return 2 + Math.max(0, Math.ceil(between / context.rule('screw-pitch')) - 1);
};

/**
 * The box of a piece of length × width × height fixed on the front of something, its length across and its width up
 * about a point of the front: `inward` into the carcass, or out towards the viewer.
 */
export const onFront = ([length, width, height]: Vec3, point: Vec3, way: 'inward' | 'outward'): Box => ({
  min: [point[0] - length / 2, way === 'inward' ? point[1] : point[1] - height, point[2] - width / 2],
  max: [point[0] + length / 2, way === 'inward' ? point[1] + height : point[1], point[2] + width / 2],
});

/** Across × up that pieces fixed on the front of something take there. */
export const frontNeed = (context: CarcassContext, items: readonly (string | null)[]): readonly [number, number] => {
  const sizes = items.flatMap((item) => (item === null ? [] : [context.catalog.hardware.get(item)?.sizeMm ?? null]));
  return [Math.max(0, ...sizes.map((size) => size?.[0] ?? 0)), Math.max(0, ...sizes.map((size) => size?.[1] ?? 0))];
};
