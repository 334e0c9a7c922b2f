import type { Vec2 } from '../../base/index.ts';
import type { Drawing, Shape } from '../drawing/drawing.ts';
import { rectangle, text } from '../drawing/shapes.ts';
import { textWidth } from '../drawing/text-width.ts';
import { type PaperPiece, paperPages, wrapWords } from '../paper/index.ts';
import type { GearMapData } from '../review-copy/review-data.ts';
import { cardHead } from './card-head.ts';
import { gearWords, shortName } from './gear-words.ts';
import { type GearPlace, gearPlaces } from './places.ts';

/** On paper, mm: two labels side by side, to cut out along their frames. */
const ACROSS = 2;
const GAP = 5;
const PAD = 3;
const NUMBER_MM = 9;
const NAME = { height: 3.4, pitch: 5.2 } as const;
const GEAR = { height: 2.6, pitch: 4.4 } as const;
const SMALL = 1.7;
const LEAST_MM = 34;
const MOST_NAME_LINES = 2;
const MOST_GEAR_LINES = 30;
/** The width of a label on the narrower sheet, which decides where words turn. */
const LABEL_MM = 90;

interface Label {
  readonly number: string;
  readonly name: readonly string[];
  readonly gear: readonly string[];
  readonly small: string;
  readonly height: number;
}

const kept = (lines: readonly string[], most: number): readonly string[] =>
  lines.length <= most ? lines : [...lines.slice(0, most - 1), '…'];

const labelOf = ({ number, room, gear }: GearPlace, carcass: string, stamp: string): Label => {
  const shown = String(number);
  const nameRoom = LABEL_MM - 3 * PAD - textWidth(shown, NUMBER_MM);
  const name = kept(wrapWords(shortName(room.name), NAME.height, nameRoom), MOST_NAME_LINES);
  const lines = gear.flatMap((each) => wrapWords(gearWords(each), GEAR.height, LABEL_MM - 2 * PAD));
  const words = kept(gear.length === 0 ? ['nothing stowed'] : lines, MOST_GEAR_LINES);
  const head = Math.max(NUMBER_MM, name.length * NAME.pitch) + PAD;
  return {
    number: shown,
    name,
    gear: words,
    small: `${shortName(carcass)}, ${stamp}`,
    height: Math.max(LEAST_MM, PAD + head + words.length * GEAR.pitch + PAD + SMALL),
  };
};

const labelShapes = (label: Label, [left, top]: Vec2, height: number): readonly Shape[] => {
  const [x, right] = [left + PAD, left + LABEL_MM];
  const head = top - PAD;
  const nameX = x + textWidth(label.number, NUMBER_MM) + PAD;
  const gearTop = head - Math.max(NUMBER_MM, label.name.length * NAME.pitch) - PAD;
  return [
    rectangle('frame', [left, top - height], [right, top]),
    text([x, head - NUMBER_MM], label.number, { height: NUMBER_MM, strong: true }),
    ...label.name.map((words, i) =>
      text([nameX, head - NAME.height - i * NAME.pitch], words, {
        height: NAME.height,
        strong: true,
        within: right - PAD - nameX,
      }),
    ),
    ...label.gear.map((words, i) =>
      text([x, gearTop - GEAR.height - i * GEAR.pitch], words, { height: GEAR.height, within: LABEL_MM - 2 * PAD }),
    ),
    text([x, top - height + 1.6], label.small, { height: SMALL, within: LABEL_MM - 2 * PAD }),
  ];
};

/** A label for each compartment, to cut out and fix beside it: its number, its name, and what belongs in it. */
export const compartmentLabelPages = (data: GearMapData): readonly Drawing[] => {
  const labels = gearPlaces(data).flatMap(({ carcass, places }) =>
    places.map((place) => labelOf(place, carcass.name, data.stamp)),
  );
  const rows = Array.from({ length: Math.ceil(labels.length / ACROSS) }, (_, i) =>
    labels.slice(i * ACROSS, (i + 1) * ACROSS),
  );
  const pieces = rows.map((row): PaperPiece => {
    const height = Math.max(...row.map((label) => label.height));
    return {
      kind: 'picture',
      height: height + GAP,
      shapes: ([left, top]) =>
        row.flatMap((label, i) => labelShapes(label, [left + i * (LABEL_MM + GAP), top], height)),
    };
  });
  return paperPages(
    cardHead(data, 'Compartment labels'),
    pieces.length === 0 ? [{ kind: 'words', words: 'No compartment yet.' }] : pieces,
  );
};
