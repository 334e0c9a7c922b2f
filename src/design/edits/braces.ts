import type { Carcass } from '../cabinet.ts';
import type { Design } from '../design.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import type { Brace } from '../structure.ts';
import { itemOf } from './change.ts';

/** How far in from the edges of its carcass the outermost bolt of a new brace is: the next one, nearer the edge, still has wood. */
const IN_MM = 100;

const withBraces = (design: Design, braces: readonly Brace[]): Design => ({
  ...design,
  cabinet: { ...design.cabinet, braces },
});

const endOn = ({ id }: Carcass): Brace['from'] => ({ carcass: id, at: [IN_MM, IN_MM, 0] });

/** A brace over the tops of a carcass and another one, near their low corners. Throws where there is no other. */
export const addBrace = (design: Design, carcass: NodeId): { readonly design: Design; readonly id: NodeId } => {
  const { carcasses, braces } = design.cabinet;
  const from = itemOf(carcasses, carcass, 'carcass');
  const to = carcasses.find(({ id }) => id !== carcass);
  if (!to) throw new RangeError(`addBrace: no carcass beside ${carcass}`);
  const id = freshIds(design)('brace');
  const brace: Brace = { id, name: '', item: 'brace-bar-30', lies: 'top', from: endOn(from), to: endOn(to) };
  return { design: withBraces(design, [...braces, brace]), id };
};

export const changeBrace = (design: Design, id: NodeId, change: Partial<Omit<Brace, 'id'>>): Design => {
  itemOf(design.cabinet.braces, id, 'brace');
  return withBraces(
    design,
    design.cabinet.braces.map((brace) => (brace.id === id ? { ...brace, ...change } : brace)),
  );
};

export const removeBrace = (design: Design, id: NodeId): Design => {
  itemOf(design.cabinet.braces, id, 'brace');
  return withBraces(
    design,
    design.cabinet.braces.filter((brace) => brace.id !== id),
  );
};
