import { useMemo, useState } from 'react';
import {
  addMarks,
  addReadings,
  CLOSURE_KINDS,
  type Closure,
  type Design,
  readsAngle,
  VEHICLE_CLASSES,
  type Vehicle,
} from '../../../../design/index.ts';
import { type PlanStep, type SurveyPlan, startSurvey, surveyPlan } from '../../../../envelope/index.ts';
import { Button, ChoiceField, Heading, LengthField, NumberField, Table, tableStyles } from '../../parts/index.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import { type PlannedStep, planProgress } from './plan-progress.ts';
import styles from './readings.module.css';
import type { Readings } from './use-readings.ts';

const words = (id: string): string => id.replaceAll('-', ' ');

/** Marks of the plan that the design does not have yet. */
const withMarksOf = (design: Design, plan: SurveyPlan, only: PlanStep | null = null): Design => {
  const has = new Set<string>(design.survey.marks.map(({ id }) => id));
  const needed = only?.reading ? [only.reading.from, only.reading.to, only.reading.at] : null;
  const missing = plan.marks.filter(({ id }) => !has.has(id) && (needed === null || needed.includes(id)));
  return addMarks(
    design,
    missing.map(({ id, name, at, fixed }) => ({ id, name, at: [...at], fixed: [...fixed] })),
  ).design;
};

const StepRow = ({ planned: { step, taken }, plan }: { readonly planned: PlannedStep; readonly plan: SurveyPlan }) => {
  const units = useUnits();
  const edit = useEditor((editor) => editor.edit);
  const { reading } = step;
  const enter = (value: number): void => {
    if (!reading) return;
    edit(
      `take reading: ${step.name}`,
      (now) =>
        addReadings(withMarksOf(now, plan, step), [
          { ...reading, value, instrument: step.instrument, sigma: null, note: '', leftOut: null },
        ]).design,
    );
  };
  const label = `${step.number}, ${step.name}`;
  return (
    <tr data-done={taken !== null}>
      <th scope="row" className={tableStyles.number}>
        {step.number}
      </th>
      <td>
        {step.name} <span className={styles.why}>· {step.why}</span>
      </td>
      <td className={styles.why}>{words(step.instrument)}</td>
      <td className={styles.tape}>
        {!reading ? (
          <span className={styles.why}>{step.into === 'photo' ? 'take a photo' : `under ${step.into}`}</span>
        ) : taken ? (
          <span title="Change it in the list of readings">✓ taken</span>
        ) : readsAngle(reading.kind) ? (
          <NumberField bare label={label} value={null} unit="°" onCommit={enter} onClear={() => undefined} />
        ) : (
          <LengthField bare label={label} valueMm={null} units={units} onCommit={enter} onClear={() => undefined} />
        )}
      </td>
    </tr>
  );
};

/** Start values of the class are offered only where nothing would be written over. */
const StartBar = ({ plan, readings }: { readonly plan: SurveyPlan; readonly readings: Readings }) => {
  const edit = useEditor((editor) => editor.edit);
  const { survey } = readings;
  const has = new Set<string>(survey.marks.map(({ id }) => id));
  const missing = plan.marks.filter(({ id }) => !has.has(id)).length;
  if (survey.stations.length === 0 && survey.readings.length === 0)
    return (
      <div className={sheet.bar}>
        <Button
          look="main"
          onClick={() =>
            edit('start from a vehicle class', (now) => ({
              ...now,
              vehicle: { ...now.vehicle, class: plan.vehicleClass },
              survey: startSurvey(plan.vehicleClass, plan.closureKind),
            }))
          }
        >
          Start from this class
        </Button>
        <span className={sheet.soft}>
          Gives marks, sections and closures of the class; each holds until you measure it.
        </span>
      </div>
    );
  return missing === 0 ? null : (
    <p className={sheet.soft}>{missing} marks of the plan are not stuck yet; the first reading of each brings it in.</p>
  );
};

/** What to measure, in order, for a kind of closure and a class of vehicle, with what is taken already. */
export const ReadingsPlan = ({ readings }: { readonly readings: Readings }) => {
  const { survey } = readings;
  const { vehicleClass } = useEditorParts((editor) => ({ vehicleClass: editor.history.design.vehicle.class }));
  const [kind, setKind] = useState<Closure['kind']>(survey.closures[0]?.kind ?? 'lift-hatch');
  const [wanted, setWanted] = useState<Vehicle['class']>(vehicleClass);
  const plan = useMemo(() => surveyPlan(kind, wanted), [kind, wanted]);
  const progress = useMemo(() => planProgress(plan, survey), [plan, survey]);
  const groups = [...new Set(progress.steps.map(({ step }) => step.group))];
  return (
    <>
      <div className={sheet.fields}>
        <ChoiceField
          label="Closure"
          value={kind}
          choices={CLOSURE_KINDS.map((value) => ({ value, label: words(value) }))}
          onCommit={setKind}
        />
        <ChoiceField
          label="Vehicle class"
          value={wanted}
          choices={VEHICLE_CLASSES.map((value) => ({ value, label: words(value) }))}
          onCommit={setWanted}
        />
      </div>
      <StartBar plan={plan} readings={readings} />
      <Heading
        level={3}
        title={`${progress.taken} of ${progress.all} readings taken`}
        aside={progress.mustLeft === 0 ? 'only checks are left' : `${progress.mustLeft} that must be taken are left`}
      />
      <progress value={progress.taken} max={progress.all} className={styles.progress} aria-label="Readings taken" />
      <div className={styles.steps}>
        <Table label="What to measure, in order">
          {groups.map((group) => (
            <tbody key={group}>
              <tr>
                <th scope="rowgroup" colSpan={4}>
                  {group}
                </th>
              </tr>
              {progress.steps
                .filter(({ step }) => step.group === group)
                .map((planned) => (
                  <StepRow key={planned.step.number} planned={planned} plan={plan} />
                ))}
            </tbody>
          ))}
        </Table>
      </div>
    </>
  );
};
