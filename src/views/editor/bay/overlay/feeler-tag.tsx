import { useCallback, useRef } from 'react';
import { middle } from '../../../../base/index.ts';
import { quantityText, SeverityMark } from '../../parts/index.ts';
import { useUnits } from '../../state/use-units.ts';
import { projected } from '../camera/view.ts';
import { type Feeler, useFeelers } from '../marks/use-feelers.ts';
import type { Stage } from '../stage.ts';
import styles from './tags.module.css';
import { useDrawn } from './use-drawn.ts';

interface OneTagProps {
  readonly stage: Stage;
  readonly feeler: Feeler;
}

const OneTag = ({ stage, feeler: { at, value, unit, uncertainty, severity } }: OneTagProps) => {
  const tag = useRef<HTMLDivElement>(null);
  const units = useUnits();
  const place = useCallback(
    (element: HTMLDivElement) => {
      const spot = projected(stage.view(), middle(at[0], at[1]));
      element.hidden = spot === null;
      if (spot) element.style.transform = `translate(${spot[0]}px, ${spot[1]}px)`;
    },
    [stage, at],
  );
  useDrawn(stage, tag, place);
  return (
    <div ref={tag} className={styles.feeler} data-severity={severity ?? undefined}>
      <span>
        {severity === null ? 'least gap' : <SeverityMark severity={severity} />}
        {quantityText(value, unit, units)}
        {uncertainty > 0 ? <small>± {quantityText(uncertainty, unit, units)}</small> : null}
      </span>
    </div>
  );
};

/** The value beside each feeler line, with the shape of its severity. */
export const FeelerTag = ({ stage }: { readonly stage: Stage }) =>
  useFeelers().map((feeler) => <OneTag key={feeler.key} stage={stage} feeler={feeler} />);
