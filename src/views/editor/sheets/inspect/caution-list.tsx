import { CAUTIONS } from '../../../../says/index.ts';
import styles from './inspect.module.css';

/** What the program does not answer for: in a line each on the screen, in full on paper. */
export const CautionList = ({ full = false }: { readonly full?: boolean }) => (
  <ul className={styles.caution}>
    {CAUTIONS.map((caution) => (
      <li key={caution.id}>{full ? caution.long : caution.short}</li>
    ))}
  </ul>
);
