import { type Box, boxSize, ROUNDING_MM, shift, type Vec3 } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { ACROSS, type Axis, DEEP, largerOf, RIGHT, TO_FACE, UP, UPWARD, withAxis, withSpan } from '../axes.ts';
import { type Board, faceBand } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { stockedRoom } from '../gear-size.ts';
import type { GearRoom } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, type Side } from '../solved.ts';
import { stockOf } from '../stock.ts';
import type { FittingSolver } from './solver.ts';

type MapSlot = FittingByKind['map-slot'];

interface Form {
  /** The axis that the slots follow each other along. */
  readonly along: Axis;
  /** The sides that the dividers are housed in, and those that must be there. */
  readonly housed: readonly [Side, Side];
  readonly needs: readonly Side[];
}

const FORMS: { readonly [L in MapSlot['lie']]: Form } = {
  upright: { along: ACROSS, housed: ['bottom', 'top'], needs: ['bottom'] },
  flat: { along: UP, housed: ['left', 'right'], needs: ['left', 'right'] },
};
const HOUSED_AXIS = { upright: UP, flat: ACROSS } as const;

const sheetOf = (fitting: MapSlot, context: CarcassContext): Material =>
  stockOf(context.catalog, fitting.material, context.carcass.id).material;

/** Where each slot begins and ends along its axis. */
const spansOf = ({ slots, lie }: MapSlot, { box }: Room, t: number): readonly (readonly [number, number])[] => {
  const { along } = FORMS[lie];
  const clear = (box.max[along] - box.min[along] - (slots - 1) * t) / slots;
  return Array.from({ length: slots }, (_, i) => {
    const from = box.min[along] + i * (clear + t);
    return [from, from + clear] as const;
  });
};

interface Job {
  readonly fitting: MapSlot;
  readonly room: Room;
  readonly sheet: Material;
  readonly spans: readonly (readonly [number, number])[];
  readonly context: CarcassContext;
}

const board = ({ room, sheet, context }: Job, role: string, box: Box, rest: Pick<Board, 'along' | 'face' | 'band'>) => {
  const owner = room.opening.name === '' ? context.carcass.name : room.opening.name;
  return {
    id: `${room.opening.id}/${role}`,
    origin: room.opening.id,
    role: role.replace(/-\d+$/, ''),
    name: `${owner} ${role.replaceAll('-', ' ')}`.trim(),
    material: sheet,
    box,
    seat: 'dado',
    side: null,
    ...rest,
  } as const satisfies Board;
};

const lipThick = ({ fitting, sheet }: Pick<Job, 'fitting' | 'sheet'>): number =>
  fitting.lipHeightMm > 0 ? sheet.thicknessMm : 0;

/** Dividers between neighbouring slots; upright ones begin behind the lip, flat ones carry it. */
const dividers = (job: Job): readonly Board[] => {
  const { fitting, room, spans, context } = job;
  const { along, housed } = FORMS[fitting.lie];
  const axis = HOUSED_AXIS[fitting.lie];
  const { min, max } = room.box;
  const into = (side: Side): number => (room.fits ? (room.walls[side]?.housing ?? 0) : 0);
  const atFace = room.mover === null && room.walls.front === null && min[DEEP] <= ROUNDING_MM;
  const front = fitting.lie === 'upright' ? min[DEEP] + lipThick(job) : min[DEEP];
  return spans.slice(1).map(([to], i) => {
    const from = spans[i]?.[1] ?? to;
    const between = withSpan(withSpan(room.box, along, from, to), DEEP, front, max[DEEP]);
    const box = withSpan(between, axis, min[axis] - into(housed[0]), max[axis] + into(housed[1]));
    return board(job, `divider-${i + 1}`, box, {
      along: fitting.lie === 'upright' ? UPWARD : RIGHT,
      face: fitting.lie === 'upright' ? RIGHT : UPWARD,
      band: atFace && lipThick(job) === 0 ? faceBand(context.carcass.edgeBand) : null,
    });
  });
};

/** One lip before upright slots, or one on the floor of each flat slot; no higher than its slot. */
const lips = (job: Job): readonly Board[] => {
  const { fitting, room, spans } = job;
  const { min, max } = room.box;
  if (fitting.lipHeightMm <= 0) return [];
  const floors = fitting.lie === 'upright' ? [[min[UP], max[UP]] as const] : spans;
  return floors.map(([from, to], i) => {
    const standing = withSpan(room.box, UP, from, Math.min(from + fitting.lipHeightMm, to));
    const box = withSpan(standing, DEEP, min[DEEP], min[DEEP] + lipThick(job));
    return board(job, `lip-${i + 1}`, box, { along: RIGHT, face: TO_FACE, band: null });
  });
};

const rooms = (job: Job): readonly GearRoom[] => {
  const { fitting, room, spans, context } = job;
  const { min, max } = room.box;
  const behindLip = withSpan(room.box, DEEP, min[DEEP] + lipThick(job), max[DEEP]);
  return spans.map(([from, to], level) => {
    const box = withSpan(behindLip, FORMS[fitting.lie].along, from, to);
    return {
      opening: room.opening.id,
      level,
      carcass: context.carcass.id,
      mover: room.mover,
      pose: shift(box.min),
      size: boxSize(box),
      keeps: fitting.lipHeightMm > 0 ? 'lip' : 'nothing',
    };
  });
};

const solveMapSlot = (fitting: MapSlot, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const stock = stockOf(context.catalog, fitting.material, id);
  const sheet = stock.material;
  const job: Job = { fitting, room, sheet, spans: spansOf(fitting, room, sheet.thicknessMm), context };
  const boards = [...dividers(job), ...lips(job)];
  const missing = fitting.slots > 1 ? FORMS[fitting.lie].needs.filter((side) => room.walls[side] === null) : [];
  return {
    ...NO_PARTS,
    assemblies:
      boards.length > 0 ? [{ assembly: room.fits ? room.assembly : `${id}/loose`, mover: room.mover, boards }] : [],
    rooms: rooms(job),
    problems: [
      ...(boards.length > 0 ? stock.problems : []),
      ...(missing.length > 0 ? [badJoint(id, [`divider meets no panel at its ${missing.join(' and ')}`])] : []),
    ],
  };
};

/**
 * Equal slots between thin dividers: upright ones housed in floor and top, flat ones in the sides. Every slot is a
 * level of its own, from the left or from the bottom.
 */
export const mapSlotSolver: FittingSolver<MapSlot> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const { thicknessMm } = sheetOf(fitting, context);
    const { along } = FORMS[fitting.lie];
    const worth = context.rule('least-inside');
    const lip = fitting.lipHeightMm > 0 ? thicknessMm : 0;
    const levels = Array.from({ length: fitting.slots }, (_, level): Vec3 => {
      return counting === 'stocked' ? stockedRoom(context, opening.id, level) : [0, 0, 0];
    });
    const slot = levels.reduce(largerOf, [worth, worth, worth]);
    const deep: Vec3 = [slot[0], slot[1] + lip, slot[2]];
    return withAxis(deep, along, fitting.slots * slot[along] + (fitting.slots - 1) * thicknessMm);
  },
  solve: solveMapSlot,
};
