import { type CSSProperties, type KeyboardEvent, type PointerEvent, type ReactNode, useRef, useState } from 'react';
import { remembered, rememberNumber } from './remembered.ts';
import styles from './split.module.css';

interface SplitProps {
  readonly left: ReactNode;
  readonly right: ReactNode;
}

/** A narrow window gives the sheet its half. */
const start = (): number => (window.innerWidth < 1200 ? 50 : 58);
const LEAST = 20;
const MOST = 80;
const STEP = 2;
const KEY = 'hatchwright-split';

const within = (share: number): number => Math.min(MOST, Math.max(LEAST, share));

/** Bay and sheet side by side; the bar between them moves by hand and by the arrow keys. */
export const Split = ({ left, right }: SplitProps) => {
  const [share, setShare] = useState(() => within(remembered(KEY, start())));
  const [held, setHeld] = useState(false);
  const around = useRef<HTMLDivElement>(null);
  const settle = (next: number): void => {
    setShare(within(next));
    rememberNumber(KEY, within(next));
  };
  const onPointerMove = (event: PointerEvent): void => {
    const box = around.current?.getBoundingClientRect();
    if (held && box) setShare(within(((event.clientX - box.left) / box.width) * 100));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const moves: Readonly<Record<string, number>> = {
      ArrowLeft: share - STEP,
      ArrowRight: share + STEP,
      Home: LEAST,
      End: MOST,
      Enter: start(),
    };
    const next = moves[event.key];
    if (next === undefined) return;
    event.preventDefault();
    settle(next);
  };
  return (
    <div ref={around} className={styles.split} style={{ '--left': `${share}%` } as CSSProperties}>
      <div className={styles.side}>{left}</div>
      {/* biome-ignore lint/a11y/useSemanticElements: a rule cannot be moved; this separator can */}
      <div
        className={styles.bar}
        role="separator"
        aria-label="Width of the bay beside the sheet"
        aria-orientation="vertical"
        aria-valuenow={Math.round(share)}
        aria-valuemin={LEAST}
        aria-valuemax={MOST}
        tabIndex={0}
        data-held={held}
        title="Drag, or use the arrow keys; Enter puts it back"
        onKeyDown={onKeyDown}
        onDoubleClick={() => settle(start())}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          setHeld(true);
        }}
        onPointerMove={onPointerMove}
        onPointerUp={() => {
          setHeld(false);
          settle(share);
        }}
        onLostPointerCapture={() => setHeld(false)}
      />
      <div className={styles.side}>{right}</div>
    </div>
  );
};
