import { create, type Draft } from 'mutative';
import type { Design } from '../design.ts';

/**
 * Makes a new design by changing a draft; what is not touched is shared with the old one, so that later stages can
 * tell by identity what they need not do again.
 */
export const changed = (design: Design, change: (draft: Draft<Design>) => void): Design =>
  create(design, (draft) => change(draft));

/** The item with the id. Throws when there is none: an edit must name a node that the design has. */
export const itemOf = <T extends { readonly id: string }>(items: readonly T[], id: string, what: string): T => {
  const item = items.find((candidate) => candidate.id === id);
  if (!item) throw new RangeError(`no ${what} has the id ${id}`);
  return item;
};
