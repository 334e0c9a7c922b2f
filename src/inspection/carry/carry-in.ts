import { ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import { shapeBox, travelIsClear } from '../../bodies/index.ts';
import type { Catalog, HouseRules } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { makeJob } from '../job.ts';
import { openVehicle } from '../travel/movers.ts';
import type { CarriedCarcass, CarriedMount, CarryIn } from './carry-result.ts';
import { type Carried, carriedOf, carriedPast, type Past, vehiclePast } from './carry-scene.ts';
import { type PlanResult, planOut } from './plan-out.ts';

export interface CarryInput {
  readonly design: Design;
  readonly space: CargoSpace;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
}

/** Gaps computed for one carcass before it is said that no way was found: some seconds. */
const STANDARD_BUDGET = 8_000;
/** The carcass is out once it lies this far behind sill and bumper. */
const BEHIND_MM = 50;
/** A mount is off once it has come this far. */
const OFF_MM = 150;

const AXES: readonly Vec3[] = [
  [-1, 0, 0],
  [0, 0, -1],
  [0, 1, 0],
  [0, -1, 0],
  [1, 0, 0],
  [0, 0, 1],
];

/** Each mount comes straight off some way, with the closures open and the cabinet in its place. */
const mountsOff = (input: CarryInput): readonly CarriedMount[] => {
  const job = makeJob(input);
  const hanging = openVehicle(job, input.space);
  const cabinet = job.standing.filter(({ closure, body }) => closure === null && body.kind !== 'plug-room');
  return input.design.mounts.map(({ id }) => {
    const riding = hanging.filter(({ part }) => part === id).map(({ shape }) => shape);
    const own =
      riding.length > 0 ? riding : cabinet.filter(({ body }) => body.origin === id).map(({ body }) => body.shape);
    const others = [
      ...hanging.filter(({ part }) => part !== id).map(({ shape }) => shape),
      ...cabinet.filter(({ body }) => body.origin !== id).map(({ body }) => body.shape),
    ].filter((shape) =>
      own.every((piece) =>
        travelIsClear({ kind: 'slide', along: [1, 0, 0], fromMm: 0, toMm: 0 }, [piece], [shape], ROUNDING_MM),
      ),
    );
    const comesOff = AXES.some((along) =>
      travelIsClear({ kind: 'slide', along, fromMm: 0, toMm: OFF_MM }, own, others, 0),
    );
    return { mount: id, comesOff };
  });
};

interface Left {
  readonly carried: Carried;
  readonly alone: PlanResult;
}

/**
 * How every carcass is carried in and out again. Worked backwards: with everything in its place, whatever comes out is
 * taken out, which only makes room for the rest; carried in is the other way round. So an order is found whenever
 * there is one among the ways that the search finds.
 */
export const planCarryIn = (input: CarryInput, budget: number = STANDARD_BUDGET): CarryIn => {
  const { design, space, fitout, rules } = input;
  const wantedMm = rules.value('gap-pass-through');
  const vehicle = vehiclePast(design, space);
  const outsideX = Math.min(space.bounds.min[0] - design.vehicle.bumperBehindSillMm, space.bounds.min[0]) - BEHIND_MM;
  const all = carriedOf(fitout);
  const planFor = (carried: Carried, others: readonly Carried[]): PlanResult => {
    const past: readonly Past[] = [...vehicle, ...others.filter((own) => own !== carried).map(carriedPast)];
    return planOut({ carried, past, wantedMm, outsideX, budget });
  };
  const rowOf = ({ carried, alone }: Left, { path, stuck }: PlanResult): CarriedCarcass => ({
    carcass: carried.id,
    path,
    comesOutAlone: alone.path !== null,
    stuck,
    middle: carried.middle,
    massKg: carried.massKg,
  });
  let left: readonly Left[] = all
    .map((carried) => ({ carried, alone: planFor(carried, all) }))
    // Nearest the opening first, as anyone would begin.
    .toSorted((a, b) => shapeBox(a.carried.shape).min[0] - shapeBox(b.carried.shape).min[0]);
  const out: CarriedCarcass[] = [];
  let first = true;
  while (left.length > 0) {
    const inPlace = left.map(({ carried }) => carried);
    const tried = left.map((own) => ({ own, result: first ? own.alone : planFor(own.carried, inPlace) }));
    const next = tried.find(({ result }) => result.path !== null);
    if (!next)
      return {
        carcasses: [...out.toReversed(), ...tried.map(({ own, result }) => rowOf(own, result))],
        mounts: mountsOff(input),
        wantedMm,
      };
    out.push(rowOf(next.own, next.result));
    left = left.filter((own) => own !== next.own);
    first = false;
  }
  return { carcasses: out.toReversed(), mounts: mountsOff(input), wantedMm };
};
