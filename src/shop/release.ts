import type { Design } from '../design/index.ts';
import { type Inspection, releaseHolds } from '../inspection/index.ts';
import { sayFinding } from '../says/index.ts';

/** The words over a packet that must not be cut from. */
export const NOT_RELEASED = 'NOT RELEASED FOR CUTTING';

/** Why the packet is held back, a sentence each, worst first; empty when nothing of the survey holds it. */
export const releaseLines = (
  design: Design,
  inspection: Inspection,
  names: (id: string) => string,
): readonly string[] =>
  releaseHolds(inspection).map((finding) => {
    const { title, detail } = sayFinding(finding, design.units, names);
    return detail === '' ? `${title}.` : `${title}. ${detail}`;
  });
