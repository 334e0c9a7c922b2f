import { formatLength, formatLengthUnit, formatMass, type LengthUnits } from '../../../base/index.ts';
import styles from './length.module.css';

interface LengthProps {
  readonly mm: number;
  readonly units: LengthUnits;
  /** Writes the unit after the figure; the other unit stands in the tooltip either way. */
  readonly unit?: boolean;
}

/** A length as a figure, the other unit a hover away. Fractions stand on the line, as on a drawing: `14 3/8`. */
export const Length = ({ mm, units, unit = false }: LengthProps) => (
  <span className={styles.figure} title={formatLengthUnit(mm, units === 'in' ? 'mm' : 'in')}>
    {formatLength(mm, units)}
    {unit ? <span className={styles.unit}>{units}</span> : null}
  </span>
);

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
