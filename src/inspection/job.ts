import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { Design } from '../design/index.ts';
import { type CargoSpace, gapHalfWidth } from '../envelope/index.ts';
import type { FitOut } from '../fitout/index.ts';
import type { CarryIn } from './carry/carry-result.ts';
import {
  type CarcassHold,
  type GroupHold,
  type HeldMover,
  heldCarcasses,
  heldMovers,
  holdCarcass,
  holdGroups,
} from './hold/index.ts';
import { loadingCases, type SolvedCase, solveCase } from './loads/index.ts';
import { type BodyPair, closePairs } from './pairs.ts';
import { type StandingBody, type StandingVehicle, standingBodies, standingVehicle } from './standing.ts';

/** What an inspection looks at. The cargo space is null while the survey does not make one. */
export interface InspectionInput {
  readonly design: Design;
  readonly space: CargoSpace | null;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  /** How every carcass is carried in, where that was searched: it takes seconds, so that most inspections go without. */
  readonly carry?: CarryIn | null;
}

/** The input with what several rules share, made once. */
export interface Job extends InspectionInput {
  readonly standing: readonly StandingBody[];
  readonly vehicle: readonly StandingVehicle[];
  /** Bodies of the cabinet that overlap, or stand closer to each other than any house rule asks. */
  readonly pairs: readonly BodyPair[];
  readonly cases: readonly SolvedCase[];
  /** Every carcass thrown each way of the load sets that the design is held to. */
  readonly holds: readonly CarcassHold[];
  /** Carcasses tied by braces, thrown as one; beside each carcass alone. */
  readonly groups: readonly GroupHold[];
  /** Every mover with what it carries. */
  readonly heldMovers: readonly HeldMover[];
  /** Half width at 95 % of a gap between the cabinet and what is known worst of the skin; 0 without a space. */
  readonly gapUncertainty: number;
}

export const makeJob = (input: InspectionInput): Job => {
  const { design, space, fitout, rules } = input;
  const standing = standingBodies(fitout, space);
  const reach = Math.max(rules.value('gap-moving-parts'), rules.value('gap-between-carcasses'));
  const vehicle = standingVehicle(space);
  const held = heldCarcasses(input);
  return {
    ...input,
    heldMovers: heldMovers(input),
    groups: holdGroups(input, held),
    holds: held.map((carcass) => holdCarcass(input, carcass)),
    standing,
    vehicle,
    pairs: closePairs(standing, reach),
    cases: loadingCases(design, fitout, rules).flatMap((load) => {
      const solved = solveCase(design.vehicle, load, rules);
      return solved ? [solved] : [];
    }),
    gapUncertainty: space ? gapHalfWidth(space, rules, 'anything') : 0,
  };
};

/** Half width at 95 % of a gap between the built cabinet and a body of the vehicle. */
export const halfWidthTo = (job: Job, body: string): number =>
  job.space ? gapHalfWidth(job.space, job.rules, { body }) : 0;
