import { useState } from 'react';
import { type Division, divideOpening, type Opening } from '../../../../../design/index.ts';
import { Button, CheckField, NumberField, Segment } from '../../../parts/index.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './actions.module.css';

interface DivideFormProps {
  readonly opening: Opening;
  readonly onDone: () => void;
}

const WAYS: readonly { readonly value: Division; readonly label: string }[] = [
  { value: 'columns', label: 'columns' },
  { value: 'rows', label: 'rows' },
  { value: 'layers', label: 'layers' },
];

const HINTS: Readonly<Record<Division, string>> = {
  columns: 'Side by side, from the left.',
  rows: 'One above the other, from the top.',
  layers: 'One behind the other, from the face.',
};

/** A cabinet divided finer than this cannot be built; the design refuses more. */
const MOST_PARTS = 40;

/** Splits an opening into equal rooms. */
export const DivideForm = ({ opening, onDone }: DivideFormProps) => {
  const { editor } = useCabinet();
  const [along, setAlong] = useState<Division>('rows');
  const [count, setCount] = useState(2);
  const [panel, setPanel] = useState(true);
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        const divider = panel ? 'panel' : 'none';
        editor
          .getState()
          .edit(`divide into ${count} ${along}`, (now) => divideOpening(now, opening.id, along, count, divider));
        onDone();
      }}
    >
      <Segment label="Into" value={along} choices={WAYS} onCommit={setAlong} />
      <p className={styles.hint}>{HINTS[along]}</p>
      <NumberField label="How many" value={count} whole min={2} max={MOST_PARTS} onCommit={setCount} />
      <CheckField label="a panel between them" checked={panel} onCommit={setPanel} />
      <Button type="submit" look="main">
        Divide
      </Button>
    </form>
  );
};
