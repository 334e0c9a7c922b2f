import type { Problem, Result } from '../../../base/index.ts';
import type { Design } from '../../../design/index.ts';
import type { Blocker, CargoSpace, LargestBox } from '../../../envelope/index.ts';
import type { BoxSpot } from '../../../flow.ts';
import type { ArrangePlan, ArrangeWishes, CarryIn, Inspection, OpeningOrder } from '../../../inspection/index.ts';
import type { Difference } from './difference.ts';

/** What the worker finds out about one design; `edit` tells which one, so that late answers are told from fresh ones. */
export interface Judgement {
  readonly edit: number;
  readonly space: Result<CargoSpace, readonly Problem[]>;
  readonly inspection: Inspection;
  /** What must be closed before what opens, and how each item of gear comes to hand. */
  readonly order: OpeningOrder;
  /** How everything is carried in, where that was searched for; null without a cargo space. */
  readonly carry?: CarryIn | null;
  readonly ms: number;
}

/** A judgement on its way: the space is null when it is the one that this worker gave last, which need not cross again. */
export type Answer = Omit<Judgement, 'space'> & { readonly space: Judgement['space'] | null };

/** The largest carcass for a spot, or what keeps it from there. */
export type BoxAnswer = Result<LargestBox, Blocker | null | 'no-space'>;

/** What the page asks of the inspection; it knows this door only, never the worker itself. */
export interface Engine {
  /** Loads the solid kernel; judging waits for it anyway. */
  start(): Promise<void>;
  /** Everything but the ways out, as fast as it goes. */
  judge(design: Design, edit: number): Promise<Answer>;
  /** The same with ways out tried; slower, asked for when the user rests. */
  judgeWithWaysOut(design: Design, edit: number): Promise<Answer>;
  /** How each carcass is carried in; seconds where no plain way leads in, so it is asked for by hand. Null without a space. */
  carryIn(design: Design): Promise<CarryIn | null>;
  /** About a second of search, so it is asked for by hand. */
  largestBox(design: Design, spot: BoxSpot): Promise<BoxAnswer>;
  /** Other places for what is stowed; seconds, so it is asked for by hand. Brings the solver of programs with it. */
  arrange(design: Design, wishes: ArrangeWishes): Promise<ArrangePlan>;
}

/** The same as it crosses into the worker: what is judged is asked and answered by what changed since the last time. */
export interface EngineWorker extends Omit<Engine, 'judge' | 'judgeWithWaysOut'> {
  judge(design: Difference, edit: number): Promise<Difference>;
  judgeWithWaysOut(design: Difference, edit: number): Promise<Difference>;
}
