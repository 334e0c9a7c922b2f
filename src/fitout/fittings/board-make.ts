import { radians, type Vec3 } from '../../base/index.ts';
import type { Device, Hardware, Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { ACROSS, DEEP, UP, withAxis } from '../axes.ts';
import type { CarcassContext, Counting } from '../context.ts';
import { sheetMassKg, squareMetres } from '../masses.ts';
import { leastSlide, NO_LOCKS, type SlideAsk, type SlideOption } from '../slide-choice.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf } from '../stock.ts';
import { type SpringPlan, springPlan, springReach, springRecord } from './gas-springs.ts';
import {
  alongEdge,
  edgeNeed,
  edgeRadius,
  type Hung,
  isUpright,
  overLeaf,
  overWithin,
  proudOf,
  reachOf,
} from './leaf.ts';

export type CommandBoard = FittingByKind['board'];

/** What does not depend on the room: sheet, what lies on the working face, and the allowances round them. */
export interface BoardMake {
  readonly sheet: Material;
  readonly hung: Hung;
  readonly reveal: number;
  readonly gap: number;
  readonly proud: number;
  /** Clear edge of the working face. */
  readonly margin: number;
  /** Thickness of the steel on the working face; zero for none. */
  readonly steel: number;
  readonly tray: Hardware | null;
  readonly light: Device | null;
  /** From the face to where the inside begins. */
  readonly behind: number;
  readonly travelRad: number;
  readonly springs: SpringPlan | null;
  readonly wantsSprings: boolean;
  /** Taken on each side by gas springs. */
  readonly beside: number;
  /** Thickness of the carriage; zero where there is none. */
  readonly carriage: number;
}

export const latchOf = (fitting: CommandBoard) => [['latch', fitting.latch]] as const;

export const lightDepth = ({ behindMm }: Device): number => behindMm.body + behindMm.plug;

/** How far steel, tray and light stand behind the board. */
export const faceDepth = ({ steel, tray, light }: Pick<BoardMake, 'steel' | 'tray' | 'light'>): number =>
  steel + Math.max(tray?.sizeMm?.[2] ?? 0, light ? lightDepth(light) : 0);

export const boardMake = (fitting: CommandBoard, context: CarcassContext): BoardMake => {
  const { catalog, carcass, rule } = context;
  const sheet = stockOf(catalog, fitting.material, carcass.id).material;
  const t = sheet.thicknessMm;
  const hung: Hung = fitting.way === 'top-flip' ? 'top' : fitting.hinge;
  const steel = fitting.magneticFace ? rule('magnetic-face-thickness') : 0;
  const tray = fitting.markerTray === null ? null : (catalog.hardware.get(fitting.markerTray) ?? null);
  const light = fitting.worklight === null ? null : (catalog.devices.get(fitting.worklight) ?? null);
  const reach = edgeNeed(context, hung, latchOf(fitting))[DEEP];
  const travelRad = radians(Math.max(...fitting.stopsDeg));
  const record = hung === 'top' ? springRecord(context, fitting.springs) : null;
  const springs = record && springPlan(context, record, travelRad, { depth: t + proudOf(context), above: 0 });
  const gap = rule('gap-moving-parts');
  return {
    sheet,
    hung,
    reveal: rule('reveal-front'),
    gap,
    proud: proudOf(context),
    margin: rule('board-margin'),
    steel,
    tray,
    light,
    behind: Math.max(t + faceDepth({ steel, tray, light }), reach) + gap,
    travelRad,
    springs,
    wantsSprings: record !== null,
    beside: springs ? 2 * springs.radius + gap : 0,
    carriage: fitting.way === 'slide-and-turn' ? context.material.thicknessMm : 0,
  };
};

/** What the working face keeps clear along its hung edge, its free edge, and the two others. */
export const clearEdges = (fitting: CommandBoard, make: BoardMake, context: CarcassContext) => {
  const { margin, carriage, gap, beside, reveal, hung } = make;
  const latch = edgeNeed(context, hung, latchOf(fitting))[overLeaf(hung)];
  return {
    hung: carriage > 0 ? Math.max(margin, carriage + gap) : margin,
    // A latch in the middle of the lower edge stands where the light of a board that flips up does.
    free: hung === 'top' ? Math.max(margin, latch) : margin,
    other: Math.max(margin, beside - reveal),
  };
};

/** Least across × up of the board: what lies on its working face with clear edges, and its latch. */
export const leastBoard = (fitting: CommandBoard, make: BoardMake, context: CarcassContext): Vec3 => {
  const { hung, tray, light, carriage } = make;
  const [over, along] = [overLeaf(hung), alongEdge(hung)];
  const worth = context.rule('least-inside');
  const piece = tray?.by === 'piece' ? (tray.sizeMm?.[0] ?? 0) : 0;
  const lines = (tray?.sizeMm?.[1] ?? 0) + (light?.faceMm.height ?? 0);
  const content: Vec3 = [Math.max(worth, piece, light?.faceMm.width ?? 0), 0, worth + lines];
  const clear = clearEdges(fitting, make, context);
  const latch = edgeNeed(context, hung, latchOf(fitting));
  const overNeed = Math.max(clear.hung + content[over] + clear.free, carriage + latch[over]);
  const alongNeed = Math.max(content[along] + 2 * clear.other, latch[along]);
  return withAxis(withAxis([0, 0, 0], over, overNeed), along, alongNeed);
};

/** How far from the hinge line board, face and latch reach where the board is of this size over the hinge. */
const swingRadius = (fitting: CommandBoard, make: BoardMake, size: Vec3, context: CarcassContext): number => {
  const { hung, sheet, proud } = make;
  const t = sheet.thicknessMm;
  const over = size[overLeaf(hung)];
  const { free } = clearEdges(fitting, make, context);
  return Math.max(
    reachOf(over, t, proud),
    reachOf(over - free, t + faceDepth(make), proud),
    edgeRadius(context, { hung, hinge: PIECES.boardHinge, least: t }, latchOf(fitting)),
  );
};

/** Least room from the hung side of the board to the frame that it swings past. */
const swingRoom = (fitting: CommandBoard, make: BoardMake, size: Vec3, context: CarcassContext): number =>
  swingRadius(fitting, make, size, context) + make.gap;

/** The largest board over a hinge that swings past a frame this far from it. */
export const swingSize = ({ sheet, gap, proud }: BoardMake, toFrame: number): number =>
  overWithin(toFrame - gap, sheet.thicknessMm, proud);

/** The board's size: as the user set it, as far as it can be built, or else as `free` leaves. */
export const boardSize = (fitting: CommandBoard, least: Vec3, free: Vec3): Vec3 => [
  Math.max(least[ACROSS], fitting.widthMm ?? free[ACROSS]),
  0,
  Math.max(least[UP], fitting.heightMm ?? free[UP]),
];

/** Mass of a board of this size with what lies on it (kg), and of its carriage of this length. */
const boardKg = (make: BoardMake, [across, , up]: Vec3, carriageMm: number, context: CarcassContext): number => {
  const { sheet, steel, tray, light, carriage } = make;
  const face = steel > 0 ? squareMetres(across * up) * context.rule('magnetic-face-mass') : 0;
  const trayKg = tray ? tray.massKg * (tray.by === 'metre' ? across / 1000 : 1) : 0;
  const wood = sheetMassKg(across * up * sheet.thicknessMm, sheet);
  return wood + face + trayKg + (light?.massKg ?? 0) + sheetMassKg(carriageMm * up * carriage, context.material);
};

/** What a carriage asks of its slides for a board of this size. */
export const carriageAsk = (fitting: CommandBoard, make: BoardMake, size: Vec3, context: CarcassContext): SlideAsk => ({
  slide: fitting.slide,
  lengthMm: fitting.slideLengthMm,
  mounts: ['side'],
  shortest: () => context.rule('board-carriage-min'),
  width: () => size[ACROSS],
  load: ({ lengthMm }) => boardKg(make, size, lengthMm, context),
  locks: () => NO_LOCKS,
});

export interface BoardNeed {
  readonly room: Vec3;
  readonly option: SlideOption | null;
}

/** Least room of a board and the slide that it is reckoned with. */
export const boardNeed = (fitting: CommandBoard, counting: Counting, context: CarcassContext): BoardNeed => {
  const make = boardMake(fitting, context);
  const { reveal, sheet, springs, behind, beside, gap, carriage } = make;
  const worth = context.rule('least-inside');
  const asked = context.least(fitting.inside, counting, context.material);
  const inside = asked.map((side) => Math.max(worth, side)) as unknown as Vec3;
  const least = leastBoard(fitting, make, context);
  const size = boardSize(fitting, least, least);
  const option = carriage > 0 ? leastSlide(context, carriageAsk(fitting, make, size, context)) : null;
  const { sideSpaceMm = 0, heightMm = 0 } = option?.slide ?? {};
  const [springDeep, springDown] = springs ? springReach(springs) : [0, 0];
  const slideDeep = option ? sheet.thicknessMm + option.lengthMm + context.rule('back-clear') : 0;
  const swing = withAxis(size, overLeaf(make.hung), swingRoom(fitting, make, size, context));
  const [atHinge, atFree] = [carriage > 0 ? sideSpaceMm : reveal, make.hung === 'top' ? reveal : 0];
  return {
    room: [
      Math.max(
        swing[ACROSS] + atHinge + atFree,
        inside[ACROSS] + (carriage > 0 ? sideSpaceMm + carriage + gap : 2 * beside),
      ),
      Math.max(behind + inside[DEEP], springDeep - make.proud, slideDeep),
      Math.max(
        swing[UP] + (make.hung === 'top' ? reveal : 2 * reveal),
        inside[UP],
        springDown + reveal,
        option ? 2 * heightMm + 3 * gap : 0,
      ),
    ],
    option,
  };
};

/** True where the light stands at the low edge stowed: a board that flips up turns its upper edge down. */
export const isUpended = ({ hung }: Pick<BoardMake, 'hung'>): boolean => !isUpright(hung);
