import type { ReactNode } from 'react';
import styles from './table.module.css';

export const tableStyles = styles;

interface TableProps {
  /** What the table holds, heard by a screen reader. */
  readonly label: string;
  readonly children: ReactNode;
}

/** A quiet table with hairlines; scrolls sideways when it must. Cells of figures take `tableStyles.number`. */
export const Table = ({ label, children }: TableProps) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
  <section className={styles.scroll} aria-label={label} tabIndex={0}>
    <table className={styles.table} aria-label={label}>
      {children}
    </table>
  </section>
);

interface RowProps {
  readonly selected?: boolean;
  readonly hovered?: boolean;
  readonly onSelect?: ((add: boolean) => void) | undefined;
  readonly onHover?: ((over: boolean) => void) | undefined;
  readonly children: ReactNode;
}

/**
 * A row that shares selection and hover with the other views. A click anywhere selects; the keyboard does it by a
 * button in the row's first cell, which the caller supplies.
 */
export const Row = ({ selected = false, hovered = false, onSelect, onHover, children }: RowProps) => (
  <tr
    data-selected={selected}
    data-hovered={hovered}
    data-clickable={onSelect !== undefined}
    onClick={(event) => {
      if (event.target instanceof Element && event.target.closest('button, input, select, a, label')) return;
      onSelect?.(event.shiftKey || event.ctrlKey || event.metaKey);
    }}
    onPointerEnter={() => onHover?.(true)}
    onPointerLeave={() => onHover?.(false)}
  >
    {children}
  </tr>
);
