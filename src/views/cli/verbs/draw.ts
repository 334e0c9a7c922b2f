import { basename, dirname } from 'node:path';
import type { Design } from '../../../design/index.ts';
import type { Flow } from '../../../flow.ts';
import { nameOfPart } from '../../../says/index.ts';
import {
  CARDS,
  createDrawings,
  createGearMap,
  type Drawing,
  drawingToSvg,
  heldDrawings,
  NOT_RELEASED,
  releaseLines,
  routerFile,
} from '../../../shop/index.ts';
import { badInput } from '../bad-input.ts';
import { openFlow } from '../open-flow.ts';
import { openPdfWriter } from '../open-pdf-writer.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { type FileToWrite, writeFiles } from '../write-files.ts';

const isDxf = (file: string): boolean => file.toLowerCase().endsWith('.dxf');
const isPdf = (file: string): boolean => file.toLowerCase().endsWith('.pdf');

const fileName = (file: string, sheet: number): string =>
  sheet === 0 ? basename(file) : `${basename(file).slice(0, -'.svg'.length)}-${sheet + 1}.svg`;

/** A PDF holds all sheets; of SVG there is one file a sheet. */
const filesOf = (sheets: readonly Drawing[], file: string, designTitle: string): readonly FileToWrite[] =>
  isPdf(file)
    ? [
        {
          path: basename(file),
          content: openPdfWriter()(sheets, { title: sheets[0]?.title ?? '', subject: designTitle }),
        },
      ]
    : sheets.map((drawing, i) => ({ path: fileName(file, i), content: drawingToSvg(drawing) }));

/** The pages of a card that hangs in the vehicle, which needs to know what is opened first; null for another name. */
const cardPages = (design: Design, view: string, flow: Flow): readonly Drawing[] | null => {
  const card = CARDS.find(({ name }) => name === view);
  if (!card) return null;
  return card.draw(createGearMap({ design, fitout: flow.fitOut(design), order: flow.openingOrder(design) }));
};

/**
 * `draw DESIGN --view NAME --to FILE.svg|.pdf|.dxf`: one view, or the drawing of one part, on as many sheets as it takes;
 * as .dxf what a machine follows of a part or a template. What the survey holds back says so, as in the packet.
 */
export const draw = async (path: string, view: string, file: string): Promise<Outcome> => {
  if (!isPdf(file) && !isDxf(file) && !file.toLowerCase().endsWith('.svg'))
    throw badInput('--to takes a file that ends in .svg, .pdf or .dxf', file);
  const design = readDesignFile(path);
  const flow = await openFlow();
  const [space, fitout, inspection] = [flow.space(design), flow.fitOut(design), flow.inspection(design)];
  const drawings = heldDrawings(
    createDrawings({
      design,
      fitout,
      catalog: flow.catalog,
      rules: flow.rules(design),
      space: space.ok ? space.value : null,
    }),
    inspection,
  );
  const sheets = drawings.draw(view) ?? cardPages(design, view, flow);
  if (sheets === null) {
    const parts = drawings.parts.length > 0 ? `; parts: ${drawings.parts.join(', ')}` : '';
    throw badInput(
      `there is no view "${view}"; views: ${[...drawings.views, ...drawings.papers, ...CARDS.map(({ name }) => name)].join(', ')}${parts}`,
    );
  }
  const dxf = isDxf(file) ? routerFile(drawings, view, design.units, inspection) : null;
  if (isDxf(file) && dxf === null)
    throw badInput('a .dxf is written of a part or of an anchor template, and this view is neither', view);
  const files = dxf === null ? filesOf(sheets, file, design.title) : [{ path: basename(file), content: dxf }];
  writeFiles(dirname(file), files);
  const written = files.map((each) => ({
    path: each.path,
    kind: isDxf(file) ? 'dxf' : isPdf(file) ? 'pdf' : 'svg',
    about: sheets[0]?.title ?? view,
  }));
  const held = releaseLines(design, inspection, nameOfPart(design, fitout));
  return {
    lines: [
      ...written.map((each) => `${each.path}: ${each.about}`),
      ...(held.length > 0 ? [NOT_RELEASED, ...held] : []),
    ],
    json: { files: written, held },
    exitCode: 0,
  };
};
