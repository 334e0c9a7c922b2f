import { KG_PER_POUND, type LengthUnits } from '../../../base/index.ts';
import { classNames } from './class-names.ts';
import styles from './field.module.css';
import { Field, type FieldFrame } from './field.tsx';
import { type Draft, useDraft } from './use-draft.ts';

export interface NumberFieldProps extends FieldFrame {
  /** Null shows an empty field: nobody has read it yet. */
  readonly value: number | null;
  readonly onCommit: (value: number) => void;
  readonly onClear?: (() => void) | undefined;
  readonly unit?: string | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly whole?: boolean | undefined;
  readonly decimals?: number | undefined;
  /** One press of an arrow. */
  readonly step?: number | undefined;
}

const DEFAULT_DECIMALS = 2;

/** Fixed places without trailing zeros. */
const plainNumber = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

const SIMPLE_NUMBER = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

interface Limits {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly whole?: boolean | undefined;
  readonly unit?: string | undefined;
  readonly mayBeEmpty: boolean;
}

/** Reads a typed number; a decimal comma counts, and the unit may be written after it. */
export const readNumberDraft = (text: string, { min, max, whole, unit, mayBeEmpty }: Limits): Draft<number | null> => {
  const bare = text.trim().replace(/−/g, '-');
  if (bare === '' && mayBeEmpty) return { ok: true, value: null };
  const number = unit && bare.endsWith(unit) ? bare.slice(0, -unit.length).trim() : bare;
  if (!SIMPLE_NUMBER.test(number)) return { ok: false, says: 'Write a number.' };
  const value = Number(number.replace(',', '.'));
  const named = unit ? ` ${unit}` : '';
  if (whole && !Number.isInteger(value)) return { ok: false, says: 'Write a whole number.' };
  if (min !== undefined && value < min) return { ok: false, says: `At least ${plainNumber(min, 3)}${named}.` };
  if (max !== undefined && value > max) return { ok: false, says: `At most ${plainNumber(max, 3)}${named}.` };
  return { ok: true, value };
};

/** A plain number: an angle, a count, a share. */
export const NumberField = ({
  label,
  value,
  onCommit,
  onClear,
  unit,
  min,
  max,
  whole,
  decimals = DEFAULT_DECIMALS,
  step = 1,
  hint,
  bare,
  disabled,
}: NumberFieldProps) => {
  const limits = { min, max, whole, unit, mayBeEmpty: onClear !== undefined };
  const { error, input } = useDraft<number | null>({
    shown: value === null ? '' : plainNumber(value, decimals),
    read: (text) => readNumberDraft(text, limits),
    commit: (next) => (next === null ? onClear?.() : onCommit(next)),
    nudged: (text, direction, large) => {
      const read = readNumberDraft(text, { mayBeEmpty: false });
      return read.ok && read.value !== null
        ? plainNumber(read.value + direction * step * (large ? 10 : 1), decimals)
        : null;
    },
  });
  return (
    <Field label={label} hint={hint} bare={bare} error={error} unit={unit}>
      {({ id, describedBy, bad }) => (
        <input
          {...input}
          id={id}
          className={classNames(styles.input, styles.figures)}
          aria-describedby={describedBy}
          aria-invalid={bad}
          inputMode="decimal"
          autoComplete="off"
          disabled={disabled}
        />
      )}
    </Field>
  );
};

export interface MassFieldProps extends FieldFrame {
  readonly valueKg: number | null;
  readonly onCommit: (kg: number) => void;
  readonly onClear?: (() => void) | undefined;
  readonly units: LengthUnits;
  readonly minKg?: number | undefined;
  readonly decimals?: number | undefined;
}

/** A mass in pounds for a reader of inches, in kilograms for a reader of millimetres. */
export const MassField = ({ valueKg, onCommit, units, minKg = 0, decimals, ...rest }: MassFieldProps) => {
  const kgPerUnit = units === 'in' ? KG_PER_POUND : 1;
  return (
    <NumberField
      {...rest}
      value={valueKg === null ? null : valueKg / kgPerUnit}
      onCommit={(value) => onCommit(value * kgPerUnit)}
      unit={units === 'in' ? 'lb' : 'kg'}
      min={minKg / kgPerUnit}
      decimals={decimals ?? 1}
    />
  );
};
