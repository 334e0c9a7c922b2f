import type { Measured } from '../../../../inspection/index.ts';

/** The rules that follow a mover over its whole travel. */
const OF_TRAVELS: ReadonlySet<string> = new Set(['mover-travel', 'closure-swing']);

/**
 * The least gap of a mover over its whole travel, with the two points between which it is: what the inspection proved
 * with everything else stowed and the closures open. Null where nothing came near enough to be measured.
 */
export const feltGap = (
  measured: readonly Measured[],
  mover: { readonly id: string; readonly origin: string },
): Measured | null =>
  measured
    .filter(
      ({ rule, parts, at, unit }) =>
        OF_TRAVELS.has(rule) &&
        at !== null &&
        unit === 'mm' &&
        (rule === 'closure-swing' ? parts[1] === mover.id : parts[0] === mover.origin),
    )
    .reduce<Measured | null>((least, own) => (least === null || own.value < least.value ? own : least), null);
