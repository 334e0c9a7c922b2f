import type { Design } from '../design/index.ts';
import { type Inspection, releaseHolds } from '../inspection/index.ts';
import { sayFinding } from '../says/index.ts';
import type { Drawing } from './drawing/drawing.ts';
import { text } from './drawing/shapes.ts';
import type { Drawings } from './drawings.ts';

/** The words over a packet that must not be cut from. */
export const NOT_RELEASED = 'NOT RELEASED FOR CUTTING';

/** The words for a file that has no cover; null where nothing of the survey holds the packet back. */
export const heldWords = (inspection: Inspection): string | null =>
  releaseHolds(inspection).length === 0 ? null : NOT_RELEASED;

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

/** Over the frame of a sheet, within what a printer reaches. */
const STAMP = { below: 7.5, height: 2.6 } as const;

/** Pages that would be cut from: while the packet is held back each of them says so, since pages part from their cover. */
export const heldPages = (pages: readonly Drawing[], inspection: Inspection): readonly Drawing[] =>
  releaseHolds(inspection).length === 0
    ? pages
    : pages.map((page) => {
        const [width, height] = page.size;
        const words = `${NOT_RELEASED}: see the first page`;
        const stamp = text([width / 2, height - STAMP.below], words, {
          height: STAMP.height,
          align: 'middle',
          strong: true,
        });
        return { ...page, shapes: [...page.shapes, stamp] };
      });

/** The same drawings and files, each of which says that the packet is held back while it is, saved singly too. */
export const heldDrawings = (drawings: Drawings, inspection: Inspection): Drawings => ({
  ...drawings,
  draw: (name, tell) => {
    const pages = drawings.draw(name, tell);
    return pages && heldPages(pages, inspection);
  },
  templateFile: (name) => drawings.templateFile(name, heldWords(inspection)),
});
