import { groupBy } from '../base/index.ts';
import type { Panel, PanelCut } from '../fitout/index.ts';

/** One kind of work on a part and how often. */
export interface Operation {
  readonly kind: 'shape' | 'bevel' | 'dado' | 'groove' | 'rabbet' | 'pocket' | 'drill' | 'cut-out' | 'bend';
  readonly count: number;
}

const OPERATION_OF: { readonly [Kind in PanelCut['kind']]: Operation['kind'] } = {
  dado: 'dado',
  groove: 'groove',
  rabbet: 'rabbet',
  pocket: 'pocket',
  hole: 'drill',
  cutout: 'cut-out',
};

/** The order of work at the bench: outline first, then recesses, holes and openings; bends last. */
const ORDER: readonly Operation['kind'][] = [
  'shape',
  'bevel',
  'dado',
  'groove',
  'rabbet',
  'pocket',
  'drill',
  'cut-out',
  'bend',
];

/** The work that a part needs after it is sawn to size, in the order in which it is done. */
export const operationsOf = (panel: Panel): readonly Operation[] => {
  const cuts = groupBy(panel.cuts, ({ kind }) => OPERATION_OF[kind]);
  const counts: { readonly [K in Operation['kind']]?: number } = {
    shape: panel.outline === null ? 0 : 1,
    bevel: panel.bevels?.length ?? 0,
    bend: panel.bends?.length ?? 0,
  };
  return ORDER.flatMap((kind) => {
    const count = counts[kind] ?? cuts.get(kind)?.length ?? 0;
    return count === 0 ? [] : [{ kind, count }];
  });
};

/** `dado 2, drill 12` — the count is left out of a shape, which is there or not. */
export const operationsText = (operations: readonly Operation[]): string =>
  operations.map(({ kind, count }) => (kind === 'shape' ? kind : `${kind} ${count}`)).join(', ');
