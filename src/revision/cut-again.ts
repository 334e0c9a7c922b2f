import type { Design } from '../design/index.ts';
import type { FitOut } from '../fitout/index.ts';
import { type ChangedPanel, changedPanels } from './changed-panels.ts';
import { newestCut, readRevision } from './release.ts';

export interface CutAgain {
  /** The letter that sheets were last cut from. */
  readonly letter: string;
  readonly panels: readonly ChangedPanel[];
}

/**
 * What has changed since sheets were last cut, or null where none were, or where the letter they were cut from can no
 * longer be read. `solve` is the fit-out stage.
 */
export const cutAgain = (design: Design, solve: (design: Design) => FitOut): CutAgain | null => {
  const cut = newestCut(design);
  const then = cut === null ? null : readRevision(cut);
  if (cut === null || !then?.ok) return null;
  return { letter: cut.letter, panels: changedPanels(solve(then.value), solve(design)) };
};
