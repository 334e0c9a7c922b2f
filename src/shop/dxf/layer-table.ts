import { compareText, groupBy } from '../../base/index.ts';
import { type ListColumn, listCsv } from '../list-columns.ts';
import type { Marks } from '../marks.ts';
import { type WorkLayer, workLayers } from './work-layers.ts';

interface LayerRow extends WorkLayer {
  readonly marks: readonly string[];
}

const WORK_WORDS: Readonly<Record<WorkLayer['work'], string>> = {
  outline: 'finished edge of the part, closed',
  'inner-cut': 'cut right through, closed',
  drill: 'round holes',
  dado: 'dado across the part',
  groove: 'groove along the part',
  rabbet: 'rabbet at an edge',
  pocket: 'pocket',
};

const COLUMNS: readonly ListColumn<LayerRow>[] = [
  { title: 'layer', cell: ({ name }) => name },
  { title: 'work', cell: ({ work }) => WORK_WORDS[work] },
  { title: 'face up', cell: ({ face }) => face ?? 'a, through' },
  { title: 'depth mm', cell: ({ depthMm }) => depthMm ?? 'through' },
  { title: 'drawn', cell: () => 'as seen on face a' },
  { title: 'parts', cell: ({ marks }) => marks.join(' ') },
];

/** What each layer of the router files is for, with the parts that have it. */
export const layerTableCsv = ({ parts }: Marks): string => {
  const all = parts.flatMap(({ mark, panel }) => workLayers(panel).map((layer) => ({ layer, mark })));
  const rows = [...groupBy(all, ({ layer }) => layer.name).values()].flatMap((uses): readonly LayerRow[] => {
    const [first] = uses;
    return first === undefined ? [] : [{ ...first.layer, marks: uses.map(({ mark }) => mark) }];
  });
  return listCsv(
    COLUMNS,
    rows.toSorted((a, b) => compareText(a.name, b.name)),
  );
};
