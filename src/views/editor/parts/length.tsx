import { formatLength, formatLengthUnit, formatMass, type LengthUnits } from '../../../base/index.ts';
import styles from './length.module.css';

interface LengthProps {
  readonly mm: number;
  readonly units: LengthUnits;
  /** Writes the unit after the figure; the other unit stands in the tooltip either way. */
  readonly unit?: boolean;
}

/** A length as a figure, with a real fraction in inches; copied text stays plain: `14 3/8`. */
export const Length = ({ mm, units, unit = false }: LengthProps) => {
  const [whole, fraction] = splitFraction(formatLength(mm, units));
  return (
    <span className={styles.figure} title={formatLengthUnit(mm, units === 'in' ? 'mm' : 'in')}>
      {whole}
      {fraction === '' ? null : (
        <>
          {whole === '' || whole === '−' ? '' : ' '}
          <span className={styles.fraction}>{fraction}</span>
        </>
      )}
      {unit ? <span className={styles.unit}>{units}</span> : null}
    </span>
  );
};

/** `14 3/8` → ['14', '3/8']; `3/8` → ['', '3/8']; `−3/8` → ['−', '3/8']; `14` → ['14', '']. */
export const splitFraction = (text: string): readonly [string, string] => {
  const match = /^(.*?)\s*(\d+\/\d+)$/.exec(text);
  return match ? [match[1] ?? '', match[2] ?? ''] : [text, ''];
};

/** A mass in the reader's units. */
export const Mass = ({ kg, units }: { readonly kg: number; readonly units: LengthUnits }) => (
  <span className={styles.figure} title={formatMass(kg, units === 'in' ? 'mm' : 'in')}>
    {formatMass(kg, units)}
  </span>
);

/** Any other figure in the face of figures. */
export const Figure = ({ children }: { readonly children: string | number }) => (
  <span className={styles.figure}>{children}</span>
);
