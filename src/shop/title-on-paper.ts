import type { Design } from '../design/index.ts';
import { revisionStamp } from '../revision/index.ts';
import { sayHash, sayStamp } from '../says/index.ts';

/**
 * The design as a title block names it: with its letter, the head of its hash and whether that very design was
 * approved. A design that was never released has only its title.
 */
export const titleOnPaper = (design: Design): string => {
  if (design.revisions.length === 0) return design.title;
  const stamp = revisionStamp(design);
  const approved = stamp.approvals.length > 0 ? ', approved' : '';
  return `${design.title} · ${sayStamp(stamp)}${approved} · ${sayHash(stamp.sha256).slice(0, 9)}`;
};
