import { boxAround, inverse, placed } from '../../../../../base/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';
import type { Rect } from './face-model.ts';

/** How the fit-out ends the name of the body that is the face of a device. */
const FACE = '/face';

/** Outlines at the face of what is seen through it: faces of devices, and gear that stands in the open. */
export const bodiesAtFace = (fitOut: FitOut, carcassId: string): readonly Rect[] => {
  const carcass = fitOut.carcasses.find((one) => one.id === carcassId);
  if (!carcass) return [];
  const back = inverse(carcass.pose);
  return fitOut.bodies
    .filter((body) => body.carcass === carcassId && body.mover === null)
    .filter((body) => body.kind === 'gear' || (body.kind === 'device' && body.id.endsWith(FACE)))
    .map((body) => {
      const { min, max } = boxAround(body.shape.vertices.map((vertex) => placed(back, vertex)));
      const r = body.shape.radius;
      return { across: min[0] - r, up: min[2] - r, width: max[0] - min[0] + 2 * r, height: max[2] - min[2] + 2 * r };
    });
};
