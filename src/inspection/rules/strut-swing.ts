import {
  add,
  boxAround,
  boxesMeet,
  boxGrown,
  boxUnion,
  cross,
  degrees,
  length,
  ROUNDING_MM,
  subtract,
  turnAbout,
  unit,
  type Vec3,
} from '../../base/index.ts';
import { type ConvexShape, gapBetween, travelBox } from '../../bodies/index.ts';
import { type PlacedClosure, strutEnds, type VehicleBody, vehicleBodyAt } from '../../envelope/index.ts';
import type { Finding, Measured } from '../finding.ts';
import { gapSeverity } from '../gap-severity.ts';
import { halfWidthTo, type Job } from '../job.ts';
import { swingOf } from '../travel/movers.ts';
import { found, type Limit, measured, ruleLimit } from '../verdict.ts';

/** Pieces of a swing are cut no shorter than this, mm of the end that goes. */
const FINEST_MM = 0.05;

interface Nearest {
  /** At most the finest piece under a gap that is there. */
  readonly gap: number;
  readonly rad: number;
  readonly at: readonly [Vec3, Vec3];
}

/**
 * The least gap of a strut to a body over the swing of its closure, where it is within the limit. No point of a strut
 * goes faster than its end on the closure, so that a piece of the swing is done once its middle is further off than half
 * of what that end goes; any other is halved.
 */
export const strutNearest = (
  strut: VehicleBody,
  { point, axis, opensRad }: PlacedClosure,
  body: ConvexShape,
  limit: number,
): Nearest | null => {
  const ends = strutEnds(strut);
  if (!ends) return null;
  const arm = length(cross(unit(axis), subtract(ends.goes, point)));
  let nearest: Nearest | null = null;
  const pieces: (readonly [from: number, to: number])[] = [[0, opensRad]];
  for (const [from, to] of pieces) {
    const [middle, half] = [(from + to) / 2, (arm * Math.abs(to - from)) / 2];
    const { distance, from: a, to: b } = gapBetween(vehicleBodyAt(strut, turnAbout(point, axis, middle)), body);
    const most = Math.min(limit, nearest?.gap ?? limit);
    if (half <= FINEST_MM && distance < most) nearest = { gap: distance, rad: middle, at: [a, b] };
    if (distance - half < most && half > FINEST_MM) pieces.push([from, middle], [middle, to]);
  }
  return nearest;
};

const nearOnes = (job: Job, strut: VehicleBody, closure: PlacedClosure, limit: number) => {
  const ends = strutEnds(strut);
  if (!ends) return [];
  const goes: ConvexShape = { vertices: [ends.goes], faces: [], radius: strut.shape.radius };
  const still = boxAround([ends.stays, add(ends.stays, [0, 0, ROUNDING_MM])]);
  const way = boxGrown(boxUnion(still, travelBox(swingOf(closure), goes)), strut.shape.radius + limit);
  return job.standing.filter(
    ({ closure: hangsOn, body, box }) => hangsOn === null && body.kind !== 'plug-room' && boxesMeet(way, box),
  );
};

const factsOf = (near: Nearest, closure: PlacedClosure, strut: VehicleBody, body: string) => ({
  what: near.gap < 0 ? 'meets' : 'close',
  closure: closure.name,
  piece: strut.name,
  body,
  openDeg: degrees(near.rad),
});

/** Every strut through the swing of its closure, one end staying on the body, against the cabinet stowed. */
export const strutSwings = (
  job: Job,
): { readonly findings: readonly Finding[]; readonly measured: readonly Measured[] } => {
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  const limit: Limit = ruleLimit(job.rules, 'gap-strut');
  for (const closure of job.space?.closures ?? [])
    for (const strut of (job.space?.bodies ?? []).filter((body) => body.stays && body.closure === closure.id)) {
      const uncertainty = halfWidthTo(job, strut.id);
      const worst = new Map<string, { readonly near: Nearest; readonly name: string }>();
      for (const { body, subject } of nearOnes(job, strut, closure, limit.value + uncertainty)) {
        const near = strutNearest(strut, closure, body.shape, limit.value + uncertainty);
        // What it is too near to where the closure is shut is told by the check of closed closures.
        if (!near || gapBetween(strut.shape, body.shape).distance <= near.gap + FINEST_MM) continue;
        const before = worst.get(subject);
        if (!before || near.gap < before.near.gap) worst.set(subject, { near, name: body.name });
      }
      for (const [subject, { near, name }] of worst) {
        const parts = [subject, strut.id];
        taken.push(
          measured('closure-swing', {
            margin: 'hatch',
            parts,
            value: near.gap,
            limit,
            uncertainty,
            sense: 'at least',
            at: near.at,
          }),
        );
        const severity = gapSeverity(near.gap, limit.value, uncertainty);
        if (severity === null) continue;
        findings.push(
          found('closure-swing', {
            severity,
            parts,
            value: near.gap,
            limit,
            uncertainty,
            at: near.at,
            margin: 'hatch',
            facts: factsOf(near, closure, strut, name),
          }),
        );
      }
    }
  return { findings, measured: taken };
};
