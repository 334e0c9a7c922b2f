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
    lanes.blockers(unit, 0, 1, { ...out, [other.id]: share }).units.includes(other.id);
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
  return units.flatMap((unit) =>
    units.flatMap((other) => {
      // What it rides on and what rides on it move together; where those meet is a matter of one assembly.
      const kin = chainOf(lanes.ground, unit.id).includes(other) || chainOf(lanes.ground, other.id).includes(unit);
      const row = other === unit || kin ? null : rowFor(lanes, unit, other);
      return row === null ? [] : [row];
    }),
  );
};
