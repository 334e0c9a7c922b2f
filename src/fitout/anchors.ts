import { add, type Box, boxAround, scale, type Vec3 } from '../base/index.ts';
import type { Hardware } from '../catalog/index.ts';
import type { Anchor } from '../design/index.ts';
import {
  ACROSS,
  AXES,
  type Axis,
  BACKWARD,
  DEEP,
  type Direction,
  DOWNWARD,
  LEFT,
  RIGHT,
  UP,
  vectorOf,
  withAxis,
} from './axes.ts';
import type { Board, HoleWish } from './board.ts';
import type { CarcassContext } from './context.ts';
import { outsideSize } from './frames.ts';
import { boltLengthMm, pieceOf } from './hardware.ts';
import type { PlacedAnchor } from './parts.ts';
import { badJoint } from './problem.ts';
import { type FittingParts, NO_PARTS, together } from './solved.ts';

/** The panel that an anchor goes through, and the way from there into the vehicle. */
const THROUGH: Readonly<
  Record<'floor' | 'left' | 'right' | 'back', { readonly role: string; readonly into: Direction }>
> = {
  floor: { role: 'bottom', into: DOWNWARD },
  left: { role: 'side-left', into: LEFT },
  right: { role: 'side-right', into: RIGHT },
  back: { role: 'back', into: BACKWARD },
};

const low = (from: string): boolean => from === 'left' || from === 'face' || from === 'start' || from === 'bottom';

const along = ({ from, mm }: { readonly from: string; readonly mm: number }, length: number): number =>
  low(from) ? mm : length - mm;

/** The two axes of the panel that an anchor is measured on, and where it is on each. */
const placeOf = (anchor: Anchor, size: Vec3): readonly (readonly [axis: Axis, mm: number])[] => {
  if (anchor.on === 'floor')
    return [
      [ACROSS, along(anchor.across, size[ACROSS])],
      [DEEP, along(anchor.deep, size[DEEP])],
    ];
  const axis = anchor.side === 'back' ? ACROSS : DEEP;
  return [
    [axis, along(anchor.along, size[axis])],
    [UP, along(anchor.up, size[UP])],
  ];
};

interface Job {
  readonly anchor: Anchor;
  readonly board: Board;
  /** A sheet between the panel and the floor of the vehicle. */
  readonly sub: Board | null;
  readonly into: Direction;
  readonly bolt: Hardware | null;
  readonly washer: Hardware | null;
  /** On the outer face of the panel, and on its inner face. */
  readonly outer: Vec3;
  readonly inner: Vec3;
}

/** Head and washer on their side of the panel, and how deep they are let into it. */
const headOf = ({
  anchor,
  bolt,
  washer,
}: Job): { readonly wide: number; readonly high: number; readonly letIn: boolean } => {
  const [length, wide] = bolt?.sizeMm ?? [0, 0];
  const nominal = bolt ? boltLengthMm(bolt) : length;
  return {
    wide: Math.max(wide, washer?.sizeMm?.[0] ?? 0),
    high: Math.max(0, length - nominal) + (washer?.sizeMm?.[2] ?? 0),
    letIn: anchor.on === 'floor' && anchor.letIn,
  };
};

const holesOf = (context: CarcassContext, job: Job): readonly HoleWish[] => {
  const { bolt, board, inner, outer, sub } = job;
  if (bolt?.threadMm === undefined) return [];
  const { wide, high, letIn } = headOf(job);
  const through: HoleWish = {
    board: board.id,
    at: inner,
    diameter: bolt.threadMm + context.rule('anchor-hole-spare'),
    depth: null,
    why: 'anchor',
  };
  const under = sub === null ? [] : [{ ...through, board: sub.id, at: outer }];
  if (!letIn || high >= board.material.thicknessMm) return [through, ...under];
  return [
    { ...through, diameter: wide + context.rule('anchor-let-in-spare'), depth: high, why: 'anchor head' },
    through,
    ...under,
  ];
};

/** The head where it stands proud of the panel. */
const headBox = (job: Job): Box | Vec3 => {
  const { wide, high, letIn } = headOf(job);
  if (letIn || wide === 0 || high === 0) return job.inner;
  const top = add(job.inner, scale(vectorOf(job.into), -high));
  const reach = AXES.reduce<Vec3>((v, axis) => (axis === job.into.axis ? v : withAxis(v, axis, wide / 2)), [0, 0, 0]);
  return boxAround([add(job.inner, reach), add(job.inner, scale(reach, -1)), add(top, reach)]);
};

/** The nut that the catalog has for a thread. */
const nutFor = (context: CarcassContext, bolt: Hardware | null): string | null =>
  [...context.catalog.hardware.values()].find(
    (record) => record.id.startsWith('lock-nut') && record.threadMm === bolt?.threadMm,
  )?.id ?? null;

const piecesOf = (context: CarcassContext, job: Job): FittingParts => {
  const { anchor, bolt, outer } = job;
  const piece = (what: string, item: string | null, at: Box | Vec3): FittingParts =>
    item === null
      ? NO_PARTS
      : pieceOf(context, { id: `${anchor.id}/${what}`, origin: anchor.id, item, quantity: 1, at, mover: null });
  return together([
    piece('bolt', anchor.bolt, headBox(job)),
    piece('washer', anchor.washer, job.inner),
    piece('insert', anchor.insert, outer),
    piece('nut', anchor.insert === null ? nutFor(context, bolt) : null, outer),
    piece('plate', anchor.plate, outer),
    bracketPiece(context, job),
  ]);
};

/**
 * The bracket of a wall anchor on the outside of its panel, one leg out to the wall and one up the panel, about the bolt.
 * It is fitted once the carcass stands: the carcass bears its weight, but it is not carried in with it.
 */
const bracketPiece = (context: CarcassContext, { anchor, into, outer }: Job): FittingParts => {
  if (anchor.on !== 'wall') return NO_PARTS;
  const [out, up, wide] = context.catalog.hardware.get(anchor.bracket)?.sizeMm ?? [0, 0, 0];
  const away = add(outer, scale(vectorOf(into), out));
  const across: Axis = into.axis === ACROSS ? DEEP : ACROSS;
  const half = (point: Vec3, sign: 1 | -1): Vec3 =>
    withAxis(withAxis(point, across, point[across] + (sign * wide) / 2), UP, point[UP] + (sign * up) / 2);
  const parts = pieceOf(context, {
    id: `${anchor.id}/bracket`,
    origin: anchor.id,
    item: anchor.bracket,
    quantity: 1,
    at: out > 0 ? boxAround([half(outer, -1), half(away, 1)]) : outer,
    mover: null,
  });
  return { ...parts, bodies: parts.bodies.map((body) => ({ ...body, carcass: null })) };
};

const edgeDistance = ({ board, into, outer }: Job): number =>
  Math.min(
    ...AXES.filter((axis) => axis !== into.axis).flatMap((axis) => [
      outer[axis] - board.box.min[axis],
      board.box.max[axis] - outer[axis],
    ]),
  );

const placedOf = (context: CarcassContext, job: Job): PlacedAnchor => {
  const { anchor, board, into, outer } = job;
  const { high, letIn } = headOf(job);
  return {
    id: anchor.id,
    carcass: context.carcass.id,
    on: anchor.on,
    at: outer,
    into: vectorOf(into),
    panel: board.id,
    edgeMm: edgeDistance(job),
    gripMm: Math.max(0, board.material.thicknessMm - (letIn ? high : 0)),
    bolt: anchor.bolt,
    insert: anchor.insert,
    washer: anchor.washer,
    plate: anchor.plate,
    plateBonded: anchor.plateBonded,
    bracket: anchor.on === 'wall' ? anchor.bracket : null,
  };
};

const jobOf = (context: CarcassContext, anchor: Anchor, boards: readonly Board[]): Job | null => {
  const { role, into } = THROUGH[anchor.on === 'floor' ? 'floor' : anchor.side];
  const board = boards.find((each) => each.role === role);
  if (!board) return null;
  const [surface, inside] = into.sign > 0 ? [board.box.max, board.box.min] : [board.box.min, board.box.max];
  // Under a floor the anchor reaches the vehicle below whatever the carcass stands on.
  const reach = anchor.on === 'floor' ? withAxis(surface, UP, 0) : surface;
  const place = (face: Vec3): Vec3 =>
    placeOf(anchor, outsideSize(context.carcass)).reduce((point, [axis, mm]) => withAxis(point, axis, mm), face);
  const piece = (id: string | null): Hardware | null =>
    id === null ? null : (context.catalog.hardware.get(id) ?? null);
  return {
    anchor,
    board,
    sub: anchor.on === 'floor' ? (boards.find((each) => each.role === 'sub-floor') ?? null) : null,
    into,
    bolt: piece(anchor.bolt),
    washer: piece(anchor.washer),
    outer: place(reach),
    inner: place(inside),
  };
};

/**
 * What holds a carcass to the vehicle: a bolt through its floor or through a side or the back, with the hole and the
 * bore for its head in the panel, washer, nut or insert, plate and bracket on the pick list, each with its mass. Only
 * a head that stands proud takes room inside; what lies beyond the panel is the vehicle's.
 */
export const anchorParts = (context: CarcassContext, boards: readonly Board[]): FittingParts =>
  together(
    context.carcass.anchors.map((anchor): Partial<FittingParts> => {
      const job = jobOf(context, anchor, boards);
      if (!job) {
        const where = anchor.on === 'floor' ? 'bottom' : anchor.side;
        return { problems: [badJoint(context.carcass.id, [`anchor meets no panel at its ${where}`])] };
      }
      return together([{ holes: holesOf(context, job), anchors: [placedOf(context, job)] }, piecesOf(context, job)]);
    }),
  );
