import { degrees, ROUNDING_MM } from '../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  certifiedTravel,
  shapeBox,
  type TravelResult,
  travelBox,
} from '../../bodies/index.ts';
import type { PlacedClosure } from '../../envelope/index.ts';
import type { Finding, Measured } from '../finding.ts';
import { gapSeverity } from '../gap-severity.ts';
import { halfWidthTo, type Job } from '../job.ts';
import type { StandingBody } from '../standing.ts';
import { swingOf } from '../travel/movers.ts';
import { found, limitAt, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';
import { strutSwings } from './strut-swing.ts';

const GLASS = 'hatch-glass';

/** A slab large enough to lie over any vehicle. */
const WIDE_MM = 20_000;
const roofAt = (underside: number): ConvexShape =>
  boxShape({ min: [-WIDE_MM, -WIDE_MM, underside], max: [WIDE_MM, WIDE_MM, underside + WIDE_MM] });

interface Swinging {
  readonly closure: PlacedClosure;
  readonly shapes: readonly ConvexShape[];
  readonly names: readonly string[];
  /** The body of the vehicle by which its uncertainty is known. */
  readonly body: string;
}

/** A closure with its pieces and all that hangs on it, and on what it carries. */
const swingingOf = (job: Job, closure: PlacedClosure): Swinging => {
  const closures = job.space?.closures ?? [];
  const carried = new Set<string>([closure.id]);
  for (let before = 0; before < carried.size; ) {
    before = carried.size;
    for (const own of closures) if (own.carriedBy !== null && carried.has(own.carriedBy)) carried.add(own.id);
  }
  // A strut does not go as one with its closure; it is judged by itself.
  const own = job.vehicle.filter(({ body }) => body.closure !== null && !body.stays && carried.has(body.closure));
  const hanging = job.standing.filter((standing) => standing.closure !== null && carried.has(standing.closure));
  return {
    closure,
    shapes: [...own, ...hanging].map(({ body }) => body.shape),
    names: [...own, ...hanging].map(({ body }) => body.name),
    body: own[0]?.body.id ?? closure.id,
  };
};

/** What was proven of a swing against one body, for as long as both are kept. */
const knownSwings = new WeakMap<
  PlacedClosure,
  WeakMap<StandingBody['body'], { readonly key: string; readonly result: TravelResult }>
>();

const swingPast = (swinging: Swinging, standing: StandingBody, limit: number, key: string): TravelResult => {
  const byBody =
    knownSwings.get(swinging.closure) ?? new WeakMap<StandingBody['body'], { key: string; result: TravelResult }>();
  knownSwings.set(swinging.closure, byBody);
  const known = byBody.get(standing.body);
  if (known?.key === key) return known.result;
  const result = certifiedTravel(swingOf(swinging.closure), swinging.shapes, [standing.body.shape], 0, { limit });
  byBody.set(standing.body, { key, result });
  return result;
};

/**
 * Every closure through its whole swing against the cabinet, its gear and devices as they stand stowed: it opens from
 * closed without meeting anything, and comes no nearer on the way than it may. What it is too near to where it is
 * closed is told by the check of closed closures and not again.
 */
export const closureSwing = (job: Job): Verdict => {
  const { space } = job;
  if (!space || job.standing.length === 0) return NOTHING;
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  let pairs = 0;
  for (const closure of space.closures) {
    const limit = ruleLimit(job.rules, closure.kind === GLASS ? 'gap-hatch-glass' : 'gap-hatch-trim');
    const swinging = swingingOf(job, closure);
    const uncertainty = halfWidthTo(job, swinging.body);
    const watched = limit.value + uncertainty;
    const key = `${watched} ${swinging.shapes.length} ${job.standing.filter((own) => own.closure !== null).length}`;
    const worst = new Map<string, { readonly standing: StandingBody; readonly result: TravelResult }>();
    for (const standing of job.standing) {
      if (standing.closure !== null || standing.body.kind === 'plug-room') continue;
      pairs += 1;
      const result = swingPast(swinging, standing, watched, key);
      // What it stands too near to where it is closed, the check of closed closures tells.
      if (!result.nearest || result.nearest.at <= 0 || result.contact?.at === 0) continue;
      const before = worst.get(standing.subject);
      if (!before || result.leastGap < before.result.leastGap) worst.set(standing.subject, { standing, result });
    }
    for (const [subject, { standing, result }] of worst) {
      const near = result.contact ?? result.nearest;
      if (!near) continue;
      const value = result.contact ? result.leastGap : near.distance;
      const parts = [subject, closure.id];
      const at = [near.to, near.from] as const;
      taken.push(
        measured('closure-swing', { margin: 'hatch', parts, value, limit, uncertainty, sense: 'at least', at }),
      );
      const severity = gapSeverity(value, limit.value, uncertainty);
      if (severity === null) continue;
      findings.push(
        found('closure-swing', {
          severity,
          parts,
          value,
          limit,
          uncertainty,
          at,
          margin: 'hatch',
          facts: {
            what: result.contact ? 'meets' : 'close',
            closure: closure.name,
            piece: swinging.names[near.shape] ?? closure.name,
            body: standing.body.name,
            openDeg: degrees(near.at),
          },
        }),
      );
    }
  }
  const struts = strutSwings(job);
  return { findings: [...findings, ...struts.findings], measured: [...taken, ...struts.measured], pairs };
};

/**
 * Every closure under a low roof: how high its swing reaches above ground, closed form, with what it carries. The
 * height of the roof and the gap under it are house rules that the user sets for the station.
 */
export const lowRoof = (job: Job): Verdict => {
  const { space } = job;
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (!space || floor === null) return NOTHING;
  const roof = ruleLimit(job.rules, 'roof-height-station');
  const gap = ruleLimit(job.rules, 'roof-gap');
  const limit = limitAt(gap, roof.value - gap.value, 'mm');
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  for (const closure of space.closures) {
    const { shapes } = swingingOf(job, closure);
    if (shapes.length === 0) continue;
    const motion = swingOf(closure);
    const top = Math.max(...shapes.map((shape) => travelBox(motion, shape).max[2])) + floor;
    const parts = [closure.id];
    // A roof far above says nothing of the hatch, so only one that is too low is a margin. Nor does one that a closure
    // stands as high under when it is shut: a door that turns about an upright line rises nowhere.
    const shut = Math.max(...shapes.map((shape) => shapeBox(shape).max[2])) + floor;
    if (top <= Math.max(limit.value, shut) + ROUNDING_MM) continue;
    taken.push(measured('low-roof', { margin: 'hatch', parts, value: top, limit, sense: 'at most' }));
    const under = [roofAt(roof.value - floor)];
    const { reaches } = certifiedTravel(motion, shapes, under, 0, { limit: gap.value });
    const keeps = certifiedTravel(motion, shapes, under, gap.value, { limit: gap.value }).reaches;
    findings.push(
      found('low-roof', {
        severity: 'caution',
        parts,
        value: top,
        limit,
        margin: 'hatch',
        facts: {
          closure: closure.name,
          roofMm: roof.value,
          opensDeg: degrees(closure.opensRad),
          reachesDeg: degrees(reaches),
          keepsDeg: degrees(keeps),
        },
      }),
    );
  }
  return { findings, measured: taken, pairs: 0 };
};
