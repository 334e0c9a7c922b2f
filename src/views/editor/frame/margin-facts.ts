import type { Finding, Inspection, MarginName, Measured, Severity } from '../../../inspection/index.ts';
import { MARGINS } from '../../../inspection/index.ts';

/** What one piece of tape along the foot shows. */
export interface MarginFact {
  readonly margin: MarginName;
  /** The worst check of this margin, or null where none has run. */
  readonly worst: Measured | null;
  readonly severity: Severity | 'good';
  /** The finding that the worst check led to, as its place in the list, or null. */
  readonly finding: number | null;
  /** Checks of this margin. */
  readonly checks: number;
}

const RANK: Readonly<Record<Severity, number>> = { stop: 0, caution: 1, note: 2 };
const RANK_GOOD = 3;

/** Ids joined; a space never stands in one. */
const keyOf = ({ rule, parts }: { readonly rule: string; readonly parts: readonly string[] }): string =>
  [rule, ...parts].join(' ');

/** How much is to spare as a part of the limit, so that checks in different units can be compared. */
const spareShare = ({ slack, limit, value }: Measured): number => slack / (Math.abs(limit) || Math.abs(value) || 1);

interface Judged {
  readonly measured: Measured;
  readonly finding: number | null;
  readonly severity: Severity | 'good';
}

const rankOf = ({ severity }: Judged): number => (severity === 'good' ? RANK_GOOD : RANK[severity]);

/** What is to spare if the uncertainty falls against us. */
const sureShare = (measured: Measured): number =>
  spareShare({ ...measured, slack: measured.slack - measured.uncertainty });

const worse = (a: Judged, b: Judged): number => rankOf(a) - rankOf(b) || sureShare(a.measured) - sureShare(b.measured);

const findingPlaces = (findings: readonly Finding[]): ReadonlyMap<string, number> => {
  const places = new Map<string, number>();
  findings.forEach((finding, i) => {
    if (!places.has(keyOf(finding))) places.set(keyOf(finding), i);
  });
  return places;
};

/** The worst check of each of the nine margins: by severity of its finding, then by how little there is to spare. */
export const marginFacts = (inspection: Inspection | null): readonly MarginFact[] => {
  const findings = inspection?.findings ?? [];
  const places = findingPlaces(findings);
  const worst = new Map<MarginName, Judged>();
  const checks = new Map<MarginName, number>();
  for (const measured of inspection?.measured ?? []) {
    const { margin } = measured;
    if (margin === null) continue;
    const finding = places.get(keyOf(measured)) ?? null;
    const judged: Judged = {
      measured,
      finding,
      severity: (finding === null ? null : findings[finding]?.severity) ?? 'good',
    };
    checks.set(margin, (checks.get(margin) ?? 0) + 1);
    const before = worst.get(margin);
    // Of two that are as bad as each other the first stays.
    if (!before || worse(judged, before) < 0) worst.set(margin, judged);
  }
  return MARGINS.map((margin) => {
    const found = worst.get(margin);
    return {
      margin,
      worst: found?.measured ?? null,
      severity: found?.severity ?? 'good',
      finding: found?.finding ?? null,
      checks: checks.get(margin) ?? 0,
    };
  });
};

/** Where limit and value lie on a piece of tape, as shares of its length; good values lie on the side of `goodSide`. */
export interface TapePlace {
  readonly limit: number;
  readonly value: number;
  readonly goodSide: 'right' | 'left';
}

const LIMIT_FROM_END = 0.3;
const NEAR_END = 0.03;

/** At the limit the marker stands on the long tick; twice the limit to spare fills the good side. */
export const tapePlace = (measured: Measured): TapePlace => {
  const share = Math.max(-1, Math.min(1, spareShare(measured)));
  const goodSide = measured.slack * (measured.value - measured.limit) >= 0 ? 'right' : 'left';
  const good = 1 - LIMIT_FROM_END - NEAR_END;
  const bad = LIMIT_FROM_END - NEAR_END;
  const away = share >= 0 ? share * good : share * bad;
  return goodSide === 'right'
    ? { limit: LIMIT_FROM_END, value: LIMIT_FROM_END + away, goodSide }
    : { limit: 1 - LIMIT_FROM_END, value: 1 - LIMIT_FROM_END - away, goodSide };
};
