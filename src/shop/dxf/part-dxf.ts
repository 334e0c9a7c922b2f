import { DxfWriter, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { LengthUnits } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { Stroke } from '../drawing/drawing.ts';
import { HELD_LAYER, heldStrokes } from './held-words.ts';
import { type WorkLayer, workLayers, workOf } from './work-layers.ts';

const MM_PER_INCH = 25.4;
/** Index colours that are told apart on dark and light alike: black or white, red, green, blue, magenta. */
const COLOURS = [7, 1, 3, 5, 6] as const;

/** Work that is a line and not an area: nothing is cut out along it. */
const LINES: readonly WorkLayer['work'][] = ['bevel', 'bend', 'engrave'];

/** The group of a comment. */
const COMMENT = 999;

/** A file under way: strokes in millimetres, written in the unit of the header. */
export interface DxfPage {
  readonly addLayer: (name: string) => void;
  readonly add: (stroke: Stroke, layerName: string) => void;
  readonly text: () => string;
}

/**
 * An empty DXF file whose header states the unit. Takes lines, polylines and circles; anything else throws. Where the
 * packet is held back, the file begins with a comment that says so.
 */
export const dxfPage = (units: LengthUnits, held: string | null = null): DxfPage => {
  const dxf = new DxfWriter();
  dxf.setUnits(units === 'in' ? Units.Inches : Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: units === 'in' ? 0 : 1 });
  const scale = units === 'in' ? 1 / MM_PER_INCH : 1;
  const point = ([x, y]: readonly [number, number]) => point3d(x * scale, y * scale, 0);
  let layers = 0;
  return {
    addLayer: (name) => {
      dxf.addLayer(name, COLOURS[layers++ % COLOURS.length] ?? 7, 'Continuous');
    },
    add: (stroke, layerName) => {
      if (stroke.kind === 'circle') dxf.addCircle(point(stroke.at), stroke.radius * scale, { layerName });
      else if (stroke.kind === 'line') dxf.addLine(point(stroke.from), point(stroke.to), { layerName });
      else if (stroke.kind === 'polyline')
        dxf.addLWPolyline(
          stroke.corners.map(({ at, bulge }) => ({ point: point2d(at[0] * scale, at[1] * scale), bulge })),
          { flags: stroke.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None, layerName },
        );
      else throw new Error(`a ${stroke.kind} on ${layerName} is no work`);
    },
    text: () => (held === null ? '' : `${COMMENT}\n${held}\n`) + dxf.stringify(),
  };
};

/** What is cut out is a closed outline or a round hole; a line reaches a machine only where nothing is cut out. */
const expectClosed = ({ work, name }: WorkLayer, stroke: Stroke): void => {
  if (LINES.includes(work) || stroke.kind === 'circle' || (stroke.kind === 'polyline' && stroke.closed)) return;
  throw new Error(`a ${stroke.kind} on ${name} is no work`);
};

/**
 * The part as a DXF file for router, laser or shear: finished outline and all work as seen on face a, the datum corner
 * at 0, 0. What is cut is closed polylines with true arcs and circles; bends and bevels are lines on layers of their
 * own, and the mark, where one is given, is open strokes to engrave. Each depth and each angle has its layer. Where the
 * packet is held back, the words that say so stand over the part on a layer of their own, and in a comment.
 */
export const partDxf = (
  panel: Panel,
  units: LengthUnits,
  mark: string | null = null,
  held: string | null = null,
): string => {
  const page = dxfPage(units, held);
  for (const { name } of workLayers(panel, mark)) page.addLayer(name);
  for (const { layer, stroke } of workOf(panel, mark)) {
    expectClosed(layer, stroke);
    page.add(stroke, layer.name);
  }
  if (held !== null) {
    page.addLayer(HELD_LAYER);
    for (const stroke of heldStrokes(held, [0, 0], [panel.length, panel.width])) page.add(stroke, HELD_LAYER);
  }
  return page.text();
};
