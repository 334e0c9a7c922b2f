import { type CSSProperties, useEffect, useRef, useState } from 'react';
import type { Finding } from '../../../../inspection/index.ts';
import { Button, classNames, quantityText, SeverityMark } from '../../parts/index.ts';
import { useEditorParts, useEditorStore } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import { shareUnchanged } from '../../worker/share.ts';
import { AcceptDialog } from './accept-dialog.tsx';
import styles from './inspect.module.css';

interface FindingLineProps {
  readonly finding: Finding;
  /** Its place in the list of all findings. */
  readonly index: number;
  /** Whether the findings belong to the design that is shown now. */
  readonly fresh: boolean;
}

const uncertaintyText = (finding: Finding, units: 'in' | 'mm'): string =>
  finding.uncertainty > 0 ? ` Known to ± ${quantityText(finding.uncertainty, finding.unit, units)}.` : '';

const More = ({ finding, index, fresh }: FindingLineProps) => {
  const units = useUnits();
  const store = useEditorStore();
  const { sayFinding, sayWayOut, sayWayMargin } = useNames();
  const said = sayFinding(finding);
  const [accepting, setAccepting] = useState(false);
  const show = (): void => {
    store.getState().select(finding.parts);
    store.getState().setFeeler(index);
  };
  return (
    <div className={styles.more}>
      <p>
        {said.detail}
        {uncertaintyText(finding, units)}
      </p>
      <p className={styles.source}>
        Limit from: {finding.source}
        {finding.status === '' ? '' : ` (${finding.status})`}
      </p>
      <div className={classNames(styles.actions, 'no-print')}>
        {finding.waysOut.map((way, i) => (
          <Button
            // biome-ignore lint/suspicious/noArrayIndexKey: ways out come in a fixed order, the best first
            key={i}
            look={i === 0 ? 'main' : 'plain'}
            disabled={!fresh}
            title="Tried on a copy: it clears this finding and makes no new stop"
            onClick={() => store.getState().edit(sayWayOut(way), (design) => shareUnchanged(design, way.design))}
          >
            {sayWayOut(way)}
            <small className={styles.margin}>{sayWayMargin(finding, way)}</small>
          </Button>
        ))}
        <Button onClick={show}>Show it</Button>
        <Button onClick={() => setAccepting(true)}>Accept with a reason…</Button>
      </div>
      {accepting ? <AcceptDialog finding={finding} onClose={() => setAccepting(false)} /> : null}
    </div>
  );
};

/** One finding: a line, and everything about it while it is the one that is looked at. */
export const FindingLine = ({ finding, index, fresh }: FindingLineProps) => {
  const { sayFinding } = useNames();
  const said = sayFinding(finding);
  const { open, select, setFeeler } = useEditorParts((editor) => ({
    open: editor.feeler === index,
    select: editor.select,
    setFeeler: editor.setFeeler,
  }));
  const line = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (open) line.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  const toggle = (): void => {
    if (!open) select(finding.parts);
    setFeeler(open ? null : index);
  };
  return (
    <li
      ref={line}
      className={styles.finding}
      data-open={open}
      style={{ '--tone': `var(--${finding.severity})` } as CSSProperties}
    >
      <button type="button" className={styles.row} aria-expanded={open} onClick={toggle}>
        <SeverityMark severity={finding.severity} />
        <span className={styles.title}>{said.title}</span>
        <span className={styles.value}>{said.valueText}</span>
        <span className={styles.limit}>{said.limitText}</span>
      </button>
      {open ? <More finding={finding} index={index} fresh={fresh} /> : null}
    </li>
  );
};
