import type { Bevel, Panel } from '../../fitout/index.ts';
import type { Stroke } from './drawing.ts';
import { line } from './shapes.ts';

/** The inner line of a bevel: where the shorter face ends, as far as neighbouring bevels leave it. */
const bevelStroke = ({ edge, setMm, longFace }: Bevel, { length, width }: Pick<Panel, 'length' | 'width'>): Stroke => {
  // The slope is seen on face a where face b is the longer one, and lies under the part otherwise.
  const layer = longFace === 'b' ? 'bevel' : 'bevel-b';
  if (edge === 'l1' || edge === 'l2') {
    const y = edge === 'l1' ? setMm : width - setMm;
    return line(layer, [0, y], [length, y]);
  }
  const x = edge === 'w1' ? setMm : length - setMm;
  return line(layer, [x, 0], [x, width]);
};

/** Bevels and bends of a part, in panel coordinates. */
export const edgeStrokes = (panel: Pick<Panel, 'length' | 'width' | 'bevels' | 'bends'>): readonly Stroke[] => [
  ...(panel.bevels ?? []).map((bevel) => bevelStroke(bevel, panel)),
  ...(panel.bends ?? []).map(({ from, to }) => line('bend', from, to)),
];
