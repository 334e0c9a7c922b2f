import type { Inspection } from '../../../../../inspection/index.ts';

/** Load over capacity of each anchor of a carcass, by its id. The worst stands under the carcass alone in the inspection. */
export const anchorUses = (
  inspection: Inspection | null,
  carcass: string,
  anchors: readonly string[],
): ReadonlyMap<string, number> => {
  const own = (inspection?.measured ?? []).filter(({ rule, parts }) => rule === 'anchor-hold' && parts[0] === carcass);
  const uses = new Map(own.flatMap(({ parts, value }) => (parts[1] === undefined ? [] : [[parts[1], value] as const])));
  const worst = own.find(({ parts }) => parts.length === 1);
  const left = anchors.filter((id) => !uses.has(id));
  const [only] = left;
  if (worst && only !== undefined && left.length === 1) uses.set(only, worst.value);
  return uses;
};
