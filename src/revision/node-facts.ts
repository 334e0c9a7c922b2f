import { compareText } from '../base/index.ts';
import { type Design, designNodes, type NodeKind } from '../design/index.ts';
import { bareDesign } from './release.ts';

/** Whatever JSON holds at a leaf: a figure, a word, nothing, or a list that is only compared as a whole. */
export type Leaf = string | number | boolean | null | readonly unknown[];

/** What one node says of itself, without what the nodes inside it say. */
export interface NodeFacts {
  readonly id: string;
  readonly kind: NodeKind | 'design';
  readonly name: string;
  /** The node around it; empty for one that the document itself holds. */
  readonly parent: string;
  /** By path within the node: `size.width`, `content.fitting.kind`. */
  readonly fields: ReadonlyMap<string, Leaf>;
  /** Nodes directly inside, in their order. */
  readonly inside: readonly string[];
}

/** The document itself, for what belongs to no node. */
export const DOCUMENT = '';

/** Lists without ids, told apart by what their rows are about. */
const ROW_KEYS: Readonly<Record<string, (row: Readonly<Record<string, unknown>>) => string>> = {
  houseRules: (row) => String(row.rule),
  accepted: (row) => `${String(row.rule)} ${JSON.stringify(row.parts)}`,
};

type Group = Readonly<Record<string, unknown>>;
const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

interface Writing {
  readonly id: string;
  readonly kind: NodeKind | 'design';
  readonly name: string;
  readonly parent: string;
  readonly fields: Map<string, Leaf>;
  readonly inside: string[];
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

/**
 * The design taken apart: every node with its own facts, and the document with the rest. Each leaf of the document
 * belongs to exactly one of them, so that two designs without a difference here are the same design. How big a part
 * of a divided opening is counts as a fact of the opening in it.
 */
export const nodeFacts = (design: Design): ReadonlyMap<string, NodeFacts> => {
  const bare = bareDesign(design);
  const kinds = new Map<string, NodeKind>(designNodes(bare).map(({ id, kind }) => [id, kind]));
  const nodes = new Map<string, Writing>();
  const open = (id: string, kind: NodeKind | 'design', name: string, parent: string): Writing => {
    const node: Writing = { id, kind, name, parent, fields: new Map(), inside: [] };
    nodes.set(id, node);
    return node;
  };
  const enter = (value: Group, around: Writing, more: Group = {}): boolean => {
    const id = textOf(value.id);
    const kind = kinds.get(id);
    if (kind === undefined || nodes.has(id)) return false;
    around.inside.push(id);
    const node = open(id, kind, textOf(value.name), around.id);
    for (const [key, held] of Object.entries({ ...value, ...more })) if (key !== 'id') write(node, [key], held);
    return true;
  };
  const isPart = (value: Group): value is { readonly size: unknown; readonly opening: Group } =>
    !('id' in value) && 'size' in value && isGroup(value.opening);
  /** True when everything in the list is a node, or holds one: the list itself then says nothing more than their order. */
  const holdsNodes = (list: readonly unknown[]): boolean =>
    list.some((item) =>
      Array.isArray(item)
        ? holdsNodes(item)
        : isGroup(item) && (kinds.has(textOf(item.id)) || (isPart(item) && kinds.has(textOf(item.opening.id)))),
    );
  const writeList = (node: Writing, path: readonly string[], list: readonly unknown[]): void => {
    const keyOf = path.length === 1 ? ROW_KEYS[path[0] ?? ''] : undefined;
    if (keyOf) {
      for (const row of list) if (isGroup(row)) node.fields.set(`${path[0]}: ${keyOf(row)}`, [row]);
      return;
    }
    if (!holdsNodes(list)) {
      // No list at all and an empty one say the same.
      if (list.length > 0) node.fields.set(path.join('.'), list);
      return;
    }
    // Rows of nodes: how many stand in each is a fact of the node around them.
    if (list.some(Array.isArray))
      node.fields.set(
        path.join('.'),
        list.map((row) => (Array.isArray(row) ? row.length : 1)),
      );
    list.forEach((item, i) => {
      if (Array.isArray(item)) writeList(node, [...path, String(i)], item);
      else if (isGroup(item) && isPart(item)) enter(item.opening, node, { partSize: item.size });
      else if (isGroup(item)) enter(item, node);
    });
  };
  const write = (node: Writing, path: readonly string[], value: unknown): void => {
    if (Array.isArray(value)) writeList(node, path, value);
    else if (isGroup(value)) {
      if (enter(value, node)) return;
      for (const key of Object.keys(value).sort(compareText)) write(node, [...path, key], value[key]);
    } else if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' || value === null)
      node.fields.set(path.join('.'), value);
  };
  const document = open(DOCUMENT, 'design', design.title, DOCUMENT);
  for (const [key, value] of Object.entries(bare))
    if (key !== 'format' && key !== 'version') write(document, [key], value);
  return nodes;
};
