import { degrees, type Random, radians, type Vec3 } from '../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Reading, readsAngle, type Survey, VEHICLE_CLASSES } from '../../src/design/index.ts';
import {
  type ClosureKind,
  type NetworkReading,
  predict,
  startSurvey,
  surveyNetwork,
  surveyPlan,
} from '../../src/envelope/index.ts';

export const rules = houseRules(standardCatalog(), []);

const KINDS: readonly ClosureKind[] = ['lift-hatch', 'hatch-glass', 'barn-door', 'tailgate', 'cap-door', 'side-door'];

/** A standard normal number (Box and Muller). */
export const normalFrom = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const pick = <T>(list: readonly [T, ...T[]], random: Random): T => list[Math.floor(random() * list.length)] ?? list[0];

/** How far a vehicle of the class differs from its start values, one standard deviation; and where a mark is stuck. */
const VEHICLE_SPREAD = 30;

export interface RandomSurvey {
  readonly survey: Survey;
  /** Where the marks truly are. */
  readonly truth: ReadonlyMap<string, Vec3>;
  /** What each reading would be without any error, in its unit. */
  readonly exact: ReadonlyMap<string, number>;
}

export interface RandomSurveyOptions {
  readonly kind?: ClosureKind;
  /** Standard deviations of noise laid on each reading, in units of its own sigma: 1 honest, 0 perfect. */
  readonly noise?: number;
  /** Share of the plan's readings that were not taken. */
  readonly leftUndone?: number;
}

const asNetwork = (reading: Reading): NetworkReading => {
  const { id, kind, from, to, at } = reading;
  if (kind === 'offset') return { kind, id, from, value: 0, sigma: 1 };
  if (kind === 'angle') return { kind, id, from, to: to ?? from, at: at ?? from, value: 0, sigma: 1 };
  return { kind, id, from, to: to ?? from, value: 0, sigma: 1 };
};

/** A vehicle near its class and a survey of it after the plan, with honest errors; nothing is misread. */
export const randomSurvey = (random: Random, options: RandomSurveyOptions = {}): RandomSurvey => {
  const { noise = 1, leftUndone = 0 } = options;
  const kind = options.kind ?? pick(KINDS as readonly [ClosureKind, ...ClosureKind[]], random);
  const vehicle = pick(VEHICLE_CLASSES, random);
  const plan = surveyPlan(kind, vehicle);
  const start = startSurvey(vehicle, kind);
  const truth = new Map(
    plan.marks.map(({ id, at, fixed }): [string, Vec3] => {
      const along = (axis: 0 | 1 | 2): number =>
        fixed[axis] ? at[axis] : at[axis] + VEHICLE_SPREAD * normalFrom(random);
      return [id, [along(0), along(1), along(2)]];
    }),
  );
  const steps = plan.steps.filter((step) => step.reading !== null && random() >= leftUndone);
  const exact = new Map<string, number>();
  const bare = steps.flatMap((step, i): readonly Reading[] => {
    if (!step.reading) return [];
    const id = `reading-${i + 1}` as Reading['id'];
    const reading: Reading = {
      id,
      ...step.reading,
      value: 1,
      instrument: step.instrument,
      sigma: null,
      note: step.name,
      leftOut: null,
    };
    const value = predict(asNetwork(reading), truth);
    exact.set(id, readsAngle(reading.kind) ? degrees(value) : value);
    return [reading];
  });
  const spreads = new Map(
    surveyNetwork({ ...start, readings: bare.map((one) => ({ ...one, value: 1 })) }, rules).network.readings.map(
      (one) => [one.id, one.sigma],
    ),
  );
  const readings = bare.map((reading): Reading => {
    const sigma = spreads.get(reading.id) ?? radians(1);
    const off = noise * normalFrom(random) * (readsAngle(reading.kind) ? degrees(sigma) : sigma);
    return { ...reading, value: (exact.get(reading.id) ?? 0) + off };
  });
  return { survey: { ...start, readings }, truth, exact };
};
