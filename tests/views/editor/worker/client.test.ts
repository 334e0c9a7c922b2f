import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Design, emptyDesign } from '../../../../src/design/index.ts';
import type { Answer, Judgement } from '../../../../src/views/editor/worker/api.ts';
import { type Connection, createEngineClient } from '../../../../src/views/editor/worker/client.ts';

const REST_MS = 400;
const design = emptyDesign('any', 'in');

interface Asked {
  readonly kind: 'judge' | 'ways';
  readonly edit: number;
  readonly answer: (space?: Judgement['space'] | null) => void;
  readonly fail: (why: string) => void;
}

interface FakeWorker {
  readonly asked: Asked[];
  readonly die: (why: string) => void;
  ended: boolean;
}

const aSpace = (): Judgement['space'] => ({ ok: false, error: [] });
const JUDGED_MS = 30;
const answerOf = (edit: number, space: Judgement['space'] | null): Answer =>
  ({ edit, space, ms: JUDGED_MS }) as unknown as Answer;

const settle = async (): Promise<void> => {
  for (let i = 0; i < 5; i++) await Promise.resolve();
};

const bench = () => {
  const workers: FakeWorker[] = [];
  const judged: number[] = [];
  const spaces: Judgement['space'][] = [];
  const troubles: [string, boolean][] = [];
  const busy: boolean[] = [];
  const looking: boolean[] = [];
  const connect = (onDeath: (why: string) => void): Connection => {
    const worker: FakeWorker = { asked: [], die: onDeath, ended: false };
    workers.push(worker);
    const question =
      (kind: Asked['kind']) =>
      (_design: Design, edit: number): Promise<Answer> =>
        new Promise((done, failed) => {
          worker.asked.push({
            kind,
            edit,
            answer: (space = aSpace()) => done(answerOf(edit, space)),
            fail: (why) => failed(new Error(why)),
          });
        });
    return {
      engine: {
        start: () => Promise.resolve(),
        judge: question('judge'),
        judgeWithWaysOut: question('ways'),
        carryIn: () => Promise.resolve(null),
        largestBox: () => Promise.resolve({ ok: false, error: null }),
        arrange: () => Promise.reject(new Error('nobody asks for one here')),
      },
      end: () => {
        worker.ended = true;
      },
    };
  };
  const client = createEngineClient({
    connect,
    onJudged: (judgement) => {
      judged.push(judgement.edit);
      spaces.push(judgement.space);
    },
    onBusy: (now) => busy.push(now),
    onLookingForWaysOut: (now) => looking.push(now),
    onTrouble: (why, again) => troubles.push([why, again]),
    restMs: REST_MS,
    later: (run, ms) => {
      const timer = setTimeout(run, ms);
      return () => clearTimeout(timer);
    },
  });
  const worker = (i: number): FakeWorker => {
    const found = workers[i];
    if (!found) throw new Error(`no worker ${i}`);
    return found;
  };
  return { client, workers, worker, judged, spaces, troubles, busy, looking };
};

describe('asking the worker', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('has one question under way and drops all that wait but the newest', async () => {
    const { client, worker, judged } = bench();
    for (const edit of [1, 2, 3, 4]) client.ask(design, edit);
    expect(worker(0).asked.map(({ edit }) => edit)).toEqual([1]);
    worker(0).asked[0]?.answer();
    await settle();
    await vi.advanceTimersByTimeAsync(JUDGED_MS);
    expect(worker(0).asked.map(({ edit }) => edit)).toEqual([1, 4]);
    worker(0).asked[1]?.answer();
    await settle();
    expect(judged).toEqual([1, 4]);
  });

  it('leaves the page as long to itself as judging took while edits come faster than that', async () => {
    const { client, worker } = bench();
    client.ask(design, 1);
    client.ask(design, 2);
    worker(0).asked[0]?.answer();
    await settle();
    await vi.advanceTimersByTimeAsync(JUDGED_MS - 1);
    client.ask(design, 3);
    expect(worker(0).asked.map(({ edit }) => edit)).toEqual([1]);
    await vi.advanceTimersByTimeAsync(1);
    expect(worker(0).asked.map(({ edit }) => edit)).toEqual([1, 3]);
  });

  it('tries ways out after a rest, beside the inspection', async () => {
    const { client, worker, workers, judged, looking } = bench();
    client.ask(design, 1);
    worker(0).asked[0]?.answer();
    await settle();
    await vi.advanceTimersByTimeAsync(REST_MS - 1);
    expect(workers).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(worker(1).asked.map(({ kind }) => kind)).toEqual(['ways']);
    worker(1).asked[0]?.answer();
    await settle();
    expect(judged).toEqual([1, 1]);
    expect(looking).toEqual([true, false]);
    expect(worker(1).ended).toBe(true);
  });

  it('hands on one and the same space while the worker says that it has not changed', async () => {
    const { client, worker, spaces } = bench();
    const [first, second] = [aSpace(), aSpace()];
    for (const [edit, space] of [
      [1, first],
      [2, null],
      [3, second],
    ] as const) {
      client.ask(design, edit);
      worker(0).asked[edit - 1]?.answer(space);
      await settle();
    }
    await vi.advanceTimersByTimeAsync(REST_MS);
    worker(1).asked[0]?.answer(aSpace());
    await settle();
    expect(spaces.map((space) => (space === first ? 'first' : space === second ? 'second' : 'other'))).toEqual([
      'first',
      'first',
      'second',
      'second',
    ]);
  });

  it('ends a search for ways out at once when the design moves on, and keeps its late answer out', async () => {
    const { client, worker, judged } = bench();
    client.ask(design, 1);
    worker(0).asked[0]?.answer();
    await settle();
    await vi.advanceTimersByTimeAsync(REST_MS);
    client.ask(design, 2);
    expect(worker(1).ended).toBe(true);
    worker(1).asked[0]?.answer();
    await settle();
    expect(judged).toEqual([1]);
    expect(worker(0).asked.map(({ edit }) => edit)).toEqual([1, 2]);
  });

  it('starts a new worker when one dies, asks again, and says so', async () => {
    const { client, worker, judged, troubles } = bench();
    client.ask(design, 1);
    worker(0).die('out of memory');
    expect(troubles).toEqual([['out of memory', true]]);
    expect(worker(0).ended).toBe(true);
    expect(worker(1).asked.map(({ edit }) => edit)).toEqual([1]);
    worker(1).asked[0]?.answer();
    await settle();
    expect(judged).toEqual([1]);
  });

  it('asks for the newest design after a death, not for the one that died with the worker', () => {
    const { client, worker } = bench();
    client.ask(design, 1);
    client.ask(design, 2);
    worker(0).die('gone');
    expect(worker(1).asked.map(({ edit }) => edit)).toEqual([2]);
  });

  it('gives up after three deaths in a row and begins again with the next edit', async () => {
    const { client, worker, workers, troubles, busy } = bench();
    client.ask(design, 1);
    for (const i of [0, 1, 2]) worker(i).die('again');
    expect(troubles.map(([, again]) => again)).toEqual([true, true, false]);
    expect(workers).toHaveLength(3);
    expect(busy.at(-1)).toBe(false);
    client.ask(design, 2);
    expect(worker(3).asked.map(({ edit }) => edit)).toEqual([2]);
    worker(3).asked[0]?.answer();
    await settle();
    expect(busy.at(-1)).toBe(false);
  });

  it('takes a failed answer like a death', async () => {
    const { client, worker, troubles } = bench();
    client.ask(design, 1);
    worker(0).asked[0]?.fail('bad geometry');
    await settle();
    expect(troubles).toEqual([['bad geometry', true]]);
  });

  it('looks no further when it is told to stop, and keeps the findings', async () => {
    const { client, worker, judged, looking } = bench();
    client.ask(design, 1);
    worker(0).asked[0]?.answer();
    await settle();
    await vi.advanceTimersByTimeAsync(REST_MS);
    client.stopLooking();
    expect([worker(1).ended, looking.at(-1)]).toEqual([true, false]);
    expect(judged).toEqual([1]);
  });
});
