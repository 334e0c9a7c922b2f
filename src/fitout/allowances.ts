import type { Vec3 } from '../base/index.ts';
import type { NodeId } from '../design/index.ts';
import { type Board, boardSize } from './board.ts';
import type { CarcassContext } from './context.ts';
import { fastenersOf, pieceOf, screwsAlong } from './hardware.ts';
import { centreOfMass, squareMetres } from './masses.ts';
import type { MassItem, Panel } from './parts.ts';
import { type AssemblyBoards, type FittingParts, NO_PARTS, together } from './solved.ts';
import { PIECES } from './standard-pieces.ts';

const MM_PER_METRE = 1000;

interface Made {
  readonly assembly: AssemblyBoards;
  readonly panels: readonly Panel[];
  readonly masses: readonly MassItem[];
}

/** Finish on both faces of the bare plywood of an assembly; faced sheets come finished. */
const finishOf = (context: CarcassContext, { panels, assembly }: Made): number => {
  const bare = panels.filter(({ material }) => context.catalog.materials.get(material)?.kind === 'plywood');
  const area = bare.reduce((sum, { length, width }) => sum + 2 * length * width, 0);
  return assembly.boards.length > 0 ? squareMetres(area) * context.rule('finish-mass') : 0;
};

const allowance = (
  context: CarcassContext,
  { assembly, masses }: Made,
  kind: 'finish' | 'hardware',
  name: string,
  massKg: number,
): readonly MassItem[] => {
  const first = assembly.boards[0];
  if (!first || massKg <= 0) return [];
  return [
    {
      id: `${assembly.assembly}/${name}`,
      origin: first.origin,
      carcass: context.carcass.id,
      kind,
      name,
      massKg,
      sigmaKg: massKg * context.rule('allowance-sigma-share'),
      at: centreOfMass(masses),
      mover: assembly.mover,
    },
  ];
};

/** Length of edge band on a panel by its record (mm). */
const bandLengths = ({ bands, length, width }: Panel): readonly (readonly [string, number])[] =>
  [
    [bands.l1, length] as const,
    [bands.l2, length] as const,
    [bands.w1, width] as const,
    [bands.w2, width] as const,
  ].flatMap(([item, run]) => (item === null ? [] : [[item, run] as const]));

const edgeBands = (context: CarcassContext, { assembly, panels }: Made, at: Vec3, origin: NodeId): FittingParts => {
  const metres = new Map<string, number>();
  for (const [item, run] of panels.flatMap(bandLengths)) metres.set(item, (metres.get(item) ?? 0) + run / MM_PER_METRE);
  return together(
    [...metres].map(([item, quantity]) =>
      pieceOf(context, { id: `${assembly.assembly}/band-${item}`, origin, item, quantity, at, mover: assembly.mover }),
    ),
  );
};

/** Screws that hold a board of the carcass at both its ends, and a back that is not captured in a groove all round. */
const jointScrews = (context: CarcassContext, board: Board): number => {
  const [length, width] = boardSize(board);
  if (board.role.startsWith('side-')) return 0;
  if (board.role === 'runner') return screwsAlong(context, length);
  if (board.role === 'sub-floor') return 2 * screwsAlong(context, length);
  if (board.role !== 'back') return 2 * screwsAlong(context, width);
  return board.seat === 'groove' ? 0 : 2 * (screwsAlong(context, length) + screwsAlong(context, width));
};

/**
 * What an assembly has beside its panels: edge band by the metre, screws for the joints of the carcass, and the
 * allowances of the house rules for finish and for screws and glue, at the panels' centre of mass.
 */
export const allowancesOf = (context: CarcassContext, made: Made): FittingParts => {
  const { assembly, masses } = made;
  const first = assembly.boards[0];
  if (!first) return NO_PARTS;
  const panelKg = masses.reduce((sum, { massKg }) => sum + massKg, 0);
  const screws = assembly.assembly === context.carcass.id ? assembly.boards : [];
  const own: FittingParts = {
    ...NO_PARTS,
    masses: [
      ...allowance(context, made, 'finish', 'finish', finishOf(context, made)),
      ...allowance(context, made, 'hardware', 'fasteners', panelKg * context.rule('fastener-allowance-share')),
    ],
  };
  return together([
    own,
    edgeBands(context, made, centreOfMass(masses), first.origin),
    fastenersOf(context, {
      id: `${assembly.assembly}/joint-screws`,
      origin: first.origin,
      item: PIECES.joint,
      quantity: screws.reduce((sum, board) => sum + jointScrews(context, board), 0),
      mover: assembly.mover,
    }),
  ]);
};

/**
 * Cable and small electrical parts of a carcass that carries devices: the share of the house rules over the mass of
 * the devices and the carcass, at the devices' centre of mass.
 */
export const cableOf = (context: CarcassContext, masses: readonly MassItem[]): Partial<FittingParts> => {
  const devices = masses.filter(({ kind }) => kind === 'device');
  if (devices.length === 0) return {};
  const { id } = context.carcass;
  const massKg = context.rule('cable-allowance-share') * masses.reduce((sum, item) => sum + item.massKg, 0);
  const sigmaKg = massKg * context.rule('allowance-sigma-share');
  const common = { id: `${id}/cable`, origin: id, carcass: id, name: 'cable', mover: null };
  return { masses: [{ ...common, kind: 'cable', massKg, sigmaKg, at: centreOfMass(devices) }] };
};
