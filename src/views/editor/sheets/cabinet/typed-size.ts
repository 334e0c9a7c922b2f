import { type Design, findOpening, type NodeId, type SizeRule, setPartSize } from '../../../../design/index.ts';

/**
 * Sets how a room of a divided opening is measured. Where that leaves no room free to take up the rest, the next one
 * (the one before it at the end) takes a share: a typed figure must not make the rules fight.
 */
export const withPartSize = (design: Design, parent: NodeId, index: number, size: SizeRule): Design => {
  const set = setPartSize(design, parent, index, size);
  const content = findOpening(set, parent)?.opening.content;
  if (content?.kind !== 'divided' || size.rule === 'share') return set;
  if (content.parts.some((part) => part.size.rule === 'share')) return set;
  const yielding = index + 1 < content.parts.length ? index + 1 : index - 1;
  return setPartSize(set, parent, yielding, { rule: 'share', weight: 1 });
};
