import { type Pose, turned, type Vec3 } from '../../base/index.ts';
import type { FitOut } from '../../fitout/index.ts';

type Panel = FitOut['panels'][number];

/** How much of a panel is housed in its neighbours and not seen, at each of its four edges. */
export interface Housed {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

export const NOT_HOUSED: Housed = { x0: 0, x1: 0, y0: 0, y1: 0 };

/** Which way a face of a panel looks, in the vehicle. */
const faceWay = (panel: Panel, face: 'a' | 'b'): Vec3 => turned(panel.pose, [0, 0, face === 'a' ? 1 : -1]);

/** A direction of the vehicle along the sides of a panel. */
const inPanel = ({ turn: [x, y] }: Pose, way: Vec3): readonly [number, number] => [
  x[0] * way[0] + x[1] * way[1] + x[2] * way[2],
  y[0] * way[0] + y[1] * way[1] + y[2] * way[2],
];

/** A recess is cut square: its way and an edge of what it takes are either along each other or across. */
const ALONG = 0.9;

/** A panel with one more of its edges housed: the one that looks against the face that it stands in. */
const housedAlso = (housed: Housed, [x, y]: readonly [number, number], depth: number): Housed => ({
  x0: x > ALONG ? Math.max(housed.x0, depth) : housed.x0,
  x1: x < -ALONG ? Math.max(housed.x1, depth) : housed.x1,
  y0: y > ALONG ? Math.max(housed.y0, depth) : housed.y0,
  y1: y < -ALONG ? Math.max(housed.y1, depth) : housed.y1,
});

/**
 * What is housed of every panel, from the recesses that others are cut with for it. Drawn without it, panels meet at
 * their faces and do not fight for the same place.
 */
export const housedParts = (panels: readonly Panel[]): ReadonlyMap<string, Housed> => {
  const byId = new Map(panels.map((panel) => [panel.id, panel]));
  const housed = new Map<string, Housed>();
  for (const holder of panels)
    for (const cut of holder.cuts) {
      if (cut.kind === 'hole' || cut.kind === 'cutout' || cut.takes === null) continue;
      const taken = byId.get(cut.takes);
      if (!taken) continue;
      const way = inPanel(taken.pose, faceWay(holder, cut.face));
      housed.set(taken.id, housedAlso(housed.get(taken.id) ?? NOT_HOUSED, way, cut.depth));
    }
  return housed;
};
