import type { CarryPath } from '../../inspection/index.ts';
import { carrySteps, sayCarried, sayMountOff, sayTakenOut } from '../../says/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { type PaperPiece, paperPages, paperWidth } from '../paper/index.ts';
import { type CarryScene, carryPictures, startWords } from './carry-picture.ts';
import { namesOf, type PapersInput, paperHead } from './paper.ts';

const CAUTION =
  'A way that was found in a drawing, not a lifting plan: two people at least, sill and bumper covered, hatch held open; go by what you see.';

const HOW_TO_READ =
  'In each picture: broken lines, where it was; heavy lines, where it comes; the ring, where it passes nearest, with the gap to keep an eye on. The cargo space is cut through the middle of where it stands.';

const HEAD_COLUMNS = [
  { title: 'step', share: 6, align: 'right' },
  { title: 'what is done', share: 84 },
  { title: 'done', share: 10 },
] as const;

/** Where it is held to begin with, what the lines mean, and each step as a picture. */
const stepPictures = (scene: CarryScene, path: CarryPath): readonly PaperPiece[] => {
  const steps = carrySteps(path, 'in', scene.design.units);
  const [first] = steps;
  if (!first) return [];
  return [
    { kind: 'words', words: startWords(scene, first.from), strong: true },
    { kind: 'words', words: HOW_TO_READ },
    ...carryPictures(scene, steps, paperWidth(scene.design.units)),
  ];
};

/** How each carcass is carried in, in which order and by which steps, with room to tick; how it comes out again; mounts. */
export const carryInPaper = ({ design, fitout, space, carry }: PapersInput): readonly Drawing[] => {
  if (!carry || carry.carcasses.length + carry.mounts.length === 0) return [];
  const names = namesOf({ design, fitout });
  const { units } = design;
  const stepTable = (steps: readonly { readonly words: string }[]): readonly PaperPiece[] =>
    steps.length === 0
      ? []
      : [
          {
            kind: 'table',
            columns: HEAD_COLUMNS,
            rows: steps.map(({ words }, i) => [String(i + 1), words, { tick: true }]),
          },
        ];
  const pieces: readonly PaperPiece[] = [
    ...carry.carcasses.flatMap((own, i): readonly PaperPiece[] => [
      // Each carcass on pages of its own: they are given to those who carry it.
      ...(i === 0 ? [] : [{ kind: 'page-break' } as const]),
      { kind: 'heading', words: `${i + 1}. ${names(own.carcass)}` },
      { kind: 'words', words: sayCarried(own, carry.wantedMm, units, names) },
      {
        kind: 'words',
        words: `Empty, with what is screwed to it: ${Math.round(own.massKg)} kg. Gear out, drawers in and latched.`,
      },
      ...(own.path && space
        ? stepPictures(
            { own, design, space, fitout, names, inPlace: carry.carcasses.slice(0, i).map(({ carcass }) => carcass) },
            own.path,
          )
        : []),
      { kind: 'words', words: sayTakenOut(own, names) },
    ]),
    ...(carry.mounts.length === 0 ? [] : [{ kind: 'heading', words: 'Mounts, taken off' } as const]),
    ...carry.mounts.flatMap((own): readonly PaperPiece[] => [
      { kind: 'words', words: sayMountOff(own, units, names), strong: true },
      ...stepTable(own.path ? carrySteps(own.path, 'out', units) : []),
    ]),
  ];
  return paperPages(paperHead(design, 'Carrying in', CAUTION), pieces);
};
