import type { Design } from '../../../design/index.ts';

/** One step back: the design as it was, and what was done to leave it. */
export interface HistoryStep {
  readonly design: Design;
  readonly label: string;
}

/** Undo as a list of earlier designs; what did not change is shared between them. */
export interface History {
  readonly design: Design;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

/** Steps kept; earlier ones are forgotten. A step costs what changed, so this is a matter of tidiness, not of room. */
const MOST_STEPS = 500;

export const historyOf = (design: Design): History => ({ design, past: [], future: [] });

/** A step forward with a new design; an edit that gives the same design leaves no step. */
export const stepped = (history: History, design: Design, label: string, from: Design = history.design): History =>
  design === from
    ? { ...history, design }
    : { design, past: [...history.past, { design: from, label }].slice(-MOST_STEPS), future: [] };

export const undone = (history: History): History => {
  const last = history.past.at(-1);
  if (!last) return history;
  return {
    design: last.design,
    past: history.past.slice(0, -1),
    future: [{ design: history.design, label: last.label }, ...history.future],
  };
};

export const redone = (history: History): History => {
  const next = history.future[0];
  if (!next) return history;
  return {
    design: next.design,
    past: [...history.past, { design: history.design, label: next.label }],
    future: history.future.slice(1),
  };
};
