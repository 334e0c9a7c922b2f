import type { Finding } from '../finding.ts';
import { backPanelHoldsN, forceOf, type HeldMover, inward, ratedAt, thrownAlong } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { found, type Limit, limitAt, measured, ruleLimit, type Verdict } from '../verdict.ts';

const factsOf = ({ mover, kg }: HeldMover, way: string, g: number) => ({ mover: mover.name, kg, way, g });

/** Movers heavy enough to need holding. */
const heavy = (job: Job): readonly HeldMover[] =>
  job.heldMovers.filter(({ kg }) => kg > job.rules.value('latch-needed-mass'));

const isLatch = (id: string): boolean => id.endsWith('/latch') || id.endsWith('/lock');

const pieceLimit = (job: Job, piece: string | undefined, value: number): Limit => {
  const record = piece === undefined ? undefined : job.catalog.hardware.get(piece);
  return { value, unit: 'N', source: record?.source ?? 'nothing is fitted', status: record ? 'catalog' : 'design' };
};

/**
 * The latch of every drawer, tray, door and board against the way that really opens it: a rear-facing drawer is pulled
 * open when the vehicle is struck from behind. What a slide holds by itself counts for nothing unless it is rated.
 */
export const latchHold = (job: Job): Verdict => {
  const counted = job.rules.value('slide-lock-counts');
  const results = heavy(job).map((held) => {
    const thrown = thrownAlong(job, held.opens);
    if (!thrown) return null;
    const { origin } = held.mover;
    const { ratedN, pieces, unrated } = ratedAt(job, origin, ['latch'], isLatch);
    const value = forceOf(job, held.kg, thrown.g);
    const limit = pieceLimit(job, pieces[0], ratedN + counted);
    const facts = { ...factsOf(held, thrown.way, thrown.g), latch: pieces[0] ?? '', unrated: unrated.join(' ') };
    return { parts: [origin], value, limit, facts };
  });
  return judged('latch-hold', results);
};

/**
 * The same movers the other way: a rear-facing drawer is thrown into the back of its carcass when the vehicle is struck from
 * the front. Back stops take it, or the back panel.
 */
export const backStop = (job: Job): Verdict => {
  const results = heavy(job)
    .filter(({ mover }) => mover.motion.kind === 'slide' && mover.carriedBy === null)
    .map((held) => {
      const thrown = thrownAlong(job, inward(held));
      if (!thrown) return null;
      const { origin } = held.mover;
      const stops = ratedAt(job, origin, ['bracket'], (id) => id.includes('/stop-'));
      const panel = backPanelHoldsN(job, held);
      const value = forceOf(job, held.kg, thrown.g);
      const facts = {
        ...factsOf(held, thrown.way, thrown.g),
        stops: stops.pieces.length,
        panelN: panel ?? 0,
        unrated: panel === null && stops.pieces.length === 0 ? 'back panel' : '',
      };
      const own = stops.ratedN > (panel ?? 0);
      const limit = own
        ? pieceLimit(job, stops.pieces[0], stops.ratedN)
        : limitAt(ruleLimit(job.rules, 'bending-shock-share'), panel ?? 0, 'N');
      return { parts: [origin], value, limit, facts };
    });
  return judged('back-stop', results);
};

interface Judged {
  readonly parts: readonly string[];
  readonly value: number;
  readonly limit: Limit;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** A force against what holds it: over it is a stop, an unknown strength a caution. */
const judged = (rule: 'latch-hold' | 'back-stop', results: readonly (Judged | null)[]): Verdict => {
  const all = results.flatMap((result) => (result === null ? [] : [result]));
  const findings = all.flatMap(({ parts, value, limit, facts }): readonly Finding[] => {
    if (value <= limit.value) return [];
    const severity = facts.unrated === '' ? 'stop' : 'caution';
    return [found(rule, { severity, parts, value, limit, margin: 'hold', facts })];
  });
  const taken = all.map(({ parts, value, limit }) =>
    measured(rule, { margin: 'hold', parts, value, limit, sense: 'at most' }),
  );
  return { findings, measured: taken, pairs: 0 };
};
