import type { Polygon, Pose, Vec2, Vec3 } from '../base/index.ts';
import type { ConvexShape } from '../bodies/index.ts';
import type { DeepReadonly, NodeId } from '../design/index.ts';

/**
 * What a solved cabinet is made of. Everything stands in vehicle axes (x forward from the hatch sill, y left, z up)
 * with every mover stowed, and names the node of the design that it comes from.
 */

/** The name of one solved thing: the node it comes from and its part in it, `opening-4/side-left`. */
export type PartId = string;

/** Two faces of a panel: `a` is seen with the length to the right and the width up, `b` is the other. */
export type PanelFace = 'a' | 'b';

export type PanelCut =
  /** A straight recess over a rectangle [low corner, high corner] of one face. */
  | {
      readonly kind: 'dado' | 'groove' | 'rabbet' | 'pocket';
      readonly face: PanelFace;
      readonly from: Vec2;
      readonly to: Vec2;
      readonly depth: number;
      readonly takes: PartId | null;
    }
  /** A round hole; depth null goes through. */
  | {
      readonly kind: 'hole';
      readonly face: PanelFace;
      readonly at: Vec2;
      readonly diameter: number;
      readonly depth: number | null;
      readonly why: string;
    }
  /** An opening right through. */
  | { readonly kind: 'cutout'; readonly outline: CutoutOutline; readonly why: string };

export type CutoutOutline =
  | { readonly shape: 'rectangle'; readonly from: Vec2; readonly to: Vec2; readonly cornerRadius: number }
  | { readonly shape: 'circle'; readonly at: Vec2; readonly diameter: number }
  | { readonly shape: 'polygon'; readonly corners: Polygon };

/** Bands by edge: l1 lies at y = 0 and l2 at y = width (along the length), w1 at x = 0 and w2 at x = length. */
export interface EdgeBands {
  readonly l1: string | null;
  readonly l2: string | null;
  readonly w1: string | null;
  readonly w2: string | null;
}

/** An edge that is not square: sawn with the blade tilted. */
export interface Bevel {
  readonly edge: keyof EdgeBands;
  /** Of the blade, from square. */
  readonly tiltRad: number;
  /** The face that keeps the full size; the other one ends the set sooner. */
  readonly longFace: PanelFace;
  readonly setMm: number;
  /** What stays square of the edge beside the long face, where the slope begins below it; left out where nothing does. */
  readonly landMm?: number;
}

/** A line in the flat along which a sheet is bent. */
export interface BendLine {
  /** Ends in panel coordinates, on the middle of the bend. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** The angle turned through; towards the face named. */
  readonly angleRad: number;
  readonly towards: PanelFace;
  readonly insideRadiusMm: number;
  /** Length of the flat that the bend takes up, and what is taken off the sum of the outside lengths. */
  readonly allowanceMm: number;
  readonly deductionMm: number;
}

/**
 * One flat cut part at its finished size. Panel coordinates: x along the length (with the grain), y along the width,
 * z through the thickness from face b (z = 0) to face a (z = thickness).
 */
export interface Panel {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly carcass: NodeId;
  /** What it is in its assembly, a stable lower-case word: side-left, top, divider, box-front. */
  readonly role: string;
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly length: number;
  readonly width: number;
  /** The true outline when it is not the full rectangle. */
  readonly outline: Polygon | null;
  readonly grain: 'length' | 'any';
  readonly bands: EdgeBands;
  /** Edges that are not square; left out where all are. */
  readonly bevels?: readonly Bevel[];
  /** Bends of a sheet that is cut flat and then bent; left out for a flat part. */
  readonly bends?: readonly BendLine[];
  /** Left or right where the mirrored part is another part; null where it serves on both sides. */
  readonly hand: 'left' | 'right' | null;
  readonly cuts: readonly PanelCut[];
  /** From panel coordinates to the vehicle, stowed. */
  readonly pose: Pose;
  readonly mover: PartId | null;
  readonly volumeMm3: number;
  readonly massKg: number;
}

/** One convex solid that takes room. */
export interface Body {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly carcass: NodeId | null;
  /** Plug room is air that a plug, a bend or a hand needs: nothing solid may stand in it. */
  readonly kind: 'panel' | 'gear' | 'device' | 'plug-room' | 'hardware';
  readonly name: string;
  readonly shape: ConvexShape;
  readonly mover: PartId | null;
}

export type Motion =
  | { readonly kind: 'slide'; readonly direction: Vec3; readonly travel: number }
  | { readonly kind: 'turn'; readonly point: Vec3; readonly axis: Vec3; readonly travelRad: number };

/** Something that slides or turns, from 0 (stowed) to its travel. Motion in vehicle axes with its carrier stowed. */
export interface Mover {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly name: string;
  readonly motion: Motion;
  /** The mover that carries it, or null. */
  readonly carriedBy: PartId | null;
  /** Positions that it holds, as a share of the travel: 0 stowed, 1 fully out. */
  readonly rests: readonly { readonly name: string; readonly share: number }[];
}

export interface MassItem {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly carcass: NodeId | null;
  readonly kind: 'panel' | 'hardware' | 'device' | 'gear' | 'finish' | 'cable';
  readonly name: string;
  readonly massKg: number;
  readonly sigmaKg: number;
  readonly at: Vec3;
  readonly mover: PartId | null;
}

export interface HardwareUse {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly carcass: NodeId | null;
  /** A record of the catalog: hardware, a slide with its length, or a device. */
  readonly from: 'hardware' | 'slide' | 'device';
  readonly item: string;
  readonly name: string;
  /** Pieces, pairs of slides, or metres, as the record counts. */
  readonly quantity: number;
  readonly lengthMm: number | null;
  readonly at: Vec3 | null;
  readonly mover: PartId | null;
  /** A plate is engraved with the load (kg) that is safe there; left out for everything else. */
  readonly safeLoadKg?: number;
}

/** A room that gear can stand in. Room coordinates: across to the viewer's right, deep from the face, up. */
export interface GearRoom {
  readonly opening: NodeId;
  readonly level: number;
  readonly carcass: NodeId;
  readonly mover: PartId | null;
  /** From room coordinates (origin at the near low left corner) to the vehicle, stowed. */
  readonly pose: Pose;
  /** Across × deep × up. */
  readonly size: Vec3;
  /** What gear in it may grow by, across × deep × up: the next larger cylinder on a set; left out for nothing. */
  readonly growth?: Vec3;
  /** What keeps gear in: a net, a lip, a front, a bracket, or nothing. */
  readonly keeps: 'net' | 'strap' | 'lip' | 'closed' | 'bracket' | 'nothing';
}

/** One opening after solving, leaf or not, in carcass coordinates: across to the viewer's right, deep, up. */
export interface SolvedOpening {
  readonly id: NodeId;
  readonly carcass: NodeId;
  readonly parent: NodeId | null;
  /** How many openings it lies inside, the carcass's own being 0. */
  readonly depth: number;
  readonly content: 'empty' | 'divided' | 'fitted';
  readonly name: string;
  readonly from: Vec3;
  readonly size: Vec3;
  /** The least room its content needs, across × deep × up. */
  readonly least: Vec3;
  readonly mover: PartId | null;
}

export interface SolvedCarcass {
  readonly id: NodeId;
  readonly name: string;
  /** From carcass coordinates to the vehicle: origin at the low corner at the viewer's left of the open face. */
  readonly pose: Pose;
  /** Across × deep × up. */
  readonly size: Vec3;
  readonly massKg: number;
}

export interface PlacedDevice {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly device: string;
  readonly at: Vec3;
  /** The opening whose air it warms, or null when it hangs outside the cabinet. */
  readonly opening: NodeId | null;
  /** A closure or mover that carries it. */
  readonly mover: PartId | null;
  /** Which way and how far a mount comes straight off for service, closures closed; left out for a device of a plate. */
  readonly off?: { readonly along: Vec3; readonly mm: number };
}

/** An anchor in its place: where a panel meets the vehicle, and what lies between head and nut. */
export interface PlacedAnchor {
  readonly id: NodeId;
  readonly carcass: NodeId;
  readonly on: 'floor' | 'wall';
  /** On the outer face of the panel. */
  readonly at: Vec3;
  /** Out of the carcass into the vehicle, of length 1. */
  readonly into: Vec3;
  readonly panel: PartId;
  /** Least distance of the bolt's middle to an edge of the panel; negative outside it. */
  readonly edgeMm: number;
  /** What is left of the panel under the head (mm). */
  readonly gripMm: number;
  readonly bolt: string;
  readonly insert: string | null;
  readonly washer: string | null;
  readonly plate: string | null;
  readonly plateBonded: boolean;
  readonly bracket: string | null;
}

/** A bolt of a brace in the panel that it goes through. */
export interface PlacedBraceBolt {
  readonly id: PartId;
  readonly carcass: NodeId;
  readonly panel: PartId;
  /** On the face of the carcass. */
  readonly at: Vec3;
  /** Into the carcass, of length 1. */
  readonly into: Vec3;
  /** Least distance of the bolt's middle to an edge of the panel; negative outside it. */
  readonly edgeMm: number;
  /** The panel under the bar (mm). */
  readonly gripMm: number;
}

/** A bar bolted to two carcasses. */
export interface PlacedBrace {
  readonly id: NodeId;
  readonly name: string;
  /** Bar stock by the metre. */
  readonly item: string;
  readonly carcasses: readonly [NodeId, NodeId];
  /** Midway between its outer bolts. */
  readonly at: Vec3;
  /** From the first carcass to the second, of length 1. */
  readonly along: Vec3;
  readonly lengthMm: number;
  readonly holeMm: number;
  /** Its holes from the end at the first carcass, in the order of the bolts wished for. */
  readonly holesMm: readonly number[];
  /** Those that meet a panel. */
  readonly bolts: readonly PlacedBraceBolt[];
  readonly bolt: string | null;
  readonly washer: string | null;
  readonly nut: string | null;
  /** False where it has a problem: it then holds nothing. */
  readonly sound: boolean;
}

/** Gear in its place: its box in room coordinates, for the check against the room, and its name for people. */
export interface PlacedGear {
  readonly gear: NodeId;
  readonly opening: NodeId;
  readonly level: number;
  readonly from: Vec3;
  readonly size: Vec3;
  readonly body: PartId;
}

/** Why a part of the cabinet could not be solved; the rest of the cabinet still is. */
export interface FitProblem {
  readonly code:
    | 'rules-fight'
    | 'too-small'
    | 'unknown-material'
    | 'unknown-hardware'
    | 'unknown-device'
    | 'no-such-opening'
    | 'no-such-carcass'
    | 'circle-of-places'
    | 'bad-joint';
  /** The node that it stands at. */
  readonly at: NodeId;
  readonly axis: 'across' | 'deep' | 'up' | null;
  readonly needMm: number | null;
  readonly haveMm: number | null;
  /** The rules or records that cannot hold together, each in a few words. */
  readonly because: readonly string[];
}

export type FitOut = DeepReadonly<{
  carcasses: SolvedCarcass[];
  openings: SolvedOpening[];
  panels: Panel[];
  bodies: Body[];
  movers: Mover[];
  masses: MassItem[];
  hardware: HardwareUse[];
  devices: PlacedDevice[];
  rooms: GearRoom[];
  gear: PlacedGear[];
  anchors: PlacedAnchor[];
  braces: PlacedBrace[];
  problems: FitProblem[];
}>;
