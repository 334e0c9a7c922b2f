import type { FitOut } from '../fitout/index.ts';
import { type Inspection, MARGINS } from '../inspection/index.ts';

/** One figure by which two designs are compared; null where it is not known. */
export interface Figure {
  /** `cabinet-mass`, `front-axle crew`, `margin gap`, `sheets`. */
  readonly id: string;
  readonly unit: string;
  readonly value: number | null;
}

export interface FigureSources {
  readonly fitout: FitOut;
  readonly inspection: Inspection | null;
  /** Sheets to buy, or null where nobody laid them out. */
  readonly sheets: number | null;
  /** In the currency of the price list, or null where there is none. */
  readonly price: number | null;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const marginFigures = ({ measured }: Inspection): readonly Figure[] =>
  MARGINS.flatMap((margin) => {
    const own = measured.filter((each) => each.margin === margin);
    const worst = own.reduce<(typeof own)[number] | null>(
      (least, each) => (least === null || each.slack < least.slack ? each : least),
      null,
    );
    return worst === null ? [] : [{ id: `margin ${margin}`, unit: worst.unit, value: worst.slack }];
  });

const loadFigures = ({ cases, findings }: Inspection): readonly Figure[] => [
  ...cases.flatMap(({ id, frontKg, rearKg, totalKg }) => [
    { id: `front-axle ${id}`, unit: 'kg', value: frontKg },
    { id: `rear-axle ${id}`, unit: 'kg', value: rearKg },
    { id: `total ${id}`, unit: 'kg', value: totalKg },
  ]),
  { id: 'stops', unit: 'count', value: findings.filter(({ severity }) => severity === 'stop').length },
];

/** The figures of one design: masses (kg), axles in each loading case, worst margins, sheets, price. */
export const figuresOf = ({ fitout, inspection, sheets, price }: FigureSources): readonly Figure[] => [
  {
    id: 'cabinet-mass',
    unit: 'kg',
    value: sum(fitout.masses.filter(({ kind }) => kind !== 'gear').map(({ massKg }) => massKg)),
  },
  {
    id: 'gear-mass',
    unit: 'kg',
    value: sum(fitout.masses.filter(({ kind }) => kind === 'gear').map(({ massKg }) => massKg)),
  },
  { id: 'panels', unit: 'count', value: fitout.panels.length },
  ...(inspection ? [...loadFigures(inspection), ...marginFigures(inspection)] : []),
  { id: 'sheets', unit: 'count', value: sheets },
  { id: 'price', unit: 'money', value: price },
];

export interface FigureChange {
  readonly id: string;
  readonly unit: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** Every figure of either, before and after, in the order of the later. */
export const pairFigures = (before: readonly Figure[], after: readonly Figure[]): readonly FigureChange[] => {
  const was = new Map(before.map((figure) => [figure.id, figure]));
  const is = new Set(after.map(({ id }) => id));
  return [
    ...after.map(({ id, unit, value }) => ({ id, unit, before: was.get(id)?.value ?? null, after: value })),
    ...before.flatMap(({ id, unit, value }) => (is.has(id) ? [] : [{ id, unit, before: value, after: null }])),
  ];
};

/** The figures that are not the same in both. */
export const compareFigures = (before: readonly Figure[], after: readonly Figure[]): readonly FigureChange[] =>
  pairFigures(before, after).filter((change) => change.before !== change.after);
