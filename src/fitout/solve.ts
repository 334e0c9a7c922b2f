import { groupBy, ORIGIN, type Vec3 } from '../base/index.ts';
import type { Catalog, HouseRules } from '../catalog/index.ts';
import { type Carcass, type Design, type Gear, type NodeId, openingsFrom } from '../design/index.ts';
import type { HoleWish } from './board.ts';
import { braceHoles, isLaid, layBrace } from './brace-lay.ts';
import { solveBraces } from './braces.ts';
import { type MountParts, solveMounts } from './mounts.ts';
import type { FitOut, FitProblem } from './parts.ts';
import { placesOf } from './places.ts';
import { type CarcassOrder, solveCarcass } from './solve-carcass.ts';

/** Solves designs one after the other and remembers each carcass, so that only what changed is solved again. */
export type FitOutSolver = (design: Design, rules: HouseRules) => FitOut;

const sameHole = (a: HoleWish, b: HoleWish | undefined): boolean =>
  b !== undefined &&
  a.board === b.board &&
  a.diameter === b.diameter &&
  a.at.every((value, axis) => value === b.at[axis]);

const sameOrder = (a: CarcassOrder, b: CarcassOrder): boolean =>
  a.carcass === b.carcass &&
  a.rules === b.rules &&
  a.low.every((value, axis) => value === b.low[axis]) &&
  a.gear.length === b.gear.length &&
  a.gear.every((gear, i) => gear === b.gear[i]) &&
  a.braceHoles.length === b.braceHoles.length &&
  a.braceHoles.every((hole, i) => sameHole(hole, b.braceHoles[i]));

const strayGear = (gear: Gear): FitProblem => ({
  code: 'no-such-opening',
  at: gear.id,
  axis: null,
  needMm: null,
  haveMm: null,
  because: gear.place ? [gear.place.opening] : [],
});

interface Sorted {
  readonly byCarcass: ReadonlyMap<NodeId, readonly Gear[]>;
  readonly stray: readonly FitProblem[];
}

const idsOf = (carcass: Carcass): readonly NodeId[] => openingsFrom(carcass.opening).map(({ id }) => id);

/** Which carcass each placed item of gear is in. */
const sortGear = (design: Design, openingIds: (carcass: Carcass) => readonly NodeId[]): Sorted => {
  const home = new Map<NodeId, NodeId>();
  for (const carcass of design.cabinet.carcasses) for (const id of openingIds(carcass)) home.set(id, carcass.id);
  const homeOf = ({ place }: Gear): NodeId | undefined => (place ? home.get(place.opening) : undefined);
  const placed = design.gear.filter(({ place }) => place !== null);
  const byCarcass = new Map<NodeId, readonly Gear[]>();
  for (const [id, gear] of groupBy(placed, homeOf)) if (id !== undefined) byCarcass.set(id, gear);
  return { byCarcass, stray: placed.filter((gear) => homeOf(gear) === undefined).map(strayGear) };
};

/** Where the carcasses stand that mounts hang on, as text to compare. */
const lowsUnder = (mounts: Design['mounts'], lows: ReadonlyMap<NodeId, Vec3>): string =>
  mounts.map(({ on }) => (on === null ? '' : (lows.get(on)?.join(' ') ?? ''))).join();

const joined = (parts: readonly FitOut[]): Omit<FitOut, 'problems'> => ({
  carcasses: parts.flatMap(({ carcasses }) => carcasses),
  openings: parts.flatMap(({ openings }) => openings),
  panels: parts.flatMap(({ panels }) => panels),
  bodies: parts.flatMap(({ bodies }) => bodies),
  movers: parts.flatMap(({ movers }) => movers),
  masses: parts.flatMap(({ masses }) => masses),
  hardware: parts.flatMap(({ hardware }) => hardware),
  devices: parts.flatMap(({ devices }) => devices),
  rooms: parts.flatMap(({ rooms }) => rooms),
  gear: parts.flatMap(({ gear }) => gear),
  anchors: parts.flatMap(({ anchors }) => anchors),
  braces: parts.flatMap(({ braces }) => braces),
});

/** Masses that somebody put right stand in the place of what catalogue and sheet say. */
const withKnown = (masses: FitOut['masses'], known: Design['vehicle']['knownMasses']): FitOut['masses'] => {
  if (known.length === 0) return masses;
  const byId = new Map(known.map((own) => [own.of, own]));
  return masses.map((item) => {
    const own = byId.get(item.id);
    return own ? { ...item, massKg: own.kg, sigmaKg: own.sigmaKg } : item;
  });
};

/**
 * A solver with a memory of the last design. A carcass is solved again when the carcass itself, its place, the gear
 * in it or the rules are another object than last time; everything else comes from memory. The result depends on the
 * design, the catalog and the rules alone.
 */
export const createFitOutSolver = (catalog: Catalog): FitOutSolver => {
  let last = new Map<NodeId, { readonly order: CarcassOrder; readonly parts: FitOut }>();
  let lastMounts: {
    readonly of: Design['mounts'];
    readonly key: string;
    readonly rules: HouseRules;
    readonly parts: MountParts;
  } | null = null;
  const ids = new WeakMap<Carcass, readonly NodeId[]>();
  const openingIds = (carcass: Carcass): readonly NodeId[] => {
    const known = ids.get(carcass) ?? idsOf(carcass);
    ids.set(carcass, known);
    return known;
  };
  return (design, rules) => {
    const { carcasses } = design.cabinet;
    const places = placesOf(carcasses);
    const { byCarcass, stray } = sortGear(design, openingIds);
    const now: typeof last = new Map();
    const ground = { catalog, rules, carcasses, lows: places.lows };
    const lays = design.cabinet.braces.map((brace) => layBrace(brace, ground));
    const laid = lays.filter(isLaid);
    const parts = carcasses.map((carcass) => {
      const { id } = carcass;
      const low = places.lows.get(id) ?? ORIGIN;
      const order = { carcass, gear: byCarcass.get(id) ?? [], low, rules, braceHoles: braceHoles(laid, carcass, low) };
      const before = last.get(id);
      const remembered =
        before && sameOrder(before.order, order) ? before : { order, parts: solveCarcass(order, catalog) };
      now.set(id, remembered);
      return remembered.parts;
    });
    last = now;
    // What hangs on a closure stays the same object while the mounts do, so that what was proven of it stays known.
    const key = lowsUnder(design.mounts, places.lows);
    if (lastMounts?.of !== design.mounts || lastMounts.key !== key || lastMounts.rules !== rules)
      lastMounts = {
        of: design.mounts,
        key,
        rules,
        parts: solveMounts(design.mounts, { catalog, rules, lows: places.lows }),
      };
    const mounts = lastMounts.parts;
    const all = joined(parts);
    const braces = solveBraces(lays, ground, all.panels);
    return {
      ...all,
      braces: braces.braces,
      bodies: [...all.bodies, ...braces.bodies, ...mounts.bodies],
      masses: withKnown([...all.masses, ...braces.masses, ...mounts.masses], design.vehicle.knownMasses),
      hardware: [...all.hardware, ...braces.hardware, ...mounts.hardware],
      devices: [...all.devices, ...mounts.devices],
      problems: [
        ...places.problems,
        ...parts.flatMap(({ problems }) => problems),
        ...stray,
        ...braces.problems,
        ...mounts.problems,
      ],
    };
  };
};

/** The fit-out of a design, solved from nothing. */
export const solveFitOut = (design: Design, catalog: Catalog, rules: HouseRules): FitOut =>
  createFitOutSolver(catalog)(design, rules);
