import {
  add,
  type Box,
  boxAround,
  boxCorners,
  ORIGIN,
  placed,
  ROUNDING_MM,
  scale,
  type Vec3,
} from '../../base/index.ts';
import type { InspectionInput } from '../job.ts';
import { fittedItems } from '../loads/index.ts';
import type { Footprint } from './bolt-group.ts';

type Anchor = InspectionInput['fitout']['anchors'][number];

/** A carcass with all that its anchors hold: itself, what is in it, and every carcass that stands on it. */
export interface HeldCarcass {
  readonly id: string;
  readonly box: Box;
  readonly kg: number;
  readonly sigmaKg: number;
  readonly centre: Vec3;
  readonly foot: Footprint;
  readonly anchors: readonly Anchor[];
  /** The carcass that it stands on, or null for the floor of the vehicle. */
  readonly standsOn: string | null;
}

interface Weight {
  readonly kg: number;
  readonly varianceKg2: number;
  readonly moment: Vec3;
}

const NO_WEIGHT: Weight = { kg: 0, varianceKg2: 0, moment: ORIGIN };
const both = (a: Weight, b: Weight): Weight => ({
  kg: a.kg + b.kg,
  varianceKg2: a.varianceKg2 + b.varianceKg2,
  moment: add(a.moment, b.moment),
});

const overlapInPlan = (a: Box, b: Box): boolean =>
  ([0, 1] as const).every((i) => a.min[i] < b.max[i] - ROUNDING_MM && b.min[i] < a.max[i] - ROUNDING_MM);

const weightsOf = ({ fitout, rules }: InspectionInput): ReadonlyMap<string, Weight> => {
  const weights = new Map<string, Weight>();
  fittedItems(fitout, rules).forEach(({ kg, sigmaKg, at }, i) => {
    const carcass = fitout.masses[i]?.carcass ?? null;
    if (carcass === null) return;
    const own: Weight = { kg, varianceKg2: sigmaKg ** 2, moment: scale(at, kg) };
    weights.set(carcass, both(weights.get(carcass) ?? NO_WEIGHT, own));
  });
  return weights;
};

/** Every carcass with what it has to hold. The mass carries the contingency that loading cases carry. */
export const heldCarcasses = (job: InspectionInput): readonly HeldCarcass[] => {
  const { fitout } = job;
  const own = weightsOf(job);
  const boxes = fitout.carcasses.map(({ id, pose, size }) => ({
    id,
    box: boxAround(boxCorners({ min: ORIGIN, max: size }).map((corner) => placed(pose, corner))),
  }));
  const under = ({ id, box }: (typeof boxes)[number]): string | null =>
    boxes.find(
      (other) =>
        other.id !== id && Math.abs(other.box.max[2] - box.min[2]) <= ROUNDING_MM && overlapInPlan(other.box, box),
    )?.id ?? null;
  const standsOn = new Map(boxes.map((each) => [each.id, under(each)]));
  const total = new Map<string, Weight>(boxes.map(({ id }) => [id, own.get(id) ?? NO_WEIGHT]));
  // From the top down, so that what stands on what stands on it is already counted.
  for (const { id } of boxes.toSorted((a, b) => b.box.min[2] - a.box.min[2])) {
    const below = standsOn.get(id) ?? null;
    if (below !== null) total.set(below, both(total.get(below) ?? NO_WEIGHT, total.get(id) ?? NO_WEIGHT));
  }
  return boxes.map(({ id, box }): HeldCarcass => {
    const { kg, varianceKg2, moment } = total.get(id) ?? NO_WEIGHT;
    return {
      id,
      box,
      kg,
      sigmaKg: Math.sqrt(varianceKg2),
      centre: kg > 0 ? scale(moment, 1 / kg) : ORIGIN,
      foot: { min: [box.min[0], box.min[1]], max: [box.max[0], box.max[1]], z: box.min[2] },
      anchors: fitout.anchors.filter(({ carcass }) => carcass === id),
      standsOn: standsOn.get(id) ?? null,
    };
  });
};
