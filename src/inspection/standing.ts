import type { Box } from '../base/index.ts';
import { shapeBox } from '../bodies/index.ts';
import type { CargoSpace, VehicleBody } from '../envelope/index.ts';
import { type FitOut, wholePart } from '../fitout/index.ts';

export type CabinetBody = FitOut['bodies'][number];

/** A body of the cabinet with what every rule asks about it. */
export interface StandingBody {
  readonly body: CabinetBody;
  readonly box: Box;
  /** The closure that it hangs on, or null. */
  readonly closure: string | null;
  /**
   * What a person would move to cure it: the carcass for its panels and hardware, the item itself for gear and
   * devices, the node it was mounted as for anything outside a carcass.
   */
  readonly subject: string;
  /** Height of the underside of its carcass, or of the body itself outside a carcass. */
  readonly underside: number;
}

/** A body of the vehicle with its box. */
export interface StandingVehicle {
  readonly body: VehicleBody;
  readonly box: Box;
}

/** What a finding names: the panel or the piece of hardware itself, and the item or device for anything else. */
export const namedPart = (body: CabinetBody): string =>
  body.kind === 'panel' || body.kind === 'hardware' ? wholePart(body.id) : body.origin;

const subjectOf = (body: CabinetBody): string =>
  body.carcass !== null && (body.kind === 'panel' || body.kind === 'hardware') ? body.carcass : body.origin;

/** The closure that each body's node hangs on: as the body itself says, or as its device was mounted. */
const closuresOf = (fitout: FitOut, space: CargoSpace | null): ((body: CabinetBody) => string | null) => {
  const closures = new Set<string>(space?.closures.map((closure) => closure.id));
  const mounted = new Map<string, string | null>(fitout.devices.map(({ origin, mover }) => [origin, mover]));
  return (body) => {
    const carrier = body.mover ?? mounted.get(body.origin) ?? null;
    return carrier !== null && closures.has(carrier) ? carrier : null;
  };
};

/** The bodies of the fit-out, in its order. */
export const standingBodies = (fitout: FitOut, space: CargoSpace | null): readonly StandingBody[] => {
  const closureOf = closuresOf(fitout, space);
  const boxed = fitout.bodies.map((body) => ({ body, box: shapeBox(body.shape) }));
  const lowest = new Map<string, number>();
  for (const { body, box } of boxed)
    if (body.carcass !== null) lowest.set(body.carcass, Math.min(lowest.get(body.carcass) ?? Infinity, box.min[2]));
  return boxed.map(({ body, box }) => ({
    body,
    box,
    closure: closureOf(body),
    subject: subjectOf(body),
    underside: body.carcass === null ? box.min[2] : (lowest.get(body.carcass) ?? box.min[2]),
  }));
};

export const standingVehicle = (space: CargoSpace | null): readonly StandingVehicle[] =>
  (space?.bodies ?? []).map((body) => ({ body, box: shapeBox(body.shape) }));
