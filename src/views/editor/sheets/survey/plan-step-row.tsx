import {
  addMarks,
  addReadings,
  changeReading,
  type Design,
  type Reading,
  readsAngle,
} from '../../../../design/index.ts';
import type { PlanStep, SurveyPlan } from '../../../../envelope/index.ts';
import { LengthField, NumberField, tableStyles } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import type { PlannedStep } from './plan-progress.ts';
import styles from './readings.module.css';

const words = (id: string): string => id.replaceAll('-', ' ');

/** What tells the second reading from a row that was entered twice. */
const AGAIN = 'taken again';

/** Marks of the plan that a step needs and the design does not have yet. */
const withMarksOf = (design: Design, plan: SurveyPlan, { reading }: PlanStep): Design => {
  const has = new Set<string>(design.survey.marks.map(({ id }) => id));
  const needed = reading ? [reading.from, reading.to, reading.at] : [];
  const missing = plan.marks.filter(({ id }) => !has.has(id) && needed.includes(id));
  return addMarks(
    design,
    missing.map(({ id, name, at, fixed }) => ({ id, name, at: [...at], fixed: [...fixed] })),
  ).design;
};

interface TapeFieldProps {
  readonly label: string;
  readonly angle: boolean;
  readonly value: number | null;
  readonly onCommit: (value: number) => void;
}

const TapeField = ({ label, angle, value, onCommit }: TapeFieldProps) => {
  const units = useUnits();
  // An empty field may stay empty; one that holds a reading is emptied in the list of readings.
  const spare = value === null ? { onClear: () => undefined } : {};
  return angle ? (
    <NumberField bare label={label} value={value} unit="°" decimals={1} onCommit={onCommit} {...spare} />
  ) : (
    <LengthField bare label={label} valueMm={value} units={units} onCommit={onCommit} {...spare} />
  );
};

interface StepRowProps {
  readonly planned: PlannedStep;
  readonly plan: SurveyPlan;
}

/** One step of the plan with the fields of its reading and of the repeat. */
export const StepRow = ({ planned: { step, taken, again }, plan }: StepRowProps) => {
  const edit = useEditor((editor) => editor.edit);
  const { reading } = step;
  const label = `${step.number}, ${step.name}`;
  const enter = (own: Reading | null, note: string) => (value: number) => {
    if (own) edit(`change reading: ${step.name}`, (now) => changeReading(now, own.id, { value }));
    else if (reading)
      edit(
        `take reading: ${step.name}`,
        (now) =>
          addReadings(withMarksOf(now, plan, step), [
            { ...reading, value, instrument: step.instrument, sigma: null, note, leftOut: null },
          ]).design,
      );
  };
  return (
    <tr data-done={taken !== null} data-step={step.number}>
      <th scope="row" className={tableStyles.number}>
        {step.number}
      </th>
      <td>
        {step.name} <span className={styles.why}>· {step.why}</span>
      </td>
      <td className={styles.why}>
        {words(step.instrument)}
        {step.must ? '' : ', check'}
      </td>
      {reading ? (
        <>
          <td className={styles.tape} data-plan-step={step.number}>
            <TapeField
              label={label}
              angle={readsAngle(reading.kind)}
              value={taken?.value ?? null}
              onCommit={enter(taken, '')}
            />
          </td>
          <td className={styles.tape}>
            {taken ? (
              <TapeField
                label={`${label}, again`}
                angle={readsAngle(reading.kind)}
                value={again?.value ?? null}
                onCommit={enter(again, AGAIN)}
              />
            ) : null}
          </td>
        </>
      ) : (
        <td className={styles.why} colSpan={2}>
          {step.into === 'photo' ? 'take a photo' : `under ${step.into === 'ratings' ? 'vehicle' : `${step.into}s`}`}
        </td>
      )}
    </tr>
  );
};
