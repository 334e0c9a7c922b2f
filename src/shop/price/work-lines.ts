import type { Catalog, HouseRules } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import type { FitOut, Panel } from '../../fitout/index.ts';
import { powerPlan } from '../../inspection/index.ts';
import { toCent, toTenth } from '../rounding.ts';
import type { SheetLayouts } from '../sheet-layouts.ts';
import { fittingCounts } from './fitting-hours.ts';
import type { PriceGroup, PriceLine } from './price-line.ts';

export interface WorkInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly layouts: SheetLayouts;
}

/** One kind of work: how often, and the house rules that say how long it takes and what an hour costs. */
interface Work {
  readonly hours: string;
  readonly rate: 'rate-labour' | 'rate-electrical' | 'rate-design';
  readonly count: number;
  readonly unit: string;
  readonly counted: string;
}

const MM_PER_METRE = 1000;
const MM2_PER_M2 = 1e6;

const GROUP_OF: Readonly<Record<Work['rate'], PriceGroup>> = {
  'rate-labour': 'shop hours',
  'rate-electrical': 'electrical hours',
  'rate-design': 'office hours',
};

const bandedMetres = ({ bands, length, width }: Panel): number =>
  ((bands.l1 === null ? 0 : length) +
    (bands.l2 === null ? 0 : length) +
    (bands.w1 === null ? 0 : width) +
    (bands.w2 === null ? 0 : width)) /
  MM_PER_METRE;

const isMachined = ({ cuts, outline, bevels = [] }: Panel): boolean =>
  outline !== null || bevels.length > 0 || cuts.some(({ kind }) => kind !== 'cutout');

const sum = <T>(items: readonly T[], of: (item: T) => number): number => items.reduce((all, item) => all + of(item), 0);

/** Faced sheets, plastics and metal come finished; bare plywood is finished on both faces. */
const finishedM2 = ({ fitout, catalog }: WorkInput): number =>
  sum(fitout.panels, ({ material, length, width }) =>
    catalog.materials.get(material)?.kind === 'plywood' ? (2 * length * width) / MM2_PER_M2 : 0,
  );

const FITTING_WORK = [
  ['hours-drawer', 'drawer'],
  ['hours-slide-out', 'slide-out'],
  ['hours-door', 'door'],
  ['hours-board', 'board'],
  ['hours-bracket', 'bracket'],
] as const;

const shopWork = (input: WorkInput): readonly Work[] => {
  const { design, fitout, layouts } = input;
  const { panels } = fitout;
  const fittings = fittingCounts(design);
  const work = (hours: string, count: number, unit: string, counted: string): Work => ({
    hours,
    rate: 'rate-labour',
    count,
    unit,
    counted,
  });
  return [
    work('hours-sheet-handling', layouts.sheets, 'sheet', 'sheet layouts'),
    work('hours-cut-part', panels.length, 'part', 'cut list'),
    work('hours-machine-part', panels.filter(isMachined).length, 'part', 'cut list, parts with dados, bores or shape'),
    work(
      'hours-cut-out',
      sum(panels, ({ cuts }) => cuts.filter(({ kind }) => kind === 'cutout').length),
      'cut-out',
      'cut list',
    ),
    work(
      'hours-bend',
      sum(panels, ({ bends = [] }) => bends.length),
      'bend',
      'cut list',
    ),
    work('hours-band-metre', toTenth(sum(panels, bandedMetres)), 'm', 'cut list, banded edges'),
    work('hours-finish-m2', toTenth(finishedM2(input)), 'm²', 'cut list, both faces of bare plywood'),
    work('hours-assemble-part', panels.length, 'part', 'cut list'),
    ...FITTING_WORK.map(([rule, unit]) => work(rule, fittings.get(rule) ?? 0, unit, 'fittings of the design')),
    work('hours-anchor', fitout.anchors.length, 'anchor', 'anchors of the design'),
    work('hours-brace', fitout.braces.length, 'brace', 'braces of the design'),
    work('hours-install', fitout.carcasses.length, 'carcass', 'carcasses of the design'),
    work('hours-weigh', 1, 'weighing', 'once, after the build'),
  ];
};

const electricalWork = ({ design, fitout, catalog, rules }: WorkInput): readonly Work[] => [
  {
    hours: 'hours-device',
    rate: 'rate-electrical',
    count: fitout.devices.length,
    unit: 'device',
    counted: 'devices of the design',
  },
  {
    hours: 'hours-circuit',
    rate: 'rate-electrical',
    count: powerPlan({ design, fitout, catalog, rules }).circuits.length,
    unit: 'circuit',
    counted: 'circuits of the design',
  },
];

const officeWork = ({ design }: WorkInput): readonly Work[] => {
  const once = (hours: string): Work => ({ hours, rate: 'rate-design', count: 1, unit: 'job', counted: 'once' });
  return [
    once('hours-interview'),
    once('hours-survey'),
    once('hours-layout'),
    {
      ...once('hours-review'),
      count: Math.max(1, design.revisions.length),
      unit: 'round',
      counted: 'released revisions, at least one',
    },
  ];
};

/** Work below zero is nobody's: such a rule counts as nothing. */
export const ruleFigure = (rules: HouseRules, id: string): number => {
  const value = rules.value(id);
  return Number.isFinite(value) && value > 0 ? value : 0;
};

const lineOf = ({ hours: rule, rate, count, unit, counted }: Work, rules: HouseRules): PriceLine => {
  const [hoursEach, each] = [ruleFigure(rules, rule), ruleFigure(rules, rate)];
  const hours = hoursEach * count;
  return {
    group: GROUP_OF[rate],
    what: rules.record(rule).about,
    count,
    unit,
    hoursEach,
    hours,
    each,
    amount: toCent(hours * each),
    from: `${counted}; house rules ${rule}, ${rate}`,
  };
};

/** House rules that the hours are reckoned from, among them those that are used for no line of this design. */
export const workLines = (input: WorkInput): readonly PriceLine[] =>
  [...shopWork(input), ...electricalWork(input), ...officeWork(input)]
    .filter(({ count }) => count > 0)
    .map((work) => lineOf(work, input.rules));
