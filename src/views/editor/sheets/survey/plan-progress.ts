import { groupBy } from '../../../../base/index.ts';
import type { Reading, Survey } from '../../../../design/index.ts';
import type { PlanStep, SurveyPlan } from '../../../../envelope/index.ts';

export interface PlannedStep {
  readonly step: PlanStep;
  /** The reading that carries the step out, or null while it is to be taken. */
  readonly taken: Reading | null;
  /** The first repeat of it, or null. */
  readonly again: Reading | null;
}

export interface PlanProgress {
  readonly steps: readonly PlannedStep[];
  /** Steps that become readings, and those of them that are taken. */
  readonly taken: number;
  readonly all: number;
  /** Readings still to be taken without which something hangs in the air; checks not counted. */
  readonly mustLeft: number;
}

const keyOf = ({ kind, from, to, at }: Pick<Reading, 'kind' | 'from' | 'to' | 'at'>): string =>
  [kind, from, to ?? '', at ?? ''].join(' ');

/** How much of a plan the readings of a survey carry out. What is entered elsewhere is listed and not counted. */
export const planProgress = (plan: SurveyPlan, survey: Survey): PlanProgress => {
  const readings = groupBy(survey.readings, keyOf);
  const steps = plan.steps.map((step): PlannedStep => {
    const [taken = null, again = null] = step.reading ? (readings.get(keyOf(step.reading)) ?? []) : [];
    return { step, taken, again };
  });
  const counted = steps.filter(({ step }) => step.reading !== null);
  return {
    steps,
    taken: counted.filter(({ taken }) => taken !== null).length,
    all: counted.length,
    mustLeft: counted.filter(({ step, taken }) => step.must && taken === null).length,
  };
};
