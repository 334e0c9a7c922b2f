import type { Vec3 } from '../../base/index.ts';

/** Where a carried carcass stands on its way: moved by `shift` and turned about its own middle, in vehicle axes. */
export interface CarryPose {
  readonly shift: Vec3;
  /** Right-handed turns about y, then x, then z: positive pitch brings the front edge down. */
  readonly pitchRad: number;
  readonly rollRad: number;
  readonly yawRad: number;
}

/** What is nearest on the way from one pose to the next. */
export interface CarryLeg {
  /** Proven for the whole of it; Infinity where nothing is near. */
  readonly leastGap: number;
  readonly nearest: string;
  /** Half width of the gap at 95 %: the vehicle as it was surveyed, the cabinet as it is built. */
  readonly uncertainty: number;
  /** The two nearest points, of what is carried and of what it passes; null where nothing is near. */
  readonly at: readonly [Vec3, Vec3] | null;
}

/** One way of a carcass from its place to the open air behind the vehicle; carried in it is run backwards. */
export interface CarryPath {
  /** From the place (no shift, no turn) to outside. */
  readonly poses: readonly CarryPose[];
  /** Proven for the whole way, against everything that it does not stand near in its place. Infinity: nothing near. */
  readonly leastGap: number;
  /** What is nearest on the way. */
  readonly nearest: string;
  /** Half width at 95 % of the least gap. */
  readonly uncertainty: number;
  /** From each pose to the next, in the order of the poses. */
  readonly legs: readonly CarryLeg[];
}

export interface CarriedCarcass {
  readonly carcass: string;
  /** The way with what stands in the vehicle before it; null where none was found within the budget. */
  readonly path: CarryPath | null;
  /** True when it can be taken out again with everything else in its place. */
  readonly comesOutAlone: boolean;
  /** The way out with everything else in its place; null where none was found. */
  readonly alone: CarryPath | null;
  /** Where no way was found: how far from its place the search came, and what it met there most. */
  readonly stuck: { readonly mm: number; readonly by: string } | null;
  /** How far it has to come straight out of its place until it lies behind the vehicle. */
  readonly outMm: number;
  /** Middle of the carcass about which it is turned. */
  readonly middle: Vec3;
  readonly massKg: number;
}

/** A mount, taken off with the closures open and the cabinet in its place. */
export interface CarriedMount {
  readonly mount: string;
  /** True when it comes straight off what it is fixed to. */
  readonly comesOff: boolean;
  /** From its place, straight off, and out behind the vehicle; null where no way was found. */
  readonly path: CarryPath | null;
  /** Where no way was found: how far it came, and what it met. */
  readonly stuck: { readonly mm: number; readonly by: string } | null;
  readonly middle: Vec3;
}

export interface CarryIn {
  /** The gap that the house wants on the way. */
  readonly wantedMm: number;
  /** In the order in which they are carried in; those without a way last. */
  readonly carcasses: readonly CarriedCarcass[];
  readonly mounts: readonly CarriedMount[];
}
