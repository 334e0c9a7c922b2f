import { add, placed, scale, turned, type Vec2, type Vec3 } from '../../base/index.ts';
import { shapeAt } from '../../bodies/index.ts';
import { foldedPanels } from '../../fitout/index.ts';
import { type Panel, prismsOf } from '../assembly/index.ts';
import { cutoutRing } from '../solids/panel-solid.ts';
import type { DrawnSolid } from './seen-edges.ts';

type Lines = NonNullable<DrawnSolid<string>['lines']>;

const ringLines = (panel: Panel, ring: readonly Vec2[], face: 'a' | 'b'): Lines => {
  const z = face === 'a' ? panel.thickness : 0;
  const normal = turned(panel.pose, [0, 0, face === 'a' ? 1 : -1]);
  const corners = ring.map(([x, y]): Vec3 => placed(panel.pose, [x, y, z]));
  return corners.map((from, i) => ({ from, to: corners[(i + 1) % corners.length] ?? from, normal }));
};

/** Recesses on the face that they are cut into, cut-outs on both faces. Holes are too small to be drawn in space. */
const cutLines = (panel: Panel): Lines =>
  panel.cuts.flatMap((cut): Lines => {
    if (cut.kind === 'hole') return [];
    if (cut.kind === 'cutout') {
      const ring = cutoutRing(cut.outline);
      return [...ringLines(panel, ring, 'a'), ...ringLines(panel, ring, 'b')];
    }
    const { from, to } = cut;
    return ringLines(panel, [from, [to[0], from[1]], to, [from[0], to[1]]], cut.face);
  });

/** A panel as a solid for line drawings, moved aside by so much, with the cuts that show on its faces. */
export const drawnPanel = (panel: Panel, by: Vec3): readonly DrawnSolid<string>[] => {
  const pieces = foldedPanels(panel);
  return prismsOf(panel).map((shape, i) => ({
    item: panel.id,
    shape: shapeAt(shape, {
      turn: [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      at: by,
    }),
    lines: cutLines(pieces[i] ?? panel).map(({ from, to, normal }) => ({
      from: add(from, by),
      to: add(to, by),
      normal,
    })),
  }));
};

/** The middle of a panel, folded or flat. */
export const middleOfPanel = (panel: Panel): Vec3 => {
  const corners = prismsOf(panel).flatMap(({ vertices }) => vertices);
  return scale(
    corners.reduce((sum, corner) => add(sum, corner), [0, 0, 0] as Vec3),
    1 / Math.max(1, corners.length),
  );
};
