import { compareText, degrees } from '../../base/index.ts';
import type { BendLine, Bevel, Panel, PanelCut } from '../../fitout/index.ts';
import type { Stroke } from '../drawing/drawing.ts';
import { engravedMark } from '../drawing/engraved-mark.ts';
import { panelFigure } from '../drawing/panel-figure.ts';
import { toTenth } from '../rounding.ts';

/** One layer of a router file: what is done there, from which face, how deep. */
export interface WorkLayer {
  /** Capitals, figures and dashes alone, so that any machine takes it: `DRILL-A-12`, `DADO-B-6_5`. */
  readonly name: string;
  readonly work:
    | 'outline'
    | 'inner-cut'
    | 'drill'
    | 'dado'
    | 'groove'
    | 'rabbet'
    | 'pocket'
    | 'bevel'
    | 'bend'
    | 'engrave';
  /** The face that lies up for it, or that a sheet is bent towards; null where it goes through. */
  readonly face: 'a' | 'b' | null;
  /** Millimetres whatever the file is drawn in; null where it goes through or is not a matter of depth. */
  readonly depthMm: number | null;
  /** Of the blade from square, or turned through in a bend, to a tenth of a degree; null for other work. */
  readonly angleDeg: number | null;
}

const THROUGH = { face: null, depthMm: null, angleDeg: null } as const;
const OUTLINE: WorkLayer = { name: 'OUTLINE', work: 'outline', ...THROUGH };
const INNER_CUT: WorkLayer = { name: 'INNER-CUT', work: 'inner-cut', ...THROUGH };
const DRILL_THROUGH: WorkLayer = { name: 'DRILL-THROUGH', work: 'drill', ...THROUGH };
const ENGRAVE: WorkLayer = { name: 'ENGRAVE', work: 'engrave', face: 'a', depthMm: null, angleDeg: null };

const numbered = (work: WorkLayer['work'], face: 'a' | 'b', figure: number): string =>
  `${work.toUpperCase()}-${face.toUpperCase()}-${String(figure).replace('.', '_')}`;

const layerOf = (cut: PanelCut): WorkLayer => {
  if (cut.kind === 'cutout') return INNER_CUT;
  const work = cut.kind === 'hole' ? 'drill' : cut.kind;
  if (cut.depth === null) return DRILL_THROUGH;
  const depthMm = toTenth(cut.depth);
  return { name: numbered(work, cut.face, depthMm), work, face: cut.face, depthMm, angleDeg: null };
};

const turnedLayer = (work: 'bevel' | 'bend', face: 'a' | 'b', angleRad: number): WorkLayer => {
  const angleDeg = toTenth(degrees(angleRad));
  return { name: numbered(work, face, angleDeg), work, face, depthMm: null, angleDeg };
};

/** A bevel shows on the face that ends sooner. */
const bevelLayer = ({ longFace, tiltRad }: Bevel): WorkLayer =>
  turnedLayer('bevel', longFace === 'a' ? 'b' : 'a', tiltRad);
const bendLayer = ({ towards, angleRad }: BendLine): WorkLayer => turnedLayer('bend', towards, angleRad);

interface Work {
  readonly layer: WorkLayer;
  readonly stroke: Stroke;
}

/** Every stroke of a part's figure with the layer of its work, the outline first, its mark last where there is one. */
export const workOf = (panel: Panel, mark: string | null = null): readonly Work[] => {
  const { bevels = [], bends = [] } = panel;
  // The figure draws the outline, then the cuts, then the edges, each in the order of the panel.
  const layers = [OUTLINE, ...panel.cuts.map(layerOf), ...bevels.map(bevelLayer), ...bends.map(bendLayer)];
  const strokes = panelFigure(panel);
  if (strokes.length !== layers.length)
    throw new Error(`${panel.id}: ${strokes.length} strokes, ${layers.length} works`);
  const cut = strokes.flatMap((stroke, i): readonly Work[] => {
    const layer = layers[i];
    return layer === undefined ? [] : [{ layer, stroke }];
  });
  const engraved = mark === null ? [] : engravedMark(panel, mark).map((stroke): Work => ({ layer: ENGRAVE, stroke }));
  return [...cut, ...engraved];
};

/** The layers that a part's work needs, each once: the outline first, then by name. */
export const workLayers = (panel: Panel, mark: string | null = null): readonly WorkLayer[] => {
  const byName = new Map(workOf(panel, mark).map(({ layer }) => [layer.name, layer]));
  return [...byName.values()].sort(
    (a, b) => Number(a !== OUTLINE) - Number(b !== OUTLINE) || compareText(a.name, b.name),
  );
};
