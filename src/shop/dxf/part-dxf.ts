import { DxfWriter, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { LengthUnits } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { Stroke } from '../drawing/drawing.ts';
import { workLayers, workOf } from './work-layers.ts';

const MM_PER_INCH = 25.4;
/** Index colours that are told apart on dark and light alike: black or white, red, green, blue, magenta. */
const COLOURS = [7, 1, 3, 5, 6] as const;

const writeStroke = (dxf: DxfWriter, stroke: Stroke, layerName: string, scale: number): void => {
  if (stroke.kind === 'circle') {
    dxf.addCircle(point3d(stroke.at[0] * scale, stroke.at[1] * scale, 0), stroke.radius * scale, { layerName });
    return;
  }
  // Work on a part is closed outlines and round holes; nothing else may reach a machine.
  if (stroke.kind !== 'polyline' || !stroke.closed) throw new Error(`a ${stroke.kind} on ${layerName} is no work`);
  dxf.addLWPolyline(
    stroke.corners.map(({ at, bulge }) => ({ point: point2d(at[0] * scale, at[1] * scale), bulge })),
    { flags: LWPolylineFlags.Closed, layerName },
  );
};

/**
 * The part as a DXF file for router, laser or shear: finished outline and all work as seen on face a, the datum corner
 * at 0, 0. Closed polylines with true arcs, round holes as circles, nothing else; each depth on its own layer.
 * The header states the unit.
 */
export const partDxf = (panel: Panel, units: LengthUnits): string => {
  const dxf = new DxfWriter();
  dxf.setUnits(units === 'in' ? Units.Inches : Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: units === 'in' ? 0 : 1 });
  const scale = units === 'in' ? 1 / MM_PER_INCH : 1;
  workLayers(panel).forEach(({ name }, i) => {
    dxf.addLayer(name, COLOURS[i % COLOURS.length] ?? 7, 'Continuous');
  });
  for (const { layer, stroke } of workOf(panel)) writeStroke(dxf, stroke, layer.name, scale);
  return dxf.stringify();
};
