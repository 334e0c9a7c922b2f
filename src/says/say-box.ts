import type { LengthUnits } from '../base/index.ts';
import { BOX_SIDES, type BoxSide, type LargestBox } from '../envelope/index.ts';
import { sayLength } from './amounts.ts';

type Limit = LargestBox['limits'][BoxSide];

const WHAT: Readonly<Record<NonNullable<Limit>['kind'], (name: string) => string>> = {
  skin: () => 'the trim',
  obstacle: (name) => name,
  closure: (name) => `${name} on its way`,
  zone: (name) => `the zone ${name}`,
  carcass: (name) => name,
};

const sayLimit = (side: BoxSide, limit: Limit, names: (id: string) => string, units: LengthUnits): string => {
  if (side === 'bottom') return 'stands where it was put';
  if (!limit) return 'nothing within a millimetre';
  const what = WHAT[limit.kind](names(limit.id));
  return limit.askedMm > 0 ? `${what}, kept ${sayLength(limit.askedMm, units)} clear` : what;
};

/** Why nothing stands on a spot. */
export const sayNoBox = (blocker: Limit, units: LengthUnits, names: (id: string) => string): string =>
  blocker === null
    ? 'Nothing stands there: the spot lies outside of the cargo space.'
    : `Nothing stands there: too near to ${sayLimit('top', blocker, names, units)}. Choose another spot or another height.`;

export interface SaidBox {
  /** Width, height, depth. */
  readonly size: string;
  readonly sides: readonly { readonly side: BoxSide; readonly limit: string }[];
}

/** The largest carcass for a spot in words: its size as it is seen from the rear, and what stops it on each side. */
export const sayBox = ({ sizeMm, limits }: LargestBox, units: LengthUnits, names: (id: string) => string): SaidBox => {
  const [depth, width, height] = sizeMm;
  const said = [width, height, depth].map((mm) => sayLength(Math.floor(mm), units));
  return {
    size: `${said[0]} wide × ${said[1]} high × ${said[2]} deep`,
    sides: BOX_SIDES.map((side) => ({ side, limit: sayLimit(side, limits[side], names, units) })),
  };
};

/** What the largest box does not answer for. */
export const BOX_ASIDE =
  'Every gap with its ± at 95 % is kept, on the whole way of each closure. Hands, slides and the way in through the hatch are for the inspection.';
