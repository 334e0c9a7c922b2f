import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './button.tsx';
import { classNames } from './class-names.ts';
import styles from './dialog.module.css';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly wide?: boolean;
  /** Text to read and nothing to press: the keyboard scrolls it. */
  readonly reading?: boolean;
  readonly children: ReactNode;
  /** Buttons at the foot, the main one last. */
  readonly foot?: ReactNode;
}

/** Where a dialog begins: its first control. */
const FIRST = 'input, textarea, select, button';

/** A modal dialog on the native element: it keeps the focus, closes on Escape and gives the focus back. */
export const Dialog = ({ title, onClose, wide = false, reading = false, children, foot }: DialogProps) => {
  const element = useRef<HTMLDialogElement>(null);
  const body = useRef<HTMLDivElement>(null);
  const titleId = useId();
  useEffect(() => {
    const dialog = element.current;
    const before = document.activeElement;
    if (dialog && !dialog.open) dialog.showModal();
    // Left to itself the dialog would begin at the button that closes it.
    body.current?.querySelector<HTMLElement>(FIRST)?.focus();
    return () => {
      dialog?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={element}
      className={classNames(styles.dialog, wide && styles.wide)}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => event.stopPropagation()}
      onClick={(event) => {
        if (event.target === element.current) onClose();
      }}
    >
      <div className={styles.head}>
        <h2 id={titleId}>{title}</h2>
        <Button look="quiet" aria-label="Close" onClick={onClose}>
          ✕
        </Button>
      </div>
      <div ref={body} className={styles.body} tabIndex={reading ? 0 : undefined}>
        {children}
      </div>
      {foot ? <div className={styles.foot}>{foot}</div> : null}
    </dialog>
  );
};
