import type { Design } from '../../../design/index.ts';
import type { Answer, Engine, Judgement } from './api.ts';

/** One running worker. */
export interface Connection {
  readonly engine: Engine;
  readonly end: () => void;
}

export interface EngineClientInput {
  /** Starts a worker; `onDeath` is called when it breaks on its own. */
  readonly connect: (onDeath: (why: string) => void) => Connection;
  readonly onJudged: (judgement: Judgement) => void;
  readonly onBusy: (busy: boolean) => void;
  readonly onLookingForWaysOut: (looking: boolean) => void;
  /** Says that the inspection broke and, when `again` is false, that it is given up until the next edit. */
  readonly onTrouble: (why: string, again: boolean) => void;
  /** How long a person rests before ways out are tried. */
  readonly restMs: number;
  readonly later: (run: () => void, ms: number) => () => void;
}

export interface EngineClient {
  /** The design as it is now; earlier ones that were not begun are dropped. */
  readonly ask: (design: Design, edit: number) => void;
  /** Gives up looking for ways out, until the next edit. */
  readonly stopLooking: () => void;
  readonly end: () => void;
}

interface Question {
  readonly design: Design;
  readonly edit: number;
}

/** A worker that dies at once each time is not started for ever. */
const MOST_DEATHS_IN_A_ROW = 3;

/** However long judging takes, the newest design is not kept waiting longer than this. */
const LONGEST_BREATH_MS = 200;

/**
 * Asks the worker about the newest design, one question at a time. Ways out are tried by a second worker, which is
 * ended when the design moves on: a search under way never keeps the inspection waiting.
 */
export const createEngineClient = (input: EngineClientInput): EngineClient => {
  let live: Connection | null = null;
  let searcher: Connection | null = null;
  let waiting: Question | null = null;
  let running: Question | null = null;
  let cancelRest: () => void = () => undefined;
  let cancelBreath: (() => void) | null = null;
  // One object for one space, however many answers tell of it: what is drawn from it then stays.
  let space: Judgement['space'] | null = null;
  let deaths = 0;
  let ended = false;

  const whole = (answer: Answer): Judgement => {
    const known = answer.space ?? space;
    if (!known) throw new Error('the worker left out a space that it never gave');
    space = known;
    return { ...answer, space: known };
  };

  const endSearch = (): void => {
    cancelRest();
    if (searcher) input.onLookingForWaysOut(false);
    searcher?.end();
    searcher = null;
  };

  const search = (question: Question): void => {
    const mine = input.connect(() => {
      if (searcher === mine) endSearch();
    });
    searcher = mine;
    input.onLookingForWaysOut(true);
    const finish = (answer: Answer | null): void => {
      if (searcher !== mine) return;
      endSearch();
      // The design is the one just judged, so its space is the one at hand.
      if (answer) input.onJudged(whole({ ...answer, space: null }));
    };
    mine.engine.judgeWithWaysOut(question.design, question.edit).then(finish, () => finish(null));
  };

  const broke = (why: string): void => {
    const asked = running;
    live?.end();
    live = null;
    running = null;
    deaths += 1;
    const again = deaths < MOST_DEATHS_IN_A_ROW;
    input.onTrouble(why, again);
    if (again && !ended) {
      waiting = waiting ?? asked;
      next();
    } else input.onBusy(false);
  };

  /** A hand draws faster than this judges: the page needs the machine as well, so as long again is the page's own. */
  const breathe = (judgedMs: number): void => {
    cancelBreath = input.later(
      () => {
        cancelBreath = null;
        next();
      },
      Math.min(LONGEST_BREATH_MS, judgedMs),
    );
  };

  const next = (): void => {
    if (running || cancelBreath || !waiting || ended) return;
    const question = waiting;
    waiting = null;
    running = question;
    const mine = live ?? input.connect((why) => live === mine && broke(why));
    live = mine;
    input.onBusy(true);
    mine.engine.judge(question.design, question.edit).then(
      (answer) => {
        if (live !== mine || running !== question) return;
        running = null;
        deaths = 0;
        input.onJudged(whole(answer));
        if (waiting) breathe(answer.ms);
        else {
          input.onBusy(false);
          cancelRest = input.later(() => search(question), input.restMs);
        }
      },
      (fault: unknown) => {
        if (live === mine && running === question) broke(fault instanceof Error ? fault.message : String(fault));
      },
    );
  };

  return {
    ask: (design, edit) => {
      endSearch();
      if (deaths >= MOST_DEATHS_IN_A_ROW) deaths = 0;
      waiting = { design, edit };
      next();
    },
    stopLooking: endSearch,
    end: () => {
      ended = true;
      endSearch();
      cancelBreath?.();
      live?.end();
      live = null;
    },
  };
};
