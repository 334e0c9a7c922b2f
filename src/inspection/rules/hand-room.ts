import {
  add,
  type Box,
  boxAround,
  boxesMeet,
  boxMiddle,
  cross,
  dot,
  ROUNDING_MM,
  scale,
  unit,
  type Vec3,
} from '../../base/index.ts';
import { convexHull, gapWithin } from '../../bodies/index.ts';
import { createStands, type Placed } from '../access/take-out.ts';
import { accessOf } from '../access/work-out-order.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { unsoundMotion } from '../travel/movers.ts';
import { pastFacts } from '../travel/past-it.ts';
import { found, NOTHING, outFacts, ruleLimit, type Verdict } from '../verdict.ts';

const GRIPPED: ReadonlySet<string> = new Set(['latch', 'pull']);

interface Grip {
  readonly origin: string;
  readonly name: string;
  readonly at: Vec3;
  readonly mover: string;
}

/** Latches and pulls that move with a mover: what a hand takes hold of to open it. */
const gripsOf = ({ fitout, catalog }: Job): readonly Grip[] =>
  fitout.hardware.flatMap(({ origin, name, at, mover, from, item }) => {
    const kind = from === 'hardware' ? catalog.hardware.get(item)?.kind : undefined;
    return at && mover !== null && kind !== undefined && GRIPPED.has(kind) ? [{ origin, name, at, mover }] : [];
  });

/** A way nearly along an axis of the vehicle is that axis: a hinge that stands proud tilts the start of a turn a little. */
const SQUARE = Math.cos(Math.PI / 12);
const squared = (way: Vec3): Vec3 => {
  const whole = way.map((share) => (Math.abs(share) > SQUARE ? Math.sign(share) : 0));
  const [x = 0, y = 0, z = 0] = whole;
  return x === 0 && y === 0 && z === 0 ? way : [x, y, z];
};

/** The way in which a mover first comes towards the person: along its slide, or as its turn starts at the grip. */
const outwardAt = (motion: Job['fitout']['movers'][number]['motion'], at: Vec3): Vec3 | null => {
  if (motion.kind === 'slide') return unit(motion.direction);
  const arm: Vec3 = [at[0] - motion.point[0], at[1] - motion.point[1], at[2] - motion.point[2]];
  const way = cross(motion.axis, arm);
  return dot(way, way) > ROUNDING_MM ? squared(unit(way)) : null;
};

/** The foremost face of what rides on the mover, seen against its way out. */
const faceOf = (placed: readonly Placed[], mover: string, out: Vec3): number =>
  Math.max(
    ...placed
      .filter(({ unit: own, solid }) => own === mover && solid.kind === 'panel')
      .flatMap(({ shape }) => shape.vertices.map((vertex) => dot(vertex, out))),
  );

/** A hand before the face: `width` to both sides, `depth` out, a flat hand high. */
const handAt = (at: Vec3, out: Vec3, face: number, width: number, depth: number): ReturnType<typeof convexHull> => {
  const up: Vec3 = Math.abs(out[2]) < Math.SQRT1_2 ? [0, 0, 1] : [1, 0, 0];
  const side = unit(cross(out, up));
  const high = cross(side, out);
  const start = add(at, scale(out, face - dot(at, out)));
  const corners = [0, depth].flatMap((o) =>
    [-width / 2, width / 2].flatMap((s) =>
      [-depth / 2, depth / 2].map((h) => add(add(add(start, scale(out, o)), scale(side, s)), scale(high, h))),
    ),
  );
  return convexHull(corners);
};

/**
 * Room for a gloved hand at each latch and pull of a mover, with the closures open and everything else stowed: as wide
 * and as deep as the house asks, before the face that it sits in.
 */
export const handRoom = (job: Job): Verdict => {
  const grips = gripsOf(job);
  if (grips.length === 0) return NOTHING;
  const [width, depth] = [ruleLimit(job.rules, 'hand-glove-width'), ruleLimit(job.rules, 'hand-glove-depth')];
  const { ground } = accessOf(job).lanes;
  const open = Object.fromEntries(ground.units.filter(({ closure }) => closure).map(({ id }) => [id, 1]));
  const placed = createStands(ground)(open);
  const movers = new Map(job.fitout.movers.map((mover) => [mover.id, mover]));
  const findings: Finding[] = [];
  for (const grip of grips) {
    const mover = movers.get(grip.mover);
    const out = mover && unsoundMotion(mover) === null ? outwardAt(mover.motion, grip.at) : null;
    if (!out) continue;
    const face = faceOf(placed, grip.mover, out);
    if (!Number.isFinite(face)) continue;
    const hand = handAt(grip.at, out, face, width.value, depth.value);
    const box: Box = boxAround(hand.vertices);
    // How far the nearest thing before the face stands off it, seen along the way out.
    let nearest: { readonly off: number; readonly by: Placed } | null = null;
    for (const own of placed) {
      if (own.unit === grip.mover || !boxesMeet(box, own.box)) continue;
      const gap = gapWithin(hand, own.shape, -ROUNDING_MM);
      if (!gap) continue;
      const off = Math.max(0, Math.min(...own.shape.vertices.map((vertex) => dot(vertex, out))) - face);
      if (!nearest || off < nearest.off) nearest = { off, by: own };
    }
    if (!nearest) continue;
    findings.push(
      found('hand-room', {
        severity: 'caution',
        parts: [grip.origin, nearest.by.solid.part],
        value: Math.min(nearest.off, depth.value),
        limit: depth,
        at: [grip.at, boxMiddle(nearest.by.box)],
        margin: 'reach',
        facts: {
          grip: grip.name,
          body: nearest.by.solid.name,
          wideMm: width.value,
          shortMm: Math.max(0, depth.value - nearest.off),
          ...outFacts(out),
          ...pastFacts({ kind: 'slide', along: out, fromMm: 0, toMm: depth.value }, box, nearest.by.box),
        },
      }),
    );
  }
  return { ...NOTHING, findings, pairs: grips.length };
};
