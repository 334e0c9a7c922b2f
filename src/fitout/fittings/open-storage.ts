import { type Box, boxSize, groupBy, ROUNDING_MM, shift, type Vec3 } from '../../base/index.ts';
import type { Hardware, Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { DEEP, largerOf, RIGHT, TO_FACE, UP, UPWARD, withSpan } from '../axes.ts';
import { type Board, faceBand } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { stockedRoom } from '../gear-size.ts';
import { hardwareOf, pieceOf } from '../hardware.ts';
import { matParts } from '../mat.ts';
import type { FitProblem, GearRoom } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { stockOf } from '../stock.ts';
import { floorDrain } from './floor-drain.ts';
import { shelfPins } from './shelf-pins.ts';
import type { FittingSolver } from './solver.ts';
import { crowdedShelves, isLevel, type Level, levelsOf } from './storage-levels.ts';

type OpenStorage = FittingByKind['open-storage'];

const MM_PER_METRE = 1000;

const sheetOf = (fitting: OpenStorage, context: CarcassContext): Material =>
  stockOf(context.catalog, fitting.shelfMaterial, context.carcass.id).material;

interface Job {
  readonly fitting: OpenStorage;
  readonly room: Room;
  readonly sheet: Material;
  readonly levels: readonly Level[];
  readonly context: CarcassContext;
}

const board = (
  { room, sheet, context }: Job,
  role: string,
  box: Box,
  rest: Pick<Board, 'along' | 'face' | 'band'>,
): Board => {
  const { opening } = room;
  const owner = opening.name === '' ? context.carcass.name : opening.name;
  const name = `${owner} ${role.replaceAll('-', ' ')}`.trim();
  const kind = role.replace(/-\d+$/, '');
  return {
    id: `${opening.id}/${role}`,
    origin: opening.id,
    role: kind,
    name,
    material: sheet,
    box,
    seat: 'dado',
    side: null,
    ...rest,
  };
};

/** Shelves from wall to wall: housed in the boards on either side, or with a spare at each end to lie on pins. */
const shelfBoards = (job: Job): readonly Board[] => {
  const { fitting, room, sheet, levels, context } = job;
  const { min, max } = room.box;
  const into = (side: 'left' | 'right'): number => {
    if (fitting.shelves === 'adjustable') return -context.rule('shelf-spare');
    return room.fits ? (room.walls[side]?.housing ?? 0) : 0;
  };
  const atFace = room.mover === null && room.walls.front === null && min[DEEP] <= ROUNDING_MM;
  return levels.slice(1).flatMap(({ from }, i) => {
    const below = levels[i];
    if (!below || !isLevel(below)) return [];
    const lying = withSpan(room.box, UP, min[UP] + from - sheet.thicknessMm, min[UP] + from);
    const box = withSpan(lying, 0, min[0] - into('left'), max[0] + into('right'));
    const band = atFace ? faceBand(context.carcass.edgeBand) : null;
    return [board(job, `shelf-${i + 1}`, box, { along: RIGHT, face: UPWARD, band })];
  });
};

/** A lip along the front of the floor and of each shelf, no higher than its room. */
const lipBoards = (job: Job): readonly Board[] => {
  const { fitting, room, sheet, levels, context } = job;
  const { min, max } = room.box;
  if (fitting.lipHeightMm <= 0) return [];
  // A lip on an adjustable shelf goes with it.
  const ends = fitting.shelves === 'adjustable' ? context.rule('shelf-spare') : 0;
  return levels.flatMap((level, i) => {
    if (!isLevel(level)) return [];
    const top = Math.min(level.from + fitting.lipHeightMm, level.to);
    const low = i === 0 ? 0 : level.from;
    const standing = withSpan(room.box, UP, min[UP] + low, min[UP] + top);
    const across = i === 0 ? standing : withSpan(standing, 0, min[0] + ends, max[0] - ends);
    const box = withSpan(across, DEEP, min[DEEP], min[DEEP] + sheet.thicknessMm);
    return [board(job, `lip-${i + 1}`, box, { along: RIGHT, face: TO_FACE, band: null })];
  });
};

const keepsOf = (fitting: OpenStorage, restraint: Hardware | null): GearRoom['keeps'] => {
  if (restraint) return restraint.kind === 'strap' ? 'strap' : 'net';
  return fitting.lipHeightMm > 0 ? 'lip' : 'nothing';
};

const rooms = (job: Job, restraint: Hardware | null): readonly GearRoom[] => {
  const { fitting, room, sheet, levels, context } = job;
  const lip = fitting.lipHeightMm > 0 ? sheet.thicknessMm : 0;
  const { min } = room.box;
  const [across, deep] = boxSize(room.box);
  return levels.flatMap((level, i): readonly GearRoom[] => {
    if (!isLevel(level)) return [];
    return [
      {
        opening: room.opening.id,
        level: i,
        carcass: context.carcass.id,
        mover: room.mover,
        pose: shift([min[0], min[1] + lip, min[2] + level.from]),
        size: [across, deep - lip, level.to - level.from],
        keeps: keepsOf(fitting, restraint),
      },
    ];
  });
};

/** The net or strap across the face: one piece, or by the metre once across each room. */
const restraintParts = ({ fitting, room, levels, context }: Job, restraint: Hardware | null): FittingParts => {
  if (!restraint) return NO_PARTS;
  const { min, max } = room.box;
  const across = (max[0] - min[0]) / MM_PER_METRE;
  const quantity = restraint.by === 'metre' ? across * levels.filter(isLevel).length : 1;
  const origin = room.opening.id;
  const at: Vec3 = [(min[0] + max[0]) / 2, min[1], (min[2] + max[2]) / 2];
  return pieceOf(context, {
    id: `${origin}/restraint`,
    origin,
    item: fitting.restraint,
    quantity,
    at,
    mover: room.mover,
  });
};

const unhoused = ({ fitting, room }: Job): readonly FitProblem[] => {
  const open = (['left', 'right'] as const).filter((side) => room.walls[side] === null);
  if (fitting.shelvesUpMm.length === 0 || open.length === 0) return [];
  return [badJoint(room.opening.id, [`shelf meets no panel at its ${open.join(' and ')}`])];
};

/** Boards by what they are joined to: the carcass, or, on pins, each shelf with its own lip and nothing else. */
const assembliesOf = ({ fitting, room }: Job, boards: readonly Board[]): FittingParts['assemblies'] => {
  const { id } = room.opening;
  const around = room.fits ? room.assembly : `${id}/loose`;
  const onPins = ({ id: board, role }: Board): string | null => {
    const number = Number(/\d+$/.exec(board)?.[0]);
    if (fitting.shelves === 'fixed' || (role === 'lip' && number === 1)) return null;
    return `${id}/shelf-${role === 'lip' ? number - 1 : number}`;
  };
  const grouped = groupBy(boards, (board) => onPins(board) ?? around);
  return [...grouped].map(([assembly, list]) => ({ assembly, mover: room.mover, boards: list }));
};

const solveOpenStorage = (fitting: OpenStorage, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const stock = stockOf(context.catalog, fitting.shelfMaterial, id);
  const sheet = stock.material;
  const levels = levelsOf(fitting, sheet, context, boxSize(room.box)[UP]);
  const job: Job = { fitting, room, sheet, levels, context };
  const restraint = hardwareOf(context, fitting.restraint, id);
  const shelves = shelfBoards(job);
  const needsSheet = fitting.shelvesUpMm.length > 0 || fitting.lipHeightMm > 0;
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: assembliesOf(job, [...shelves, ...lipBoards(job)]),
    rooms: rooms(job, restraint.record),
    problems: [
      ...(needsSheet ? stock.problems : []),
      ...restraint.problems,
      ...crowdedShelves(fitting, sheet, context, id),
      ...unhoused(job),
    ],
  };
  const lip = fitting.lipHeightMm > 0 ? sheet.thicknessMm : 0;
  const behindLip = withSpan(room.box, DEEP, room.box.min[DEEP] + lip, room.box.max[DEEP]);
  return together([
    own,
    restraintParts(job, restraint.record),
    fitting.shelves === 'adjustable' ? shelfPins(room, shelves, context) : NO_PARTS,
    matParts(context, { id: `${id}/mat`, origin: id, item: fitting.mat }, behindLip, room.mover),
    floorDrain(fitting.drain, room, context),
  ]);
};

/**
 * An open bay. Shelves are housed in the boards on either side or lie on pins in them; gear stands on the floor
 * (level 0), on its mat where there is one, and on each shelf (levels 1 and up), behind a lip where there is one, kept
 * in by a net or strap where there is one.
 */
export const openStorageSolver: FittingSolver<OpenStorage> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const sheet = sheetOf(fitting, context);
    const worth = context.rule('least-inside');
    const lip = fitting.lipHeightMm > 0 ? sheet.thicknessMm : 0;
    const levels = levelsOf(fitting, sheet, context, Infinity);
    const top = levels.at(-1)?.from ?? 0;
    const onPins = fitting.shelves === 'adjustable' && fitting.shelvesUpMm.length > 0;
    const rows = onPins ? 2 * context.rule('shelf-pin-set-in') + context.rule('shelf-pin-hole') : 0;
    const bare: Vec3 = [worth, Math.max(worth + lip, rows), top + worth];
    if (counting === 'built') return bare;
    return levels
      .map((level, i): Vec3 => {
        const [across, deep, up] = stockedRoom(context, opening.id, i);
        return [across, deep + lip, level.from + up];
      })
      .reduce(largerOf, bare);
  },
  solve: solveOpenStorage,
};
