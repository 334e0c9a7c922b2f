import type { FitOut } from '../../../fitout/index.ts';

const known = new WeakMap<FitOut, FitOut>();

/**
 * The fit-out as the bay draws it: a device that hangs on a closure goes with that closure, its bracket too. The bodies themselves say
 * only which mover of the cabinet carries them. The same object for the same fit-out.
 */
export const bayFitOut = (fitOut: FitOut): FitOut => {
  const made = known.get(fitOut);
  if (made) return made;
  const carriers = new Map(fitOut.devices.map((device) => [device.origin as string, device.mover]));
  const bodies = fitOut.bodies.map((body) => {
    const carrier = body.mover === null ? carriers.get(body.origin) : undefined;
    return carrier ? { ...body, mover: carrier } : body;
  });
  const carried = { ...fitOut, bodies };
  known.set(fitOut, carried);
  known.set(carried, carried);
  return carried;
};
