import { type PointerEvent, useEffect, useRef, useState } from 'react';
import { useReview, useReviewStore } from '../state.ts';
import { createPicture, type Picture } from './picture.ts';
import { touched } from './touch-ray.ts';

const colour = (name: string): string => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

/** A press that moves less than this is a tap. */
const TAP_PX = 10;
const TURN_RAD_PX = 0.006;

interface Finger {
  readonly x: number;
  readonly y: number;
}

const spreadOf = ([a, b]: readonly Finger[]): number => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0);

/** The cabinet in three dimensions: one finger walks round it, two come nearer, a tap chooses. */
export const SceneView = () => {
  const store = useReviewStore();
  const canvas = useRef<HTMLCanvasElement>(null);
  const picture = useRef<Picture | null>(null);
  const fingers = useRef(new Map<number, Finger>());
  const moved = useRef(0);
  const [drawn, setDrawn] = useState(true);
  const chosen = useReview((state) => state.chosen);
  const shares = useReview((state) => state.shares);

  useEffect(() => {
    const element = canvas.current;
    if (!element) return undefined;
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const paint = { ink: colour('--ink'), faint: colour('--line-2'), petrol: colour('--petrol') };
    let made: Picture;
    try {
      made = createPicture(element, store.getState().data, paint, still);
    } catch {
      setDrawn(false);
      return undefined;
    }
    picture.current = made;
    made.resize();
    made.show(store.getState().shares);
    const watch = new ResizeObserver(() => made.resize());
    watch.observe(element);
    const wheel = (event: WheelEvent): void => {
      event.preventDefault();
      made.zoom(Math.exp(event.deltaY * 0.001));
    };
    element.addEventListener('wheel', wheel, { passive: false });
    return () => {
      watch.disconnect();
      element.removeEventListener('wheel', wheel);
      made.dispose();
      picture.current = null;
    };
  }, [store]);

  useEffect(() => picture.current?.show(shares), [shares]);
  useEffect(() => {
    picture.current?.mark(chosen);
    picture.current?.flyTo(chosen, store.getState().shares);
  }, [chosen, store]);

  const down = (event: PointerEvent): void => {
    canvas.current?.setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    moved.current = fingers.current.size > 1 ? TAP_PX : 0;
  };
  const move = (event: PointerEvent): void => {
    const before = fingers.current.get(event.pointerId);
    const made = picture.current;
    if (!before || !made) return;
    const spread = spreadOf([...fingers.current.values()]);
    fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    const [dx, dy] = [event.clientX - before.x, event.clientY - before.y];
    moved.current += Math.hypot(dx, dy);
    if (moved.current < TAP_PX) return;
    if (fingers.current.size === 1 && !event.shiftKey) {
      made.orbit(dx * TURN_RAD_PX, dy * TURN_RAD_PX);
      return;
    }
    const now = spreadOf([...fingers.current.values()]);
    if (spread > 0 && now > 0) made.zoom(spread / now);
    made.pan(dx / fingers.current.size, dy / fingers.current.size);
  };
  const up = (event: PointerEvent): void => {
    const had = fingers.current.delete(event.pointerId);
    const made = picture.current;
    if (!had || !made || moved.current >= TAP_PX || fingers.current.size > 0) return;
    const { data, shares: now, tap } = store.getState();
    const id = touched(data, made.rayAt(event.clientX, event.clientY), now, made.poses());
    if (id !== null) tap(id);
  };
  return (
    <div className="scene">
      <canvas
        ref={canvas}
        role="img"
        aria-label="The cabinet in the vehicle. Every part of it is also in the lists beside it."
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={(event) => fingers.current.delete(event.pointerId)}
      />
      {drawn ? null : (
        <p className="no-scene">This browser draws nothing in three dimensions. The lists hold it all.</p>
      )}
      <div className="scene-bar">
        <button
          type="button"
          onClick={() => {
            store.getState().close();
            picture.current?.flyTo(null, {});
          }}
        >
          Close up, stand at the hatch
        </button>
      </div>
    </div>
  );
};
