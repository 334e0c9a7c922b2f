import { boxAround, boxCorners, placed, ROUNDING_MM } from '../../base/index.ts';
import { type Carcass, changeCarcass, type Design } from '../../design/index.ts';
import type { FitOut } from '../../fitout/index.ts';

/** The cabinet with carcasses on other sides than now. */
export interface Sides {
  readonly design: Design;
  /** The carcasses that changed their place. */
  readonly moved: readonly string[];
}

/** Each costs an inspection, and an arrangement of all gear. */
const MOST_SIDES = 6;

const OTHER_WAY: Readonly<Record<Carcass['facing'], Carcass['facing']>> = {
  rear: 'rear',
  front: 'front',
  left: 'right',
  right: 'left',
};

interface Span {
  readonly carcass: Carcass;
  readonly low: number;
  readonly high: number;
  readonly floor: number;
}

const spansOf = (design: Design, fitout: FitOut): readonly Span[] =>
  design.cabinet.carcasses.flatMap((carcass) => {
    const solved = fitout.carcasses.find(({ id }) => id === carcass.id);
    if (!solved) return [];
    const box = boxAround(
      boxCorners({ min: [0, 0, 0], max: solved.size }).map((corner) => placed(solved.pose, corner)),
    );
    return [{ carcass, low: box.min[1], high: box.max[1], floor: box.min[2] }];
  });

/** Others that are placed from it would follow it. */
const standsFree = (design: Design, { id }: Carcass, but: string | null): boolean =>
  design.cabinet.carcasses.every(
    ({ id: other, place }) =>
      other === but || [place.x, place.y, place.z].every((axis) => axis.rule === 'at' || axis.carcass !== id),
  );

const setAt = (design: Design, carcass: Carcass, low: number): Design =>
  changeCarcass(design, carcass.id, {
    facing: OTHER_WAY[carcass.facing],
    place: { ...carcass.place, y: { rule: 'at', mm: low } },
  });

const exchanged = (design: Design, a: Span, b: Span): readonly Sides[] => {
  const [right, left] = a.low < b.low ? [a, b] : [b, a];
  const apart = left.low >= right.high - ROUNDING_MM && Math.abs(left.floor - right.floor) <= ROUNDING_MM;
  const free = standsFree(design, a.carcass, b.carcass.id) && standsFree(design, b.carcass, a.carcass.id);
  if (!apart || !free) return [];
  const width = (span: Span): number => span.high - span.low;
  const once = setAt(design, right.carcass, left.high - width(right));
  return [{ design: setAt(once, left.carcass, right.low), moved: [right.carcass.id, left.carcass.id] }];
};

const mirrored = (design: Design, { carcass, low, high }: Span): readonly Sides[] =>
  Math.abs(low + high) <= ROUNDING_MM || !standsFree(design, carcass, null)
    ? []
    : [{ design: setAt(design, carcass, -high), moved: [carcass.id] }];

/**
 * The cabinet with two carcasses that have changed sides, or one set over to the other side of the middle line: to be
 * inspected before it is offered. A carcass that looks aside then looks to the other one.
 */
export const otherSides = (design: Design, fitout: FitOut): readonly Sides[] => {
  const spans = spansOf(design, fitout);
  return [
    ...spans.flatMap((a, i) => spans.slice(i + 1).flatMap((b) => exchanged(design, a, b))),
    ...spans.flatMap((span) => mirrored(design, span)),
  ].slice(0, MOST_SIDES);
};
