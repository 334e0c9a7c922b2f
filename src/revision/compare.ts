import type { Design } from '../design/index.ts';
import { type Leaf, type NodeFacts, nodeFacts } from './node-facts.ts';

export const CHANGE_KINDS = [
  'added',
  'removed',
  'rehoused',
  'moved',
  'resized',
  'renamed',
  'reordered',
  'changed',
] as const;
export type ChangeKind = (typeof CHANGE_KINDS)[number];

export interface FieldChange {
  /** Path within the node: `size.width`. */
  readonly field: string;
  /** Undefined where the node did not have the field. */
  readonly before: Leaf | undefined;
  readonly after: Leaf | undefined;
}

/** One thing that is different between two designs; a node may have several of different kinds. */
export interface Change {
  readonly kind: ChangeKind;
  /** The node; empty for the document itself. */
  readonly id: string;
  readonly node: NodeFacts['kind'];
  /** The node's own name, in the later design where it still is there. */
  readonly name: string;
  readonly fields: readonly FieldChange[];
}

const sameLeaf = (a: Leaf | undefined, b: Leaf | undefined): boolean =>
  Object.is(a, b) || (a !== undefined && b !== undefined && JSON.stringify(a) === JSON.stringify(b));

/** What kind of change a field of any node stands for, by how its path begins; the first that fits. */
const FIELD_KINDS: readonly (readonly [start: string, kind: ChangeKind])[] = [
  ['place', 'moved'],
  ['facing', 'moved'],
  ['at', 'moved'],
  ['across', 'moved'],
  ['along', 'moved'],
  ['inside', 'moved'],
  ['sizeMm', 'resized'],
  ['size', 'resized'],
  ['partSize', 'resized'],
  ['name', 'renamed'],
  ['title', 'renamed'],
];

const beginsWith = (path: string, start: string): boolean => path === start || path.startsWith(`${start}.`);

const kindOfField = (node: NodeFacts['kind'], field: string, rehoused: boolean): ChangeKind => {
  if (node === 'gear' && beginsWith(field, 'place')) return rehoused ? 'rehoused' : 'moved';
  // The document's own keys share no words with those of nodes but its title.
  if (node === 'design' && field !== 'title') return 'changed';
  return FIELD_KINDS.find(([start]) => beginsWith(field, start))?.[1] ?? 'changed';
};

const fieldChanges = (before: NodeFacts, after: NodeFacts): readonly FieldChange[] =>
  [...new Set([...before.fields.keys(), ...after.fields.keys()])]
    .map((field) => ({ field, before: before.fields.get(field), after: after.fields.get(field) }))
    .filter((change) => !sameLeaf(change.before, change.after));

/** Ids that stand directly inside in both, each in its own order: unequal lists mean another order. */
const commonOrder = (one: NodeFacts, other: NodeFacts): readonly string[] => {
  const shared = new Set(other.inside);
  return one.inside.filter((id) => shared.has(id));
};

const nodeChanges = (before: NodeFacts, after: NodeFacts): readonly Change[] => {
  const fields: FieldChange[] = [...fieldChanges(before, after)];
  if (before.parent !== after.parent) fields.push({ field: 'inside', before: before.parent, after: after.parent });
  const orders = [commonOrder(before, after), commonOrder(after, before)] as const;
  const rehoused = fields.some(({ field }) => field === 'place.opening' || field === 'place');
  const byKind = new Map<ChangeKind, FieldChange[]>();
  const put = (kind: ChangeKind, change: FieldChange): void => {
    byKind.set(kind, [...(byKind.get(kind) ?? []), change]);
  };
  for (const change of fields) put(kindOfField(after.kind, change.field, rehoused), change);
  if (!sameLeaf(orders[0], orders[1])) put('reordered', { field: 'order', before: orders[0], after: orders[1] });
  return CHANGE_KINDS.flatMap((kind) => {
    const list = byKind.get(kind);
    return list ? [{ kind, id: after.id, node: after.kind, name: after.name, fields: list }] : [];
  });
};

const wholeNode = (kind: 'added' | 'removed', facts: NodeFacts): Change => ({
  kind,
  id: facts.id,
  node: facts.kind,
  name: facts.name,
  fields: [],
});

/**
 * Everything in which the later design differs from the earlier, in the order of the later document; what was removed
 * comes last. A node that came or went with the node around it is not told apart from it. Empty when, and only when,
 * the two say the same; names under revisions, replies, the record of the vehicle and the shop's stock are not compared.
 */
export const compareDesigns = (before: Design, after: Design): readonly Change[] => {
  const [was, is] = [nodeFacts(before), nodeFacts(after)];
  const changes: Change[] = [];
  for (const [id, now] of is) {
    const then = was.get(id);
    if (then) changes.push(...nodeChanges(then, now));
    else if (was.has(now.parent)) changes.push(wholeNode('added', now));
  }
  for (const [id, then] of was) if (!is.has(id) && is.has(then.parent)) changes.push(wholeNode('removed', then));
  return changes;
};
