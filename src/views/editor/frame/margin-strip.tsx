import { useMemo } from 'react';
import type { LengthUnits } from '../../../base/index.ts';
import type { MarginName } from '../../../inspection/index.ts';
import { classNames, quantityText } from '../parts/index.ts';
import { useEditor, useEditorParts } from '../state/use-editor.ts';
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

const colourOf = (fact: MarginFact): string => (fact.severity === 'good' ? 'var(--ink)' : `var(--${fact.severity})`);

interface PieceProps {
  readonly fact: MarginFact;
  readonly units: LengthUnits;
  readonly pressed: boolean;
  readonly onGo: () => void;
}

const Piece = ({ fact, units, pressed, onGo }: PieceProps) => {
  const { worst } = fact;
  return (
    <button
      type="button"
      className={styles.piece}
      disabled={!worst}
      aria-pressed={pressed}
      title={worst ? `The worst of ${fact.checks}. Press to see where.` : 'No check of this kind has run yet'}
      onClick={onGo}
    >
      <span className={styles.name}>{MARGIN_TITLES[fact.margin]}</span>{' '}
      {worst ? (
        <>
          <span className={styles.value} style={{ color: colourOf(fact) }}>
            {quantityText(worst.value, worst.unit, units)}
            {worst.uncertainty > 0 ? (
              <span className={styles.spread} title="half width at 95 %">
                {' '}
                ± {quantityText(worst.uncertainty, worst.unit, units)}
              </span>
            ) : null}
          </span>{' '}
          <span className={styles.limit}>of {quantityText(worst.limit, worst.unit, units)}</span>
          <span className={styles.heard}>, {fact.severity}</span>
        </>
      ) : (
        <span className={styles.none}>not checked yet</span>
      )}
      <MarginTape measured={worst} severity={fact.severity} />
    </button>
  );
};

/** Nine pieces of tape along the foot: the worst of each margin against its limit; a press goes there. */
export const MarginStrip = () => {
  const { judgement, feeler, late, select, setFeeler } = useEditorParts((editor) => ({
    judgement: editor.judgement,
    feeler: editor.feeler,
    late: editor.judgement !== null && editor.judgement.edit < editor.editNumber,
    select: editor.select,
    setFeeler: editor.setFeeler,
  }));
  const units = useUnits();
  const inspection = judgement?.inspection ?? null;
  const facts = useMemo(() => marginFacts(inspection), [inspection]);
  const selected = useEditor((editor) => editor.selection);
  return (
    <ul className={classNames(styles.strip, late && styles.late)} aria-label="Margins: the worst of each">
      {facts.map((fact) => (
        <li key={fact.margin}>
          <Piece
            fact={fact}
            units={units}
            pressed={
              fact.worst !== null &&
              ((fact.finding !== null && fact.finding === feeler) ||
                (fact.worst.parts.length > 0 && fact.worst.parts.every((part) => selected.includes(part))))
            }
            onGo={() => {
              if (!fact.worst) return;
              select(fact.worst.parts);
              setFeeler(fact.finding);
            }}
          />
        </li>
      ))}
    </ul>
  );
};
