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

/** All parts in the order of the list. */
export const together = (list: readonly Partial<FittingParts>[]): FittingParts => ({
  assemblies: list.flatMap((parts) => parts.assemblies ?? []),
  holes: list.flatMap((parts) => parts.holes ?? []),
  cutouts: list.flatMap((parts) => parts.cutouts ?? []),
  panels: list.flatMap((parts) => parts.panels ?? []),
  bodies: list.flatMap((parts) => parts.bodies ?? []),
  movers: list.flatMap((parts) => parts.movers ?? []),
  masses: list.flatMap((parts) => parts.masses ?? []),
  hardware: list.flatMap((parts) => parts.hardware ?? []),
  devices: list.flatMap((parts) => parts.devices ?? []),
  rooms: list.flatMap((parts) => parts.rooms ?? []),
  anchors: list.flatMap((parts) => parts.anchors ?? []),
  inner: list.flatMap((parts) => parts.inner ?? []),
  problems: list.flatMap((parts) => parts.problems ?? []),
});
