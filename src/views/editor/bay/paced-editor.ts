import type { Editor, EditorStore } from '../state/store.ts';

/** A picture that is on the screen within two frames costs nobody anything. */
const IN_TIME_MS = 34;
/** How much longer than it was late a picture leaves the sheet alone. */
const LEFT_ALONE = 2;
/** However slow the machine, the bay follows the hand so often. */
const LONGEST_WAIT_MS = 400;

export interface PacedInput {
  readonly now: () => number;
  /** Runs it once what was shown is on the screen and the page may draw again. */
  readonly whenDrawn: (run: () => void) => void;
  /** Runs it after so many milliseconds; gives what calls it off. */
  readonly later: (run: () => void, ms: number) => () => void;
}

export const PAGE_PACE: PacedInput = {
  now: () => performance.now(),
  // The first frame draws it; the second is held up for as long as the graphics card is busy with it.
  whenDrawn: (run) => requestAnimationFrame(() => requestAnimationFrame(run)),
  later: (run, ms) => {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};

/**
 * The editor as the bay sees it. During a gesture on a sheet a picture costs more than the edit itself, so the bay then
 * follows at its own pace: after a picture that came late it leaves the sheet twice as long to itself, and the last state
 * is always shown. Outside of a gesture, and for everything but the design, it hears of changes at once.
 */
export const pacedEditor = (editor: EditorStore, { now, whenDrawn, later }: PacedInput): EditorStore => {
  let shown: Editor = editor.getState();
  let resting = false;
  let callOff: () => void = () => undefined;
  let stop: (() => void) | null = null;
  const listeners = new Set<(state: Editor, before: Editor) => void>();

  const show = (next: Editor): void => {
    const before = shown;
    shown = next;
    for (const listener of listeners) listener(next, before);
  };
  const rest = (began: number): void => {
    callOff = later(
      () => {
        resting = false;
        hear(editor.getState());
      },
      Math.min(LONGEST_WAIT_MS, Math.max(0, now() - began - IN_TIME_MS) * LEFT_ALONE),
    );
  };
  const hear = (state: Editor): void => {
    if (state.gesture === null) {
      callOff();
      resting = false;
      show(state);
    } else if (state.fitOut === shown.fitOut) {
      if (state !== shown) show(state);
    } else if (resting) {
      const { history, fitOut, editNumber } = shown;
      show({ ...state, history, fitOut, editNumber });
    } else {
      resting = true;
      const began = now();
      show(state);
      whenDrawn(() => rest(began));
    }
  };

  return {
    ...editor,
    getState: () => (stop ? shown : editor.getState()),
    subscribe: (listener) => {
      if (!stop) {
        shown = editor.getState();
        stop = editor.subscribe(hear);
      }
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        stop?.();
        stop = null;
        callOff();
        resting = false;
      };
    },
  };
};
