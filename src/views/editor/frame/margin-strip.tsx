import { memo, useMemo } from 'react';
import type { LengthUnits } from '../../../base/index.ts';
import type { MarginName } from '../../../inspection/index.ts';
import { classNames, quantityText } from '../parts/index.ts';
import { useEditorParts, useEditorStore } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { type MarginFact, marginFacts } from './margin-facts.ts';
import styles from './margin-strip.module.css';
import { MarginTape } from './margin-tape.tsx';

export const MARGIN_TITLES: Readonly<Record<MarginName, string>> = {
  gap: 'Gap',
  travel: 'Travel',
  hatch: 'Hatch',
  payload: 'Payload',
  axle: 'Axle',
  side: 'Side',
  hold: 'Hold',
  reach: 'Reach',
  power: 'Power',
};

const colourOf = (severity: MarginFact['severity']): string =>
  severity === 'good' ? 'var(--ink)' : `var(--${severity})`;

interface PieceProps extends MarginFact {
  readonly units: LengthUnits;
  readonly pressed: boolean;
}

/** Drawn anew only when what it shows is another: an answer of the inspection comes several times a second. */
const Piece = memo(({ margin, worst, severity, finding, checks, units, pressed }: PieceProps) => {
  const editor = useEditorStore();
  const go = (): void => {
    if (!worst) return;
    const { select, setFeeler } = editor.getState();
    select(worst.parts);
    setFeeler(finding);
  };
  return (
    <button
      type="button"
      className={styles.piece}
      disabled={!worst}
      aria-pressed={pressed}
      title={worst ? `The worst of ${checks}. Press to see where.` : 'No check of this kind has run yet'}
      onClick={go}
    >
      <span className={styles.name}>{MARGIN_TITLES[margin]}</span>{' '}
      {worst ? (
        <>
          <span className={styles.value} style={{ color: colourOf(severity) }}>
            {quantityText(worst.value, worst.unit, units)}
            {worst.uncertainty > 0 ? (
              <span className={styles.spread} title="half width at 95 %">
                {' '}
                ± {quantityText(worst.uncertainty, worst.unit, units)}
              </span>
            ) : null}
          </span>{' '}
          <span className={styles.limit}>of {quantityText(worst.limit, worst.unit, units)}</span>
          <span className={styles.heard}>, {severity}</span>
        </>
      ) : (
        <span className={styles.none}>not checked yet</span>
      )}
      <MarginTape measured={worst} severity={severity} />
    </button>
  );
});

/** Nine pieces of tape along the foot: the worst of each margin against its limit; a press goes there. */
export const MarginStrip = () => {
  const { inspection, feeler, late, selected } = useEditorParts((editor) => ({
    inspection: editor.judgement?.inspection ?? null,
    feeler: editor.feeler,
    late: editor.judgement !== null && editor.judgement.edit < editor.editNumber,
    selected: editor.selection,
  }));
  const units = useUnits();
  const facts = useMemo(() => marginFacts(inspection), [inspection]);
  return (
    <ul className={classNames(styles.strip, late && styles.late)} aria-label="Margins: the worst of each">
      {facts.map((fact) => (
        <li key={fact.margin}>
          <Piece
            {...fact}
            units={units}
            pressed={
              fact.worst !== null &&
              ((fact.finding !== null && fact.finding === feeler) ||
                (fact.worst.parts.length > 0 && fact.worst.parts.every((part) => selected.includes(part))))
            }
          />
        </li>
      ))}
    </ul>
  );
};
