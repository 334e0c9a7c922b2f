import { type ReactNode, useId } from 'react';
import { classNames } from './class-names.ts';
import styles from './field.module.css';

/** What every field takes besides its value. */
export interface FieldFrame {
  readonly label: string;
  /** A short line under the field. */
  readonly hint?: string | undefined;
  /** Hides the label from the eye, not from a screen reader: for tables and drawings. */
  readonly bare?: boolean | undefined;
  readonly disabled?: boolean | undefined;
}

interface FieldProps extends FieldFrame {
  readonly error?: string | null | undefined;
  /** Stands at the end of the box: a unit or a short remark. */
  readonly unit?: string | undefined;
  readonly children: (ids: {
    readonly id: string;
    readonly describedBy: string | undefined;
    readonly bad: boolean;
  }) => ReactNode;
}

/** Label, box, unit, hint and error sentence around one control, tied together for screen readers. */
export const Field = ({ label, hint, bare = false, error, unit, children }: FieldProps) => {
  const id = useId();
  const noteId = `${id}-note`;
  const note = error ?? hint;
  return (
    <div className={classNames(styles.field, bare && styles.bare)}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <div className={styles.box} data-bad={Boolean(error)}>
        {children({ id, describedBy: note ? noteId : undefined, bad: Boolean(error) })}
        {unit ? <span className={styles.unit}>{unit}</span> : null}
      </div>
      {note ? (
        <p id={noteId} className={error ? styles.error : styles.hint} role={error ? 'alert' : undefined}>
          {note}
        </p>
      ) : null}
    </div>
  );
};
