import { add, ROUNDING_MM, scale, type Vec3 } from '../../base/index.ts';
import { firstMet, shellTriangles, type Triangle } from '../../bodies/index.ts';
import type { Hardware } from '../../catalog/index.ts';
import { type CargoSpace, gapHalfWidth } from '../../envelope/index.ts';
import type { PlacedAnchor } from '../../fitout/index.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, type Limit, NOTHING, type Verdict } from '../verdict.ts';

/** How far behind the panel a wall is looked for, so that one that the carcass touches is met. */
const BEFORE_MM = 1;

interface Wall {
  readonly gap: number;
  readonly at: Vec3;
  readonly uncertainty: number;
}

/** What is left of the skin where a closure that looks rearward leaves an opening and no wall. */
const wallsOf = (job: Job, space: CargoSpace): readonly Triangle[] => {
  const rear = space.sections[0]?.x ?? Number.NEGATIVE_INFINITY;
  const opensRear = job.design.survey.closures.some(({ outward }) => outward === 'rear');
  return shellTriangles(space.free).filter(
    (triangle) => !(opensRear && triangle.every((corner) => Math.abs(corner[0] - rear) <= ROUNDING_MM)),
  );
};

/** The wall of the vehicle, or what stands before it, on the axis of the bolt. */
const wallBefore = (job: Job, space: CargoSpace, walls: readonly Triangle[], anchor: PlacedAnchor): Wall | null => {
  const met = firstMet(walls, add(anchor.at, scale(anchor.into, -BEFORE_MM)), anchor.into);
  if (!met) return null;
  const uncertainty = gapHalfWidth(space, job.rules, { skinAt: met.at });
  return { gap: met.distance - BEFORE_MM, at: met.at, uncertainty };
};

/** The least and the greatest gap of a record; one without them bridges no more than it is long. */
const reachOf = ({ reachMm, sizeMm }: Hardware): readonly [number, number] | null =>
  reachMm ?? (sizeMm === null ? null : [0, sizeMm[0]]);

const judged = (anchor: PlacedAnchor, bracket: Hardware, wall: Wall | null): Finding | null => {
  const reach = reachOf(bracket);
  if (!reach) return null;
  const [least, most] = reach;
  const limit = (value: number): Limit => ({ value, unit: 'mm', source: bracket.source, status: 'catalog' });
  const parts = [anchor.carcass, anchor.id];
  const facts = { bracket: bracket.name, leastMm: least, mostMm: most };
  if (!wall) {
    const at = [anchor.at, add(anchor.at, scale(anchor.into, most))] as const;
    return found('bracket-reach', {
      severity: 'stop',
      parts,
      value: 0,
      limit: limit(most),
      at,
      facts: { ...facts, wall: 'none' },
    });
  }
  const [over, under] = [wall.gap - most, least - wall.gap];
  const missed = Math.max(over, under);
  if (missed <= -wall.uncertainty + ROUNDING_MM) return null;
  return found('bracket-reach', {
    severity: missed > wall.uncertainty + ROUNDING_MM ? 'stop' : 'caution',
    parts,
    value: wall.gap,
    limit: limit(over >= under ? most : least),
    uncertainty: wall.uncertainty,
    at: [anchor.at, wall.at],
    facts: { ...facts, wall: over >= under ? 'far' : 'near' },
  });
};

/**
 * Every bracket from a carcass to the wall of the vehicle bridges the gap that is there, on the axis of its bolt: no
 * more than it reaches and no less than it can be drawn in. Too far or too near even if the uncertainty falls in our
 * favour, or no wall at all: stop; too near to a limit to tell: caution.
 */
export const bracketReach = (job: Job): Verdict => {
  const { space } = job;
  const anchors = job.fitout.anchors.filter(({ bracket }) => bracket !== null);
  if (!space || anchors.length === 0) return NOTHING;
  const walls = wallsOf(job, space);
  const findings = anchors.flatMap((anchor): readonly Finding[] => {
    const bracket = job.catalog.hardware.get(anchor.bracket ?? '');
    const finding = bracket ? judged(anchor, bracket, wallBefore(job, space, walls, anchor)) : null;
    return finding ? [finding] : [];
  });
  return { ...NOTHING, findings, pairs: anchors.length };
};
