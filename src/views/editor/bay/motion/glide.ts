import { eased } from '../../../camera-state.ts';

type Shares = Readonly<Record<string, number>>;

/** How long a mover takes for its whole travel when it is opened by a click. */
const GLIDE_MS = 220;

/** The shares as they are drawn: following the pointer at once, or gliding to where a click sends them. */
export interface Glide {
  readonly shown: () => Shares;
  /** New shares to show. `held` is the mover in the hand, which follows at once. */
  readonly aim: (shares: Shares, held: string | null, gently: boolean) => void;
  /** Moves on to the time of a frame; true while something glides. */
  readonly advance: (nowMs: number) => boolean;
}

interface Run {
  readonly from: number;
  readonly to: number;
  since: number | null;
}

export const createGlide = (start: Shares): Glide => {
  const shown = new Map(Object.entries(start));
  const runs = new Map<string, Run>();
  return {
    shown: () => Object.fromEntries(shown),
    aim: (shares, held, gently) => {
      for (const id of new Set([...shown.keys(), ...Object.keys(shares)])) {
        const to = shares[id] ?? 0;
        const from = shown.get(id) ?? 0;
        if (runs.get(id)?.to === to || (from === to && !runs.has(id))) continue;
        if (gently && id !== held) runs.set(id, { from, to, since: null });
        else {
          runs.delete(id);
          shown.set(id, to);
        }
      }
    },
    advance: (nowMs) => {
      for (const [id, run] of runs) {
        run.since ??= nowMs;
        const share = (nowMs - run.since) / GLIDE_MS;
        shown.set(id, share >= 1 ? run.to : run.from + (run.to - run.from) * eased(share));
        if (share >= 1) runs.delete(id);
      }
      return runs.size > 0;
    },
  };
};
