import type { Chain } from './dimension-chains.ts';
import { trueScale } from './true-scale.ts';

/** Where the face stands on the board, in pixels. */
export interface FaceLayout {
  readonly pxPerMm: number;
  readonly oneTo: number;
  readonly width: number;
  readonly height: number;
  /** A place across or up the face as a place on the board. */
  readonly x: (across: number) => number;
  readonly y: (up: number) => number;
  /** Where the line of a chain stands: x for the upright ones, y for the lower ones. */
  readonly chainAt: (chain: Pick<Chain, 'side' | 'rank'>) => number;
}

/** Room for a chain beside the face, and for the figures of upright chains. */
const UPRIGHT_CHAIN_PX = 62;
const LOWER_CHAIN_PX = 36;
const EDGE_PX = 12;
/** How far the first chain stands off the face. */
const OFF_PX = 18;

const ranksOn = (chains: readonly Chain[], side: Chain['side']): number =>
  chains.filter((chain) => chain.side === side).reduce((most, chain) => Math.max(most, chain.rank + 1), 0);

/** Lays the face and its chains out on a board of the given width, in the largest usual scale that fits. */
export const faceLayout = (
  face: { readonly width: number; readonly height: number },
  chains: readonly Chain[],
  board: { readonly width: number; readonly tallest: number },
): FaceLayout => {
  const left = EDGE_PX + ranksOn(chains, 'left') * UPRIGHT_CHAIN_PX;
  const right = EDGE_PX + ranksOn(chains, 'right') * UPRIGHT_CHAIN_PX;
  const bottom = EDGE_PX + ranksOn(chains, 'bottom') * LOWER_CHAIN_PX;
  const room = {
    width: Math.max(80, board.width - left - right),
    height: Math.max(80, board.tallest - bottom - EDGE_PX),
  };
  const { pxPerMm, oneTo } = trueScale(face, room);
  const wide = face.width * pxPerMm;
  const tall = face.height * pxPerMm;
  const start = left + Math.max(0, (board.width - left - right - wide) / 2);
  const chainAt = ({ side, rank }: Pick<Chain, 'side' | 'rank'>): number => {
    if (side === 'bottom') return EDGE_PX + tall + OFF_PX + rank * LOWER_CHAIN_PX;
    if (side === 'left') return start - OFF_PX - rank * UPRIGHT_CHAIN_PX;
    return start + wide + OFF_PX + rank * UPRIGHT_CHAIN_PX;
  };
  return {
    pxPerMm,
    oneTo,
    width: board.width,
    height: tall + bottom + EDGE_PX,
    x: (across) => start + across * pxPerMm,
    y: (up) => EDGE_PX + tall - up * pxPerMm,
    chainAt,
  };
};
