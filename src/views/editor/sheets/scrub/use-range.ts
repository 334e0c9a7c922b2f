import { useCallback, useRef } from 'react';
import { compareText } from '../../../../base/index.ts';
import type { Mover } from '../../../../fitout/index.ts';
import { moverPoses } from '../../../motion-pose.ts';
import { bayFitOut } from '../../bay/bay-fit-out.ts';
import { allMovers, shownShares } from '../../bay/motion/all-movers.ts';
import { type PullRange, pullRange } from '../../bay/motion/pull-range.ts';
import { useEditorStore } from '../../state/use-editor.ts';

interface Known {
  readonly key: string;
  readonly of: object;
  readonly space: object | null;
  readonly range: PullRange;
}

/**
 * How far a mover goes with everything else where it stands now, worked out when it is first moved and kept for as long
 * as nothing else is.
 */
export const useRange = (mover: Mover): (() => PullRange) => {
  const store = useEditorStore();
  const known = useRef<Known | null>(null);
  return useCallback(() => {
    const { fitOut, judgement, shares: set } = store.getState();
    const space = judgement?.space.ok ? judgement.space.value : null;
    const shares = shownShares(set, space);
    const key = Object.entries(shares)
      .filter(([id, share]) => id !== mover.id && share !== 0)
      .map(([id, share]) => `${id},${share}`)
      .sort(compareText)
      .join(' ');
    const last = known.current;
    const share = shares[mover.id] ?? 0;
    const within = last !== null && share >= last.range.low && share <= last.range.high;
    if (last && within && last.key === key && last.of === fitOut && last.space === space) return last.range;
    const drawn = bayFitOut(fitOut);
    const movers = allMovers(drawn, space);
    const ground = { fitOut: drawn, space, movers, poses: moverPoses(movers, shares) };
    const range = pullRange(mover, share, ground);
    known.current = { key, of: fitOut, space, range };
    return range;
  }, [store, mover]);
};
