import type { FitOut } from '../fitout/index.ts';

type Panel = FitOut['panels'][number];

export interface ChangedPanel {
  readonly id: string;
  readonly name: string;
  readonly how: 'added' | 'removed' | 'changed';
}

/** All that decides how a panel is cut. Where it stands and what it is called do not. */
const cutOf = (panel: Panel): string =>
  JSON.stringify([
    panel.material,
    panel.thickness,
    panel.length,
    panel.width,
    panel.outline,
    panel.grain,
    panel.bands,
    panel.hand,
    panel.cuts,
  ]);

/** The panels that have to be cut again, or for the first time, or need not have been cut. */
export const changedPanels = (before: FitOut, after: FitOut): readonly ChangedPanel[] => {
  const was = new Map(before.panels.map((panel) => [panel.id, panel]));
  const is = new Set(after.panels.map(({ id }) => id));
  return [
    ...after.panels.flatMap((panel): readonly ChangedPanel[] => {
      const then = was.get(panel.id);
      if (!then) return [{ id: panel.id, name: panel.name, how: 'added' }];
      return cutOf(then) === cutOf(panel) ? [] : [{ id: panel.id, name: panel.name, how: 'changed' }];
    }),
    ...before.panels.flatMap((panel): readonly ChangedPanel[] =>
      is.has(panel.id) ? [] : [{ id: panel.id, name: panel.name, how: 'removed' }],
    ),
  ];
};
