import { useStore } from 'zustand';
import type { Opening } from '../../../../../design/index.ts';
import { Button } from '../../../parts/index.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './actions.module.css';
import { clipboard } from './clipboard.ts';
import { DivideForm } from './divide-form.tsx';
import { DropDown } from './drop-down.tsx';
import { FitList } from './fit-list.tsx';
import { openingActions } from './opening-actions.ts';

/** What can be done to the selected opening. */
export const ActionBar = ({ opening }: { readonly opening: Opening }) => {
  const { editor } = useCabinet();
  // Listened to so that "paste" comes on as soon as something was copied.
  useStore(clipboard, (state) => state.copied);
  // What does not apply here is not offered.
  const actions = openingActions(editor, opening).filter((action) => action.enabled);
  return (
    <div className={styles.bar} role="toolbar" aria-label="The selected opening">
      <DropDown label="Divide">{(close) => <DivideForm opening={opening} onDone={close} />}</DropDown>
      <DropDown label="Fit">{(close) => <FitList opening={opening} onDone={close} />}</DropDown>
      {actions.map(({ id, label, shortcut, run }) => (
        <Button key={id} look="quiet" title={shortcut ? `${label} (${shortcut})` : label} onClick={run}>
          {label}
        </Button>
      ))}
    </div>
  );
};
