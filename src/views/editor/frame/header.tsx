import { lazy, Suspense, useEffect, useState } from 'react';
import { changeDocument } from '../../../design/index.ts';
import { Button, Chip, Segment, TextField, THEMES, useTheme } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { saveWords } from '../state/save-words.ts';
import { useDesk } from '../state/use-desk.ts';
import { useEditor, useEditorParts } from '../state/use-editor.ts';
import styles from './header.module.css';
import { NameMark } from './name-mark.tsx';

/** Knows hashes, which nothing else at start needs. */
const StateChip = lazy(() => import('./state-chip.tsx').then((it) => ({ default: it.StateChip })));

const REFRESH_MS = 5000;

/** The time now, renewed while the window is open, so that "saved 3 s ago" stays true. */
const useNow = (): number => {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), REFRESH_MS);
    return () => clearInterval(timer);
  }, []);
  return now;
};

const Saved = () => {
  const save = useEditor((editor) => editor.save);
  const now = useNow();
  return (
    <span
      className={styles.saved}
      data-bad={save.kind === 'failed' || save.kind === 'elsewhere'}
      title={save.kind === 'failed' ? save.why : 'Kept in this browser as you work'}
    >
      {saveWords(save, save.kind === 'saved' ? Math.max(now, save.at) : now)}
    </span>
  );
};

const THEME_WORDS = { system: 'as the system has them', light: 'light', dark: 'dark' } as const;

const ThemeSwitch = () => {
  const { chosen, choose } = useTheme();
  const next = THEMES[(THEMES.indexOf(chosen) + 1) % THEMES.length] ?? 'system';
  const says = `Colours: ${THEME_WORDS[chosen]}. Press for ${THEME_WORDS[next]}.`;
  return (
    <Button look="quiet" aria-label={says} title={says} onClick={() => choose(next)}>
      <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
        <circle cx="8" cy="8" r="6.2" fill="none" stroke="currentColor" strokeWidth="1.5" />
        {chosen === 'light' ? null : (
          <path
            d={chosen === 'dark' ? 'M8 1.8a6.2 6.2 0 1 1 0 12.4a6.2 6.2 0 1 1 0-12.4z' : 'M8 1.8a6.2 6.2 0 0 1 0 12.4z'}
            fill="currentColor"
          />
        )}
      </svg>
    </Button>
  );
};

const Steps = () => {
  const { past, future, undo, redo } = useEditorParts((editor) => ({
    past: editor.history.past.at(-1)?.label,
    future: editor.history.future[0]?.label,
    undo: editor.undo,
    redo: editor.redo,
  }));
  return (
    <>
      <Button
        disabled={past === undefined}
        title={past === undefined ? 'Nothing to undo' : `Undo: ${past} (Ctrl Z)`}
        aria-keyshortcuts="Control+Z"
        onClick={undo}
      >
        Undo
      </Button>
      <Button
        disabled={future === undefined}
        title={future === undefined ? 'Nothing to redo' : `Redo: ${future} (Ctrl Shift Z)`}
        aria-keyshortcuts="Control+Shift+Z"
        onClick={redo}
      >
        Redo
      </Button>
    </>
  );
};

const Units = () => {
  const { units, edit } = useEditorParts((editor) => ({ units: editor.history.design.units, edit: editor.edit }));
  return (
    <Segment
      label="Lengths in"
      value={units}
      choices={[
        { value: 'in', label: 'in 1/16' },
        { value: 'mm', label: 'mm' },
      ]}
      onCommit={(next) =>
        edit(`show ${next === 'in' ? 'inches' : 'millimetres'}`, (design) => changeDocument(design, { units: next }))
      }
    />
  );
};

/** Name, title, saved state, and what is wanted at any step. */
export const Header = () => {
  const { title, letter, edit } = useEditorParts((editor) => ({
    title: editor.history.design.title,
    letter: editor.history.design.revisions.at(-1)?.letter,
    edit: editor.edit,
  }));
  const lay = useDesk((desk) => desk.lay);
  const { files } = useBench();
  useEffect(() => {
    document.title = `${title} – Hatchwright`;
  }, [title]);
  return (
    <header className={styles.header}>
      <h1 className={styles.name}>
        <NameMark />
        <span>Hatchwright</span>
      </h1>
      <div className={styles.title}>
        <TextField
          label="Title of the design"
          bare
          required
          value={title}
          onCommit={(next) => edit('change the title', (design) => changeDocument(design, { title: next }))}
        />
      </div>
      {letter === undefined ? (
        <Chip>draft</Chip>
      ) : (
        <Suspense fallback={<Chip>rev …</Chip>}>
          <StateChip />
        </Suspense>
      )}
      <Saved />
      <div className={styles.right}>
        <Units />
        <Button
          title="Designs kept here, demo designs, new (Ctrl O opens a file)"
          onClick={() => lay({ kind: 'designs' })}
        >
          Designs…
        </Button>
        <Button title="Save to a file (Ctrl S)" aria-keyshortcuts="Control+S" onClick={() => void files.saveToFile()}>
          Save
        </Button>
        <Steps />
        <Button
          title="Find a step, an opening, gear, a panel, a finding (Ctrl K)"
          aria-keyshortcuts="Control+K"
          onClick={() => lay({ kind: 'find' })}
        >
          Find…<span className={styles.key}>Ctrl K</span>
        </Button>
        <ThemeSwitch />
        <Button title="Keys and first steps (?)" aria-keyshortcuts="?" onClick={() => lay({ kind: 'help' })}>
          Help
        </Button>
      </div>
    </header>
  );
};
