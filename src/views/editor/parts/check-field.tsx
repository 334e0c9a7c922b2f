import styles from './field.module.css';

export interface CheckFieldProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onCommit: (checked: boolean) => void;
  readonly disabled?: boolean | undefined;
}

/** Yes or no. */
export const CheckField = ({ label, checked, onCommit, disabled }: CheckFieldProps) => (
  <label className={styles.check}>
    <input type="checkbox" checked={checked} disabled={disabled} onChange={(event) => onCommit(event.target.checked)} />
    <span>{label}</span>
  </label>
);
