import { expect, test } from 'vitest';
import {
  addCarcass,
  type Design,
  divideOpening,
  emptyDesign,
  findOpening,
  freshCarcass,
  type NodeId,
} from '../../../src/design/index.ts';
import { withPartSize } from '../../../src/views/editor/sheets/cabinet/typed-size.ts';

const threeRows = (): { readonly design: Design; readonly id: NodeId } => {
  const empty = emptyDesign('three rows', 'mm');
  const carcass = freshCarcass(empty);
  return { design: divideOpening(addCarcass(empty, carcass), carcass.opening.id, 'rows', 3), id: carcass.opening.id };
};

const rules = (design: Design, id: NodeId): readonly string[] => {
  const content = findOpening(design, id)?.opening.content;
  return content?.kind === 'divided' ? content.parts.map((part) => part.size.rule) : [];
};

test('a typed size leaves the other rooms as they are while one of them shares', () => {
  const { design, id } = threeRows();
  expect(rules(withPartSize(design, id, 1, { rule: 'fixed', mm: 120 }), id)).toEqual(['share', 'fixed', 'share']);
});

test('when no room shares any more, the next one takes up the rest', () => {
  const { design, id } = threeRows();
  let now = withPartSize(design, id, 0, { rule: 'fixed', mm: 100 });
  now = withPartSize(now, id, 1, { rule: 'fixed', mm: 100 });
  now = withPartSize(now, id, 2, { rule: 'fixed', mm: 100 });
  // the last has no next, so the one before it yields
  expect(rules(now, id)).toEqual(['fixed', 'share', 'fixed']);
  expect(rules(withPartSize(now, id, 1, { rule: 'hug' }), id)).toEqual(['fixed', 'hug', 'share']);
});
