import { classNames } from './class-names.ts';
import styles from './field.module.css';
import { Field, type FieldFrame } from './field.tsx';
import { useDraft } from './use-draft.ts';

export interface TextFieldProps extends FieldFrame {
  readonly value: string;
  readonly onCommit: (text: string) => void;
  /** Refuses an empty text. */
  readonly required?: boolean | undefined;
  readonly maxLength?: number | undefined;
  readonly placeholder?: string | undefined;
}

/** A short text: a name, a person, a date as it was written down. */
export const TextField = ({
  label,
  value,
  onCommit,
  required = false,
  maxLength = 200,
  placeholder,
  hint,
  bare,
  disabled,
}: TextFieldProps) => {
  const { error, input } = useDraft<string>({
    shown: value,
    read: (text) =>
      required && text.trim() === '' ? { ok: false, says: 'A name is needed here.' } : { ok: true, value: text.trim() },
    commit: onCommit,
  });
  return (
    <Field label={label} hint={hint} bare={bare} error={error}>
      {({ id, describedBy, bad }) => (
        <input
          {...input}
          id={id}
          className={classNames(styles.input)}
          aria-describedby={describedBy}
          aria-invalid={bad}
          maxLength={maxLength}
          placeholder={placeholder}
          autoComplete="off"
          disabled={disabled}
        />
      )}
    </Field>
  );
};
