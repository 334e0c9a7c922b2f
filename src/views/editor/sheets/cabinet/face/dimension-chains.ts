import type { Carcass, NodeId, Opening, SizeRule } from '../../../../../design/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';
import { faceRect } from './face-model.ts';

/** One figure of a chain, from one place to another along it; across from the left or up from the bottom. */
export interface ChainPiece {
  readonly from: number;
  readonly to: number;
  /** What is set when another figure is typed here. */
  readonly sets:
    | { readonly kind: 'part'; readonly parent: NodeId; readonly index: number; readonly rule: SizeRule }
    | { readonly kind: 'carcass'; readonly side: 'width' | 'height' };
  /** The room that the figure measures, or null for an overall figure. */
  readonly room: NodeId | null;
}

/** A row of figures beside the drawing. `rank` 0 stands next to it. */
export interface Chain {
  readonly side: 'left' | 'right' | 'bottom';
  readonly rank: number;
  readonly pieces: readonly ChainPiece[];
}

type Divided = Opening & { readonly content: Extract<Opening['content'], { readonly kind: 'divided' }> };

const isDivided = (opening: Opening): opening is Divided => opening.content.kind === 'divided';

/** The divided openings that are seen at the face, each before what it holds, in the layers that are shown. */
const dividedAtFace = (opening: Opening, layerOf: Readonly<Record<string, number>>): readonly Divided[] => {
  if (!isDivided(opening)) return [];
  const { along, parts } = opening.content;
  const shown = along === 'layers' ? parts.slice(layerOf[opening.id] ?? 0).slice(0, 1) : parts;
  return [opening, ...shown.flatMap((part) => dividedAtFace(part.opening, layerOf))];
};

const holds = (opening: Opening, id: string | null): boolean =>
  opening.id === id || (isDivided(opening) && opening.content.parts.some((part) => holds(part.opening, id)));

interface Sources {
  readonly carcass: Carcass;
  readonly fitOut: FitOut;
  readonly layerOf: Readonly<Record<string, number>>;
  /** The opening that is selected, or null. */
  readonly selected: string | null;
}

const piecesOf = (opening: Divided, fitOut: FitOut): readonly ChainPiece[] => {
  const { along, parts } = opening.content;
  return parts.flatMap((part, index) => {
    const solved = fitOut.openings.find((candidate) => candidate.id === part.opening.id);
    if (!solved) return [];
    const { across, up, width, height } = faceRect(solved);
    const [from, to] = along === 'columns' ? [across, across + width] : [up, up + height];
    const sets = { kind: 'part', parent: opening.id, index, rule: part.size } as const;
    return [{ from, to, sets, room: part.opening.id }];
  });
};

/** Middle of an opening across the face, to tell which side a chain belongs to. */
const middleAcross = (opening: Opening, fitOut: FitOut): number => {
  const solved = fitOut.openings.find((candidate) => candidate.id === opening.id);
  return solved ? solved.from[0] + solved.size[0] / 2 : 0;
};

/** The division nearest to the selection first: those that hold it from the inside out, then the rest in order. */
const byNearness = (divided: readonly Divided[], selected: string | null): readonly Divided[] => {
  const around = divided.filter((opening) => selected !== null && holds(opening, selected)).toReversed();
  return [...around, ...divided.filter((opening) => !around.includes(opening))];
};

/**
 * The figures that a person would pencil round the face: the columns below, the rows of the selected column on its
 * own side, those of another column on the other side, and the whole width and height.
 */
export const dimensionChains = ({ carcass, fitOut, layerOf, selected }: Sources): readonly Chain[] => {
  const divided = byNearness(dividedAtFace(carcass.opening, layerOf), selected);
  const rows = divided.filter((opening) => opening.content.along === 'rows');
  const [columns] = divided.filter((opening) => opening.content.along === 'columns');
  const half = carcass.size.width / 2;
  const chains: Chain[] = [];
  const [first] = rows;
  if (first) {
    const side = middleAcross(first, fitOut) <= half ? 'left' : 'right';
    const other = rows.find((opening) => (middleAcross(opening, fitOut) <= half ? 'left' : 'right') !== side);
    chains.push({ side, rank: 0, pieces: piecesOf(first, fitOut) });
    if (other) chains.push({ side: side === 'left' ? 'right' : 'left', rank: 0, pieces: piecesOf(other, fitOut) });
  }
  if (columns) chains.push({ side: 'bottom', rank: 0, pieces: piecesOf(columns, fitOut) });
  const overall = (side: 'width' | 'height', to: number): readonly ChainPiece[] => [
    { from: 0, to, sets: { kind: 'carcass', side }, room: null },
  ];
  const rank = (side: Chain['side']): number => (chains.some((chain) => chain.side === side) ? 1 : 0);
  return [
    ...chains,
    { side: 'bottom', rank: rank('bottom'), pieces: overall('width', carcass.size.width) },
    { side: 'right', rank: rank('right'), pieces: overall('height', carcass.size.height) },
  ];
};
