import type { Vec2 } from '../../base/index.ts';
import type { Shape } from '../drawing/drawing.ts';
import { onSheet, rectangle, text } from '../drawing/shapes.ts';
import { textWidth } from '../drawing/text-width.ts';
import { wrapWords } from '../paper/index.ts';
import { gearWords } from './gear-words.ts';
import type { CarcassPlaces, GearPlace } from './places.ts';

/** On paper, mm. */
const NUMBER_MM = 5;
const NAMES = { height: 1.7, pitch: 2.9 } as const;
const PAD = 1.2;

/** The size on paper of a face drawn into a room. */
export const faceScale = ({ carcass }: CarcassPlaces, [width, height]: Vec2): number =>
  Math.min(width / Math.max(1, carcass.size[0]), height / Math.max(1, carcass.size[1]));

/** The number at the upper left; names beside it as far as there is room, and how many had none. */
const roomWords = ({ number, gear }: GearPlace, from: Vec2, to: Vec2, withNames: boolean): readonly Shape[] => {
  const [width, height] = [to[0] - from[0], to[1] - from[1]];
  const capital = Math.min(NUMBER_MM, height * 0.6, width * 0.6);
  const shown = String(number);
  const numberMm = textWidth(shown, capital);
  if (!withNames)
    return [
      text([(from[0] + to[0]) / 2, (from[1] + to[1] - capital) / 2], shown, {
        height: capital,
        align: 'middle',
        strong: true,
        within: width - 0.4,
      }),
    ];
  const left = from[0] + PAD + numberMm + PAD;
  const room = to[0] - PAD - left;
  const most = Math.floor((height - PAD) / NAMES.pitch);
  const lines = room < 8 ? [] : gear.flatMap((each) => wrapWords(gearWords(each), NAMES.height, room));
  const kept = lines.length <= most ? lines : [...lines.slice(0, Math.max(0, most - 1)), '…'];
  return [
    text([from[0] + PAD, to[1] - PAD - capital], shown, { height: capital, strong: true }),
    ...(most < 1 ? [] : kept).map((words, i) =>
      text([left, to[1] - PAD - NAMES.height - i * NAMES.pitch], words, { height: NAMES.height, within: room }),
    ),
  ];
};

/** A face in black lines: each compartment with its number, and the names of what lives there where they fit. */
export const facePicture = (
  carcass: CarcassPlaces,
  lowLeft: Vec2,
  scale: number,
  withNames: boolean,
): readonly Shape[] => {
  const move = onSheet(scale, lowLeft);
  return [
    rectangle('frame', move([0, 0]), move(carcass.carcass.size)),
    ...carcass.places.flatMap((place): readonly Shape[] => {
      const { face } = place.room;
      if (face === null) return [];
      const [from, to] = [move(face.from), move([face.from[0] + face.size[0], face.from[1] + face.size[1]])];
      return [rectangle('seen', from, to), ...roomWords(place, from, to, withNames)];
    }),
  ];
};
