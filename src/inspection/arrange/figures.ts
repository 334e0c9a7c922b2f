import { accessOf } from '../access/work-out-order.ts';
import type { InspectionInput } from '../job.ts';
import { loadingCases, solveCase } from '../loads/index.ts';
import { armsLength, liftsOf } from '../reach/index.ts';

/** What of an arrangement stands out, and where: null where the vehicle's figures do not tell it. */
export interface ArrangeFigures {
  /** Difference of left and right over the whole in the worst loading case. */
  readonly sideShare: number | null;
  readonly sideCase: string | null;
  /** The worst lifting index within the equation; null without the floor's height, 0 with nothing to lift. */
  readonly liftIndex: number | null;
  readonly liftGear: string | null;
  /** The indexes of all lifts within the equation together. */
  readonly liftSum: number | null;
  /** Lifts outside the equation, which have no index. */
  readonly notAllowed: number;
  /** Most motions from the closed vehicle to first-due gear; null without any. */
  readonly motions: number | null;
  readonly motionsGear: string | null;
  /** First-due gear that no straight way out was found for. */
  readonly stuck: number;
  /** Furthest first-due gear from the shoulder of a small person (mm). */
  readonly armsMm: number | null;
  readonly armsGear: string | null;
}

const worstOf = <T>(list: readonly T[], value: (own: T) => number): T | null =>
  list.reduce<T | null>((worst, own) => (worst === null || value(own) > value(worst) ? own : worst), null);

/** The figures that an arrangement is compared by, taken from the cabinet as it is solved. */
export const arrangeFigures = (input: InspectionInput): ArrangeFigures => {
  const { design, fitout, rules } = input;
  const side = worstOf(
    loadingCases(design, fitout, rules).flatMap((load) => {
      // As received nothing is aboard that could stand elsewhere.
      if (load.items.length === 0) return [];
      const share = solveCase(design.vehicle, load, rules)?.result?.leftShare ?? null;
      return share === null ? [] : [{ id: load.id, share: Math.abs(2 * share - 1) }];
    }),
    ({ share }) => share,
  );
  const lifts = liftsOf(input);
  const least = rules.value('lifting-least-mass');
  const judged = lifts.filter(({ kg }) => kg >= least);
  const hardest = worstOf(judged, ({ index }) => index ?? 0);
  const firstDue = new Set<string>(design.gear.flatMap((gear) => (gear.firstDue && gear.place ? [gear.id] : [])));
  const { reach } = accessOf(input);
  const ways = [...firstDue].flatMap((id) => reach(id) ?? []);
  const slowest = worstOf(
    ways.filter(({ found }) => found),
    ({ count }) => count ?? 0,
  );
  const furthest = worstOf(
    lifts.filter(({ gear }) => firstDue.has(gear)),
    (lift) => armsLength(lift, rules),
  );
  return {
    sideShare: side?.share ?? null,
    sideCase: side?.id ?? null,
    liftIndex: design.vehicle.floorAboveGroundMm === null ? null : (hardest?.index ?? 0),
    liftGear: hardest?.gear ?? null,
    liftSum:
      design.vehicle.floorAboveGroundMm === null ? null : judged.reduce((sum, { index }) => sum + (index ?? 0), 0),
    notAllowed: judged.filter(({ index }) => index === null).length,
    motions: slowest?.count ?? null,
    motionsGear: slowest?.gear ?? null,
    stuck: ways.filter(({ found }) => !found).length,
    armsMm: furthest && armsLength(furthest, rules),
    armsGear: furthest?.gear ?? null,
  };
};
