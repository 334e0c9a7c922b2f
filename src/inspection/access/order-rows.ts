import type { Lanes } from './lanes.ts';
import type { OrderRow } from './opening-order.ts';
import { chainOf, type Shares, type Unit } from './units.ts';

/** Everything that carries the unit stands out at its last rest: what rides on a carriage is used with it out. */
const carriedOut = (lanes: Lanes, unit: Unit): Shares =>
  Object.fromEntries(
    chainOf(lanes.ground, unit.id)
      .slice(0, -1)
      .map(({ id, rests }) => [id, rests.at(-1)?.share ?? 1]),
  );

const rowFor = (lanes: Lanes, unit: Unit, other: Unit): OrderRow | null => {
  const out = { ...carriedOut(lanes, other), ...carriedOut(lanes, unit) };
  const meets = ({ share }: { readonly share: number }): boolean =>
    lanes.meets(unit, other, 0, 1, { ...out, [other.id]: share });
  const notAt = other.rests.filter(meets);
  if (notAt.length === 0) return null;
  const at = other.rests.filter((rest) => !notAt.includes(rest));
  const named = (rests: Unit['rests']): readonly string[] => rests.map(({ name }) => name);
  return {
    mover: unit.id,
    part: unit.part,
    other: other.id,
    otherPart: other.part,
    at: named(at),
    notAt: named(notAt),
  };
};

/** What must be closed or open before what: a row for each mover and each other one that can be in its way. */
export const orderRows = (lanes: Lanes): readonly OrderRow[] => {
  const { units } = lanes.ground;
  const place = new Map(units.map((unit, i) => [unit.id, i]));
  const at = (id: string): number => place.get(id) ?? units.length;
  return lanes
    .pairs()
    .flatMap(([a, b]) => [rowFor(lanes, a, b), rowFor(lanes, b, a)].filter((row) => row !== null))
    .toSorted((p, q) => at(p.mover) - at(q.mover) || at(p.other) - at(q.other));
};
