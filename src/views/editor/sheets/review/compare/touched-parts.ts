import type { FitOut } from '../../../../../fitout/index.ts';
import type { Change, ChangedPanel } from '../../../../../revision/index.ts';

/** What nobody would see in a picture. */
const UNSEEN: ReadonlySet<Change['kind']> = new Set(['renamed', 'reordered']);

/** A carcass to which this happened stands elsewhere as a whole; of one that was resized, the panels tell. */
const WHOLE: ReadonlySet<Change['kind']> = new Set(['added', 'removed', 'moved']);

/** Nodes of the design that look otherwise than before. */
export const touchedNodes = (changes: readonly Change[]): ReadonlySet<string> =>
  new Set(changes.filter(({ kind, id }) => id !== '' && !UNSEEN.has(kind)).map(({ id }) => id));

/** Bodies of a fit-out that are marked in its picture: panels cut otherwise, gear and fittings that changed. */
export const touchedBodies = (
  { bodies }: FitOut,
  changes: readonly Change[],
  panels: readonly ChangedPanel[],
): FitOut['bodies'] => {
  const nodes = touchedNodes(changes);
  const cut = new Set(panels.map(({ id }) => id));
  const carcasses = new Set<string>(
    changes.filter(({ node, kind }) => node === 'carcass' && WHOLE.has(kind)).map(({ id }) => id),
  );
  return bodies.filter(
    ({ id, origin, carcass, kind }) =>
      kind !== 'plug-room' &&
      (cut.has(id) || (kind !== 'panel' && nodes.has(origin)) || (carcass !== null && carcasses.has(carcass))),
  );
};
