import {
  type Box,
  boxesMeet,
  boxGrown,
  boxUnion,
  cross,
  degrees,
  length,
  ROUNDING_MM,
  subtract,
  unit,
} from '../../base/index.ts';
import {
  certifiedTravel,
  gapWithin,
  type Motion,
  shapeBox,
  type TravelPlace,
  type TravelResult,
  travelBox,
} from '../../bodies/index.ts';
import type { Finding, Measured } from '../finding.ts';
import type { Job } from '../job.ts';
import { namedPart, type StandingBody } from '../standing.ts';
import {
  type CabinetMover,
  carriedWith,
  type InTheWay,
  motionOf,
  openVehicle,
  type Unsound,
  unsoundMotion,
} from '../travel/movers.ts';
import { pastFacts } from '../travel/past-it.ts';
import {
  found,
  type Limit,
  limitAt,
  measured,
  NO_OVERLAP,
  NOTHING,
  outFacts,
  ruleLimit,
  type Verdict,
} from '../verdict.ts';

/** How far around its way a mover is watched: beyond this nothing is said of its margin but that it is at least this. */
const WATCHED = 'gap-hatch-trim';

interface Travelling {
  readonly mover: CabinetMover;
  readonly motion: Motion;
  readonly moving: readonly StandingBody[];
}

/** Something in the way with its box, and what it rides on. */
interface Boxed extends InTheWay {
  readonly box: Box;
  readonly mover: string | null;
  readonly origin: string;
  readonly isHardware: boolean;
}

const boxedCabinet = ({ standing }: Job): readonly Boxed[] =>
  standing
    .filter(({ closure }) => closure === null)
    .map(({ body, box }) => ({
      part: namedPart(body),
      name: body.name,
      shape: body.shape,
      vehicle: null,
      doubt: 0,
      box,
      mover: body.mover,
      origin: body.origin,
      isHardware: body.kind === 'hardware',
    }));

const boxedVehicle = (vehicle: readonly InTheWay[]): readonly Boxed[] =>
  vehicle.map((own) => ({ ...own, box: shapeBox(own.shape), mover: null, origin: own.part, isHardware: false }));

/** The box around all that a mover passes through, grown by how far around its way it is watched. */
const watchedBox = ({ motion, moving }: Travelling, watched: number): Box | null =>
  moving.length === 0
    ? null
    : boxGrown(moving.map(({ body }) => travelBox(motion, body.shape)).reduce(boxUnion), watched);

/**
 * What stands near the way of a mover, less what it is built against: hardware of its own node (slides run in each
 * other), and what it already touches or overlaps when stowed, which other rules judge at rest.
 */
const inTheWayOf = (
  { mover, moving }: Travelling,
  box: Box | null,
  all: readonly Boxed[],
  carried: ReadonlySet<string>,
): readonly InTheWay[] =>
  box === null
    ? []
    : all.filter(
        (own) =>
          boxesMeet(box, own.box) &&
          (own.mover === null || !carried.has(own.mover)) &&
          !(own.isHardware && own.origin === mover.origin) &&
          !moving.some(({ body }) => gapWithin(body.shape, own.shape, ROUNDING_MM) !== null),
      );

const amountText = (motion: Motion, amount: number): { readonly value: number; readonly unit: string } =>
  motion.kind === 'slide' ? { value: amount, unit: 'mm' } : { value: degrees(amount), unit: 'deg' };

const segmentOf = (place: TravelPlace) => [place.from, place.to] as const;

interface Outcome {
  readonly findings: readonly Finding[];
  readonly measured: readonly Measured[];
}

/**
 * Half width at 95 % of how far it comes before it meets something, in mm or degrees: a slide as the gap, a turn as
 * the gap over the arm at which it meets. Met aslant, it is known less well than this.
 */
const reachDoubt = (motion: Motion, { to }: TravelPlace, { doubt }: InTheWay): number => {
  if (motion.kind === 'slide') return doubt;
  const arm = length(cross(unit(motion.axis), subtract(to, motion.point)));
  return arm > ROUNDING_MM ? degrees(doubt / arm) : 0;
};

const blockedFinding = (
  { mover, motion, moving }: Travelling,
  contact: TravelPlace,
  met: InTheWay,
  gap: Limit,
): Finding => {
  const reaches = amountText(motion, contact.at);
  const whole = amountText(motion, motion.kind === 'slide' ? motion.toMm : motion.toRad);
  return found('mover-travel', {
    severity: 'stop',
    parts: [mover.origin, met.part],
    value: reaches.value,
    limit: limitAt(NO_OVERLAP, whole.value, whole.unit),
    uncertainty: reachDoubt(motion, contact, met),
    at: segmentOf(contact),
    margin: 'travel',
    facts: {
      what: 'meets',
      mover: mover.name,
      body: moving[contact.shape]?.body.name ?? mover.name,
      obstacle: met.name,
      ...(motion.kind === 'slide' ? outFacts(motion.along) : {}),
      ...pastFacts(motion, moving[contact.shape]?.box, shapeBox(met.shape)),
      gapMm: gap.value,
      doubtMm: met.doubt,
    },
  });
};

const unsoundFinding = (mover: CabinetMover, why: Unsound): Finding =>
  found('mover-travel', {
    severity: 'stop',
    parts: [mover.origin],
    value: 0,
    limit: limitAt(NO_OVERLAP, 1, 'count'),
    margin: 'travel',
    facts: { what: 'unsound', mover: mover.name, why },
  });

const closeFinding = (
  { mover, motion, moving }: Travelling,
  nearest: TravelPlace,
  met: InTheWay,
  limit: Limit,
): Finding => {
  const out = amountText(motion, nearest.at);
  return found('mover-travel', {
    severity: 'caution',
    parts: [mover.origin, met.part],
    value: nearest.distance,
    limit,
    uncertainty: met.doubt,
    at: segmentOf(nearest),
    margin: 'travel',
    facts: {
      what: 'close',
      mover: mover.name,
      body: moving[nearest.shape]?.body.name ?? mover.name,
      obstacle: met.name,
      out: out.value,
      outUnit: out.unit,
    },
  });
};

/** A gap that the mover keeps all the way because it is built so (a reveal, the play of a slide) is not the way's fault. */
const builtSo = ({ moving }: Travelling, nearest: TravelPlace, met: InTheWay): boolean => {
  const stowed = moving[nearest.shape]?.body.shape;
  const gap = stowed ? gapWithin(stowed, met.shape, nearest.distance + ROUNDING_MM) : null;
  return gap !== null && gap.distance <= nearest.distance + ROUNDING_MM;
};

const judge = (job: Job, travelling: Travelling, inTheWay: readonly InTheWay[], limit: Limit): Outcome => {
  const { mover, motion, moving } = travelling;
  const watched = Math.max(job.rules.value(WATCHED), limit.value);
  const shapes = moving.map(({ body }) => body.shape);
  const past = (obstacles: readonly InTheWay[]): TravelResult =>
    certifiedTravel(
      motion,
      shapes,
      obstacles.map(({ shape }) => shape),
      0,
      { limit: watched },
    );
  const whole = past(inTheWay);
  const contact = whole.contact;
  const met = contact ? inTheWay[contact.obstacle] : undefined;
  if (contact && met)
    return {
      findings: [blockedFinding(travelling, contact, met, limit)],
      measured: [
        measured('mover-travel', {
          margin: 'travel',
          parts: [mover.origin, met.part],
          value: whole.leastGap,
          limit,
          uncertainty: met.doubt,
          sense: 'at least',
          at: segmentOf(contact),
        }),
      ],
    };
  // What it is built against is set aside, so that the nearest of the rest shows.
  const rest = inTheWay.filter(
    ({ shape }) => !moving.some(({ body }) => gapWithin(body.shape, shape, limit.value) !== null),
  );
  const free = past(rest);
  // The play between parts of the cabinet must not hide what is known less well: the vehicle is asked by itself.
  const doubted = rest.filter(({ doubt }) => doubt > 0);
  const asked = doubted.length > 0 && free.leastGap < limit.value + Math.max(...doubted.map(({ doubt }) => doubt));
  const vehicle = asked && free.nearest && rest[free.nearest.obstacle]?.doubt === 0 ? past(doubted) : null;
  const near = [
    ...(whole.nearest ? [{ nearest: whole.nearest, met: inTheWay[whole.nearest.obstacle] }] : []),
    ...(free.nearest ? [{ nearest: free.nearest, met: rest[free.nearest.obstacle] }] : []),
    ...(vehicle?.nearest ? [{ nearest: vehicle.nearest, met: doubted[vehicle.nearest.obstacle] }] : []),
  ];
  const tight = near.find(
    (each) =>
      each.met &&
      each.nearest.distance < limit.value + each.met.doubt - ROUNDING_MM &&
      !builtSo(travelling, each.nearest, each.met),
  );
  return {
    findings: tight?.met ? [closeFinding(travelling, tight.nearest, tight.met, limit)] : [],
    measured: [
      {
        ...measured('mover-travel', {
          margin: 'travel',
          parts: [mover.origin],
          value: free.nearest ? free.leastGap : watched,
          limit,
          uncertainty: (free.nearest && rest[free.nearest.obstacle]?.doubt) ?? 0,
          sense: 'at least',
          at: free.nearest ? segmentOf(free.nearest) : null,
        }),
        travel: amountText(motion, motion.kind === 'slide' ? motion.toMm : motion.toRad).value,
      },
    ],
  };
};

/**
 * Every mover of the cabinet through its whole travel, proven and not sampled, against everything else stowed and the
 * vehicle with its closures open: it reaches its full travel, and keeps the gap between moving parts to what it comes
 * nearer to on the way.
 */
export const moverTravel = (job: Job): Verdict => {
  const { movers } = job.fitout;
  if (movers.length === 0) return NOTHING;
  const limit = ruleLimit(job.rules, 'gap-moving-parts');
  const watched = Math.max(job.rules.value(WATCHED), limit.value);
  const all = [...boxedCabinet(job), ...boxedVehicle(job.space ? openVehicle(job, job.space) : [])];
  const outcomes = movers.map((mover): Outcome => {
    const unsound = unsoundMotion(mover);
    if (unsound !== null) return { findings: [unsoundFinding(mover, unsound)], measured: [] };
    const carried = carriedWith(movers, mover.id);
    const moving = job.standing.filter(
      ({ body }) => body.mover !== null && carried.has(body.mover) && body.kind !== 'plug-room',
    );
    const travelling: Travelling = { mover, motion: motionOf(mover), moving };
    return judge(job, travelling, inTheWayOf(travelling, watchedBox(travelling, watched), all, carried), limit);
  });
  return {
    findings: outcomes.flatMap(({ findings }) => findings),
    measured: outcomes.flatMap((outcome) => outcome.measured),
    pairs: movers.length,
  };
};
