import { describe, expect, it } from 'vitest';
import type { Vehicle } from '../../src/design/index.ts';
import type { Finding, LoadingCaseResult } from '../../src/inspection/index.ts';
import { openFlow } from '../../src/views/cli/open-flow.ts';
import { sayer } from '../../src/views/cli/sayer.ts';
import { demo } from '../views/cli/command.ts';

// Each figure of the vehicle taken off the large demo by itself: what hangs on it is unknown and says what is needed.
const design = demo('harrow-fell');
const { vehicle } = design;
const flow = await openFlow();

type Part = Partial<Vehicle>;
type Unknown = (one: LoadingCaseResult) => unknown;

interface Row {
  readonly without: string;
  readonly part: Part;
  /** Words that must be said. */
  readonly needs: RegExp;
  /** No loading case can be told at all. */
  readonly noCases?: true;
  /** Figures of every case that are null then. */
  readonly unknown?: readonly Unknown[];
  /** Rules that neither find nor measure anything then. */
  readonly silent?: readonly string[];
}

const power = (part: Partial<Vehicle['power']>): Part => ({ power: { ...vehicle.power, ...part } });
const ratings = (part: Partial<Vehicle['ratings']>): Part => ({ ratings: { ...vehicle.ratings, ...part } });

const ROWS: readonly Row[] = [
  { without: 'slip', part: { slip: null }, needs: /weigh slip/, noCases: true },
  { without: 'wheelbase', part: { wheelbaseMm: null }, needs: /the wheelbase/, noCases: true },
  { without: 'place of the axle', part: { sillBehindRearAxleMm: null }, needs: /behind the rear axle/, noCases: true },
  {
    without: 'track',
    part: { trackMm: null },
    needs: /the track/,
    unknown: [({ leftShare }) => leftShare, ({ ssf }) => ssf, ({ ssfSigma }) => ssfSigma],
    silent: ['stability', 'stability-loss', 'side-to-side'],
  },
  {
    without: 'height of the floor',
    part: { floorAboveGroundMm: null },
    needs: /height of the cargo floor above ground/,
    unknown: [({ cg }) => cg[2], ({ cgHeightMm }) => cgHeightMm, ({ cgSigmaMm }) => cgSigmaMm?.[2], ({ ssf }) => ssf],
    silent: ['stability', 'stability-loss', 'lifting', 'head-clear', 'pull-height', 'see-in', 'low-roof'],
  },
  {
    without: 'height of the centre of gravity',
    part: { cgHeightAsReceivedMm: null },
    needs: /height of the centre of gravity/,
    unknown: [({ cg }) => cg[2], ({ cgHeightMm }) => cgHeightMm, ({ cgSigmaMm }) => cgSigmaMm?.[2], ({ ssf }) => ssf],
    silent: ['stability', 'stability-loss'],
  },
  {
    without: 'gross rating',
    part: ratings({ grossKg: null }),
    needs: /gross rating/,
    unknown: [({ margins }) => margins.grossKg],
    silent: ['payload'],
  },
  {
    without: 'front rating',
    part: ratings({ frontAxleKg: null }),
    needs: /front axle rating/,
    unknown: [({ margins }) => margins.frontKg],
    silent: ['front-axle'],
  },
  {
    without: 'rear rating',
    part: ratings({ rearAxleKg: null }),
    needs: /rear axle rating/,
    unknown: [({ margins }) => margins.rearKg],
    silent: ['rear-axle'],
  },
  { without: 'fuel', part: { fuel: null }, needs: /the tank/ },
  { without: 'seats', part: { seats: [] }, needs: /the seats/ },
  { without: 'battery', part: power({ batteryAh: null }), needs: /battery in ampere hours/, silent: ['battery-hours'] },
  {
    without: 'alternator',
    part: power({ alternatorSpareA: null }),
    needs: /alternator has to spare/,
    silent: ['alternator'],
  },
  { without: 'feed', part: power({ feedLoopM: null }), needs: /length of the feed/ },
];

/** Paths of numbers that are none. */
const broken = (value: unknown, at = ''): readonly string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [at];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => broken(inside, `${at}.${key}`));
};

const inspected = (part: Part) => {
  const copy = { ...design, vehicle: { ...vehicle, ...part } };
  const { findings, measured, cases } = flow.inspectionAtOnce(copy);
  const say = sayer(copy, flow.fitOut(copy));
  const words = (finding: Finding): string => `${say.finding(finding).title} ${say.finding(finding).detail}`;
  return { findings, measured, cases, words: findings.map(words).join('\n') };
};

const whole = inspected({});

describe.each(ROWS)('without $without', ({ part, needs, noCases, unknown = [], silent = [] }) => {
  const { findings, measured, cases, words } = inspected(part);

  it('says what is needed, and did not ask while it was there', () => {
    expect(words).toMatch(needs);
    expect(whole.findings.filter(({ rule }) => rule === 'figures-missing' || rule === 'power-unknown')).toEqual([]);
  });

  it('makes no number up', () => {
    expect(broken({ findings, measured, cases })).toEqual([]);
    if (noCases) expect(cases).toEqual([]);
    else expect(cases.length).toBeGreaterThan(0);
    for (const one of cases) for (const figure of unknown) expect(figure(one)).toBeNull();
    // With the datum these same figures are told.
    for (const one of whole.cases) for (const figure of unknown) expect(figure(one)).toEqual(expect.any(Number));
    expect(findings.filter(({ rule }) => silent.includes(rule))).toEqual([]);
  });
});
