import { useCallback, useRef } from 'react';
import { middle } from '../../../../base/index.ts';
import { quantityText, SeverityMark } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import { projected } from '../camera/view.ts';

import type { Stage } from '../stage.ts';
import styles from './tags.module.css';
import { useDrawn } from './use-drawn.ts';

/** The value of the chosen finding beside its feeler line, with the shape of its severity. */
export const FeelerTag = ({ stage }: { readonly stage: Stage }) => {
  const tag = useRef<HTMLDivElement>(null);
  const units = useUnits();
  const { feeler, findings } = useEditorParts((editor) => ({
    feeler: editor.feeler,
    findings: editor.judgement?.inspection.findings,
  }));
  const finding = feeler === null ? undefined : findings?.[feeler];
  const at = finding?.at ?? null;
  const place = useCallback(
    (element: HTMLDivElement) => {
      const spot = at && projected(stage.view(), middle(at[0], at[1]));
      element.hidden = spot === null;
      if (spot) element.style.transform = `translate(${spot[0]}px, ${spot[1]}px)`;
    },
    [stage, at],
  );
  useDrawn(stage, tag, place);
  if (!finding || !at) return null;
  return (
    <div ref={tag} className={styles.feeler} data-severity={finding.severity}>
      <span>
        <SeverityMark severity={finding.severity} />
        {quantityText(finding.value, finding.unit, units)}
      </span>
    </div>
  );
};
