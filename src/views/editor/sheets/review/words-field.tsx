import { useId } from 'react';
import styles from './review.module.css';

interface WordsFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly maxLength?: number;
}

/** Words that a button beside them takes: it follows every letter, so that the button is ready when the words are. */
export const WordsField = ({ label, value, onChange, maxLength = 200 }: WordsFieldProps) => {
  const id = useId();
  return (
    <div className={styles.words}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={value}
        maxLength={maxLength}
        autoComplete="off"
        onChange={(event) => onChange(event.target.value)}
      />
    </div>
  );
};
