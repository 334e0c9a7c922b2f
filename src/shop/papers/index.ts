import type { Drawing } from '../drawing/drawing.ts';
import { CARDS } from '../gear-map/index.ts';
import { labelPages, partLabels } from '../labels/index.ts';
import { layoutDrawings } from '../layout-files.ts';
import { heldPages } from '../release.ts';
import { createGearMap } from '../review-copy/index.ts';
import { titleWords } from '../title-words.ts';
import { carryInPaper } from './carry-in-paper.ts';
import { cutListPaper } from './cut-list-paper.ts';
import { hardwarePaper } from './hardware-paper.ts';
import { inspectionPaper } from './inspection-paper.ts';
import { installationPaper } from './installation-paper.ts';
import type { Paper, PapersInput } from './paper.ts';
import { pricePaper } from './price-paper.ts';
import { weighPaper } from './weigh-paper.ts';

export { firstPage } from './first-page.ts';
export type { Paper, PapersInput } from './paper.ts';
export { countText, moneyText } from './price-paper.ts';

const labels = (input: PapersInput): readonly Drawing[] =>
  labelPages(partLabels(input), input.labelSheet, input.firstLabel, input.design.units);

/** What parts are cut from says on every page when the packet is held back; the drawings say so by themselves. */
const heldCutList = (input: PapersInput): readonly Drawing[] => heldPages(cutListPaper(input), input.inspection);

/** Every paper by the name of its file, in the order in which the shop takes them up. */
const PAPERS: readonly (Omit<Paper, 'pages'> & { readonly draw: (input: PapersInput) => readonly Drawing[] })[] = [
  { name: 'cut-list', about: 'cut list to print', draw: heldCutList },
  { name: 'labels', about: 'a label for every part, in the order of cutting', draw: labels },
  { name: 'hardware', about: 'hardware pick list to print', draw: hardwarePaper },
  { name: 'price', about: 'price with every line and what moves it', draw: pricePaper },
  { name: 'inspection', about: 'inspection sheet: every finding and every check', draw: inspectionPaper },
  { name: 'carry-in', about: 'how each carcass is carried in, step by step', draw: carryInPaper },
  { name: 'installation', about: 'installation check sheet', draw: installationPaper },
  { name: 'weigh-record', about: 'weigh record to fill in at the scale', draw: weighPaper },
  ...CARDS.map(({ name, about, draw }) => ({
    name,
    about,
    draw: (input: PapersInput) => draw(createGearMap(input)),
  })),
];

/** The papers of a packet; pages are drawn when they are asked for. */
export const papersOf = (input: PapersInput): readonly Paper[] =>
  PAPERS.map(({ name, about, draw }) => ({ name, about, pages: () => draw(input) }));

/** What the papers among the drawings are, by the start of their names. */
const PAPER_WORDS = [
  ['template', 'holes in the vehicle at true size'],
  ['brace', 'a brace: the bar with its holes'],
  ['assembly', 'what goes together in which order'],
] as const;

/** The drawings bound together to print at actual size: views, sheets with their cuts, parts. */
export const booksOf = (work: PapersInput): readonly Paper[] => {
  const { drawings, layouts, design, inspection } = work;
  const drawn = (names: readonly string[]): readonly Drawing[] => names.flatMap((name) => drawings.draw(name) ?? []);
  return [
    { name: 'views', about: 'all views to print', pages: () => drawn(drawings.views) },
    // Templates and the assembly order: each a paper of its own, some on large sheets.
    ...drawings.papers.map((name) => ({
      name,
      about: PAPER_WORDS.find(([start]) => name.startsWith(start))?.[1] ?? name.replaceAll('-', ' '),
      pages: () => drawings.draw(name) ?? [],
    })),
    {
      name: 'layouts',
      about: 'all sheets with their cuts to print',
      pages: () =>
        heldPages(
          layoutDrawings(layouts, { ...titleWords(design), units: design.units }).flatMap((each) => each.drawings),
          inspection,
        ),
    },
    { name: 'drawings', about: 'all part drawings to print', pages: () => drawn(drawings.parts) },
  ];
};
