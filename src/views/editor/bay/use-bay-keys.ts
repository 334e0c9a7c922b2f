import { type KeyboardEvent, useCallback } from 'react';
import { orbited, panned, zoomed } from '../../camera-state.ts';
import type { BayTools } from './pointer/bay-tools.ts';

const TURN_RAD = 0.12;
const NEARER = 0.88;
/** A slide of the eye by one press, as a share of its distance. */
const SLIDE = 0.05;

type Key = (tools: BayTools) => ReturnType<typeof orbited>;

const turn =
  (across: number, up: number): Key =>
  ({ stage, ground }) =>
    orbited(stage.eye.goal(), across * TURN_RAD, up * TURN_RAD, ground().limits);

const slide =
  (right: number, up: number): Key =>
  ({ stage, ground }) => {
    const camera = stage.eye.goal();
    const step = camera.distance * SLIDE;
    return panned(camera, right * step, up * step, ground().limits);
  };

const nearer =
  (factor: number): Key =>
  ({ stage, ground }) =>
    zoomed(stage.eye.goal(), factor, null, ground().limits);

const PLAIN: Readonly<Record<string, Key>> = {
  ArrowLeft: turn(1, 0),
  ArrowRight: turn(-1, 0),
  ArrowUp: turn(0, 1),
  ArrowDown: turn(0, -1),
  '+': nearer(NEARER),
  '=': nearer(NEARER),
  '-': nearer(1 / NEARER),
};

const SHIFTED: Readonly<Record<string, Key>> = {
  ArrowLeft: slide(-1, 0),
  ArrowRight: slide(1, 0),
  ArrowUp: slide(0, 1),
  ArrowDown: slide(0, -1),
  '+': nearer(NEARER),
  _: nearer(1 / NEARER),
};

/** Arrows walk round, with Shift they slide, plus and minus go nearer and farther, Enter opens what is selected. */
export const useBayKeys = (tools: BayTools, onWalked: () => void) =>
  useCallback(
    (event: KeyboardEvent<HTMLElement>): void => {
      if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return;
      const { stage, editor } = tools;
      if (event.key === 'Enter') {
        const { fitOut, selection } = editor.getState();
        const chosen = selection.at(-1);
        const part = [...fitOut.panels, ...fitOut.bodies].find((one) => one.id === chosen || one.origin === chosen);
        const mover = part?.mover ?? fitOut.movers.find((one) => one.id === chosen || one.origin === chosen)?.id;
        if (mover) tools.toggle(mover);
        return;
      }
      const move = (event.shiftKey ? SHIFTED : PLAIN)[event.key];
      if (!move) return;
      event.preventDefault();
      stage.eye.stepTo(move(tools));
      onWalked();
      stage.invalidate();
    },
    [tools, onWalked],
  );
