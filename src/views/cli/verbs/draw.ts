import { basename, dirname } from 'node:path';
import type { Design } from '../../../design/index.ts';
import { CARDS, createDrawings, createGearMap, type Drawing, drawingToSvg } from '../../../shop/index.ts';
import { badInput } from '../bad-input.ts';
import { openCabinetFlow, openFlow } from '../open-flow.ts';
import { openPdfWriter } from '../open-pdf-writer.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { type FileToWrite, writeFiles } from '../write-files.ts';

/** Views that show the cargo space behind the cabinet, or where it may not be drilled, which only the whole engine can make. */
const needsSpace = (view: string): boolean => view === 'plan' || view === 'side' || view.startsWith('template-');

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
const cardPages = async (design: Design, view: string): Promise<readonly Drawing[] | null> => {
  const card = CARDS.find(({ name }) => name === view);
  if (!card) return null;
  const flow = await openFlow();
  return card.draw(createGearMap({ design, fitout: flow.fitOut(design), order: flow.openingOrder(design) }));
};

/** `draw DESIGN --view NAME --to FILE.svg|.pdf`: one view, or the drawing of one part, on as many sheets as it takes. */
export const draw = async (path: string, view: string, file: string): Promise<Outcome> => {
  if (!isPdf(file) && !file.toLowerCase().endsWith('.svg'))
    throw badInput('--to takes a file that ends in .svg or .pdf', file);
  const design = readDesignFile(path);
  const whole = needsSpace(view);
  const flow = whole ? await openFlow() : openCabinetFlow();
  const space = whole ? flow.space(design) : null;
  const drawings = createDrawings({
    design,
    fitout: flow.fitOut(design),
    catalog: flow.catalog,
    rules: flow.rules(design),
    space: space?.ok ? space.value : null,
  });
  const sheets = drawings.draw(view) ?? (await cardPages(design, view));
  if (sheets === null) {
    const parts = drawings.parts.length > 0 ? `; parts: ${drawings.parts.join(', ')}` : '';
    throw badInput(
      `there is no view "${view}"; views: ${[...drawings.views, ...drawings.papers, ...CARDS.map(({ name }) => name)].join(', ')}${parts}`,
    );
  }
  const files = filesOf(sheets, file, design.title);
  writeFiles(dirname(file), files);
  const written = files.map((each) => ({
    path: each.path,
    kind: isPdf(file) ? 'pdf' : 'svg',
    about: sheets[0]?.title ?? view,
  }));
  return { lines: written.map((each) => `${each.path}: ${each.about}`), json: { files: written }, exitCode: 0 };
};
