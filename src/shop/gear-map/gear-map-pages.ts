import type { Drawing } from '../drawing/drawing.ts';
import { type PaperPiece, paperPages } from '../paper/index.ts';
import type { GearMapData, ReviewGear } from '../review-copy/review-data.ts';
import { cardHead } from './card-head.ts';
import { facePicture, faceScale } from './face-picture.ts';
import { gearWords, STAR_WORDS, shortName } from './gear-words.ts';
import { type CarcassPlaces, type GearPlace, gearPlaces, homelessGear } from './places.ts';

const COLUMNS = [
  { title: 'no.', share: 4, align: 'right' },
  { title: 'compartment', share: 20 },
  { title: 'gear', share: 30 },
  { title: 'to hand after', share: 12 },
  { title: 'mass', share: 10, align: 'right' },
] as const;

/** What is left of a page below the picture for about so many rows; a face is drawn no smaller and no larger than this. */
const PAGE_MM = 214;
const ROW_MM = 5.1;
const LEAST_FACE_MM = 70;
const MOST_FACE_MM = 125;

const gearCells = ({ motions, mass, ...gear }: ReviewGear): readonly string[] => [gearWords(gear), motions, mass];

const placeRows = ({ number, room, gear }: GearPlace): readonly (readonly string[])[] => {
  const [first, ...rest] = gear;
  const head = [String(number), shortName(room.name)];
  return [
    [...head, ...(first ? gearCells(first) : ['nothing stowed', '', ''])],
    ...rest.map((each) => ['', '', ...gearCells(each)]),
  ];
};

const facePieces = (carcass: CarcassPlaces, at: number): readonly PaperPiece[] => {
  const rows = carcass.places.flatMap(placeRows);
  const height = Math.min(MOST_FACE_MM, Math.max(LEAST_FACE_MM, PAGE_MM - rows.length * ROW_MM));
  return [
    ...(at === 0 ? [] : [{ kind: 'page-break' } as const]),
    { kind: 'heading', words: `${shortName(carcass.carcass.name)}, seen from before its open face; ${STAR_WORDS}` },
    {
      kind: 'picture',
      height,
      shapes: ([left, top], width) => {
        const scale = faceScale(carcass, [width, height]);
        const [wide, high] = carcass.carcass.size;
        return facePicture(carcass, [left + (width - wide * scale) / 2, top - high * scale], scale, true);
      },
    },
    { kind: 'table', columns: COLUMNS, rows },
  ];
};

const homelessPieces = (gear: readonly ReviewGear[]): readonly PaperPiece[] =>
  gear.length === 0
    ? []
    : [
        { kind: 'heading', words: 'Without a place' },
        { kind: 'words', words: gear.map(gearWords).join(', ') },
      ];

/** The gear map: a page a face, every compartment with its number and all that lives in it. */
export const gearMapPages = (data: GearMapData): readonly Drawing[] => {
  const carcasses = gearPlaces(data);
  const pieces = [...carcasses.flatMap(facePieces), ...homelessPieces(homelessGear(data, carcasses))];
  return paperPages(
    cardHead(data, 'Gear map'),
    pieces.length === 0 ? [{ kind: 'words', words: 'No carcass and no gear yet.' }] : pieces,
  );
};
