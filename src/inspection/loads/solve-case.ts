import type { Vec3 } from '../../base/index.ts';
import type { Vehicle, WeighSlip } from '../../design/index.ts';
import type { LoadingCaseResult } from '../finding.ts';
import type { AboardItem, CaseId, LoadingCase } from './aboard.ts';
import { axleLoads, receivedLeftMm } from './axle-loads.ts';
import { type Stability, staticStability } from './stability.ts';

/** Half width of a figure at 95 %, in standard deviations of a normal spread (1.96, as shops write it). */
export const SIGMAS_AT_95 = 2;

/** A loading case as far as the known figures carry it. */
export interface SolvedCase {
  readonly id: CaseId;
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

const spreadOf = (items: readonly AboardItem[], shareOf: (item: AboardItem) => number): number =>
  SIGMAS_AT_95 * Math.sqrt(items.reduce((sum, item) => sum + (item.sigmaKg * shareOf(item)) ** 2, 0));

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

const resultOf = (vehicle: Vehicle, slip: WeighSlip, placing: Placing, load: LoadingCase): LoadingCaseResult => {
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
  const cg: Vec3 = [
    axles.cgForwardOfRearAxleMm + placing.sillBehindRearAxleMm,
    axles.cgLeftMm,
    cgHeightMm === null || floorAboveGroundMm === null ? 0 : cgHeightMm - floorAboveGroundMm,
  ];
  const left = (rating: number | null, load: number): number | null => (rating === null ? null : rating - load);
  return {
    id: load.id,
    frontKg: axles.frontKg,
    rearKg: axles.rearKg,
    totalKg: axles.totalKg,
    leftShare: axles.leftShare,
    cg,
    cgHeightMm,
    ssf: stability?.after ?? null,
    ssfWorstSide: stability?.worstSide ?? null,
    margins: {
      frontKg: left(ratings.frontAxleKg, axles.frontKg),
      rearKg: left(ratings.rearAxleKg, axles.rearKg),
      grossKg: left(ratings.grossKg, axles.totalKg),
    },
  };
};

/** Loads of one case from the weigh slip; null without a slip, since no load can be told from nothing. */
export const solveCase = (vehicle: Vehicle, load: LoadingCase): SolvedCase | null => {
  const { slip } = vehicle;
  if (slip === null) return null;
  const placing = placingOf(vehicle);
  const frontShare = ({ at }: AboardItem): number =>
    placing === null ? 0 : (at[0] - placing.sillBehindRearAxleMm) / placing.wheelbaseMm;
  return {
    id: load.id,
    items: load.items,
    totalKg: load.items.reduce((sum, item) => sum + item.kg, slip.frontKg + slip.rearKg),
    totalSpreadKg: spreadOf(load.items, () => 1),
    frontSpreadKg: spreadOf(load.items, frontShare),
    rearSpreadKg: spreadOf(load.items, (item) => 1 - frontShare(item)),
    result: placing === null ? null : resultOf(vehicle, slip, placing, load),
  };
};
