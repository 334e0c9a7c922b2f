import { useCallback, useEffect, useRef, useState } from 'react';
import type { Vec3 } from '../../../../base/index.ts';
import { type CarryPath, carryPoseOf } from '../../../../inspection/index.ts';
import { useEditorStore } from '../../state/use-editor.ts';
import { poseAtTime, stepAt, type TimedWay, timedWay, type WayOf } from './carry-way.ts';

/** What is played: one carcass or mount on one way. */
export interface Played {
  readonly id: string;
  readonly path: CarryPath;
  readonly way: WayOf;
  readonly middle: Vec3;
  /** What is not in the vehicle while it is carried. */
  readonly absent: readonly string[];
}

export interface CarryPlay {
  readonly played: Played | null;
  readonly running: boolean;
  /** The step that is under way. */
  readonly step: number;
  /** How far along, 0 to 1. */
  readonly share: number;
  readonly start: (played: Played) => void;
  readonly pause: () => void;
  readonly goOn: () => void;
  readonly scrub: (share: number) => void;
  /** Puts everything back in its place. */
  readonly end: () => void;
}

/** Plays a way of carrying in the bay: it moves by the clock of the frames, or by hand. */
export const useCarryPlay = (): CarryPlay => {
  const store = useEditorStore();
  const [played, setPlayed] = useState<Played | null>(null);
  const [running, setRunning] = useState(false);
  const [ms, setMs] = useState(0);
  const stands = useRef(0);
  const timed = useRef<TimedWay | null>(null);

  const show = useCallback(
    (of: Played, at: number): void => {
      const pose = timed.current && poseAtTime(timed.current, at);
      if (pose) store.getState().setCarrying({ poses: { [of.id]: carryPoseOf(pose, of.middle) }, absent: of.absent });
      stands.current = at;
      setMs(at);
    },
    [store],
  );

  const end = useCallback((): void => {
    timed.current = null;
    setPlayed(null);
    setRunning(false);
    store.getState().setCarrying(null);
  }, [store]);

  // An edit puts everything back, and so does leaving the sheet.
  useEffect(
    () =>
      store.subscribe((state, before) => {
        if (state.editNumber !== before.editNumber) end();
      }),
    [store, end],
  );
  useEffect(() => () => store.getState().setCarrying(null), [store]);

  useEffect(() => {
    if (!played || !running) return;
    const whole = timed.current?.wholeMs ?? 0;
    let [last, at, frame] = [0, stands.current, 0];
    const tick = (now: number): void => {
      at = Math.min(whole, at + (last === 0 ? 0 : now - last));
      last = now;
      show(played, at);
      if (at >= whole) setRunning(false);
      else frame = requestAnimationFrame(tick);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [played, running, show]);

  const whole = timed.current?.wholeMs ?? 0;
  return {
    played,
    running,
    step: timed.current ? stepAt(timed.current, ms) : 0,
    share: whole > 0 ? ms / whole : 0,
    start: (next) => {
      timed.current = timedWay(next.path, next.way);
      store.getState().stowAll();
      setPlayed(next);
      show(next, 0);
      setRunning(true);
    },
    pause: () => setRunning(false),
    goOn: () => {
      if (played && ms >= whole) show(played, 0);
      setRunning(true);
    },
    scrub: (share) => {
      setRunning(false);
      if (played) show(played, share * whole);
    },
    end,
  };
};
