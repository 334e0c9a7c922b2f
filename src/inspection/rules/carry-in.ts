import { ROUNDING_MM } from '../../base/index.ts';
import type { CarriedCarcass, CarriedMount, CarryPath } from '../carry/carry-result.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, type Limit, limitAt, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

const ONE_WAY: Limit = { value: 1, unit: 'count', source: 'what goes in must come out', status: 'geometry' };

/** Where its least gap is. */
const nearestAt = ({ legs, leastGap }: CarryPath) => legs.find((leg) => leg.leastGap === leastGap)?.at ?? null;

const ofCarcass = (own: CarriedCarcass, wanted: Limit): readonly Finding[] => {
  const { carcass, path, stuck, outMm, comesOutAlone } = own;
  if (!path)
    return [
      found('carry-in', {
        severity: 'caution',
        parts: [carcass],
        value: stuck?.mm ?? 0,
        limit: limitAt(ONE_WAY, outMm, 'mm'),
        facts: { what: 'not-found', by: stuck?.by ?? '' },
      }),
    ];
  const tight =
    path.leastGap < wanted.value + path.uncertainty - ROUNDING_MM
      ? [
          found('carry-in', {
            severity: 'caution',
            parts: [carcass],
            value: Math.max(0, path.leastGap),
            limit: wanted,
            uncertainty: path.uncertainty,
            at: nearestAt(path),
            facts: { what: 'tight', by: path.nearest, alone: comesOutAlone ? 'yes' : 'no' },
          }),
        ]
      : [];
  // A finding is known by its parts, so a tight one says both.
  const shutIn =
    comesOutAlone || tight.length > 0
      ? []
      : [
          found('carry-in', {
            severity: 'note',
            parts: [carcass],
            value: 0,
            limit: ONE_WAY,
            facts: { what: 'shut-in', by: '' },
          }),
        ];
  return [...tight, ...shutIn];
};

/** That it does not come off at all the check of mounts says. */
const ofMount = ({ mount, comesOff, path, stuck }: CarriedMount): readonly Finding[] =>
  path || !comesOff
    ? []
    : [
        found('carry-in', {
          severity: 'caution',
          parts: [mount],
          value: 0,
          limit: ONE_WAY,
          facts: { what: 'mount-in', by: stuck?.by ?? '' },
        }),
      ];

/**
 * What the search for a way in found of each carcass and of each mount, where it was made: no way, or one nearer to
 * something than the house wants, or too near for the survey to tell. Not found is not proven impossible, so it is a caution.
 */
export const carryIn = ({ carry, rules, fitout }: Job): Verdict => {
  if (!carry) return NOTHING;
  const wanted = ruleLimit(rules, 'gap-pass-through');
  const placed = new Set<string>(fitout.bodies.map(({ origin }) => origin));
  return {
    ...NOTHING,
    findings: [
      ...carry.carcasses.flatMap((own) => ofCarcass(own, wanted)),
      ...carry.mounts.filter(({ mount }) => placed.has(mount)).flatMap(ofMount),
    ],
    pairs: carry.carcasses.length,
  };
};
