import { type Box, boxSize, ROUNDING_MM, shift, type Vec3 } from '../../base/index.ts';
import type { Hardware, Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { DEEP, largerOf, RIGHT, TO_FACE, UP, UPWARD, withSpan } from '../axes.ts';
import { type Board, faceBand } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { stockedRoom } from '../gear-size.ts';
import { hardwareOf, pieceOf } from '../hardware.ts';
import type { FitProblem, GearRoom } from '../parts.ts';
import { badJoint, mmWords, rulesFight } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { stockOf } from '../stock.ts';
import type { FittingSolver } from './solver.ts';

type OpenStorage = FittingByKind['open-storage'];

const MM_PER_METRE = 1000;

/** One room of the bay: the floor that it stands on and the underside above it, over the floor of the opening. */
interface Level {
  readonly from: number;
  readonly to: number;
}

const sheetOf = (fitting: OpenStorage, context: CarcassContext): Material =>
  stockOf(context.catalog, fitting.shelfMaterial, context.carcass.id).material;

const shelves = (fitting: OpenStorage): readonly number[] => fitting.shelvesUpMm.toSorted((a, b) => a - b);

/** The rooms between the shelves from the bottom up; one that two shelves leave no height for has none. */
const levelsOf = (fitting: OpenStorage, thickness: number, height: number): readonly Level[] => {
  const floors = [0, ...shelves(fitting)];
  return floors.map((from, i) => {
    const above = floors[i + 1];
    return { from, to: Math.max(from, above === undefined ? height : above - thickness) };
  });
};

const isLevel = ({ from, to }: Level): boolean => to - from > ROUNDING_MM;

/** Shelves whose thickness does not fit between their neighbours. */
const crowded = (fitting: OpenStorage, thickness: number, at: Room['opening']['id']): readonly FitProblem[] =>
  levelsOf(fitting, thickness, Infinity).flatMap((level, i) => {
    const above = shelves(fitting)[i];
    if (above === undefined || isLevel(level)) return [];
    const have = above - level.from;
    return [
      rulesFight(at, UP, thickness, have, [
        `shelf ${i + 1} at ${mmWords(above)}`,
        `${mmWords(have)} above what is below`,
      ]),
    ];
  });

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

/** Shelves housed in the boards on either side, as deep as those allow. */
const shelfBoards = (job: Job): readonly Board[] => {
  const { fitting, room, sheet, levels, context } = job;
  const { min, max } = room.box;
  const into = (side: 'left' | 'right'): number => (room.fits ? (room.walls[side]?.housing ?? 0) : 0);
  const atFace = room.mover === null && room.walls.front === null && min[DEEP] <= ROUNDING_MM;
  return shelves(fitting).flatMap((up, i) => {
    const below = levels[i];
    if (!below || !isLevel(below)) return [];
    const lying = withSpan(room.box, UP, min[UP] + up - sheet.thicknessMm, min[UP] + up);
    const box = withSpan(lying, 0, min[0] - into('left'), max[0] + into('right'));
    const band = atFace ? faceBand(context.carcass.edgeBand) : null;
    return [board(job, `shelf-${i + 1}`, box, { along: RIGHT, face: UPWARD, band })];
  });
};

/** A lip along the front of the floor and of each shelf, no higher than its room. */
const lipBoards = (job: Job): readonly Board[] => {
  const { fitting, room, sheet, levels } = job;
  const { min } = room.box;
  if (fitting.lipHeightMm <= 0) return [];
  return levels.flatMap((level, i) => {
    if (!isLevel(level)) return [];
    const top = Math.min(level.from + fitting.lipHeightMm, level.to);
    const standing = withSpan(room.box, UP, min[UP] + level.from, min[UP] + top);
    const box = withSpan(standing, DEEP, min[DEEP], min[DEEP] + sheet.thicknessMm);
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

const solveOpenStorage = (fitting: OpenStorage, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const stock = stockOf(context.catalog, fitting.shelfMaterial, id);
  const sheet = stock.material;
  const levels = levelsOf(fitting, sheet.thicknessMm, boxSize(room.box)[UP]);
  const job: Job = { fitting, room, sheet, levels, context };
  const restraint = hardwareOf(context, fitting.restraint, id);
  const boards = [...shelfBoards(job), ...lipBoards(job)];
  const needsSheet = fitting.shelvesUpMm.length > 0 || fitting.lipHeightMm > 0;
  const assembly = room.fits ? room.assembly : `${id}/loose`;
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: boards.length > 0 ? [{ assembly, mover: room.mover, boards }] : [],
    rooms: rooms(job, restraint.record),
    problems: [
      ...(needsSheet ? stock.problems : []),
      ...restraint.problems,
      ...crowded(fitting, sheet.thicknessMm, id),
      ...unhoused(job),
    ],
  };
  return together([own, restraintParts(job, restraint.record)]);
};

/**
 * An open bay. Shelves are housed in the boards on either side; gear stands on the floor (level 0) and on each shelf
 * (levels 1 and up), behind a lip where there is one, kept in by a net or strap where there is one.
 */
export const openStorageSolver: FittingSolver<OpenStorage> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const sheet = sheetOf(fitting, context);
    const worth = context.rule('least-inside');
    const lip = fitting.lipHeightMm > 0 ? sheet.thicknessMm : 0;
    const top = shelves(fitting).at(-1) ?? 0;
    const bare: Vec3 = [worth, worth + lip, top + worth];
    if (counting === 'built') return bare;
    return levelsOf(fitting, sheet.thicknessMm, Infinity)
      .map((level, i): Vec3 => {
        const [across, deep, up] = stockedRoom(context, opening.id, i);
        return [across, deep + lip, level.from + up];
      })
      .reduce(largerOf, bare);
  },
  solve: solveOpenStorage,
};
