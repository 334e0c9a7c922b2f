import { classNames } from './class-names.ts';
import styles from './field.module.css';
import { Field, type FieldFrame } from './field.tsx';

export interface Choice<V extends string> {
  readonly value: V;
  readonly label: string;
  /** Choices of one group stand together under its name. */
  readonly group?: string | undefined;
}

export interface ChoiceFieldProps<V extends string> extends FieldFrame {
  readonly value: V;
  readonly choices: readonly Choice<V>[];
  readonly onCommit: (value: V) => void;
}

const Options = <V extends string>({ choices }: { readonly choices: readonly Choice<V>[] }) =>
  choices.map((choice) => (
    <option key={choice.value} value={choice.value}>
      {choice.label}
    </option>
  ));

/** One of a list. A native control: it works by keyboard, by touch and with every screen reader. */
export const ChoiceField = <V extends string>({
  label,
  value,
  choices,
  onCommit,
  hint,
  bare,
  disabled,
}: ChoiceFieldProps<V>) => {
  const groups = [...new Set(choices.map((choice) => choice.group ?? ''))];
  return (
    <Field label={label} hint={hint} bare={bare}>
      {({ id, describedBy }) => (
        <select
          id={id}
          className={classNames(styles.input, styles.select)}
          aria-describedby={describedBy}
          value={value}
          disabled={disabled}
          onChange={(event) => {
            const chosen = choices.find((choice) => choice.value === event.target.value);
            if (chosen) onCommit(chosen.value);
          }}
        >
          {groups.map((group) => {
            const inside = choices.filter((choice) => (choice.group ?? '') === group);
            return group === '' ? (
              <Options key="" choices={inside} />
            ) : (
              <optgroup key={group} label={group}>
                <Options choices={inside} />
              </optgroup>
            );
          })}
        </select>
      )}
    </Field>
  );
};
