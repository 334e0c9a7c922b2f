import { boxAround, boxMiddle, negate, turnAbout, type Vec3 } from '../../base/index.ts';
import { shapeAt, shapeBox } from '../../bodies/index.ts';
import { findOpening } from '../../design/index.ts';
import { wholePart } from '../../fitout/index.ts';
import { standsInAisle } from '../aisle.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** What a height at the face of a carcass counts from: the ground, or the floor of the vehicle in an aisle. */
type Stood = Pick<Job, 'design' | 'fitout' | 'catalog' | 'rules'>;

const floorAt = (job: Stood, floor: number): ((carcass: string | null) => number) => {
  const inAisle = standsInAisle(job.design, job.rules);
  return (id) => {
    const carcass = job.fitout.carcasses.find((own) => own.id === id);
    return carcass && inAisle(negate(carcass.pose.turn[1])) ? 0 : floor;
  };
};

/** The free edge of a leaf: what lies at least this far out, over the farthest. A head does not come near the hinge. */
const EDGE_SHARE = 0.85;

interface OpenEdge {
  readonly id: string;
  readonly name: string;
  /** Lowest point of the free edge of the open leaf above ground. */
  readonly heightMm: number;
  readonly hingeMm: number;
}

/** The free edges of closures that swing up or down; what turns about an upright hinge swings aside. */
const openEdges = (job: Job, floor: number): readonly OpenEdge[] =>
  (job.space?.closures ?? []).flatMap((closure): readonly OpenEdge[] => {
    if (Math.abs(closure.axis[2]) > 0.5) return [];
    const pose = turnAbout(closure.point, closure.axis, closure.opensRad);
    const corners = job.vehicle
      .filter(({ body }) => body.kind === 'closure' && body.closure === closure.id)
      .flatMap(({ body }) => shapeAt(body.shape, pose).vertices);
    const out = corners.map((corner) => Math.hypot(corner[0] - closure.point[0], corner[2] - closure.point[2]));
    const edge = EDGE_SHARE * Math.max(0, ...out);
    const lows = corners.filter((_, i) => (out[i] ?? 0) >= edge).map(([, , z]) => z);
    if (lows.length === 0) return [];
    const { id, name } = closure;
    return [{ id, name, heightMm: Math.min(...lows) + floor, hingeMm: closure.point[2] + floor }];
  });

/** The lowest edge of every open hatch stands clear of a head. */
export const headClear = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const limit = ruleLimit(job.rules, 'head-clear');
  const findings = openEdges(job, floor)
    // A tailgate hangs below: nobody stands under it.
    .filter(({ hingeMm, heightMm }) => hingeMm >= limit.value / 2 && heightMm < limit.value)
    .map(({ id, name, heightMm }) =>
      found('head-clear', { severity: 'caution', parts: [id], value: heightMm, limit, facts: { closure: name } }),
    );
  return { ...NOTHING, findings };
};

/** A thing that hands go to, above where people stand. */
export interface StandingHeight {
  readonly id: string;
  readonly what: 'pull' | 'board';
  readonly name: string;
  readonly heightMm: number;
}

const pullsOf = (job: Stood, floor: number): readonly StandingHeight[] => {
  const stood = floorAt(job, floor);
  return job.fitout.hardware.flatMap(({ id, carcass, item, name, at }) =>
    at !== null && job.catalog.hardware.get(item)?.kind === 'pull'
      ? [{ id, what: 'pull' as const, name, heightMm: at[2] + stood(carcass) }]
      : [],
  );
};

/** Pulls and open boards above where people stand, the highest first; empty without the height of the floor. */
export const standingHeights = (job: Stood): readonly StandingHeight[] => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return [];
  const stood = floorAt(job, floor);
  const boards = openBoards(job).map(({ opening, carcass, middle }): StandingHeight => {
    return { id: opening, what: 'board', name: opening, heightMm: middle[2] + stood(carcass) };
  });
  return [...pullsOf(job, floor), ...boards].toSorted((a, b) => b.heightMm - a.heightMm);
};

/** The edge that an open hatch is pulled down by, and every pull of the cabinet, within reach of a small person. */
export const pullHeight = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const limit = ruleLimit(job.rules, 'pull-height-max');
  const hatches = openEdges(job, floor).map(({ id, name, heightMm }) => ({ id, what: `${name}, open,`, heightMm }));
  const pulls = pullsOf(job, floor).map(({ id, name, heightMm }) => ({ id, what: name, heightMm }));
  const findings = [...hatches, ...pulls]
    .filter(({ heightMm }) => heightMm > limit.value)
    .map(({ id, what, heightMm }) =>
      found('pull-height', { severity: 'caution', parts: [id], value: heightMm, limit, facts: { what } }),
    );
  return { ...NOTHING, findings };
};

/** Drawers that hold gear are low enough to look into: the upper edge of the box, not of its front. */
export const seeIn = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const limit = ruleLimit(job.rules, 'see-in-height');
  const stood = floorAt(job, floor);
  const inUse = new Set(job.fitout.gear.map(({ opening, level }) => `${opening} ${level}`));
  const movers = new Set(
    job.fitout.rooms.flatMap(({ opening, level, mover }) => (inUse.has(`${opening} ${level}`) ? (mover ?? []) : [])),
  );
  const findings = job.fitout.movers.flatMap(({ id, origin, motion }): readonly Finding[] => {
    if (motion.kind !== 'slide' || !movers.has(id)) return [];
    const walls = job.fitout.panels.filter(({ mover, role }) => mover === id && role !== 'front');
    const bodies = new Map(job.fitout.bodies.map((body) => [body.id, body]));
    const tops = walls.flatMap((wall) => {
      const body = bodies.get(wall.id);
      return body ? [shapeBox(body.shape).max[2]] : [];
    });
    const value = Math.max(-Infinity, ...tops) + stood(walls[0]?.carcass ?? null);
    return value > limit.value ? [found('see-in', { severity: 'note', parts: [origin], value, limit })] : [];
  });
  return { ...NOTHING, findings };
};

/** A leaf lies flat when the square on it points this much upward. */
const FLAT = 0.87;

interface OpenBoard {
  readonly opening: string;
  readonly carcass: string;
  readonly middle: Vec3;
  readonly flat: boolean;
}

/** Leaves with a working face, as they stand when they are open. */
const openBoards = (job: Stood): readonly OpenBoard[] =>
  job.fitout.movers.flatMap(({ id, origin, motion }): readonly OpenBoard[] => {
    const content = findOpening(job.design, origin)?.opening.content;
    if (motion.kind !== 'turn' || content?.kind !== 'fitted' || !('worklight' in content.fitting)) return [];
    const pose = turnAbout(motion.point, motion.axis, motion.travelRad);
    const leaf = job.fitout.panels.find(({ mover, role }) => mover === id && role === 'front');
    // A leaf that a latch is let into is several bodies.
    const corners = job.fitout.bodies
      .filter((own) => wholePart(own.id) === leaf?.id)
      .flatMap(({ shape }) => shapeAt(shape, pose).vertices);
    if (!leaf || corners.length === 0) return [];
    const [, , square] = leaf.pose.turn;
    const flat =
      Math.abs(
        turnAbout([0, 0, 0], motion.axis, motion.travelRad).turn.reduce(
          (sum, column, i) => sum + column[2] * square[i as 0 | 1 | 2],
          0,
        ),
      ) > FLAT;
    return [{ opening: origin, carcass: leaf.carcass, middle: boxMiddle(boxAround(corners)), flat }];
  });

/** An open command board at a height to write at: flat like a table, or upright with its middle before hand and eye. */
export const writeHeight = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const stood = floorAt(job, floor);
  const low = ruleLimit(job.rules, 'write-height-min');
  const findings = openBoards(job).flatMap(({ opening, carcass, middle, flat }): readonly Finding[] => {
    const high = ruleLimit(job.rules, flat ? 'write-height-max' : 'control-height-max');
    const value = middle[2] + stood(carcass);
    const limit = value < low.value ? low : high;
    if (value >= low.value && value <= high.value) return [];
    return [
      found('write-height', {
        severity: 'caution',
        parts: [opening],
        value,
        limit,
        facts: { lies: flat ? 'flat' : 'upright' },
      }),
    ];
  });
  return { ...NOTHING, findings };
};
