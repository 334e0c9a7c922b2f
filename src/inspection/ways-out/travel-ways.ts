import { changeFitting, findOpening, type NodeId } from '../../design/index.ts';
import type { Candidate, WayFinder } from './candidate.ts';

/** Slides come in steps of this (mm); a length that the chosen slide does not come in makes a stop of its own and falls out. */
const SLIDE_STEP = 50;
/** Lengths tried, longest first. */
const TRIED = 6;

/** A shorter slide, so that the mover stops before it meets anything. */
export const shorterSlideWays: WayFinder = (finding, design) => {
  const id = finding.parts[0] as NodeId | undefined;
  const content = id === undefined ? undefined : findOpening(design, id)?.opening.content;
  if (id === undefined || content?.kind !== 'fitted' || !('slideLengthMm' in content.fitting)) return [];
  if (finding.unit !== 'mm') return [];
  const longest = Math.floor(finding.value / SLIDE_STEP) * SLIDE_STEP;
  return Array.from({ length: TRIED }, (_, i) => longest - i * SLIDE_STEP)
    .filter((mm) => mm > 0)
    .map(
      (mm): Candidate => ({
        kind: 'shorten-slide',
        facts: { opening: id, mm },
        design: changeFitting(design, id, (fitting) => {
          if ('slideLengthMm' in fitting) fitting.slideLengthMm = mm;
        }),
        change: longest + SLIDE_STEP - mm,
        group: `slide ${id}`,
      }),
    );
};
