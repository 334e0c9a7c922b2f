import { boxShape, shapeAt } from '../../../../bodies/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import type { Pickable } from './pick.ts';

/** A thing that can be pointed at, with the node of the design that it comes from. */
export interface Thing extends Pickable {
  readonly origin: string;
  readonly what: 'panel' | 'gear' | 'device' | 'hardware' | 'vehicle';
}

/**
 * Everything that a click can mean. Panels are hit as they are drawn, by their outside box; plug room is air. The
 * vehicle comes last, so that of two things at the same distance the cabinet's is taken.
 */
export const pickableThings = (fitOut: FitOut, space: CargoSpace | null): readonly Thing[] => {
  const panels = fitOut.panels.map((panel): Thing => {
    const local = boxShape({ min: [0, 0, 0], max: [panel.length, panel.width, panel.thickness] });
    return { id: panel.id, origin: panel.origin, what: 'panel', shape: shapeAt(local, panel.pose), mover: panel.mover };
  });
  const bodies = fitOut.bodies.flatMap((body): readonly Thing[] =>
    body.kind === 'panel' || body.kind === 'plug-room'
      ? []
      : [{ id: body.id, origin: body.origin, what: body.kind, shape: body.shape, mover: body.mover }],
  );
  const vehicle = (space?.bodies ?? [])
    .filter((body) => body.kind === 'obstacle')
    .map(
      (body): Thing => ({ id: body.id, origin: body.origin, what: 'vehicle', shape: body.shape, mover: body.closure }),
    );
  return [...bodies, ...panels, ...vehicle];
};
