import { useId } from 'react';
import type { Choice } from './choice-field.tsx';
import styles from './segment.module.css';

interface SegmentProps<V extends string> {
  readonly label: string;
  readonly value: V;
  readonly choices: readonly Choice<V>[];
  readonly onCommit: (value: V) => void;
}

/** A few choices side by side, one of them on. */
export const Segment = <V extends string>({ label, value, choices, onCommit }: SegmentProps<V>) => {
  const name = useId();
  return (
    <fieldset className={styles.segment}>
      <legend>{label}</legend>
      {choices.map((choice) => (
        <label key={choice.value}>
          <input type="radio" name={name} checked={choice.value === value} onChange={() => onCommit(choice.value)} />
          {choice.label}
        </label>
      ))}
    </fieldset>
  );
};
