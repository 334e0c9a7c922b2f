import type { Box, Vec2, Vec3 } from '../base/index.ts';
import type { ConvexShape, Shell } from '../bodies/index.ts';
import type { NodeId } from '../design/index.ts';

/** One section of the cargo space as used: a closed ring of [y, z] at a depth, anticlockwise seen from the rear. */
export interface Section {
  readonly station: NodeId;
  readonly x: number;
  readonly ring: readonly Vec2[];
}

/** Something solid of the vehicle that stands in the cargo space, or swings with a closure. */
export interface VehicleBody {
  readonly id: string;
  readonly origin: NodeId;
  readonly name: string;
  readonly kind: 'obstacle' | 'closure';
  readonly shape: ConvexShape;
  /** The closure that carries it, or null. */
  readonly closure: NodeId | null;
  /** The ball point of a strut that stays on the body of the vehicle, while its other one goes with the closure. */
  readonly stays?: Vec3;
}

/** A closure as a mover: turns about its hinge line from 0 (closed) to `opensRad`, outward. */
export interface PlacedClosure {
  readonly id: NodeId;
  readonly name: string;
  readonly kind: string;
  readonly point: Vec3;
  /** Unit vector; a positive turn about it opens. */
  readonly axis: Vec3;
  readonly opensRad: number;
  readonly carriedBy: NodeId | null;
}

export interface PlacedZone {
  readonly id: NodeId;
  readonly name: string;
  readonly rule: 'nothing-stands' | 'no-hole' | 'sight-line' | 'seat-travel';
  readonly shape: ConvexShape;
}

/** The free room of the vehicle, in vehicle axes. */
export interface CargoSpace {
  readonly sections: readonly Section[];
  /** The skin of trim, floor and glass between the stations: closed, outward oriented. */
  readonly skin: Shell;
  /** The skin with the fixed obstacles taken away: what is truly free. */
  readonly free: Shell;
  readonly skinVolumeMm3: number;
  readonly freeVolumeMm3: number;
  readonly bounds: Box;
  readonly bodies: readonly VehicleBody[];
  readonly closures: readonly PlacedClosure[];
  readonly zones: readonly PlacedZone[];
  /** One standard deviation of a point of the skin, of its worst face: survey and vehicle spread together. */
  readonly sigmaMm: number;
  /** One standard deviation of each triangle of the skin, square to it: survey and vehicle spread together. */
  readonly faceSigmaMm: readonly number[];
  /** One standard deviation of the place of each obstacle and closure, by the id of its body. */
  readonly bodySigmaMm: Readonly<Record<string, number>>;
}
