import type { HouseRules } from '../../catalog/index.ts';
import type { Vehicle, WeighSlip } from '../../design/index.ts';
import type { LoadingCaseResult } from '../finding.ts';
import type { AboardItem, LoadingCase } from './aboard.ts';
import { axleLoads, receivedLeftMm } from './axle-loads.ts';
import { centreWithVehicle, type SpreadItem, stabilitySigma } from './spread.ts';
import { type Stability, staticStability } from './stability.ts';

/** Half width of a figure at 95 %, in standard deviations of a normal spread (1.96, as shops write it). */
export const SIGMAS_AT_95 = 2;

/** A loading case as far as the known figures carry it. */
export interface SolvedCase {
  readonly id: string;
  readonly items: readonly AboardItem[];
  readonly totalKg: number;
  /** Half widths at 95 % from the spread of the masses aboard. */
  readonly totalSpreadKg: number;
  readonly frontSpreadKg: number;
  readonly rearSpreadKg: number;
  /** Null until the wheelbase and the place of the rear axle are known. */
  readonly result: LoadingCaseResult | null;
}

/** What axle loads need beside the slip. */
interface Placing {
  readonly wheelbaseMm: number;
  readonly sillBehindRearAxleMm: number;
}

const placingOf = ({ wheelbaseMm, sillBehindRearAxleMm }: Vehicle): Placing | null =>
  wheelbaseMm === null || sillBehindRearAxleMm === null ? null : { wheelbaseMm, sillBehindRearAxleMm };

/** Half width at 95 % of what an axle carries, or the whole: the masses aboard, each by its share, and the slip. */
const spreadOf = (items: readonly AboardItem[], shareOf: (item: AboardItem) => number, slipSigmaKg: number): number =>
  SIGMAS_AT_95 *
  Math.hypot(slipSigmaKg, Math.sqrt(items.reduce((sum, item) => sum + (item.sigmaKg * shareOf(item)) ** 2, 0)));

/** How well the centre of gravity is known on each axis; upward null where its height is not known at all. */
const centreSigma = (
  vehicle: Vehicle,
  slip: WeighSlip,
  placing: Placing,
  items: readonly AboardItem[],
  rules: HouseRules,
): LoadingCaseResult['cgSigmaMm'] => {
  const { cgHeightAsReceivedMm: height, floorAboveGroundMm: floor, trackMm } = vehicle;
  const up = height === null || floor === null ? 0 : height - floor;
  const left = receivedLeftMm(slip, trackMm);
  const sigmaKg = rules.value('slip-sigma-kg');
  const axle = (kg: number, x: number): SpreadItem => ({ kg, sigmaKg, at: [x, left, up], sigmaMm: [0, 0, 0] });
  const { wheelbaseMm, sillBehindRearAxleMm: rear } = placing;
  const weighed = slip.leftKg !== null && slip.rightKg !== null && trackMm !== null;
  const baseKg = slip.frontKg + slip.rearKg;
  if (baseKg <= 0) return null;
  // Two sides weighed apart to σ each put the middle off by T σ √2 / 2 over the whole.
  const aside = weighed ? (trackMm * sigmaKg * Math.SQRT1_2) / baseKg : rules.value('received-left-sigma');
  const place = rules.value('place-sigma');
  const [x, y, z] = centreWithVehicle(
    [axle(slip.frontKg, rear + wheelbaseMm), axle(slip.rearKg, rear)],
    [0, aside, (height ?? 0) * rules.value('cg-height-sigma-share')],
    items.map(({ kg, sigmaKg: sigma, at }) => ({ kg, sigmaKg: sigma, at, sigmaMm: [place, place, place] })),
  ).sigmaMm;
  return [x, y, height === null || floor === null ? null : z];
};

const stabilityOf = (vehicle: Vehicle, slip: WeighSlip, items: readonly AboardItem[]): Stability | null => {
  const { trackMm, floorAboveGroundMm, cgHeightAsReceivedMm } = vehicle;
  const baseKg = slip.frontKg + slip.rearKg;
  if (trackMm === null || floorAboveGroundMm === null || cgHeightAsReceivedMm === null || baseKg <= 0) return null;
  return staticStability({
    trackMm,
    base: { kg: baseKg, heightMm: cgHeightAsReceivedMm, leftMm: receivedLeftMm(slip, trackMm) },
    items: items.map(({ kg, at }) => ({ kg, heightMm: at[2] + floorAboveGroundMm, leftMm: at[1] })),
  });
};

const heightOf = (vehicle: Vehicle, slip: WeighSlip, items: readonly AboardItem[]): number | null => {
  const { floorAboveGroundMm, cgHeightAsReceivedMm } = vehicle;
  const baseKg = slip.frontKg + slip.rearKg;
  if (floorAboveGroundMm === null || cgHeightAsReceivedMm === null || baseKg <= 0) return null;
  const kg = items.reduce((sum, item) => sum + item.kg, baseKg);
  const moment = items.reduce(
    (sum, { kg: own, at }) => sum + own * (at[2] + floorAboveGroundMm),
    baseKg * cgHeightAsReceivedMm,
  );
  return moment / kg;
};

const resultOf = (
  vehicle: Vehicle,
  slip: WeighSlip,
  placing: Placing,
  load: LoadingCase,
  rules: HouseRules,
): LoadingCaseResult => {
  const { ratings, trackMm, floorAboveGroundMm } = vehicle;
  const axles = axleLoads({
    wheelbaseMm: placing.wheelbaseMm,
    trackMm,
    asReceived: slip,
    items: load.items.map(({ kg, at }) => ({
      kg,
      forwardOfRearAxleMm: at[0] - placing.sillBehindRearAxleMm,
      leftMm: at[1],
    })),
  });
  const cgHeightMm = heightOf(vehicle, slip, load.items);
  const stability = stabilityOf(vehicle, slip, load.items);
  const cg: LoadingCaseResult['cg'] = [
    axles.cgForwardOfRearAxleMm + placing.sillBehindRearAxleMm,
    axles.cgLeftMm,
    cgHeightMm === null || floorAboveGroundMm === null ? null : cgHeightMm - floorAboveGroundMm,
  ];
  const cgSigmaMm = centreSigma(vehicle, slip, placing, load.items, rules);
  const behind = load.items.reduce(
    (sum, { kg, at }) => sum + kg * Math.min(0, at[0] - placing.sillBehindRearAxleMm),
    0,
  );
  const left = (rating: number | null, load: number): number | null => (rating === null ? null : rating - load);
  return {
    id: load.id,
    frontKg: axles.frontKg,
    rearKg: axles.rearKg,
    totalKg: axles.totalKg,
    leftShare: axles.leftShare,
    cg,
    cgHeightMm,
    cgSigmaMm,
    takenOffFrontKg: -behind / placing.wheelbaseMm,
    ssf: stability?.after ?? null,
    ssfWorstSide: stability?.worstSide ?? null,
    ssfSigma:
      stability && cgSigmaMm && cgSigmaMm[2] !== null
        ? stabilitySigma(stability.worstSide, stability.cgHeightMm, cgSigmaMm[1], cgSigmaMm[2])
        : null,
    margins: {
      frontKg: left(ratings.frontAxleKg, axles.frontKg),
      rearKg: left(ratings.rearAxleKg, axles.rearKg),
      grossKg: left(ratings.grossKg, axles.totalKg),
    },
  };
};

/** Loads of one case from the weigh slip; null without a slip, since no load can be told from nothing. */
export const solveCase = (vehicle: Vehicle, load: LoadingCase, rules: HouseRules): SolvedCase | null => {
  const { slip } = vehicle;
  if (slip === null) return null;
  const placing = placingOf(vehicle);
  const sigma = rules.value('slip-sigma-kg');
  const frontShare = ({ at }: AboardItem): number =>
    placing === null ? 0 : (at[0] - placing.sillBehindRearAxleMm) / placing.wheelbaseMm;
  return {
    id: load.id,
    items: load.items,
    totalKg: load.items.reduce((sum, item) => sum + item.kg, slip.frontKg + slip.rearKg),
    totalSpreadKg: spreadOf(load.items, () => 1, sigma * Math.SQRT2),
    frontSpreadKg: spreadOf(load.items, frontShare, sigma),
    rearSpreadKg: spreadOf(load.items, (item) => 1 - frontShare(item), sigma),
    result: placing === null ? null : resultOf(vehicle, slip, placing, load, rules),
  };
};
