import type { Polygon } from '../../base/index.ts';
import type { CutoutOutline, Panel, PanelCut, PanelFace } from '../../fitout/index.ts';
import type { LayerName, Stroke } from './drawing.ts';
import { edgeStrokes } from './edge-strokes.ts';
import { circle, rectangle, ring, roundedRectangle } from './shapes.ts';

/** The part's edge as seen from face a, anticlockwise from the datum corner for a plain part. */
export const panelOutline = (panel: Pick<Panel, 'outline' | 'length' | 'width'>): Polygon =>
  panel.outline ?? [
    [0, 0],
    [panel.length, 0],
    [panel.length, panel.width],
    [0, panel.width],
  ];

const RECESS_LAYERS = {
  dado: { a: 'dado', b: 'dado-b' },
  groove: { a: 'groove', b: 'groove-b' },
  rabbet: { a: 'rabbet', b: 'rabbet-b' },
  pocket: { a: 'pocket', b: 'pocket-b' },
} as const satisfies Readonly<Record<string, Readonly<Record<PanelFace, LayerName>>>>;

const cutoutStroke = (outline: CutoutOutline): Stroke => {
  switch (outline.shape) {
    case 'rectangle':
      return roundedRectangle('inner-cut', outline.from, outline.to, outline.cornerRadius);
    case 'circle':
      return circle('inner-cut', outline.at, outline.diameter / 2);
    case 'polygon':
      return ring('inner-cut', outline.corners);
  }
};

const cutStroke = (cut: PanelCut): Stroke => {
  if (cut.kind === 'cutout') return cutoutStroke(cut.outline);
  if (cut.kind === 'hole') {
    // A hole that goes through is drilled from the face that lies up, whichever face it was asked for on.
    const layer = cut.depth === null || cut.face === 'a' ? 'drill' : 'drill-b';
    return circle(layer, cut.at, cut.diameter / 2);
  }
  return rectangle(RECESS_LAYERS[cut.kind][cut.face], cut.from, cut.to);
};

/**
 * The part alone at true scale in panel coordinates, seen on face a: its outline and every cut on the layer of the
 * work, nothing else. What a router, a laser or a shear would read.
 */
export const panelFigure = (panel: Panel): readonly Stroke[] => [
  ring('outline', panelOutline(panel)),
  ...panel.cuts.map(cutStroke),
  ...edgeStrokes(panel),
];
