import type { Box } from '../base/index.ts';
import type { Material } from '../catalog/index.ts';
import type { NodeId, Opening } from '../design/index.ts';
import type { Board, CutoutWish, HoleWish } from './board.ts';
import type {
  Body,
  FitProblem,
  GearRoom,
  HardwareUse,
  MassItem,
  Mover,
  Panel,
  PartId,
  PlacedAnchor,
  PlacedDevice,
} from './parts.ts';

/** A board that bounds an opening, and how deep other boards are housed in it; zero where they only butt. */
export interface Wall {
  readonly board: Board;
  readonly housing: number;
}

export const SIDES = ['left', 'right', 'front', 'back', 'bottom', 'top'] as const;
export type Side = (typeof SIDES)[number];
/** What bounds an opening on each side; null where there is no board: the open face, or a line without a divider. */
export type Walls = { readonly [S in Side]: Wall | null };

export const NO_WALLS: Walls = { left: null, right: null, front: null, back: null, bottom: null, top: null };

/** An opening with the box that it fills and what surrounds it, ready to be solved. */
export interface Room {
  readonly opening: Opening;
  readonly parent: NodeId | null;
  readonly depth: number;
  /** In carcass coordinates, movers stowed. */
  readonly box: Box;
  readonly walls: Walls;
  readonly mover: PartId | null;
  /** The boards that boards in this room are joined with: the carcass, or the box or tray of a mover. */
  readonly assembly: PartId;
  /** What dividers in this room are made of: the material of its assembly. */
  readonly material: Material;
  /** How deep later boards are housed in dividers of this room. */
  readonly housing: number;
  /** False where the room is smaller than its fitting can be built in; the box is then grown to the least. */
  readonly fits: boolean;
  /** What keeps gear in, in a room that is left empty. */
  readonly keeps: GearRoom['keeps'];
}

/** Boards of one assembly, in the order in which they give way to each other. */
export interface AssemblyBoards {
  readonly assembly: PartId;
  readonly mover: PartId | null;
  readonly boards: readonly Board[];
}

/**
 * What solving a room or a fitting yields, all in carcass coordinates with movers stowed. `inner` are the openings
 * that it holds; whoever asked solves them next.
 */
export interface FittingParts {
  readonly assemblies: readonly AssemblyBoards[];
  readonly holes: readonly HoleWish[];
  readonly cutouts: readonly CutoutWish[];
  /** Panels that do not stand square in the carcass, finished. */
  readonly panels: readonly Panel[];
  readonly bodies: readonly Body[];
  readonly movers: readonly Mover[];
  readonly masses: readonly MassItem[];
  readonly hardware: readonly HardwareUse[];
  readonly devices: readonly PlacedDevice[];
  readonly rooms: readonly GearRoom[];
  readonly anchors: readonly PlacedAnchor[];
  readonly inner: readonly Room[];
  readonly problems: readonly FitProblem[];
}

export const NO_PARTS: FittingParts = {
  assemblies: [],
  holes: [],
  cutouts: [],
  panels: [],
  bodies: [],
  movers: [],
  masses: [],
  hardware: [],
  devices: [],
  rooms: [],
  anchors: [],
  inner: [],
  problems: [],
};

/** Hot: rooms within rooms are put together at every level, so that lists which stand alone are not copied. */
const allOf = <T>(lists: readonly (readonly T[] | undefined)[]): readonly T[] => {
  let only: readonly T[] = [];
  let whole: T[] | null = null;
  for (const list of lists) {
    if (list === undefined || list.length === 0) continue;
    if (whole === null && only.length === 0) only = list;
    else {
      whole ??= [...only];
      for (const item of list) whole.push(item);
    }
  }
  return whole ?? only;
};

/** All parts in the order of the list. */
export const together = (list: readonly Partial<FittingParts>[]): FittingParts => ({
  assemblies: allOf(list.map((parts) => parts.assemblies)),
  holes: allOf(list.map((parts) => parts.holes)),
  cutouts: allOf(list.map((parts) => parts.cutouts)),
  panels: allOf(list.map((parts) => parts.panels)),
  bodies: allOf(list.map((parts) => parts.bodies)),
  movers: allOf(list.map((parts) => parts.movers)),
  masses: allOf(list.map((parts) => parts.masses)),
  hardware: allOf(list.map((parts) => parts.hardware)),
  devices: allOf(list.map((parts) => parts.devices)),
  rooms: allOf(list.map((parts) => parts.rooms)),
  anchors: allOf(list.map((parts) => parts.anchors)),
  inner: allOf(list.map((parts) => parts.inner)),
  problems: allOf(list.map((parts) => parts.problems)),
});
