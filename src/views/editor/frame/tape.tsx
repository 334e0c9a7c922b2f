import { memo, useMemo } from 'react';
import type { Finding, Severity } from '../../../inspection/index.ts';
import { STEPS, type StepName } from '../state/store.ts';
import { useEditorParts, useEditorStore } from '../state/use-editor.ts';
import { countByStep, STEP_TITLES, stepFacts } from './step-facts.ts';
import styles from './tape.module.css';

/** Notes are told at the step itself; only what stands against it is counted here. */
type Counted = Exclude<Severity, 'note'>;
const COUNTED: readonly Counted[] = ['stop', 'caution'];

/** On the tape the shapes are in its own ink: the tape is loud enough. */
const SHAPES: Readonly<Record<Counted, string>> = { stop: '■', caution: '▲' };

const words = (severity: Counted, count: number): string => `${count} ${severity}${count === 1 ? '' : 's'}`;

const NO_FINDINGS: readonly Finding[] = [];

interface StepMarkProps {
  readonly step: StepName;
  readonly number: number;
  readonly says: string;
  readonly stops: number;
  readonly cautions: number;
  readonly here: boolean;
}

/** Drawn anew only when what it says is another: edits and answers of the inspection come several times a second. */
const StepMark = memo(({ step, number, says, stops, cautions, here }: StepMarkProps) => {
  const editor = useEditorStore();
  const against: Readonly<Record<Counted, number>> = { stop: stops, caution: cautions };
  return (
    <button
      type="button"
      className={styles.step}
      aria-current={here ? 'step' : undefined}
      aria-keyshortcuts={String(number)}
      title={`${STEP_TITLES[step]} (${number})`}
      onClick={() => editor.getState().setStep(step)}
    >
      <span className={styles.number} aria-hidden="true">
        {number}
      </span>
      <span className={styles.title}>{STEP_TITLES[step]}</span>
      <span className={styles.fact}>
        <span>{says}</span>
        {COUNTED.filter((severity) => against[severity] > 0).map((severity) => (
          <span key={severity} className={styles.against} role="img" aria-label={words(severity, against[severity])}>
            {SHAPES[severity]} {against[severity]}
          </span>
        ))}
      </span>
    </button>
  );
});

/** The six steps of the job on a tape measure, each with what is done and the findings against it. */
export const Tape = () => {
  const { design, fitOut, judgement, step } = useEditorParts((editor) => ({
    design: editor.history.design,
    fitOut: editor.fitOut,
    judgement: editor.judgement,
    step: editor.step,
  }));
  const editor = useEditorStore();
  const findings = judgement?.inspection.findings ?? NO_FINDINGS;
  // What is found comes after the edit: it is about the design that stands when it comes.
  const counts = useMemo(() => countByStep(findings, editor.getState().history.design), [findings, editor]);
  const facts = useMemo(() => stepFacts(STEPS, design, fitOut, judgement, counts), [design, fitOut, judgement, counts]);
  return (
    <nav className={styles.tape} aria-label="Steps of the job">
      <span className={styles.hook} aria-hidden="true" />
      <ol className={styles.steps}>
        {facts.map((fact, i) => (
          <li key={fact.step}>
            <StepMark
              step={fact.step}
              number={i + 1}
              says={fact.says}
              stops={fact.against.stop}
              cautions={fact.against.caution}
              here={fact.step === step}
            />
          </li>
        ))}
      </ol>
    </nav>
  );
};
