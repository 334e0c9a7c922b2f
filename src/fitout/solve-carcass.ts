import { groupBy, type Vec3 } from '../base/index.ts';
import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { Carcass, Gear, NodeId } from '../design/index.ts';
import { allowancesOf, cableOf } from './allowances.ts';
import { anchorParts } from './anchors.ts';
import { AXES } from './axes.ts';
import type { HoleWish } from './board.ts';
import { type CarcassShell, carcassShell } from './carcass-boards.ts';
import { chamferPanels } from './chamfer-panels.ts';
import { chasesOf } from './chases.ts';
import { clippedOutline } from './clip-board.ts';
import { clipDividers } from './clip-dividers.ts';
import type { CarcassContext } from './context.ts';
import { carcassPose, outsideSize } from './frames.ts';
import { intoVehicle } from './into-vehicle.ts';
import { rememberedLeast } from './least.ts';
import { panelsOf, wishesByBoard } from './panels.ts';
import type { FitOut, FitProblem, SolvedOpening } from './parts.ts';
import { placeGear } from './place-gear.ts';
import { tooSmall } from './problem.ts';
import { solveRooms } from './solve-rooms.ts';
import { type AssemblyBoards, type FittingParts, NO_PARTS, type Room, together } from './solved.ts';
import { standBoards } from './stand.ts';
import { steepEdges } from './steep-edges.ts';
import { stockOf } from './stock.ts';
import { anchorsInWheels, notchedFor, wheelLinings } from './wheelhouses.ts';

/** Everything that decides how one carcass comes out. */
export interface CarcassOrder {
  readonly carcass: Carcass;
  /** The gear whose place is in one of its openings, in the order of the design. */
  readonly gear: readonly Gear[];
  /** Low corner on the vehicle's axes. */
  readonly low: Vec3;
  readonly rules: HouseRules;
  /** Holes that braces want in its panels, in its own coordinates. */
  readonly braceHoles: readonly HoleWish[];
}

const contextOf = ({ carcass, gear, rules }: CarcassOrder, catalog: Catalog): CarcassContext => {
  const byOpening = groupBy(gear, (item) => item.place?.opening);
  const bare = {
    catalog,
    rules,
    carcass,
    material: stockOf(catalog, carcass.material, carcass.id).material,
    gearIn: (opening: NodeId) => byOpening.get(opening) ?? [],
    rule: (id: string) => rules.value(id),
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

/** Panels as thick as the carcass is wide, high or deep: nothing of it can be made. */
const noInside = (carcass: Carcass, shell: CarcassShell): readonly FitProblem[] => {
  const size = outsideSize(carcass);
  const axis = AXES.find((each) => shell.taken[each] >= size[each]);
  if (shell.inside || axis === undefined) return [];
  return [tooSmall(carcass.id, axis, shell.taken[axis], size[axis], ['panels leave no room'])];
};

const rootRoom = ({ carcass, material }: CarcassContext, shell: CarcassShell): Room | null =>
  shell.inside && {
    opening: carcass.opening,
    parent: null,
    depth: 0,
    box: shell.inside,
    walls: shell.walls,
    mover: null,
    assembly: carcass.id,
    material,
    housing: shell.housing,
    fits: true,
    keeps: 'nothing',
  };

interface Inside {
  readonly parts: FittingParts;
  readonly openings: readonly SolvedOpening[];
}

/** Everything of a carcass but its gear, in carcass coordinates. */
const solveInside = (context: CarcassContext, braceHoles: readonly HoleWish[]): Inside => {
  const { carcass, catalog } = context;
  const shell = carcassShell(context);
  const stock = stockOf(catalog, carcass.material, carcass.id);
  const root = rootRoom(context, shell);
  const inTheWay = {
    planes: shell.chamfers.map(({ inner }) => inner),
    boxes: shell.wheels.map(({ taken }) => taken),
  };
  const rooms = root ? solveRooms(root, context, inTheWay) : { ...NO_PARTS, openings: [] };
  const stand = standBoards(context);
  const lining = root ? wheelLinings(shell.wheels, root.box, context) : { assemblies: [], parts: NO_PARTS };
  const anchors = anchorParts(context, [...shell.boards, ...stand.boards]);
  const chases = chasesOf(context, shell.boards);
  const chamfers = chamferPanels(shell.chamfers, shell.outside, context);
  const wishes = wishesByBoard(together([rooms, anchors, chases, { holes: braceHoles }]));
  const shellBoards: AssemblyBoards = { assembly: carcass.id, mover: null, boards: shell.boards };
  const under: AssemblyBoards = {
    assembly: `${carcass.id}/stand`,
    mover: null,
    boards: stand.boards.map((board) => notchedFor(shell.wheels, board)),
  };
  const dividers = clipDividers(rooms.assemblies, shell, context);
  const made = assembled([
    shellBoards,
    ...dividers.assemblies,
    ...lining.assemblies,
    ...(stand.boards.length > 0 ? [under] : []),
  ]).map((assembly) => ({ assembly, ...panelsOf(assembly, wishes, context) }));
  const problems = [
    ...stock.problems,
    ...shell.problems,
    ...stand.problems,
    ...dividers.problems,
    ...noInside(carcass, shell),
    ...shell.boards.flatMap((board) => steepEdges(context, board, clippedOutline(board).bevels)),
    ...anchorsInWheels(context, anchors.anchors, shell.wheels),
  ];
  const parts = together([
    { problems },
    rooms,
    anchors,
    chases,
    chamfers,
    lining.parts,
    ...made,
    ...made.map((each) => allowancesOf(context, each)),
  ]);
  return { parts: together([parts, cableOf(context, parts.masses)]), openings: rooms.openings };
};

/** One carcass in the vehicle: its part of the fit-out. */
export const solveCarcass = (order: CarcassOrder, catalog: Catalog): FitOut => {
  const context = contextOf(order, catalog);
  const { id, name } = order.carcass;
  const pose = carcassPose(order.carcass, order.low);
  const { parts, openings } = solveInside(context, order.braceHoles);
  const gear = placeGear(order.gear, id, parts.rooms, openings, context.rule);
  const bodies = [...parts.bodies, ...gear.bodies];
  const { panels, movers, masses, hardware, devices, rooms, anchors, ...rest } = intoVehicle(
    { ...parts, bodies, masses: [...parts.masses, ...gear.masses] },
    pose,
  );
  const massKg = parts.masses.reduce((sum, item) => sum + item.massKg, 0);
  return {
    carcasses: [{ id, name, pose, size: outsideSize(order.carcass), massKg }],
    openings,
    panels,
    bodies: rest.bodies,
    movers,
    masses,
    hardware,
    devices,
    rooms,
    gear: gear.gear,
    anchors,
    braces: [],
    problems: [...rest.problems, ...gear.problems],
  };
};
