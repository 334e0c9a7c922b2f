import { useId, useState } from 'react';
import { acceptanceOf, acceptFinding, changeReading, type Design, leaveOutReading } from '../../../../design/index.ts';
import type { ExtraReading } from '../../../../envelope/index.ts';
import { Button, Dialog, SeverityMark } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './readings.module.css';
import { type SaidDoubt, sayDoubt } from './readings-said.ts';
import { focusReading } from './readings-table.tsx';
import type { Readings } from './use-readings.ts';

/** The day as it is written in the design: year, month, day. */
const today = (): string => {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

interface ReasonProps {
  readonly title: string;
  readonly about: string;
  readonly why: string;
  readonly does: string;
  readonly onClose: () => void;
  readonly onDone: (who: string, why: string) => void;
}

/** A decision about a reading: only with a name and a reason, which stay with it. */
const ReasonDialog = ({ title, about, why: label, does, onClose, onDone }: ReasonProps) => {
  const id = useId();
  const [who, setWho] = useState('');
  const [why, setWhy] = useState('');
  const ready = who.trim() !== '' && why.trim() !== '';
  return (
    <Dialog
      title={title}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button look="main" disabled={!ready} onClick={() => onDone(who.trim(), why.trim())}>
            {does}
          </Button>
        </>
      }
    >
      <p>{about}</p>
      <label htmlFor={`${id}-who`}>Your name</label>
      <input
        id={`${id}-who`}
        className={styles['line-of-text']}
        value={who}
        maxLength={200}
        autoComplete="name"
        onChange={(event) => setWho(event.target.value)}
      />
      <label htmlFor={`${id}-why`}>{label}</label>
      <textarea
        id={`${id}-why`}
        className={styles.paste}
        value={why}
        maxLength={2000}
        onChange={(event) => setWhy(event.target.value)}
      />
    </Dialog>
  );
};

const RULE = 'survey-misread';

/** Kept as it was read: the note goes with the reading, the decision with its finding. */
const kept = (design: Design, { row }: SaidDoubt, who: string, why: string): Design =>
  acceptFinding(changeReading(design, row.reading.id, { note: why }), {
    rule: RULE,
    parts: [row.reading.id],
    who,
    why,
    on: today(),
  });

interface FootProps {
  readonly readings: Readings;
  /** Opens a new row for the reading that would tell. */
  readonly onTake: (extra: ExtraReading) => void;
}

/** The reading that is likely misread, or the one that would tell, with what can be done about it. */
export const ReadingsFoot = ({ readings, onTake }: FootProps) => {
  const units = useUnits();
  const { accepted, edit, select } = useEditorParts((editor) => ({
    accepted: editor.history.design,
    edit: editor.edit,
    select: editor.select,
  }));
  const [asks, setAsks] = useState<'leave' | 'keep' | null>(null);
  const said = sayDoubt(readings.rows, readings.read, readings.survey, units);
  if (!said) return null;
  const { id } = said.row.reading;
  const label = `reading ${said.row.number}`;
  const stands = acceptanceOf(accepted, { rule: RULE, parts: [id] });
  const extra = readings.read.verdict?.wouldTell ?? null;
  return (
    <section className={styles.foot} aria-live="polite" aria-label="Readings that do not agree">
      <h3>
        <SeverityMark severity="caution" />
        {said.title}
      </h3>
      <p className={sheet.soft}>
        {said.detail}
        {stands ? ` Kept by ${stands.who}: ${stands.why}.` : ''}
      </p>
      <div className={sheet.bar}>
        {said.kind === 'doubt' && extra && extra.repeats === null ? (
          <Button look="main" onClick={() => onTake(extra)}>
            Enter that reading
          </Button>
        ) : null}
        <Button
          look={said.kind === 'named' ? 'main' : 'plain'}
          onClick={() => {
            select([id]);
            focusReading(id);
          }}
        >
          Measure again{said.kind === 'doubt' ? ` (${said.row.number})` : ''}
        </Button>
        <Button onClick={() => setAsks('leave')}>
          Leave it out{said.kind === 'doubt' ? ` (${said.row.number})` : ''}
        </Button>
        {said.kind === 'named' && !stands ? (
          <Button onClick={() => setAsks('keep')}>Keep it, with a note</Button>
        ) : null}
      </div>
      {asks === 'leave' ? (
        <ReasonDialog
          title={`Leave out ${label}`}
          about={`It stays listed with your name and the reason, and takes no part: ${said.row.words}.`}
          why="Why it is left out"
          does="Leave it out"
          onClose={() => setAsks(null)}
          onDone={(who, why) => {
            edit(`leave out ${label}`, (now) => leaveOutReading(now, said.row.reading.id, { who, why }));
            setAsks(null);
          }}
        />
      ) : null}
      {asks === 'keep' ? (
        <ReasonDialog
          title={`Keep ${label}`}
          about="It keeps its part in the survey; the finding stays listed as accepted, with your name and the note."
          why="Note"
          does="Keep it"
          onClose={() => setAsks(null)}
          onDone={(who, why) => {
            edit(`keep ${label}`, (now) => kept(now, said, who, why));
            setAsks(null);
          }}
        />
      ) : null}
    </section>
  );
};
