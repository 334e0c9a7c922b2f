import type { LengthUnits } from '../../base/index.ts';
import { circle, line, rectangle, ring } from '../drawing/shapes.ts';
import { dxfPage, HELD_LAYER, heldStrokes } from '../dxf/index.ts';
import { toTenth } from '../rounding.ts';
import type { TemplateFigure } from './template-figure.ts';
import { templateExtent } from './template-shapes.ts';

/**
 * The template as a DXF file, seen from above with the hatch at the foot: 0, 0 is the middle of the hatch sill, x runs to
 * the vehicle's right, y forward. Foot of the carcass, bores by their size, plates, places without holes, and the two lines
 * that it is laid on by. Where the packet is held back, the words that say so on a layer of their own.
 */
export const templateDxf = (figure: TemplateFigure, units: LengthUnits, held: string | null = null): string => {
  const { foot, holes, zones } = figure;
  const { from, to } = templateExtent(figure);
  const boreLayer = (diameter: number): string => `BORE-${String(toTenth(diameter)).replace('.', '_')}`;
  const works = [
    { layer: 'FOOT', stroke: ring('outline', foot) },
    ...holes.map(({ at, diameter }) => ({ layer: boreLayer(diameter), stroke: circle('drill', at, diameter / 2) })),
    ...holes.flatMap(({ at: [x, y], plateMm }) =>
      plateMm === null
        ? []
        : [
            {
              layer: 'PLATE',
              stroke: rectangle('pocket', [x - plateMm / 2, y - plateMm / 2], [x + plateMm / 2, y + plateMm / 2]),
            },
          ],
    ),
    ...zones.map((zone) => ({ layer: 'NO-HOLE', stroke: ring('outline', zone.ring) })),
    { layer: 'DATUM', stroke: line('centre', [0, Math.min(0, from[1])], [0, to[1]]) },
    ...(held === null ? [] : heldStrokes(held, from, to).map((stroke) => ({ layer: HELD_LAYER, stroke }))),
    { layer: 'DATUM', stroke: line('centre', [Math.min(0, from[0]), 0], [Math.max(0, to[0]), 0]) },
  ];
  const page = dxfPage(units, held);
  for (const layer of new Set(works.map((work) => work.layer))) page.addLayer(layer);
  for (const { layer, stroke } of works) page.add(stroke, layer);
  return page.text();
};
