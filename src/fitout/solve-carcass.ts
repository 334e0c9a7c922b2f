import { groupBy, type Vec3 } from '../base/index.ts';
import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { Carcass, Gear, NodeId } from '../design/index.ts';
import { allowancesOf } from './allowances.ts';
import { carcassShell } from './carcass-boards.ts';
import type { CarcassContext } from './context.ts';
import { carcassPose, outsideSize } from './frames.ts';
import { intoVehicle } from './into-vehicle.ts';
import { rememberedLeast } from './least.ts';
import { panelsOf } from './panels.ts';
import type { FitOut } from './parts.ts';
import { placeGear } from './place-gear.ts';
import { tooSmall } from './problem.ts';
import { ruleValue } from './rule-values.ts';
import { solveRooms } from './solve-rooms.ts';
import { type AssemblyBoards, type FittingParts, type Room, together } from './solved.ts';
import { PIECES } from './standard-pieces.ts';
import { stockOf } from './stock.ts';

/** Everything that decides how one carcass comes out. */
export interface CarcassOrder {
  readonly carcass: Carcass;
  /** The gear whose place is in one of its openings, in the order of the design. */
  readonly gear: readonly Gear[];
  /** Low corner on the vehicle's axes. */
  readonly low: Vec3;
  readonly rules: HouseRules;
}

const contextOf = ({ carcass, gear, rules }: CarcassOrder, catalog: Catalog): CarcassContext => {
  const byOpening = groupBy(gear, (item) => item.place?.opening);
  const bare = {
    catalog,
    rules,
    carcass,
    material: stockOf(catalog, carcass.material, carcass.id).material,
    gearIn: (opening: NodeId) => byOpening.get(opening) ?? [],
    rule: (id: string) => ruleValue(rules, id),
  };
  return { ...bare, least: rememberedLeast(bare) };
};

/** Boards of the same assembly joined into one list, in the order in which they were made. */
const assembled = (list: readonly AssemblyBoards[]): readonly AssemblyBoards[] =>
  [...groupBy(list, ({ assembly }) => assembly)].map(([assembly, lists]) => ({
    assembly,
    mover: lists[0]?.mover ?? null,
    boards: lists.flatMap(({ boards }) => boards),
  }));

/** A carcass in which the panels leave no room: nothing of it can be made. */
const noInside = ({ carcass, material }: CarcassContext, parts: Partial<FittingParts>) => {
  const need = 2 * material.thicknessMm;
  const [across, , up] = outsideSize(carcass);
  const axis = across <= need ? 0 : up <= need ? 2 : 1;
  const have = outsideSize(carcass)[axis];
  const least = axis === 1 ? have : need;
  return together([parts, { problems: [tooSmall(carcass.id, axis, least, have, ['panels leave no room'])] }]);
};

/** One carcass in the vehicle: its part of the fit-out. */
export const solveCarcass = (order: CarcassOrder, catalog: Catalog): FitOut => {
  const context = contextOf(order, catalog);
  const { carcass } = context;
  const pose = carcassPose(carcass, order.low);
  const shell = carcassShell(context);
  const stock = stockOf(catalog, carcass.material, carcass.id);
  const start: Partial<FittingParts> = { problems: [...stock.problems, ...shell.problems] };
  const root: Room | null = shell.inside && {
    opening: carcass.opening,
    parent: null,
    depth: 0,
    box: shell.inside,
    walls: shell.walls,
    mover: null,
    assembly: carcass.id,
    material: context.material,
    housing: shell.housing,
    fits: true,
    keeps: 'nothing',
  };
  const rooms = root ? solveRooms(root, context) : { ...noInside(context, {}), openings: [] };
  const shellBoards: AssemblyBoards = { assembly: carcass.id, mover: null, boards: shell.boards };
  const boards = assembled([shellBoards, ...rooms.assemblies]);
  const made = boards.map((assembly) => ({ assembly, ...panelsOf(assembly, rooms.holes, context) }));
  const allowances = made.map((each) => allowancesOf(context, each, PIECES.joint));
  const parts = together([start, rooms, ...made, ...allowances]);
  const gear = placeGear(order.gear, carcass.id, parts.rooms, rooms.openings);
  const all = intoVehicle(
    { ...parts, bodies: [...parts.bodies, ...gear.bodies], masses: [...parts.masses, ...gear.masses] },
    pose,
  );
  const own = all.masses.filter(({ kind }) => kind !== 'gear');
  return {
    carcasses: [
      {
        id: carcass.id,
        name: carcass.name,
        pose,
        size: outsideSize(carcass),
        massKg: own.reduce((sum, { massKg }) => sum + massKg, 0),
      },
    ],
    openings: rooms.openings,
    panels: all.panels,
    bodies: all.bodies,
    movers: all.movers,
    masses: all.masses,
    hardware: all.hardware,
    devices: all.devices,
    rooms: all.rooms,
    gear: gear.gear,
    problems: [...all.problems, ...gear.problems],
  };
};
