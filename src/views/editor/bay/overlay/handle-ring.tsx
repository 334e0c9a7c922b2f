import { type KeyboardEvent, type PointerEvent, useCallback, useRef } from 'react';
import { HOME, placed, type Vec2, type Vec3 } from '../../../../base/index.ts';
import type { Mover } from '../../../../fitout/index.ts';
import { projected } from '../camera/view.ts';
import type { BayTools } from '../pointer/bay-tools.ts';
import { type Grip, hasMoved } from '../pointer/press.ts';
import styles from './handle-ring.module.css';
import { useDrawn } from './use-drawn.ts';

interface HandleRingProps {
  readonly tools: BayTools;
  readonly mover: Mover;
  /** Where it is gripped, stowed. */
  readonly grip: Vec3;
  readonly share: number;
  readonly lit: boolean;
  readonly onHold: (mover: string | null) => void;
}

/** One press of an arrow moves a mover by this share of its travel. */
const KEY_STEP = 0.1;

const KEYS: Readonly<Record<string, (share: number) => number>> = {
  ArrowRight: (share) => share + KEY_STEP,
  ArrowUp: (share) => share + KEY_STEP,
  ArrowLeft: (share) => share - KEY_STEP,
  ArrowDown: (share) => share - KEY_STEP,
  Home: () => 0,
  End: () => 1,
};

const percent = (share: number): number => Math.round(share * 100);

/** A ring that a mover is taken hold of by: drag it along its travel, click it to open or close, or use the keys. */
export const HandleRing = ({ tools, mover, grip, share, lit, onHold }: HandleRingProps) => {
  const ring = useRef<HTMLButtonElement>(null);
  const held = useRef<{ readonly from: Vec2; readonly grip: Grip; moved: boolean } | null>(null);
  const { stage, editor } = tools;
  const place = useCallback(
    (element: HTMLButtonElement) => {
      const pose = stage.poses().get(mover.id) ?? HOME;
      const at = projected(stage.view(), placed(pose, grip));
      element.hidden = at === null;
      if (at) element.style.transform = `translate(${at[0]}px, ${at[1]}px)`;
    },
    [stage, mover.id, grip],
  );
  useDrawn(stage, ring, place);

  const pointAt = (event: PointerEvent): Vec2 => {
    const box = ring.current?.offsetParent?.getBoundingClientRect();
    return [event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0)];
  };
  const onPointerDown = (event: PointerEvent<HTMLButtonElement>): void => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = { from: pointAt(event), grip: { mover: mover.id, point: grip, share }, moved: false };
  };
  const onPointerMove = (event: PointerEvent): void => {
    const hold = held.current;
    if (!hold) return;
    const at = pointAt(event);
    if (!hold.moved && !hasMoved(hold.from, at)) return;
    hold.moved = true;
    onHold(mover.id);
    tools.pull(hold.grip, hold.from, at);
  };
  const onPointerUp = (): void => {
    const hold = held.current;
    held.current = null;
    onHold(null);
    if (hold && !hold.moved) tools.toggle(mover.id);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const hold = held.current;
    if (event.key === 'Escape' && hold) {
      event.stopPropagation();
      held.current = null;
      onHold(null);
      editor.getState().setShare(mover.id, hold.grip.share);
      return;
    }
    const next = KEYS[event.key];
    if (event.key === 'Enter' || event.key === ' ') tools.toggle(mover.id);
    else if (next) editor.getState().setShare(mover.id, next(share));
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      ref={ring}
      type="button"
      role="slider"
      className={styles.ring}
      data-lit={lit}
      aria-label={`${mover.name}, opens`}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={percent(share)}
      aria-valuetext={share <= 0 ? 'stowed' : `${percent(share)} per cent out`}
      title={`Drag to ${share > 0 ? 'move' : 'open'}, click to ${share > 0 ? 'close' : 'open'}`}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerUp}
      onPointerEnter={() => editor.getState().setHover(mover.id)}
      onPointerLeave={() => held.current === null && editor.getState().setHover(null)}
      onFocus={() => editor.getState().setHover(mover.id)}
      onBlur={() => editor.getState().setHover(null)}
      onKeyDown={onKeyDown}
    />
  );
};
