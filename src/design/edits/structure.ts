import type { Carcass } from '../cabinet.ts';
import type { Design } from '../design.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import { CHAMFER_EDGES, type Chamfer, type ChamferEdge, type Chase, type Wheelhouse } from '../structure.ts';
import { changeCarcass } from './carcasses.ts';
import { itemOf } from './change.ts';

/** The lists of a carcass that make it other than a plain box. */
export type StructureList = 'chamfers' | 'chases' | 'wheelhouses';
type PieceOf<L extends StructureList> = Carcass[L][number];

/** Sizes of ordinary make, and the share of the carcass that they leave alone at most. */
const FRESH_MM = { chamfer: 80, chase: [80, 50], wheelIn: 120, wheelUp: 220, wheelLength: 300 } as const;
const AT_MOST = 0.25;

const fitting = (mm: number, outsideMm: number): number => Math.min(mm, Math.round(outsideMm * AT_MOST));

/** The same cut at another edge of the carcass; a leg keeps its length where the new edge has one on that axis. */
export const chamferAt = (
  {
    id,
    ...legs
  }: Pick<Chamfer, 'id'> & { readonly acrossMm?: number; readonly upMm?: number; readonly deepMm?: number },
  edge: ChamferEdge,
): Chamfer => {
  const known = Object.values(legs).filter((mm) => typeof mm === 'number');
  const spare = known.at(-1) ?? FRESH_MM.chamfer;
  const { acrossMm = spare, upMm = spare, deepMm = spare } = legs;
  switch (edge) {
    case 'back-left':
    case 'back-right':
      return { id, along: 'up', corner: edge, acrossMm, deepMm };
    case 'top-back':
    case 'bottom-back':
      return { id, along: 'across', corner: edge, deepMm, upMm };
    case 'top-left':
    case 'top-right':
    case 'bottom-left':
    case 'bottom-right':
      return { id, along: 'deep', corner: edge, acrossMm, upMm };
  }
};

/** A chamfer at the first edge that has none, running the way the others run. */
const freshChamfer = (id: NodeId, { size, chamfers }: Carcass): Chamfer => {
  const taken = new Set<string>(chamfers.map(({ corner }) => corner));
  const [lead] = chamfers;
  const free = CHAMFER_EDGES.filter((edge) => !taken.has(edge));
  const edge = free.find((each) => chamferAt({ id }, each).along === (lead?.along ?? 'deep')) ?? free[0] ?? 'top-left';
  return chamferAt(
    {
      id,
      acrossMm: fitting(FRESH_MM.chamfer, size.width),
      upMm: fitting(FRESH_MM.chamfer, size.height),
      deepMm: fitting(FRESH_MM.chamfer, size.depth),
    },
    edge,
  );
};

/** Low in the middle of the back, where a loom comes in. */
const freshChase = (id: NodeId, { size }: Carcass): Chase => {
  const [long, high] = FRESH_MM.chase;
  return {
    id,
    name: '',
    panel: 'back',
    alongMm: Math.round(size.width / 2),
    acrossMm: Math.round(size.height / 2),
    sizeMm: [fitting(long, size.width), fitting(high, size.height)],
    cornerRadiusMm: 10,
    edgeTrim: 'trim-edge-rubber',
  };
};

/** In the middle of a side that has none yet. */
const freshWheelhouse = (id: NodeId, { size, wheelhouses }: Carcass): Wheelhouse => {
  const side = wheelhouses.some((own) => own.side === 'left') ? 'right' : 'left';
  const lengthMm = Math.min(FRESH_MM.wheelLength, Math.round(size.depth / 2));
  return {
    id,
    side,
    fromMm: Math.round((size.depth - lengthMm) / 2),
    lengthMm,
    inMm: fitting(FRESH_MM.wheelIn, size.width),
    upMm: Math.min(FRESH_MM.wheelUp, Math.round(size.height / 2)),
  };
};

const FRESH: { readonly [L in StructureList]: (id: NodeId, carcass: Carcass) => PieceOf<L> } = {
  chamfers: freshChamfer,
  chases: freshChase,
  wheelhouses: freshWheelhouse,
};
const PREFIX: { readonly [L in StructureList]: string } = {
  chamfers: 'chamfer',
  chases: 'chase',
  wheelhouses: 'wheelhouse',
};

const withPieces = (design: Design, carcass: NodeId, list: StructureList, pieces: Carcass[StructureList]): Design =>
  changeCarcass(design, carcass, { [list]: pieces });

/** Adds a chamfer, a wiring chase or a wheelhouse of ordinary make to a carcass. */
export const addStructure = (
  design: Design,
  carcass: NodeId,
  list: StructureList,
): { readonly design: Design; readonly id: NodeId } => {
  const own = itemOf(design.cabinet.carcasses, carcass, 'carcass');
  const id = freshIds(design)(PREFIX[list]);
  const pieces = [...own[list], FRESH[list](id, own)] as Carcass[StructureList];
  return { design: withPieces(design, carcass, list, pieces), id };
};

/** Cuts a carcass out for wheelhouses whose sizes are known, beside those that it has. */
export const addWheelhouses = (
  design: Design,
  carcass: NodeId,
  cuts: readonly Omit<Wheelhouse, 'id'>[],
): { readonly design: Design; readonly ids: readonly NodeId[] } => {
  const own = itemOf(design.cabinet.carcasses, carcass, 'carcass');
  const next = freshIds(design);
  const added = cuts.map((cut): Wheelhouse => ({ ...cut, id: next(PREFIX.wheelhouses) }));
  return {
    design: withPieces(design, carcass, 'wheelhouses', [...own.wheelhouses, ...added]),
    ids: added.map(({ id }) => id),
  };
};

export const changeStructure = <L extends StructureList>(
  design: Design,
  carcass: NodeId,
  list: L,
  piece: PieceOf<L>,
): Design => {
  const own: readonly PieceOf<StructureList>[] = itemOf(design.cabinet.carcasses, carcass, 'carcass')[list];
  itemOf(own, piece.id, PREFIX[list]);
  const pieces = own.map((each) => (each.id === piece.id ? piece : each));
  return withPieces(design, carcass, list, pieces as Carcass[StructureList]);
};

export const removeStructure = (design: Design, carcass: NodeId, list: StructureList, id: NodeId): Design => {
  const own: readonly PieceOf<StructureList>[] = itemOf(design.cabinet.carcasses, carcass, 'carcass')[list];
  itemOf(own, id, PREFIX[list]);
  const pieces = own.filter((each) => each.id !== id);
  return withPieces(design, carcass, list, pieces as Carcass[StructureList]);
};
