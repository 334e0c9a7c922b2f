import { shapeBox } from '../../bodies/index.ts';
import type { Catalog, HouseRules } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { CarriedCarcass, CarryIn } from './carry-result.ts';
import { type Carried, carriedOf, carriedPast, type Past, vehiclePast } from './carry-scene.ts';
import { mountsOff } from './mounts-off.ts';
import { type PlanResult, planOut } from './plan-out.ts';

export interface CarryInput {
  readonly design: Design;
  readonly space: CargoSpace;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
}

/** Gaps computed by the two trees of one carcass before it is said that no way was found: some seconds. */
const STANDARD_BUDGET = 8_000;
/** Whether a carcass comes out with all others in place is worth this share of it. */
const ALONE_SHARE = 0.25;
/** The carcass is out once it lies this far behind sill and bumper. */
const BEHIND_MM = 50;

interface Left {
  readonly carried: Carried;
  readonly alone: PlanResult;
}

interface Tried {
  readonly own: Left;
  readonly result: PlanResult;
}

/** The first of those left that has a plain way out, and only where none has one the first that the trees bring out. */
const nextOut = (
  left: readonly Left[],
  plan: (own: Left, budget: number) => PlanResult,
  budget: number,
): { readonly next: Tried | null; readonly tried: readonly Tried[] } => {
  let tried: Tried[] = [];
  for (const within of [0, budget]) {
    tried = [];
    for (const own of left) {
      const result = plan(own, within);
      if (result.path) return { next: { own, result }, tried };
      tried.push({ own, result });
    }
  }
  return { next: null, tried };
};

/**
 * How every carcass is carried in and out again. Worked backwards: with everything in its place, whatever comes out is
 * taken out, which only makes room for the rest; carried in is the other way round. So an order is found whenever
 * there is one among the ways that the search finds.
 */
export const planCarryIn = (input: CarryInput, budget: number = STANDARD_BUDGET): CarryIn => {
  const { design, space, fitout, rules } = input;
  const wantedMm = rules.value('gap-pass-through');
  const vehicle = vehiclePast(design, space, rules);
  const outsideX = Math.min(space.bounds.min[0] - design.vehicle.bumperBehindSillMm, space.bounds.min[0]) - BEHIND_MM;
  const all = carriedOf(fitout);
  const planFor = (carried: Carried, others: readonly Carried[], within: number): PlanResult => {
    const past: readonly Past[] = [...vehicle, ...others.filter((own) => own !== carried).map(carriedPast)];
    return planOut({ carried, past, wantedMm, outsideX, budget: within });
  };
  const rowOf = ({ own: { carried, alone }, result: { path, stuck } }: Tried): CarriedCarcass => ({
    carcass: carried.id,
    path,
    comesOutAlone: alone.path !== null,
    alone: alone.path,
    stuck,
    outMm: Math.max(0, shapeBox(carried.shape).max[0] - outsideX),
    middle: carried.middle,
    massKg: carried.massKg,
  });
  let left: readonly Left[] = all
    .map((carried) => ({ carried, alone: planFor(carried, all, Math.ceil(budget * ALONE_SHARE)) }))
    // Nearest the opening first, as anyone would begin.
    .toSorted((a, b) => shapeBox(a.carried.shape).min[0] - shapeBox(b.carried.shape).min[0]);
  const out: CarriedCarcass[] = [];
  const mounts = mountsOff(input, { outsideX, wantedMm, vehicle, carcasses: all });
  while (left.length > 0) {
    const inPlace = left.map(({ carried }) => carried);
    const allStand = out.length === 0;
    const plan = ({ carried, alone }: Left, within: number): PlanResult =>
      allStand && alone.path ? alone : planFor(carried, inPlace, within);
    const { next, tried } = nextOut(left, plan, budget);
    if (!next) return { carcasses: [...out.toReversed(), ...tried.map(rowOf)], mounts, wantedMm };
    out.push(rowOf(next));
    left = left.filter((own) => own !== next.own);
  }
  return { carcasses: out.toReversed(), mounts, wantedMm };
};
