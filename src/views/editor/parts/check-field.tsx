import styles from './field.module.css';

export interface CheckFieldProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onCommit: (checked: boolean) => void;
  readonly disabled?: boolean | undefined;
  /** Heard in place of the label, where the label stands elsewhere or is cut short. */
  readonly name?: string | undefined;
}

/** Yes or no. */
export const CheckField = ({ label, checked, onCommit, disabled, name }: CheckFieldProps) => (
  <label className={styles.check}>
    <input
      type="checkbox"
      aria-label={name}
      checked={checked}
      disabled={disabled}
      onChange={(event) => onCommit(event.target.checked)}
    />
    {label === '' ? null : <span>{label}</span>}
  </label>
);
