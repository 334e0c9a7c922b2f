import type { Vehicle } from '../../design/index.ts';
import { CLASS_SIZES } from './class-sizes.ts';
import { CLOSURE_PLANS } from './closure-steps.ts';
import { planFigures } from './figures.ts';
import type { ClosureKind, SurveyPlan } from './plan.ts';
import { commonMarks, planStations } from './plan-marks.ts';
import { allSteps } from './plan-steps.ts';

/**
 * What to measure on a vehicle, in order, with the marks to stick, the drawing that shows each reading, and why it is
 * taken. The readings that are marked as checks brace the net: with all of them a misreading of any other can be told.
 */
export const surveyPlan = (closureKind: ClosureKind, vehicleClass: Vehicle['class']): SurveyPlan => {
  const sizes = CLASS_SIZES[vehicleClass];
  const closure = CLOSURE_PLANS[closureKind];
  const marks = [...commonMarks(sizes), ...closure.marks(sizes)];
  const stations = planStations(sizes);
  const steps = allSteps(closure.steps());
  const scene = { sizes, marks: new Map(marks.map((mark) => [mark.id as string, mark])), stations };
  return { closureKind, vehicleClass, marks, stations, steps, figures: planFigures(scene, steps) };
};
