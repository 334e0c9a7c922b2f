import type { ComponentProps, ReactNode } from 'react';
import styles from './chip.module.css';
import { classNames } from './class-names.ts';

/** A small word that says how something is: draft, upright, first due. */
export const Chip = ({ children }: { readonly children: ReactNode }) => <span className={styles.chip}>{children}</span>;

interface ToggleChipProps extends ComponentProps<'button'> {
  readonly pressed: boolean;
  readonly children: ReactNode;
}

/** A chip that is on or off, or one of a row of which one is on. */
export const ToggleChip = ({ pressed, className, ...rest }: ToggleChipProps) => (
  <button
    {...rest}
    type="button"
    aria-pressed={pressed}
    className={classNames(styles.chip, styles.toggle, className)}
  />
);
