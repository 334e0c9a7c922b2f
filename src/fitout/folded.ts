import { placed, scale } from '../base/index.ts';
import type { DeepReadonly } from '../design/index.ts';
import type { BendLine, PanelCut, Panel as Solved } from './parts.ts';

type Panel = DeepReadonly<Solved>;

/** A cut moved along the panel's width, or null where it lies wholly outside the new width. */
const cutWithin = (cut: PanelCut, from: number, to: number): PanelCut | null => {
  const inside = (low: number, high: number): boolean => low < to && high > from;
  if (cut.kind === 'hole') return inside(cut.at[1], cut.at[1]) ? { ...cut, at: [cut.at[0], cut.at[1] - from] } : null;
  if (cut.kind !== 'cutout')
    return inside(cut.from[1], cut.to[1])
      ? { ...cut, from: [cut.from[0], cut.from[1] - from], to: [cut.to[0], cut.to[1] - from] }
      : null;
  const { outline } = cut;
  if (outline.shape === 'circle')
    return inside(outline.at[1], outline.at[1])
      ? { ...cut, outline: { ...outline, at: [outline.at[0], outline.at[1] - from] } }
      : null;
  if (outline.shape === 'polygon')
    return { ...cut, outline: { ...outline, corners: outline.corners.map(([x, y]) => [x, y - from] as const) } };
  return inside(outline.from[1], outline.to[1])
    ? {
        ...cut,
        outline: {
          ...outline,
          from: [outline.from[0], outline.from[1] - from],
          to: [outline.to[0], outline.to[1] - from],
        },
      }
    : null;
};

/** Where the outside faces on both sides of a bend along the length would meet, as widths of the flat pattern. */
const edgesOf = ({ from, deductionMm }: BendLine): readonly [below: number, above: number] => [
  from[1] + deductionMm / 2,
  from[1] - deductionMm / 2,
];

/** A flange square to the middle piece, towards face b; its width runs backward from the front of the plate. */
const flange = (middle: Panel, which: 'low' | 'high', outsideMm: number): Panel => {
  const { pose, thickness } = middle;
  const [x, y, z] = pose.turn;
  return {
    ...middle,
    id: `${middle.id}/flange-${which}`,
    width: outsideMm,
    cuts: [],
    pose: {
      turn: [x, scale(z, -1), y],
      at: placed(pose, [0, which === 'low' ? 0 : middle.width - thickness, thickness]),
    },
  };
};

/**
 * A panel as it looks when it is bent: itself where it is flat, else its middle piece with its cuts and a flange at
 * each bend, drawn with sharp edges. Bends run along the length and turn square towards face b.
 */
export const foldedPanels = (panel: Panel): readonly Panel[] => {
  const { bends: _, ...flat } = panel;
  const bends = panel.bends ?? [];
  if (bends.length === 0) return [panel];
  const [lowBend, highBend] = bends;
  const from = lowBend ? edgesOf(lowBend)[1] : 0;
  const to = highBend ? edgesOf(highBend)[0] : panel.width;
  const middle: Panel = {
    ...flat,
    width: to - from,
    cuts: panel.cuts.flatMap((cut) => cutWithin(cut, from, to) ?? []),
    pose: { ...panel.pose, at: placed(panel.pose, [0, from, 0]) },
  };
  return [
    middle,
    ...(lowBend ? [flange(middle, 'low', edgesOf(lowBend)[0])] : []),
    ...(highBend ? [flange(middle, 'high', panel.width - edgesOf(highBend)[1])] : []),
  ];
};
