import { compareText, groupBy } from '../../base/index.ts';
import { type ListColumn, listCsv } from '../list-columns.ts';
import type { Marks } from '../marks.ts';
import { NOT_RELEASED } from '../release.ts';
import { HELD_LAYER } from './held-words.ts';
import { type WorkLayer, workLayers } from './work-layers.ts';

interface LayerRow extends Omit<WorkLayer, 'work'> {
  readonly work: WorkLayer['work'] | 'held';
  readonly marks: readonly string[];
}

const WORK_WORDS: Readonly<Record<LayerRow['work'], string>> = {
  outline: 'finished edge of the part, closed',
  'inner-cut': 'cut right through, closed',
  drill: 'round holes',
  dado: 'dado across the part',
  groove: 'groove along the part',
  rabbet: 'rabbet at an edge',
  pocket: 'pocket',
  bevel: 'where the shorter face ends at an edge sawn with the blade tilted; not cut along',
  bend: 'middle of a bend, on the flat; not cut along',
  engrave: 'mark of the part, as shallow as reads; leave out where the face is seen',
  held: `words over a part that must not be cut yet, ${NOT_RELEASED}: no work`,
};

/** Work whose depth is no matter of the layer. */
const NO_DEPTH: readonly LayerRow['work'][] = ['bevel', 'bend', 'engrave', 'held'];

const faceWords = ({ work, face }: LayerRow): string => {
  if (work === 'held') return '';
  return work === 'bend' ? `bent to ${face}` : (face ?? 'a, through');
};

const COLUMNS: readonly ListColumn<LayerRow>[] = [
  { title: 'layer', cell: ({ name }) => name },
  { title: 'work', cell: ({ work }) => WORK_WORDS[work] },
  { title: 'face up', cell: faceWords },
  { title: 'depth mm', cell: ({ work, depthMm }) => depthMm ?? (NO_DEPTH.includes(work) ? '' : 'through') },
  { title: 'angle °', cell: ({ angleDeg }) => angleDeg ?? '' },
  { title: 'drawn', cell: () => 'as seen on face a' },
  { title: 'parts', cell: ({ marks }) => marks.join(' ') },
];

/** What each layer of the router files is for, with the parts that have it; where the packet is held back, that too. */
export const layerTableCsv = ({ parts }: Marks, isHeld = false): string => {
  const all = parts.flatMap(({ mark, panel }) => workLayers(panel, mark).map((layer) => ({ layer, mark })));
  const rows = [...groupBy(all, ({ layer }) => layer.name).values()].flatMap((uses): readonly LayerRow[] => {
    const [first] = uses;
    return first === undefined ? [] : [{ ...first.layer, marks: uses.map(({ mark }) => mark) }];
  });
  const held: readonly LayerRow[] = isHeld
    ? [
        {
          name: HELD_LAYER,
          work: 'held',
          face: null,
          depthMm: null,
          angleDeg: null,
          marks: parts.map(({ mark }) => mark),
        },
      ]
    : [];
  return listCsv(
    COLUMNS,
    [...rows, ...held].toSorted((a, b) => compareText(a.name, b.name)),
  );
};
