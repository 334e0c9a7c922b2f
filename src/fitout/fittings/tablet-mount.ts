import { type Box, boxMiddle, radians, type Vec3 } from '../../base/index.ts';
import { boxShape } from '../../bodies/index.ts';
import type { Device } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { ACROSS, DEEP, UP, withAxis } from '../axes.ts';
import type { HoleWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, hardwareOf, onFront, pieceOf } from '../hardware.ts';
import type { Mover, PartId } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { unknown } from '../stock.ts';
import { proudOf, reachOf } from './leaf.ts';
import type { FittingSolver } from './solver.ts';

type TabletMount = FittingByKind['tablet-mount'];

const BOLTS = 4;

/** Sizes of a mount as it is stowed: the screen flat in the face, the arm behind it. */
interface Make {
  /** Width × thickness × height of the screen in its dock. */
  readonly screen: Vec3;
  /** Length × thickness × height of the arm. */
  readonly arm: Vec3;
  readonly gap: number;
  readonly reveal: number;
  readonly proud: number;
  /** From the line that the arm swings about to the line that the screen turns about. */
  readonly toPivot: number;
  /** How far from its own line the screen reaches when it turns. */
  readonly screenRadius: number;
  /** How far from its line anything of the stowed mount reaches. */
  readonly radius: number;
}

const screenSize = (device: Device | undefined): Vec3 =>
  device
    ? [
        Math.max(device.faceMm.width, device.behindMm.width),
        device.behindMm.body,
        Math.max(device.faceMm.height, device.behindMm.height),
      ]
    : [0, 0, 0];

const latchSize = (fitting: TabletMount, { catalog }: Pick<CarcassContext, 'catalog'>): Vec3 =>
  (fitting.latch === null ? null : catalog.hardware.get(fitting.latch)?.sizeMm) ?? [0, 0, 0];

const makeOf = (fitting: TabletMount, { catalog, rule }: CarcassContext): Make => {
  const screen = screenSize(catalog.devices.get(fitting.tablet));
  const [length, width, height] = catalog.hardware.get(fitting.arm)?.sizeMm ?? [0, 0, 0];
  const [gap, proud] = [rule('gap-moving-parts'), proudOf({ rule })];
  const latch = latchSize(fitting, { catalog });
  const screenRadius = Math.max(Math.hypot(screen[0] / 2, screen[1]), Math.hypot(latch[0] / 2, latch[2]));
  // Turning on a short arm, the screen still clears the side that the arm is bolted to.
  const toPivot = Math.max(length, screenRadius + gap);
  const radius = Math.max(
    reachOf(toPivot + screen[0] / 2, screen[1], proud),
    reachOf(length, screen[1] + width, proud),
    reachOf(toPivot + latch[0] / 2, screen[1] + latch[2], proud),
    toPivot + screenRadius,
  );
  return {
    screen,
    arm: [length, width, height],
    gap,
    reveal: rule('reveal-front'),
    proud,
    toPivot,
    screenRadius,
    radius,
  };
};

/** A span of `size` that begins `from` the side that the arm is bolted to. */
const fromSide = ({ box }: Room, side: TabletMount['side'], from: number, size: number): readonly [number, number] =>
  side === 'left'
    ? [box.min[ACROSS] + from, box.min[ACROSS] + from + size]
    : [box.max[ACROSS] - from - size, box.max[ACROSS] - from];

const stowed = (fitting: TabletMount, room: Room, make: Make): { readonly screen: Box; readonly arm: Box } => {
  const { box } = room;
  const middle = (box.min[UP] + box.max[UP]) / 2;
  const solid = (size: Vec3, from: number, deep: number): Box => {
    const [low, high] = fromSide(room, fitting.side, from, size[0]);
    const front = box.min[DEEP] + deep;
    return { min: [low, front, middle - size[2] / 2], max: [high, front + size[1], middle + size[2] / 2] };
  };
  const { screen, arm, toPivot, reveal } = make;
  return {
    screen: solid(screen, reveal + toPivot - screen[0] / 2, 0),
    arm: solid(arm, reveal, screen[1]),
  };
};

/** The arm about an upright line before the face, the screen about one behind it at the end of the arm. */
const moversOf = (
  fitting: TabletMount,
  room: Room,
  make: Make,
  context: CarcassContext,
): readonly [arm: Mover, screen: Mover] => {
  const { opening, box } = room;
  const name = opening.name === '' ? `${context.carcass.name} tablet`.trim() : opening.name;
  const [line] = fromSide(room, fitting.side, make.reveal, 0);
  const [pivot] = fromSide(room, fitting.side, make.reveal + make.toPivot, 0);
  const out: Vec3 = fitting.side === 'left' ? [0, 0, -1] : [0, 0, 1];
  const back: Vec3 = fitting.side === 'left' ? [0, 0, 1] : [0, 0, -1];
  const armId: PartId = `${opening.id}/arm-swing`;
  const turning = (point: Vec3, axis: Vec3, deg: number): Mover['motion'] => {
    return { kind: 'turn', point, axis, travelRad: radians(deg) };
  };
  const rests = (open: string) => [
    { name: 'stowed', share: 0 },
    { name: open, share: 1 },
  ];
  const low = box.min[UP];
  return [
    {
      id: armId,
      origin: opening.id,
      name: `${name} arm`,
      motion: turning([line, box.min[DEEP] - make.proud, low], out, fitting.swingDeg),
      carriedBy: room.mover,
      rests: rests('out'),
    },
    {
      id: `${opening.id}/screen-turn`,
      origin: opening.id,
      name,
      motion: turning([pivot, box.min[DEEP] + make.screen[1], low], back, fitting.turnDeg),
      carriedBy: armId,
      rests: rests('turned'),
    },
  ];
};

const screenParts = (device: Device, box: Box, room: Room, mover: PartId, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const at = boxMiddle(box);
  const { massKg, massSigmaKg: sigmaKg } = device;
  const common = { id: `${id}/screen`, origin: id, carcass: context.carcass.id, name: device.name, mover };
  return {
    ...NO_PARTS,
    bodies: [{ ...common, kind: 'device', shape: boxShape(box) }],
    masses: [{ ...common, kind: 'device', massKg, sigmaKg, at }],
    hardware: [{ ...common, from: 'device', item: device.id, quantity: 1, lengthMm: null, at }],
    devices: [{ id: common.id, origin: id, device: device.id, at, opening: id, mover }],
  };
};

/** Four bolts through the side, behind where the arm is stowed. */
const boltHoles = (fitting: TabletMount, room: Room, arm: Box, context: CarcassContext): readonly HoleWish[] => {
  const wall = room.walls[fitting.side];
  if (!wall || !room.fits) return [];
  const at = boxMiddle(arm);
  const surface = (fitting.side === 'left' ? room.box.min : room.box.max)[ACROSS];
  const [deep, up] = [(arm.max[DEEP] - arm.min[DEEP]) / 4, (arm.max[UP] - arm.min[UP]) / 4];
  return [-1, 1].flatMap((i) =>
    [-1, 1].map((j) => ({
      board: wall.board.id,
      at: [surface, at[DEEP] + i * deep, at[UP] + j * up] as const,
      diameter: context.rule('clamp-bolt-hole'),
      depth: null,
      why: `${fitting.arm} bolt`,
    })),
  );
};

/** The latch behind the screen at the middle of its upper edge. */
const latchParts = (
  fitting: TabletMount,
  screen: Box,
  room: Room,
  mover: PartId,
  context: CarcassContext,
): FittingParts => {
  const { id } = room.opening;
  if (fitting.latch === null) return NO_PARTS;
  const size = hardwareOf(context, fitting.latch, id).record?.sizeMm ?? null;
  const across = (screen.min[ACROSS] + screen.max[ACROSS]) / 2;
  const at: Vec3 = [across, screen.max[DEEP], screen.max[UP] - (size?.[1] ?? 0) / 2];
  const place = size ? onFront(size, at, 'inward') : at;
  return pieceOf(context, { id: `${id}/latch`, origin: id, item: fitting.latch, quantity: 1, at: place, mover });
};

const solveTabletMount = (fitting: TabletMount, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const make = makeOf(fitting, context);
  const device = context.catalog.devices.get(fitting.tablet);
  const { record } = hardwareOf(context, fitting.arm, id);
  const { screen, arm } = stowed(fitting, room, make);
  const [swing, turn] = moversOf(fitting, room, make, context);
  const own: FittingParts = {
    ...NO_PARTS,
    movers: [swing, turn],
    holes: record ? boltHoles(fitting, room, arm, context) : [],
    problems: [
      ...(device ? [] : [unknown('unknown-device', id, fitting.tablet)]),
      ...(room.walls[fitting.side] === null ? [badJoint(id, [`arm meets no panel at its ${fitting.side}`])] : []),
    ],
  };
  return together([
    own,
    device ? screenParts(device, screen, room, turn.id, context) : NO_PARTS,
    latchParts(fitting, screen, room, turn.id, context),
    pieceOf(context, {
      id: `${id}/arm`,
      origin: id,
      item: fitting.arm,
      quantity: 1,
      at: record?.sizeMm ? arm : boxMiddle(arm),
      mover: swing.id,
    }),
    fastenersOf(context, { id: `${id}/arm-bolts`, origin: id, item: PIECES.clamp, quantity: BOLTS, mover: room.mover }),
  ]);
};

/**
 * A screen on an arm. Stowed, the screen lies flat behind the face with the arm behind it; the arm swings out about an
 * upright line before the face like a leaf, and the screen turns on it about an upright line of its own.
 */
export const tabletMountSolver: FittingSolver<TabletMount> = {
  leastRoom: (fitting, _where, context) => {
    const { screen, arm, gap, reveal, radius } = makeOf(fitting, context);
    const latch = latchSize(fitting, context);
    const worth = context.rule('least-inside');
    const least: Vec3 = [
      reveal + radius + gap,
      screen[1] + Math.max(arm[1], screen[0] / 2, latch[2]) + gap,
      Math.max(screen[2], arm[2], latch[1]) + 2 * reveal,
    ];
    return withAxis(least, UP, Math.max(worth, least[UP]));
  },
  solve: solveTabletMount,
};
