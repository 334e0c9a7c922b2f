import type { Vec2 } from '../../../../base/index.ts';
import { type CameraState, orbited, panned, zoomed } from '../../../camera-state.ts';
import { mmPerPixel } from '../camera/view.ts';
import { cameraOn } from '../camera/viewpoints.ts';
import type { BayTools } from './bay-tools.ts';
import { begun, hasMoved, type Press } from './press.ts';

/** What the bay wants to hear. */
export interface PointerNews {
  /** The eye left the named viewpoint. */
  readonly onWalked: () => void;
  /** The pointer rests over the scene, or left it. */
  readonly onRest: (at: Vec2 | null) => void;
  /** The mover in the hand, or null when the hand is empty. */
  readonly onHold: (mover: string | null) => void;
  readonly gently: () => boolean;
}

/** Turn of the eye for a pixel of drag: across the picture about half way round. */
const TURN_RAD_PER_PX = 0.0055;
const WHEEL_PER_PX = 0.0013;
/** Lines and pages of a wheel in pixels. */
const WHEEL_UNITS: readonly number[] = [1, 18, 400];

const middleOf = ([a, b]: readonly [Vec2, Vec2]): Vec2 => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
const apartOf = ([a, b]: readonly [Vec2, Vec2]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/**
 * Gives the host its pointer: drag walks round, with the right button or Shift it slides, a drag on a front pulls it
 * along its travel, two fingers pinch, a click selects, a double click flies there. Gives back a way to let go.
 */
export const attachPointer = (host: HTMLElement, tools: BayTools, news: PointerNews): (() => void) => {
  const { stage, editor } = tools;
  let press: Press = { kind: 'idle' };
  const fingers = new Map<number, Vec2>();
  let waitingFrame = 0;

  const placeOf = (event: PointerEvent | MouseEvent): Vec2 => {
    const box = host.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const setCursor = (cursor: string): void => {
    host.dataset.cursor = cursor;
  };
  const step = (camera: CameraState): void => {
    stage.eye.stepTo(camera);
    news.onWalked();
    stage.invalidate();
  };
  const become = (next: Press): void => {
    press = next;
    news.onHold(next.kind === 'pulling' ? next.grip.mover : null);
    if (next.kind !== 'idle' && next.kind !== 'pressed') news.onRest(null);
    if (next.kind === 'walking' || next.kind === 'sliding' || next.kind === 'pulling') setCursor('grabbing');
  };

  const pinchPair = (): readonly [Vec2, Vec2] | null => {
    const [a, b] = [...fingers.values()];
    return a && b ? [a, b] : null;
  };
  const pinch = (pair: readonly [Vec2, Vec2], from: Extract<Press, { kind: 'pinching' }>): void => {
    const { limits } = tools.ground();
    const [x, y] = middleOf(pair);
    const mm = mmPerPixel(stage.view());
    const slid = panned(from.camera, (from.middle[0] - x) * mm, (y - from.middle[1]) * mm, limits);
    step(zoomed(slid, from.apart / Math.max(1, apartOf(pair)), null, limits));
  };

  const act = (at: Vec2): void => {
    const { limits } = tools.ground();
    if (press.kind === 'pressed' && hasMoved(press.at, at)) become(begun(press, stage.eye.state()));
    if (press.kind === 'walking') {
      const [dx, dy] = [at[0] - press.from[0], at[1] - press.from[1]];
      step(orbited(press.camera, dx * TURN_RAD_PER_PX, dy * TURN_RAD_PER_PX, limits));
    } else if (press.kind === 'sliding') {
      const mm = mmPerPixel(stage.view());
      step(panned(press.camera, (press.from[0] - at[0]) * mm, (at[1] - press.from[1]) * mm, limits));
    } else if (press.kind === 'pulling') tools.pull(press.grip, press.from, at);
    else if (press.kind === 'pinching') {
      const pair = pinchPair();
      if (pair) pinch(pair, press);
    }
  };

  const rest = (at: Vec2): void => {
    const hit = tools.pick(at);
    editor.getState().setHover(hit?.what.id ?? null);
    news.onRest(hit ? at : null);
    setCursor(hit && tools.gripAt(at) ? 'grab' : hit ? 'pointer' : 'default');
  };

  const onDown = (event: PointerEvent): void => {
    if (event.target !== host && !(event.target instanceof HTMLCanvasElement)) return;
    const at = placeOf(event);
    fingers.set(event.pointerId, at);
    host.setPointerCapture(event.pointerId);
    host.focus({ preventScroll: true });
    const pair = pinchPair();
    if (pair) {
      become({ kind: 'pinching', apart: apartOf(pair), middle: middleOf(pair), camera: stage.eye.state() });
      return;
    }
    const pans = event.button !== 0 || event.shiftKey || event.ctrlKey || event.metaKey;
    const thing = tools.pick(at)?.what.id ?? null;
    become({ kind: 'pressed', at, pans, thing, grip: event.button === 0 ? tools.gripAt(at) : null });
  };
  const onMove = (event: PointerEvent): void => {
    const at = placeOf(event);
    if (fingers.has(event.pointerId)) fingers.set(event.pointerId, at);
    if (press.kind !== 'idle') act(at);
    if (press.kind !== 'idle' || event.pointerType === 'touch' || event.target instanceof HTMLButtonElement) return;
    cancelAnimationFrame(waitingFrame);
    waitingFrame = requestAnimationFrame(() => rest(at));
  };
  const onUp = (event: PointerEvent): void => {
    fingers.delete(event.pointerId);
    const was = press;
    become({ kind: 'idle' });
    setCursor('default');
    if (was.kind !== 'pressed' || event.button !== 0 || event.type === 'pointercancel') return;
    const adds = event.shiftKey || event.ctrlKey || event.metaKey;
    if (was.thing !== null) editor.getState().select([was.thing], adds ? 'add' : 'replace');
    else if (!adds) editor.getState().select([]);
  };
  const onLeave = (): void => {
    cancelAnimationFrame(waitingFrame);
    if (press.kind !== 'idle') return;
    editor.getState().setHover(null);
    news.onRest(null);
  };
  const onDouble = (event: MouseEvent): void => {
    if (event.target !== host && !(event.target instanceof HTMLCanvasElement)) return;
    const hit = tools.pick(placeOf(event));
    if (!hit) return;
    const { fieldRad, width, height } = stage.view();
    const lens = { fieldRad, aspect: width / height };
    const camera = cameraOn(stage.eye.goal(), tools.boxOf(hit.what), lens, tools.ground().limits);
    stage.eye.flyTo(camera, news.gently());
    news.onWalked();
    stage.invalidate();
  };
  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const pixels = event.deltaY * (WHEEL_UNITS[event.deltaMode] ?? 1);
    step(
      zoomed(
        stage.eye.goal(),
        Math.exp(pixels * WHEEL_PER_PX),
        tools.pointUnder(placeOf(event)),
        tools.ground().limits,
      ),
    );
  };
  /** Escape in the middle of a drag puts everything back where it began. */
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || press.kind === 'idle') return;
    event.preventDefault();
    event.stopPropagation();
    if (press.kind === 'pulling') editor.getState().setShare(press.grip.mover, press.grip.share);
    else if (press.kind !== 'pressed') step(press.camera);
    become({ kind: 'idle' });
    setCursor('default');
  };
  const onMenu = (event: Event): void => event.preventDefault();

  host.addEventListener('pointerdown', onDown);
  host.addEventListener('pointermove', onMove);
  host.addEventListener('pointerup', onUp);
  host.addEventListener('pointercancel', onUp);
  host.addEventListener('pointerleave', onLeave);
  host.addEventListener('dblclick', onDouble);
  host.addEventListener('wheel', onWheel, { passive: false });
  host.addEventListener('contextmenu', onMenu);
  window.addEventListener('keydown', onKey, { capture: true });
  return () => {
    cancelAnimationFrame(waitingFrame);
    host.removeEventListener('pointerdown', onDown);
    host.removeEventListener('pointermove', onMove);
    host.removeEventListener('pointerup', onUp);
    host.removeEventListener('pointercancel', onUp);
    host.removeEventListener('pointerleave', onLeave);
    host.removeEventListener('dblclick', onDouble);
    host.removeEventListener('wheel', onWheel);
    host.removeEventListener('contextmenu', onMenu);
    window.removeEventListener('keydown', onKey, { capture: true });
  };
};
