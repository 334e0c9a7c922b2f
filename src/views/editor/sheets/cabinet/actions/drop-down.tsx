import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { Button } from '../../../parts/index.ts';
import styles from './actions.module.css';

interface DropDownProps {
  readonly label: string;
  readonly disabled?: boolean;
  readonly children: (close: () => void) => ReactNode;
}

/** A button with a small sheet under it; Escape and a click elsewhere close it. */
export const DropDown = ({ label, disabled = false, children }: DropDownProps) => {
  const [open, setOpen] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const id = useId();
  useEffect(() => {
    if (!open) return;
    const first = box.current?.querySelector<HTMLElement>(`#${CSS.escape(id)} button, #${CSS.escape(id)} input`);
    first?.focus();
    const onDown = (event: PointerEvent): void => {
      if (event.target instanceof Node && !box.current?.contains(event.target)) setOpen(false);
    };
    document.addEventListener('pointerdown', onDown);
    return () => document.removeEventListener('pointerdown', onDown);
  }, [open, id]);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape is heard from anything in it
    <div
      ref={box}
      className={styles.dropDown}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open) return;
        event.stopPropagation();
        setOpen(false);
        box.current?.querySelector('button')?.focus();
      }}
    >
      <Button aria-expanded={open} aria-controls={id} disabled={disabled} onClick={() => setOpen(!open)}>
        {label} <span aria-hidden="true">▾</span>
      </Button>
      {open ? (
        <div id={id} className={styles.under}>
          {children(() => setOpen(false))}
        </div>
      ) : null}
    </div>
  );
};
