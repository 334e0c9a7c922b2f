import { compareText } from '../../base/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { text } from '../drawing/shapes.ts';
import { type PaperPiece, paperPages } from '../paper/index.ts';
import type { GearMapData, ReviewGear } from '../review-copy/review-data.ts';
import { cardHead } from './card-head.ts';
import { facePicture } from './face-picture.ts';
import { shortName, shortWay } from './gear-words.ts';
import { type CarcassPlaces, gearPlaces } from './places.ts';

const COLUMNS = [
  { title: 'gear', share: 26 },
  { title: 'no.', share: 5, align: 'right' },
  { title: 'from the closed vehicle', share: 52 },
  { title: 'motions', share: 11 },
] as const;

const MAP_MM = 62;
const NAME_MM = 2;
const GAP_MM = 6;

/** All faces side by side in one scale, each place with its number. */
const mapPiece = (carcasses: readonly CarcassPlaces[]): PaperPiece => ({
  kind: 'picture',
  height: MAP_MM,
  shapes: ([left, top], width) => {
    const wide = carcasses.reduce((sum, { carcass }) => sum + carcass.size[0], 0);
    const high = Math.max(1, ...carcasses.map(({ carcass }) => carcass.size[1]));
    const free = width - GAP_MM * Math.max(0, carcasses.length - 1);
    const scale = Math.min(free / Math.max(1, wide), (MAP_MM - 2 * NAME_MM) / high);
    let x = left + (free - wide * scale) / 2;
    return carcasses.flatMap((each) => {
      const [across, up] = [each.carcass.size[0] * scale, each.carcass.size[1] * scale];
      const foot = top - 2 * NAME_MM - high * scale;
      const shapes = [
        text([x, foot + up + 1], shortName(each.carcass.name), { height: NAME_MM, within: across }),
        ...facePicture(each, [x, foot], scale, false),
      ];
      x += across + GAP_MM;
      return shapes;
    });
  },
});

const byName = (a: ReviewGear, b: ReviewGear): number => compareText(a.name.toLowerCase(), b.name.toLowerCase());

/**
 * The crew card: what is first due, then all gear by name, each with the number of its place and what is opened in
 * which order; and what has to stand open or closed before what.
 */
export const crewCardPages = (data: GearMapData): readonly Drawing[] => {
  const carcasses = gearPlaces(data);
  const numbers = new Map(
    carcasses.flatMap(({ places }) =>
      places.flatMap(({ number, gear }) => gear.map(({ id }) => [id, number] as const)),
    ),
  );
  const table = (gear: readonly ReviewGear[]): PaperPiece => ({
    kind: 'table',
    columns: COLUMNS,
    rows: gear
      .toSorted(byName)
      .map(({ id, name, way, motions }) => [
        shortName(name),
        String(numbers.get(id) ?? ''),
        numbers.has(id) ? shortWay(way) : 'no place yet',
        motions,
      ]),
  });
  const due = data.gear.filter(({ firstDue }) => firstDue);
  return paperPages(cardHead(data, 'Crew card'), [
    ...(carcasses.length === 0 ? [] : [mapPiece(carcasses)]),
    ...(due.length === 0 ? [] : [{ kind: 'heading', words: 'First due' } as const, table(due)]),
    { kind: 'heading', words: due.length === 0 ? 'Gear by name' : 'All gear by name' },
    data.gear.length === 0 ? { kind: 'words', words: 'No gear yet.' } : table(data.gear),
    ...(data.order.length === 0
      ? []
      : [
          { kind: 'heading', words: 'What has to stand open or closed first' } as const,
          ...data.order.map((words) => ({ kind: 'words', words: shortWay(words) }) as const),
        ]),
  ]);
};
