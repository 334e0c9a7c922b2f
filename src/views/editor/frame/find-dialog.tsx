import { useMemo, useState } from 'react';
import { Autocomplete } from 'react-aria-components/Autocomplete';
import { Input } from 'react-aria-components/Input';
import { Menu, MenuItem } from 'react-aria-components/Menu';
import { SearchField } from 'react-aria-components/SearchField';
import { Dialog } from '../parts/index.ts';
import { showSurveyPart } from '../sheets/survey/view.ts';
import { type Bench, useBench } from '../state/bench.ts';
import type { EditorStore } from '../state/store.ts';
import { useDesk, useDeskStore } from '../state/use-desk.ts';
import { useEditorParts, useEditorStore } from '../state/use-editor.ts';
import { useNames } from '../state/use-names.ts';
import styles from './find-dialog.module.css';
import { type FindCommand, type FindPlan, findEntries, ranked } from './find-entries.ts';

const NO_FINDINGS = [] as const;

const carryOutCommand = (
  command: FindCommand,
  editor: EditorStore,
  bench: Bench,
  showHelp: () => void,
  showDesigns: () => void,
): void => {
  const run: Readonly<Record<FindCommand, () => void>> = {
    undo: editor.getState().undo,
    redo: editor.getState().redo,
    save: () => void bench.files.saveToFile(),
    open: () => void bench.files.openFile(),
    new: () => void bench.files.newDesign(),
    designs: showDesigns,
    'stow-all': editor.getState().stowAll,
    help: showHelp,
    print: () => window.print(),
  };
  run[command]();
};

/** Takes a person anywhere by a few letters: steps, commands, findings, the survey, openings, panels, gear. */
export const FindDialog = () => {
  const lay = useDesk((desk) => desk.lay);
  const desk = useDeskStore();
  const editor = useEditorStore();
  const bench = useBench();
  const { sayFinding, nameOf } = useNames();
  const [typed, setTyped] = useState('');
  const { design, fitOut, findings } = useEditorParts((state) => ({
    design: state.history.design,
    fitOut: state.fitOut,
    findings: state.judgement?.inspection.findings ?? NO_FINDINGS,
  }));
  const entries = useMemo(
    () => findEntries({ design, fitOut, findings, nameOf, sayFinding: (finding) => sayFinding(finding).title }),
    [design, fitOut, findings, nameOf, sayFinding],
  );
  const shown = useMemo(() => ranked(entries, typed), [entries, typed]);
  const go = (plan: FindPlan): void => {
    lay(null);
    const { setStep, select, setFeeler } = editor.getState();
    if (plan.kind === 'command')
      carryOutCommand(
        plan.command,
        editor,
        bench,
        () => desk.getState().lay({ kind: 'help' }),
        () => desk.getState().lay({ kind: 'designs' }),
      );
    else if (plan.kind === 'survey') {
      showSurveyPart(plan.part);
      setStep('survey');
    } else setStep(plan.step);
    if (plan.kind === 'select') {
      select(plan.ids);
      setFeeler(plan.feeler);
    }
  };
  return (
    <Dialog title="Find" onClose={() => lay(null)}>
      <Autocomplete inputValue={typed} onInputChange={setTyped}>
        <SearchField aria-label="What to find" autoFocus>
          <Input className={styles.input ?? ''} placeholder="a step, a drawer, a piece of gear, a finding…" />
        </SearchField>
        <Menu
          className={styles.list ?? ''}
          aria-label="Found"
          items={shown.map((entry) => ({ ...entry, id: entry.key }))}
          onAction={(key) => {
            const entry = shown.find((candidate) => candidate.key === key);
            if (entry) go(entry.plan);
          }}
          renderEmptyState={() => <div className={styles.none}>Nothing of that name in this design.</div>}
        >
          {(entry) => (
            <MenuItem id={entry.key} textValue={entry.title} className={styles.entry ?? ''}>
              <span className={styles.kind}>{entry.kind}</span>
              <span>{entry.title}</span>
              <span className={styles.aside}>{entry.aside}</span>
            </MenuItem>
          )}
        </Menu>
      </Autocomplete>
    </Dialog>
  );
};
