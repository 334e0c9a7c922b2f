import { useId, useState } from 'react';
import { acceptFinding } from '../../../../design/index.ts';
import type { Finding } from '../../../../inspection/index.ts';
import { Button, Dialog, SeverityMark } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import styles from './accept-dialog.module.css';

const NAME_KEY = 'hatchwright-name';

const rememberedName = (): string => {
  try {
    return localStorage.getItem(NAME_KEY) ?? '';
  } catch {
    return '';
  }
};

const rememberName = (name: string): void => {
  try {
    localStorage.setItem(NAME_KEY, name);
  } catch {
    // The name is then typed again next time.
  }
};

/** The day as it is written in the design: year, month, day. */
const today = (): string => {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

interface AcceptDialogProps {
  readonly finding: Finding;
  readonly onClose: () => void;
}

/** Lets a finding stand: only with a name and a reason, which stay with it on screen and paper. */
export const AcceptDialog = ({ finding, onClose }: AcceptDialogProps) => {
  const id = useId();
  const edit = useEditor((editor) => editor.edit);
  const setFeeler = useEditor((editor) => editor.setFeeler);
  const { sayFinding } = useNames();
  const [who, setWho] = useState(rememberedName);
  const [why, setWhy] = useState('');
  const ready = who.trim() !== '' && why.trim() !== '';
  const accept = (): void => {
    rememberName(who.trim());
    edit('accept a finding', (design) =>
      acceptFinding(design, {
        rule: finding.rule,
        parts: [...finding.parts],
        who: who.trim(),
        why: why.trim(),
        on: today(),
      }),
    );
    setFeeler(null);
    onClose();
  };
  return (
    <Dialog
      title="Accept with a reason"
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button look="main" disabled={!ready} onClick={accept}>
            Accept it
          </Button>
        </>
      }
    >
      <p className={styles.what}>
        <SeverityMark severity={finding.severity} word />
        <span>{sayFinding(finding).title}</span>
      </p>
      <p>It stays listed as accepted, with your name and reason, on screen and on paper.</p>
      <label className={styles.label} htmlFor={`${id}-who`}>
        Your name
      </label>
      <input
        id={`${id}-who`}
        className={styles.input}
        value={who}
        maxLength={200}
        autoComplete="name"
        onChange={(event) => setWho(event.target.value)}
      />
      <label className={styles.label} htmlFor={`${id}-why`}>
        Why it may stand
      </label>
      <textarea
        id={`${id}-why`}
        className={styles.input}
        rows={3}
        value={why}
        maxLength={2000}
        onChange={(event) => setWhy(event.target.value)}
      />
    </Dialog>
  );
};
