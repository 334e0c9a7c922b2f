import { boxAround, boxMiddle, dot, placed, subtract, type Vec3 } from '../../../../base/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';

type Panel = FitOut['panels'][number];

/** Corners nearly as far from the hinge as the farthest belong to the free edge; squared share. */
const FREE_EDGE = 0.9;

const panelCorners = (panel: Panel): readonly Vec3[] =>
  [0, panel.length].flatMap((x) =>
    [0, panel.width].flatMap((y) => [0, panel.thickness].map((z) => placed(panel.pose, [x, y, z]))),
  );

/**
 * The panels that a hand takes a mover by: those that say so, or, on a bare tray or a door, the one that reaches
 * farthest the way it moves.
 */
export const frontOf = (fitOut: FitOut, moverId: string): readonly Panel[] => {
  const panels = fitOut.panels.filter((panel) => panel.mover === moverId);
  for (const isFront of [(role: string) => role === 'front', (role: string) => role.endsWith('-front')]) {
    const front = panels.filter((panel) => isFront(panel.role));
    if (front.length > 0) return front;
  }
  const mover = fitOut.movers.find((candidate) => candidate.id === moverId);
  if (mover?.motion.kind !== 'slide') return panels;
  const { direction } = mover.motion;
  const reach = (panel: Panel): number => Math.max(...panelCorners(panel).map((corner) => dot(corner, direction)));
  const [first] = panels.toSorted((a, b) => reach(b) - reach(a));
  return first ? [first] : [];
};

/** Where the grip of a mover is, stowed: the middle of its front, or of its bodies, on the side that it moves to. */
export const gripOf = (fitOut: FitOut, moverId: string): Vec3 | null => {
  const front = frontOf(fitOut, moverId);
  const mover = fitOut.movers.find((candidate) => candidate.id === moverId);
  if (!mover) return null;
  // A screen on its arm has no panel: a hand takes it by its bodies.
  const corners =
    front.length > 0
      ? front.flatMap(panelCorners)
      : fitOut.bodies.filter((body) => body.mover === moverId).flatMap(({ shape }) => shape.vertices);
  if (corners.length === 0) return null;
  const box = boxAround(corners);
  const middle = boxMiddle(box);
  if (mover.motion.kind !== 'slide') return middle;
  const out = mover.motion.direction;
  return [
    out[0] < -0.5 ? box.min[0] : out[0] > 0.5 ? box.max[0] : middle[0],
    out[1] < -0.5 ? box.min[1] : out[1] > 0.5 ? box.max[1] : middle[1],
    out[2] < -0.5 ? box.min[2] : out[2] > 0.5 ? box.max[2] : middle[2],
  ];
};

/** How far from the hinge line of a closure a point stands, squared. */
const fromHinge = (closure: CargoSpace['closures'][number], point: Vec3): number => {
  const from = subtract(point, closure.point);
  const along = dot(from, closure.axis);
  return dot(from, from) - along * along;
};

/** Where a closure is taken hold of, closed: the middle of its free edge. */
export const closureGrip = (space: CargoSpace | null, id: string): Vec3 | null => {
  const closure = space?.closures.find((candidate) => candidate.id === id);
  const corners = (space?.bodies ?? [])
    .filter((body) => body.closure === id && body.kind === 'closure')
    .flatMap((body) => body.shape.vertices);
  if (!closure || corners.length === 0) return null;
  const farthest = Math.max(...corners.map((corner) => fromHinge(closure, corner)));
  const edge = corners.filter((corner) => fromHinge(closure, corner) > farthest * FREE_EDGE);
  return boxMiddle(boxAround(edge));
};
