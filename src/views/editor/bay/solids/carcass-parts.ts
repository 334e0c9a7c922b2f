import type { Design } from '../../../../design/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';

/** What is drawn of one carcass, or of no carcass at all, with the gear that stands in it. */
export interface CarcassParts {
  readonly carcass: string | null;
  readonly fitOut: FitOut;
  readonly gear: Design['gear'];
}

const partsOf = (carcass: string | null, fitOut: FitOut, gear: Design['gear']): CarcassParts => {
  const bodies = fitOut.bodies.filter((body) => body.carcass === carcass);
  const origins = new Set<string>(bodies.map((body) => body.origin));
  return {
    carcass,
    gear: gear.filter((item) => origins.has(item.id)),
    fitOut: {
      ...fitOut,
      carcasses: fitOut.carcasses.filter((one) => one.id === carcass),
      panels: fitOut.panels.filter((panel) => panel.carcass === carcass),
      bodies,
      rooms: fitOut.rooms.filter((room) => room.carcass === carcass),
      gear: fitOut.gear.filter((item) => origins.has(item.gear)),
      devices: fitOut.devices.filter((device) => origins.has(device.origin)),
    },
  };
};

const sameItems = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, i) => item === b[i]);

/** The fit-out keeps the very same panels and bodies for a carcass that nothing has changed in. */
const sameParts = (a: CarcassParts, b: CarcassParts): boolean =>
  sameItems(a.fitOut.panels, b.fitOut.panels) &&
  sameItems(a.fitOut.bodies, b.fitOut.bodies) &&
  sameItems(a.fitOut.carcasses, b.fitOut.carcasses);

/**
 * Parts a fit-out by carcass, with a memory of the last one: a carcass in which nothing has changed gives the same
 * object again, so that only what an edit touches is made anew.
 */
export const createPartition = (): ((fitOut: FitOut, gear: Design['gear']) => readonly CarcassParts[]) => {
  let last: ReadonlyMap<string | null, CarcassParts> = new Map();
  return (fitOut, gear) => {
    const carcasses: readonly (string | null)[] = [null, ...fitOut.carcasses.map((carcass) => carcass.id)];
    const now = carcasses.map((carcass) => {
      const parts = partsOf(carcass, fitOut, gear);
      const before = last.get(carcass);
      return before && sameParts(before, parts) ? before : parts;
    });
    last = new Map(now.map((parts) => [parts.carcass, parts]));
    return now;
  };
};
