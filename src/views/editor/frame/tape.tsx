import { useMemo } from 'react';
import type { Severity } from '../../../inspection/index.ts';
import { STEPS } from '../state/store.ts';
import { useEditorParts } from '../state/use-editor.ts';
import { STEP_TITLES, stepFacts } from './step-facts.ts';
import styles from './tape.module.css';

/** On the tape the shapes are in its own ink: the tape is loud enough. */
const SHAPES: Readonly<Record<Severity, string>> = { stop: '■', caution: '▲', note: '●' };

/** Notes are told at the step itself; only what stands against it is counted here. */
const COUNTED: readonly Severity[] = ['stop', 'caution'];

const words = (severity: Severity, count: number): string => `${count} ${severity}${count === 1 ? '' : 's'}`;

/** The six steps of the job on a tape measure, each with what is done and the findings against it. */
export const Tape = () => {
  const { design, fitOut, judgement, step, setStep } = useEditorParts((editor) => ({
    design: editor.history.design,
    fitOut: editor.fitOut,
    judgement: editor.judgement,
    step: editor.step,
    setStep: editor.setStep,
  }));
  const facts = useMemo(() => stepFacts(STEPS, design, fitOut, judgement), [design, fitOut, judgement]);
  return (
    <nav className={styles.tape} aria-label="Steps of the job">
      <span className={styles.hook} aria-hidden="true" />
      <ol className={styles.steps}>
        {facts.map((fact, i) => (
          <li key={fact.step}>
            <button
              type="button"
              className={styles.step}
              aria-current={fact.step === step ? 'step' : undefined}
              aria-keyshortcuts={String(i + 1)}
              title={`${STEP_TITLES[fact.step]} (${i + 1})`}
              onClick={() => setStep(fact.step)}
            >
              <span className={styles.number} aria-hidden="true">
                {i + 1}
              </span>
              <span className={styles.title}>{STEP_TITLES[fact.step]}</span>
              <span className={styles.fact}>
                <span>{fact.says}</span>
                {COUNTED.filter((severity) => fact.against[severity] > 0).map((severity) => (
                  <span
                    key={severity}
                    className={styles.against}
                    role="img"
                    aria-label={words(severity, fact.against[severity])}
                  >
                    {SHAPES[severity]} {fact.against[severity]}
                  </span>
                ))}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
};
