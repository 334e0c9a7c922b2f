import { formatMillimetres, type LengthUnits } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import { angleText } from '../edge-work.ts';
import type { Block } from './blocks.ts';
import { sizeText } from './paper-words.ts';
import type { TableColumn } from './table.ts';

const column = (title: string, width: number, align: TableColumn['align'] = 'right'): TableColumn => ({
  title,
  width,
  align,
});

/** Bevelled edges and bends of a part as tables; none for a plain part. */
export const edgeTables = (
  { bevels = [], bends = [] }: Pick<Panel, 'bevels' | 'bends'>,
  units: LengthUnits,
): readonly Block[] => {
  const bevelled: Block = {
    kind: 'table',
    title: 'Bevelled edges: saw tilted from square',
    columns: [
      column('edge', 12, 'left'),
      column('tilt', 16),
      column('long on face', 22),
      column('other face ends', 26),
    ],
    rows: bevels.map(({ edge, tiltRad, longFace, setMm, landMm }) => [
      edge.toUpperCase(),
      angleText(tiltRad),
      longFace,
      `${sizeText(setMm, units)} sooner${landMm === undefined ? '' : `, ${sizeText(landMm, units)} square`}`,
    ]),
  };
  const bent: Block = {
    kind: 'table',
    title: 'Bends: lines on the flat, inside radius, deduction in mm',
    columns: [
      column('at', 18),
      column('angle', 14),
      column('to face', 12),
      column('radius', 14),
      column('deduction', 18),
    ],
    rows: bends.map(({ from, to, angleRad, towards, insideRadiusMm, deductionMm }) => [
      from[1] === to[1] ? `y ${sizeText(from[1], units)}` : `x ${sizeText(from[0], units)}`,
      angleText(angleRad),
      towards,
      formatMillimetres(insideRadiusMm),
      formatMillimetres(deductionMm, 2),
    ]),
  };
  return [...(bevels.length > 0 ? [bevelled] : []), ...(bends.length > 0 ? [bent] : [])];
};
