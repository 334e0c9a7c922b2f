import type { OpeningOrder } from '../inspection/index.ts';
import { sayMotions, sayOrderRow, sayReach } from '../says/index.ts';

/**
 * The opening order as lines of the inspection sheet: what must stand where before what moves, then each item of gear
 * with its motions, first-due gear first and marked.
 */
export const orderLines = (order: OpeningOrder, names: (id: string) => string): readonly string[] => {
  const gear = [...order.gear.filter(({ firstDue }) => firstDue), ...order.gear.filter(({ firstDue }) => !firstDue)];
  return [
    ...(order.rows.length === 0 ? ['nothing stands in the way of anything else'] : []),
    ...order.rows.map((row) => sayOrderRow(row, names)),
    ...(gear.length === 0 ? [] : ['', 'Gear to hand, from the closed vehicle:']),
    ...gear.map(
      (reach) =>
        `${names(reach.gear)}${reach.firstDue ? ' (first due)' : ''}: ${sayMotions(reach)}. ${sayReach(reach, names)}`,
    ),
  ];
};
