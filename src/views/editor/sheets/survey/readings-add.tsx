import {
  addReadings,
  type Mark,
  type NodeId,
  READING_KINDS,
  type ReadingKind,
  readsAngle,
} from '../../../../design/index.ts';
import { sayMark } from '../../../../says/index.ts';
import { Button, ChoiceField, LengthField, NumberField } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';

/** A reading that is being entered: everything but its value. */
export interface NewReading {
  readonly kind: ReadingKind;
  readonly from: NodeId;
  readonly to: NodeId;
  readonly at: NodeId;
}

const KIND_WORDS: Readonly<Record<ReadingKind, string>> = {
  distance: 'straight, mark to mark',
  along: 'depth',
  across: 'width',
  height: 'height',
  offset: 'centre line to mark',
  level: 'level',
  angle: 'angle at a mark',
};

/** Where a new reading begins: between the first two marks. */
export const startReading = (marks: readonly Mark[]): NewReading | null => {
  const [from, to, at] = marks;
  return from && to ? { kind: 'distance', from: from.id, to: to.id, at: (at ?? from).id } : null;
};

interface AddReadingProps {
  readonly draft: NewReading;
  readonly onChange: (draft: NewReading) => void;
  readonly onClose: () => void;
}

/** A new reading: what, from where, to where, and last its value; Enter there adds it and leaves the form open. */
export const AddReading = ({ draft, onChange, onClose }: AddReadingProps) => {
  const units = useUnits();
  const edit = useEditor((editor) => editor.edit);
  const tell = useDesk((desk) => desk.tell);
  const { survey } = useEditorParts((editor) => ({ survey: editor.history.design.survey }));
  const angle = readsAngle(draft.kind);
  const choices = survey.marks.map(({ id }) => ({ value: id, label: sayMark(survey, id) }));
  const add = (value: number): void => {
    const { kind, from } = draft;
    const to = kind === 'offset' ? null : draft.to;
    const at = kind === 'angle' ? draft.at : null;
    const instrument = angle ? (kind === 'level' ? 'level' : 'angle-gauge') : 'tape';
    edit(
      'add a reading',
      (now) =>
        addReadings(now, [{ kind, from, to, at, value, instrument, sigma: null, note: '', leftOut: null }]).design,
    );
    tell(`Reading ${survey.readings.length + 1} added.`);
  };
  const mark = (label: string, key: 'from' | 'to' | 'at') => (
    <ChoiceField
      label={label}
      value={draft[key]}
      choices={choices}
      onCommit={(id) => onChange({ ...draft, [key]: id })}
    />
  );
  return (
    <div className={sheet.card}>
      <div className={sheet.fields}>
        <ChoiceField
          label="Reading"
          value={draft.kind}
          choices={READING_KINDS.map((kind) => ({ value: kind, label: KIND_WORDS[kind] }))}
          onCommit={(kind) => onChange({ ...draft, kind })}
        />
        {mark(draft.kind === 'offset' ? 'Mark' : 'From', 'from')}
        {draft.kind === 'offset' ? null : mark('To', 'to')}
        {draft.kind === 'angle' ? mark('At', 'at') : null}
        <div data-reading="new">
          {angle ? (
            <NumberField label="Value" value={null} unit="°" onCommit={add} onClear={() => undefined} />
          ) : (
            <LengthField label="Value" valueMm={null} units={units} onCommit={add} onClear={() => undefined} />
          )}
        </div>
      </div>
      <div className={sheet.bar}>
        <span className={sheet.soft}>Enter adds it. Read it once more from the other end where you can.</span>
        <span className={sheet.push}>
          <Button small onClick={onClose}>
            Close
          </Button>
        </span>
      </div>
    </div>
  );
};
