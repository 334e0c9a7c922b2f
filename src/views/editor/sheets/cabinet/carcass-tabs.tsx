import { addCarcass, type Carcass, duplicateCarcass, freshCarcass, removeCarcass } from '../../../../design/index.ts';
import { Button, ToggleChip } from '../../parts/index.ts';
import styles from './cabinet.module.css';
import { carcassWords } from './names.ts';
import { useCabinet } from './use-cabinet.ts';

/** Adds a carcass and shows it. */
export const useAddCarcass = (): (() => void) => {
  const { editor } = useCabinet();
  return () => {
    const { history, edit, select, showCarcass } = editor.getState();
    const carcass = freshCarcass(history.design);
    edit('add a carcass', (now) => addCarcass(now, carcass));
    showCarcass(carcass.id);
    select([carcass.id]);
  };
};

interface CarcassTabsProps {
  readonly shown: Carcass;
  /** Opens or closes the search for the largest carcass that a spot takes. */
  readonly onLargest: () => void;
}

/** The carcasses of the cabinet; the one that is on is drawn below. */
export const CarcassTabs = ({ shown, onLargest }: CarcassTabsProps) => {
  const { editor, design } = useCabinet();
  const add = useAddCarcass();
  const show = (id: string): void => {
    editor.getState().showCarcass(id);
    editor.getState().select([id]);
  };
  const duplicate = (): void => {
    const copy = duplicateCarcass(editor.getState().history.design, shown.id);
    editor.getState().edit('duplicate a carcass', () => copy.design);
    show(copy.id);
  };
  const remove = (): void => {
    const { edit, select, showCarcass } = editor.getState();
    const next = design.cabinet.carcasses.find((carcass) => carcass.id !== shown.id);
    edit('remove a carcass', (now) => removeCarcass(now, shown.id));
    showCarcass(next?.id ?? null);
    select([]);
  };
  return (
    <div className={styles.tabs} role="toolbar" aria-label="Carcasses">
      {design.cabinet.carcasses.map((carcass) => (
        <ToggleChip key={carcass.id} pressed={carcass.id === shown.id} onClick={() => show(carcass.id)}>
          {carcassWords(carcass)}
        </ToggleChip>
      ))}
      <Button small look="quiet" onClick={add}>
        + Add
      </Button>
      <Button
        small
        look="quiet"
        onClick={onLargest}
        title="The largest carcass that a spot takes, and what stops it on each side"
      >
        Largest…
      </Button>
      <Button small look="quiet" onClick={duplicate}>
        Duplicate
      </Button>
      <Button small look="quiet" onClick={remove}>
        Delete
      </Button>
    </div>
  );
};
