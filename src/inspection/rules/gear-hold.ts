import { groupBy, negate } from '../../base/index.ts';
import type { Finding, Measured } from '../finding.ts';
import { forceOf, ratedAt, thrownAlong, thrownBy } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { found, type Limit, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

type Room = Job['fitout']['rooms'][number];
type Gear = Job['design']['gear'][number];

interface Kept {
  readonly room: Room;
  readonly gear: readonly Gear[];
}

/** Gear by the room that it stands in. */
const keptGear = ({ fitout, design }: Job): readonly Kept[] => {
  const byId = new Map<string, Gear>(design.gear.map((gear) => [gear.id, gear]));
  const placed = groupBy(fitout.gear, ({ opening, level }) => `${opening} ${level}`);
  return fitout.rooms.flatMap((room): readonly Kept[] => {
    const here = placed.get(`${room.opening} ${room.level}`) ?? [];
    const gear = here.flatMap((each) => byId.get(each.gear) ?? []);
    return gear.length > 0 ? [{ room, gear }] : [];
  });
};

const massOf = (gear: readonly Gear[]): number => gear.reduce((sum, { massKg }) => sum + massKg, 0);

/** Out of the open face of a room. */
const outOf = ({ pose }: Room) => negate(pose.turn[1]);

const RESTRAINTS: Readonly<Record<string, readonly string[]>> = {
  net: ['net'],
  strap: ['strap'],
  bracket: ['cradle', 'clamp', 'clip'],
};

interface Held {
  readonly finding: Finding | null;
  readonly taken: Measured | null;
}

const NOT_HELD: Held = { finding: null, taken: null };

/**
 * A net or strap across an opening holds everything in it that is thrown out of the face; a bracket holds its item in
 * any direction, at the load of breathing apparatus at least.
 */
const rated = (job: Job, opening: string, list: readonly Kept[]): Held => {
  const [first] = list;
  if (!first) return NOT_HELD;
  const { keeps } = first.room;
  const { ratedN, pieces, unrated } = ratedAt(job, opening, RESTRAINTS[keeps] ?? []);
  const gear = list.flatMap((kept) => kept.gear);
  const kg = massOf(gear);
  const most = Math.max(0, ...thrownBy(job.design.holdTo, job.rules).map(({ g }) => g));
  const g =
    keeps === 'bracket'
      ? Math.max(most, job.rules.value('hold-apparatus'))
      : (thrownAlong(job, outOf(first.room))?.g ?? 0);
  const value = forceOf(job, kg, g);
  const record = pieces[0] === undefined ? undefined : job.catalog.hardware.get(pieces[0]);
  const limit: Limit = { value: ratedN, unit: 'N', source: record?.source ?? 'nothing is fitted', status: 'catalog' };
  const parts = [opening];
  const facts = { keeps, kg, g, items: gear.length, gear: gear[0]?.name ?? '', unrated: unrated.join(' ') };
  const severity = unrated.length > 0 ? 'caution' : 'stop';
  return {
    finding: value > ratedN ? found('gear-hold', { severity, parts, value, limit, margin: 'hold', facts }) : null,
    taken: measured('gear-hold', { margin: 'hold', parts, value, limit, sense: 'at most' }),
  };
};

/** Gear heavier than the house rule that nothing keeps, or only a lip. */
const loose = (job: Job, { room, gear }: Kept): readonly Finding[] => {
  const limit = ruleLimit(job.rules, 'strapped-mass');
  return gear
    .filter(({ massKg }) => massKg > limit.value)
    .map((item) =>
      found('gear-hold', {
        severity: room.keeps === 'lip' ? 'caution' : 'stop',
        parts: [room.opening, item.id],
        value: item.massKg,
        limit,
        facts: { keeps: room.keeps, kg: item.massKg, gear: item.name, unrated: '' },
      }),
    );
};

/** Every item of gear is held where it stands: by a rated net, strap or bracket, or shut in. */
export const gearHold = (job: Job): Verdict => {
  const kept = keptGear(job);
  const open = kept.filter(({ room }) => room.keeps === 'nothing' || room.keeps === 'lip');
  const held = kept.filter(({ room }) => room.keeps in RESTRAINTS);
  const results = [...groupBy(held, ({ room }) => room.opening)].map(([opening, list]) => rated(job, opening, list));
  return {
    findings: [
      ...results.flatMap(({ finding }) => (finding ? [finding] : [])),
      ...open.flatMap((each) => loose(job, each)),
    ],
    measured: results.flatMap(({ taken }) => (taken ? [taken] : [])),
    pairs: 0,
  };
};

/** Sets in a bracket of the cabinet that has no strap or no positive lock. */
const notLocked = (job: Job, { room, gear }: Kept, limit: Limit): readonly Finding[] => {
  const pieces = job.fitout.hardware.filter(({ origin }) => origin === room.opening);
  const cradled = pieces.some(({ id }) => id.endsWith('/bracket'));
  const lacks = (['strap', 'lock'] as const).filter((role) => !pieces.some(({ id }) => id.endsWith(`/${role}`)));
  if (room.keeps !== 'bracket' || !cradled || lacks.length === 0) return [];
  return gear
    .filter(({ needs }) => needs.includes('locked'))
    .map((item) =>
      found('gear-needs-bracket', {
        severity: 'caution',
        parts: [item.id, room.opening],
        value: 2 - lacks.length,
        limit: { ...limit, value: 2 },
        facts: { gear: item.name, keeps: room.keeps, lacks: lacks.join(' ') },
      }),
    );
};

/** Gear that wants a bracket stands in one or is shut in; a set in a bracket has a strap over it and is locked. */
export const gearNeedsBracket = (job: Job): Verdict => {
  const limit: Limit = { value: 1, unit: 'count', source: 'gear list of the design', status: 'design' };
  const kept = keptGear(job);
  const loosely = kept.flatMap(({ room, gear }) =>
    room.keeps === 'bracket' || room.keeps === 'closed'
      ? []
      : gear
          .filter(({ needs }) => needs.includes('bracket'))
          .map((item) =>
            found('gear-needs-bracket', {
              severity: 'caution',
              parts: [item.id, room.opening],
              value: 0,
              limit,
              facts: { gear: item.name, keeps: room.keeps },
            }),
          ),
  );
  const findings = [...loosely, ...kept.flatMap((each) => notLocked(job, each, limit))];
  return { ...NOTHING, findings };
};
