import { type FocusEvent, type KeyboardEvent, useMemo, useState } from 'react';
import { CLOSURE_KINDS, type Closure, VEHICLE_CLASSES, type Vehicle } from '../../../../design/index.ts';
import { type SurveyPlan, startSurvey, surveyPlan } from '../../../../envelope/index.ts';
import { Button, ChoiceField, Heading, Table } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor, useEditorParts, useEditorStore } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { PlanFigureView } from './plan-figure.tsx';
import { planProgress } from './plan-progress.ts';
import { StepRow } from './plan-step-row.tsx';
import styles from './readings.module.css';
import type { Readings } from './use-readings.ts';

const words = (id: string): string => id.replaceAll('-', ' ');

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
          Gives marks, sections and closures of the class, not for cutting: each holds until you measure it.
        </span>
      </div>
    );
  return missing === 0 ? null : (
    <p className={sheet.soft}>{missing} marks of the plan are not stuck yet; the first reading of each brings it in.</p>
  );
};

const PAPERS = [
  { units: 'mm', name: 'A4' },
  { units: 'in', name: 'Letter' },
] as const;

/** The same plan on paper, blank, for the clipboard. */
const BlankSheetBar = ({ plan }: { readonly plan: SurveyPlan }) => {
  const store = useEditorStore();
  const tell = useDesk((desk) => desk.tell);
  const [making, setMaking] = useState(false);
  const save = async (units: (typeof PAPERS)[number]['units']): Promise<void> => {
    setMaking(true);
    try {
      const { saveBlankSheet } = await import('./blank-sheet.ts');
      tell(`${await saveBlankSheet(plan, units, store.getState().history.design)} saved: print it at its own size.`);
    } catch (fault) {
      tell(`The blank sheet could not be made: ${String(fault)}`, 'trouble');
    } finally {
      setMaking(false);
    }
  };
  return (
    <div className={sheet.bar}>
      <span className={sheet.soft}>Blank sheet for the clipboard:</span>
      {PAPERS.map(({ units, name }) => (
        <Button key={name} small disabled={making} onClick={() => void save(units)}>
          {name} as PDF
        </Button>
      ))}
    </div>
  );
};

/** Enter has taken the reading; the pen goes on to the next one, as a finger does down a sheet. */
const onEnter = ({ key, target, currentTarget }: KeyboardEvent<HTMLElement>): void => {
  if (key !== 'Enter' || !(target instanceof HTMLInputElement)) return;
  // What was typed is read and shown first: a reading that cannot be read keeps the pen.
  queueMicrotask(() => {
    if (target.getAttribute('aria-invalid') === 'true') return;
    const fields = [...currentTarget.querySelectorAll<HTMLInputElement>('[data-plan-step] input')];
    const next = fields[fields.indexOf(target) + 1];
    next?.focus();
    next?.select();
  });
};

/** The step whose field holds the focus. */
const stepAt = ({ target }: FocusEvent<HTMLElement>): number | null => {
  const row = target.closest('[data-step]');
  return row instanceof HTMLElement ? Number(row.dataset.step) : null;
};

/** What to measure, in order, for a kind of closure and a class of vehicle, with what is taken already. */
export const ReadingsPlan = ({ readings }: { readonly readings: Readings }) => {
  const { survey } = readings;
  const { vehicleClass } = useEditorParts((editor) => ({ vehicleClass: editor.history.design.vehicle.class }));
  const [kind, setKind] = useState<Closure['kind']>(
    (survey.closures.at(-1) ?? survey.closures[0])?.kind ?? 'lift-hatch',
  );
  const [wanted, setWanted] = useState<Vehicle['class']>(vehicleClass);
  const [at, setAt] = useState<number | null>(null);
  const plan = useMemo(() => surveyPlan(kind, wanted), [kind, wanted]);
  const progress = useMemo(() => planProgress(plan, survey), [plan, survey]);
  const groups = [...new Set(progress.steps.map(({ step }) => step.group))];
  const present =
    plan.steps.find(({ number }) => number === at) ??
    progress.steps.find(({ step, taken }) => step.reading !== null && taken === null)?.step ??
    null;
  const figure = plan.figures.find(({ id }) => id === present?.figure) ?? null;
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
      <BlankSheetBar plan={plan} />
      <Heading
        level={3}
        title={`${progress.taken} of ${progress.all} readings taken`}
        aside={progress.mustLeft === 0 ? 'only checks are left' : `${progress.mustLeft} that must be taken are left`}
      />
      <progress value={progress.taken} max={progress.all} className={styles.progress} aria-label="Readings taken" />
      {figure ? (
        <div className={styles.guide}>
          <PlanFigureView figure={figure} step={present?.number ?? null} />
        </div>
      ) : null}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys and focus that reach it from the fields inside */}
      <div className={styles.steps} onKeyDown={onEnter} onFocus={(event) => setAt(stepAt(event) ?? at)}>
        <Table label="What to measure, in order">
          <thead>
            <tr>
              <th scope="col">no.</th>
              <th scope="col">what</th>
              <th scope="col">with</th>
              <th scope="col">reading</th>
              <th scope="col">again</th>
            </tr>
          </thead>
          {groups.map((group) => (
            <tbody key={group}>
              <tr>
                <th scope="rowgroup" colSpan={5}>
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
