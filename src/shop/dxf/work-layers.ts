import { compareText } from '../../base/index.ts';
import type { Panel, PanelCut } from '../../fitout/index.ts';
import type { Stroke } from '../drawing/drawing.ts';
import { panelFigure } from '../drawing/panel-figure.ts';
import { toTenth } from '../rounding.ts';

/** One layer of a router file: what is done there, from which face, how deep. */
export interface WorkLayer {
  /** Capitals, figures and dashes alone, so that any machine takes it: `DRILL-A-12`, `DADO-B-6_5`. */
  readonly name: string;
  readonly work: 'outline' | 'inner-cut' | 'drill' | 'dado' | 'groove' | 'rabbet' | 'pocket';
  /** The face that lies up for it; null where it goes through. */
  readonly face: 'a' | 'b' | null;
  /** Millimetres whatever the file is drawn in; null where it goes through. */
  readonly depthMm: number | null;
}

const OUTLINE: WorkLayer = { name: 'OUTLINE', work: 'outline', face: null, depthMm: null };

const layerOf = (cut: PanelCut): WorkLayer => {
  if (cut.kind === 'cutout') return { name: 'INNER-CUT', work: 'inner-cut', face: null, depthMm: null };
  const work = cut.kind === 'hole' ? 'drill' : cut.kind;
  if (cut.depth === null) return { name: 'DRILL-THROUGH', work, face: null, depthMm: null };
  const depthMm = toTenth(cut.depth);
  const name = `${work.toUpperCase()}-${cut.face.toUpperCase()}-${String(depthMm).replace('.', '_')}`;
  return { name, work, face: cut.face, depthMm };
};

/** Every stroke of a part's figure with the layer of its work, the outline first. */
export const workOf = (panel: Panel): readonly { readonly layer: WorkLayer; readonly stroke: Stroke }[] =>
  panelFigure(panel).flatMap((stroke, i) => {
    if (i === 0) return [{ layer: OUTLINE, stroke }];
    const cut = panel.cuts[i - 1];
    return cut === undefined ? [] : [{ layer: layerOf(cut), stroke }];
  });

/** The layers that a part's work needs, each once: through cuts first, then by name. */
export const workLayers = (panel: Panel): readonly WorkLayer[] => {
  const byName = new Map(workOf(panel).map(({ layer }) => [layer.name, layer]));
  return [...byName.values()].sort(
    (a, b) => Number(a !== OUTLINE) - Number(b !== OUTLINE) || compareText(a.name, b.name),
  );
};
