import { groupBy } from '../../base/index.ts';
import type { Catalog } from '../../catalog/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { Panel } from './wood.ts';

type Hardware = FitOut['hardware'][number];

/** Panels that are put together on the bench and then handled as one: a carcass, a drawer box, a tray, a door. */
export interface Assembly {
  /** The carcass's own id, or that of the mover. */
  readonly id: string;
  readonly carcass: string;
  readonly mover: string | null;
  readonly panels: readonly Panel[];
}

/** By role: with what a person would begin, and what would go on last. */
const ROLE_RANKS: readonly (readonly [prefix: string, rank: number])[] = [
  ['side-left', 0],
  ['box-side-left', 0],
  ['left', 0],
  ['deck', 0],
  ['bottom', 1],
  ['box-bottom', 1],
  ['box-back', 1],
  ['divider', 2],
  ['partition', 2],
  ['shelf', 3],
  ['top', 4],
  ['back', 5],
  ['box-front', 5],
  ['side-right', 6],
  ['box-side-right', 6],
  ['right', 6],
  ['runner', 8],
  ['sub-floor', 8],
  ['front', 9],
  ['plate', 10],
];
const OTHER_RANK = 7;

export const rankOf = ({ role }: Panel): number =>
  ROLE_RANKS.find(([prefix]) => role === prefix || role.startsWith(`${prefix}-`))?.[1] ?? OTHER_RANK;

/** What is put together apart: the frame of each carcass, and what moves with each mover. */
export const assembliesOf = (fitOut: FitOut): readonly Assembly[] =>
  [...groupBy(fitOut.panels, ({ carcass, mover }) => `${carcass}\n${mover ?? ''}`).values()].flatMap(
    (panels): readonly Assembly[] => {
      const [first] = panels;
      if (!first) return [];
      const { carcass, mover } = first;
      return [{ id: mover ?? carcass, carcass, mover, panels }];
    },
  );

/** What is fetched for an assembly, the same pieces together, with how many or how long. */
export const piecesOf = (
  fitOut: FitOut,
  catalog: Catalog,
  { carcass, mover }: Assembly,
): readonly { readonly name: string; readonly quantity: string }[] => {
  const own = fitOut.hardware.filter((use) => use.carcass === carcass && use.mover === mover);
  return [...groupBy(own, ({ name, lengthMm }) => `${name}\n${lengthMm ?? ''}`).values()].flatMap((uses) => {
    const [first] = uses;
    if (!first) return [];
    const metres = first.from === 'hardware' && catalog.hardware.get(first.item)?.by === 'metre';
    const sum = uses.reduce((total, use) => total + use.quantity, 0);
    return [{ name: first.name, quantity: metres ? `${Math.ceil(sum * 10) / 10} m` : String(sum) }];
  });
};

/** What joins or finishes parts and is named where it is used, not fixed as a piece of its own. */
const NOT_PIECES: readonly string[] = ['screw', 'bolt', 'nut', 'washer', 'insert', 'rivet', 'edge-band'];

export const isPiece = ({ from, item }: Hardware, catalog: Catalog): boolean =>
  from === 'hardware' && !NOT_PIECES.includes(catalog.hardware.get(item)?.kind ?? '');
