import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import { sameValue } from './same-value.ts';

/** What moves as one: the parts of a carcass, or of no carcass, that one mover carries, with the gear among them. */
export interface RigidParts {
  readonly carcass: string | null;
  /** What it is carried in and out with: its carcass, or the mount that it is. */
  readonly carried: string | null;
  readonly mover: string | null;
  readonly fitOut: FitOut;
  readonly gear: Design['gear'];
}

type Carried = FitOut['panels'][number] | FitOut['bodies'][number];

/** Things by carcass and mover, each group in the order of its things. */
const byCarrier = <T extends Carried>(things: readonly T[]): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const key = `${thing.carcass ?? thing.origin} ${thing.mover ?? ''}`;
    const group = groups.get(key);
    if (group) group.push(thing);
    else groups.set(key, [thing]);
  }
  return groups;
};

const partsOf = (
  panels: FitOut['panels'],
  bodies: FitOut['bodies'],
  fitOut: FitOut,
  gear: Design['gear'],
): RigidParts => {
  const { carcass = null, mover = null, origin = null } = panels[0] ?? bodies[0] ?? {};
  const origins = new Set<string>(bodies.map((body) => body.origin));
  const placed = fitOut.gear.filter((item) => origins.has(item.gear));
  const stood = new Set<string>(placed.map(({ opening, level }) => `${opening} ${level}`));
  return {
    carcass,
    carried: carcass ?? origin,
    mover,
    gear: gear.filter((item) => origins.has(item.id)),
    fitOut: {
      ...fitOut,
      carcasses: fitOut.carcasses.filter((one) => one.id === carcass),
      panels,
      bodies,
      rooms: fitOut.rooms.filter((room) => stood.has(`${room.opening} ${room.level}`)),
      gear: placed,
      devices: fitOut.devices.filter((device) => origins.has(device.origin)),
    },
  };
};

/** All that the solids of these parts are made from. Light depends on the carcass only for what stands still in it. */
const makings = ({ mover, fitOut, gear }: RigidParts): readonly unknown[] => [
  fitOut.panels,
  fitOut.bodies,
  fitOut.gear,
  fitOut.rooms.map(({ opening, level, pose }) => [opening, level, pose]),
  fitOut.devices,
  gear.map(({ id, kind }) => [id, kind]),
  mover === null ? fitOut.carcasses.map(({ pose, size }) => [pose, size]) : null,
];

type Keeper = <T extends Carried>(things: readonly T[]) => readonly T[];

/** Gives things that hold the same as last time as the objects of last time. */
const createKeeper = (): Keeper => {
  let last: ReadonlyMap<string, Carried> = new Map();
  return <T extends Carried>(things: readonly T[]): readonly T[] => {
    const kept = things.map((thing): T => {
      const before = last.get(thing.id);
      return before && sameValue(before, thing) ? (before as T) : thing;
    });
    last = new Map(kept.map((thing) => [thing.id, thing]));
    return kept;
  };
};

/**
 * Parts a fit-out by what moves as one, with a memory of the last time: panels and bodies, and parts in which nothing
 * has changed, are the same objects again, so that an edit makes anew only the boards that it touches.
 */
export const createPartition = (): ((fitOut: FitOut, gear: Design['gear']) => readonly RigidParts[]) => {
  let last: ReadonlyMap<string, RigidParts> = new Map();
  const [keepPanels, keepBodies] = [createKeeper(), createKeeper()];
  return (fitOut, gear) => {
    const panels = byCarrier(keepPanels(fitOut.panels));
    const bodies = byCarrier(keepBodies(fitOut.bodies));
    const now = new Map<string, RigidParts>();
    for (const key of new Set([...panels.keys(), ...bodies.keys()])) {
      const parts = partsOf(panels.get(key) ?? [], bodies.get(key) ?? [], fitOut, gear);
      const before = last.get(key);
      now.set(key, before && sameValue(makings(before), makings(parts)) ? before : parts);
    }
    last = now;
    return [...now.values()];
  };
};
