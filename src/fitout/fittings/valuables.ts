import { type Drawer, type FittingByKind, FRESH_FITTINGS } from '../../design/index.ts';
import { RIGHT, UP, UPWARD, withAxis, withSpan } from '../axes.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { matParts, matThick } from '../mat.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { stockOf } from '../stock.ts';
import { drawerSolver } from './drawer.ts';
import type { FittingSolver } from './solver.ts';

type Valuables = FittingByKind['valuables'];

/** The box is a drawer whose latch is the lock, with the pull beside it. */
const drawerOf = (fitting: Valuables): Drawer => ({
  ...FRESH_FITTINGS.drawer(() => fitting.inside.id),
  slide: fitting.slide,
  slideLengthMm: fitting.slideLengthMm,
  boxMaterial: fitting.boxMaterial,
  bottomMaterial: fitting.bottomMaterial,
  latch: fitting.lock,
  pull: fitting.pull,
  inside: fitting.inside,
});

const coverThick = ({ coverMaterial }: Valuables, context: CarcassContext): number =>
  coverMaterial === null ? 0 : stockOf(context.catalog, coverMaterial, context.carcass.id).material.thicknessMm;

/** A sheet right over the box, housed in the sides as deep as they allow. */
const coverBoard = (fitting: Valuables, room: Room, context: CarcassContext): readonly Board[] => {
  const { coverMaterial } = fitting;
  if (coverMaterial === null) return [];
  const { min, max } = room.box;
  const { opening } = room;
  const into = (side: 'left' | 'right'): number => (room.fits ? (room.walls[side]?.housing ?? 0) : 0);
  const lying = withSpan(room.box, UP, max[UP] - coverThick(fitting, context), max[UP]);
  const owner = opening.name === '' ? context.carcass.name : opening.name;
  return [
    {
      id: `${opening.id}/cover`,
      origin: opening.id,
      role: 'cover',
      name: `${owner} cover`.trim(),
      material: stockOf(context.catalog, coverMaterial, opening.id).material,
      box: withSpan(lying, 0, min[0] - into('left'), max[0] + into('right')),
      along: RIGHT,
      face: UPWARD,
      seat: 'dado',
      side: null,
      band: null,
    },
  ];
};

const coverParts = (fitting: Valuables, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const boards = coverBoard(fitting, room, context);
  const assembly = room.fits ? room.assembly : `${id}/loose`;
  const open = (['left', 'right'] as const).filter((side) => room.walls[side] === null);
  const problems =
    boards.length === 0
      ? room.walls.top === null
        ? [badJoint(id, ['nothing closes the locked box above'])]
        : []
      : [
          ...stockOf(context.catalog, fitting.coverMaterial ?? '', id).problems,
          ...(open.length > 0 ? [badJoint(id, [`cover meets no panel at its ${open.join(' and ')}`])] : []),
        ];
  return { ...NO_PARTS, assemblies: boards.length > 0 ? [{ assembly, mover: room.mover, boards }] : [], problems };
};

const solveValuables = (fitting: Valuables, room: Room, context: CarcassContext): FittingParts => {
  const { opening } = room;
  const name = opening.name === '' ? `${context.carcass.name} valuables`.trim() : opening.name;
  const under = withSpan(room.box, UP, room.box.min[UP], room.box.max[UP] - coverThick(fitting, context));
  const parts = drawerSolver.solve(drawerOf(fitting), { ...room, box: under, opening: { ...opening, name } }, context);
  const cover = coverParts(fitting, room, context);
  const [box] = parts.assemblies;
  const [inner] = parts.inner;
  if (!box?.mover || !inner) return together([parts, cover]);
  const lined = withAxis(inner.box.min, UP, inner.box.min[UP] + matThick(context, fitting.liner));
  return together([
    { ...parts, inner: [{ ...inner, box: { min: lined, max: inner.box.max } }] },
    cover,
    matParts(context, { id: `${opening.id}/liner`, origin: opening.id, item: fitting.liner }, inner.box, box.mover),
  ]);
};

/** A drawer behind a lock, its bottom lined, a fixed sheet over it. */
export const valuablesSolver: FittingSolver<Valuables> = {
  leastRoom: (fitting, where, context) => {
    const [across, deep, up] = drawerSolver.leastRoom(drawerOf(fitting), where, context);
    return [across, deep, up + matThick(context, fitting.liner) + coverThick(fitting, context)];
  },
  solve: solveValuables,
};
