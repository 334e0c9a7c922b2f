import type { ComponentProps, ReactNode } from 'react';
import styles from './button.module.css';
import { classNames } from './class-names.ts';

export interface ButtonProps extends ComponentProps<'button'> {
  /** `main` is the one thing a person most likely wants here; `quiet` has no border until it is pointed at. */
  readonly look?: 'plain' | 'main' | 'quiet';
  readonly small?: boolean;
  readonly children: ReactNode;
}

/** A button that says what it does. An icon alone needs an `aria-label`. */
export const Button = ({ look = 'plain', small = false, className, type = 'button', ...rest }: ButtonProps) => (
  <button
    {...rest}
    type={type}
    className={classNames(
      styles.button,
      look === 'main' && styles.main,
      look === 'quiet' && styles.quiet,
      small && styles.small,
      className,
    )}
  />
);
