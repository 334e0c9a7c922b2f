import type { HouseRules } from '../../catalog/index.ts';
import type { BuiltSlip } from '../../design/index.ts';
import type { AboardItem } from './aboard.ts';
import type { SolvedCase } from './solve-case.ts';

/** What one item probably has to do with a difference: its part by how badly it is known. */
export interface WeighShare {
  readonly id: string;
  readonly kg: number;
  readonly sigmaKg: number;
  /** What it would weigh more (kg) if the difference is spread by variance. */
  readonly moreKg: number;
  /** What it would be listed with if the scale is believed: mass and what doubt is left, without the contingency. */
  readonly listedKg: number;
  readonly listedSigmaKg: number;
}

/** The scale after the build against the prediction of the same loading case. */
export interface WeighIn {
  readonly case: string;
  readonly predicted: { readonly frontKg: number; readonly rearKg: number; readonly totalKg: number };
  readonly weighed: { readonly frontKg: number; readonly rearKg: number; readonly totalKg: number };
  /** The left side, where the scale gave it and the track is known; null otherwise. */
  readonly leftKg: { readonly predicted: number; readonly weighed: number } | null;
  readonly moreKg: number;
  /** The difference over its standard deviation: beyond 2, something is missing or counted twice. */
  readonly sigmas: number;
  /** Mass that the fit-out was predicted to add, and the share of it that the difference is. */
  readonly addedKg: number;
  readonly share: number;
  /** Items that explain it best, the most first. */
  readonly items: readonly WeighShare[];
  /** The contingency that the scale shows, over what is listed of the cabinet; null without a cabinet. */
  readonly contingencyShare: number | null;
}

/** As many as a person looks at. */
const MOST_ITEMS = 6;

const added = (items: readonly AboardItem[]): readonly AboardItem[] =>
  items.filter(({ what }) => what === 'cabinet' || what === 'gear');

/**
 * Compares the slip after the build with what was predicted for its loading case. Of a difference Δ an item known to σ
 * explains Δ σ² / Σ σ² best, the scale's own doubt among them. Null without a prediction of that case.
 */
export const weighIn = (slip: BuiltSlip, cases: readonly SolvedCase[], rules: HouseRules): WeighIn | null => {
  const solved = cases.find(({ id }) => id === slip.case);
  if (!solved?.result) return null;
  const { result, items } = solved;
  const totalKg = slip.frontKg + slip.rearKg;
  const moreKg = totalKg - result.totalKg;
  // Two axles weighed twice: as received and now.
  const scale = 4 * rules.value('slip-sigma-kg') ** 2;
  const variance = items.reduce((sum, { sigmaKg }) => sum + sigmaKg ** 2, scale);
  const fitted = added(items);
  const addedKg = fitted.reduce((sum, { kg }) => sum + kg, 0);
  const cabinetKg = items.reduce((sum, { what, kg }) => (what === 'cabinet' ? sum + kg : sum), 0);
  const factor = 1 + rules.value('contingency-share');
  const listedKg = cabinetKg / factor;
  return {
    case: slip.case,
    predicted: { frontKg: result.frontKg, rearKg: result.rearKg, totalKg: result.totalKg },
    weighed: { frontKg: slip.frontKg, rearKg: slip.rearKg, totalKg },
    leftKg:
      slip.leftKg === null || result.leftShare === null
        ? null
        : { predicted: result.leftShare * result.totalKg, weighed: slip.leftKg },
    moreKg,
    sigmas: variance > 0 ? moreKg / Math.sqrt(variance) : 0,
    addedKg,
    share: addedKg > 0 ? Math.abs(moreKg) / addedKg : 0,
    items: items
      .map(({ id, what, kg, sigmaKg }): WeighShare => {
        const share = variance > 0 ? sigmaKg ** 2 / variance : 0;
        const own = what === 'cabinet' ? factor : 1;
        const more = moreKg * share;
        return {
          id,
          kg,
          sigmaKg,
          moreKg: more,
          listedKg: Math.max(0, kg + more) / own,
          listedSigmaKg: (sigmaKg * Math.sqrt(1 - share)) / own,
        };
      })
      .toSorted((a, b) => b.sigmaKg - a.sigmaKg)
      .slice(0, MOST_ITEMS),
    contingencyShare: listedKg > 0 ? Math.max(0, (cabinetKg + moreKg) / listedKg - 1) : null,
  };
};
