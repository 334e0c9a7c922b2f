import { formatLength, formatLengthUnit, type LengthUnits, MM_PER_INCH, parseLength } from '../../../base/index.ts';
import { classNames } from './class-names.ts';
import styles from './field.module.css';
import { Field, type FieldFrame } from './field.tsx';
import { type Draft, useDraft } from './use-draft.ts';

export interface LengthFieldProps extends FieldFrame {
  /** Null shows an empty field: nobody has measured it yet. */
  readonly valueMm: number | null;
  readonly onCommit: (mm: number) => void;
  readonly units: LengthUnits;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** Lets the field be emptied; without it an empty field is an error. */
  readonly onClear?: (() => void) | undefined;
  /** A remark at the end of the box in place of the unit. */
  readonly remark?: string | undefined;
}

/** One press of an arrow, and one with Shift. */
const NUDGE_MM: Readonly<Record<LengthUnits, readonly [number, number]>> = {
  in: [MM_PER_INCH / 16, MM_PER_INCH / 2],
  mm: [1, 10],
};

interface Limits {
  readonly units: LengthUnits;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly mayBeEmpty: boolean;
}

/** Reads a typed length against its limits; the sentence names the form or the limit that was missed. */
export const readLengthDraft = (text: string, { units, min, max, mayBeEmpty }: Limits): Draft<number | null> => {
  if (text.trim() === '' && mayBeEmpty) return { ok: true, value: null };
  const read = parseLength(text, units);
  if (!read.ok) return { ok: false, says: `Write a length, like ${units === 'in' ? '14 3/8' : '365'} or 36.5 cm.` };
  if (min !== undefined && read.value < min) return { ok: false, says: `At least ${formatLengthUnit(min, units)}.` };
  if (max !== undefined && read.value > max) return { ok: false, says: `At most ${formatLengthUnit(max, units)}.` };
  return { ok: true, value: read.value };
};

/** A length typed the way the trade writes it: `14 3/8`, `365 mm`, `14 3/8 + 1/4`. */
export const LengthField = ({
  label,
  valueMm,
  onCommit,
  onClear,
  units,
  min,
  max,
  hint,
  bare,
  disabled,
  remark,
}: LengthFieldProps) => {
  const { error, input } = useDraft<number | null>({
    shown: valueMm === null ? '' : formatLength(valueMm, units).replace('−', '-'),
    read: (text) => readLengthDraft(text, { units, min, max, mayBeEmpty: onClear !== undefined }),
    commit: (mm) => (mm === null ? onClear?.() : onCommit(mm)),
    nudged: (text, direction, large) => {
      const read = parseLength(text, units);
      if (!read.ok) return null;
      const next = read.value + direction * (NUDGE_MM[units][large ? 1 : 0] ?? 0);
      return formatLength(next, units).replace('−', '-');
    },
  });
  return (
    <Field label={label} hint={hint} bare={bare} error={error} unit={remark ?? (bare ? undefined : units)}>
      {({ id, describedBy, bad }) => (
        <input
          {...input}
          id={id}
          className={classNames(styles.input, styles.figures)}
          aria-describedby={describedBy}
          aria-invalid={bad}
          autoComplete="off"
          disabled={disabled}
          spellCheck={false}
          title={valueMm === null ? undefined : formatLengthUnit(valueMm, units === 'in' ? 'mm' : 'in')}
        />
      )}
    </Field>
  );
};
