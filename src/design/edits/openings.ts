import type { Draft } from 'mutative';
import type { Division, Opening, OpeningContent, SizeRule } from '../cabinet.ts';
import type { Design } from '../design.ts';
import { type Fitting, type FittingKind, freshFitting } from '../fittings/index.ts';
import { childOpenings, findOpening, freshIds, openingsFrom, openingsInside } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import { changed } from './change.ts';

const draftOpening = (draft: Draft<Design>, id: NodeId): Draft<Opening> => {
  for (const carcass of draft.cabinet.carcasses)
    for (const opening of openingsFrom(carcass.opening as Opening))
      if (opening.id === id) return opening as Draft<Opening>;
  throw new RangeError(`no opening has the id ${id}`);
};

const changeOpening = (design: Design, id: NodeId, change: (opening: Draft<Opening>) => void): Design =>
  changed(design, (draft) => change(draftOpening(draft, id)));

/** Gear whose opening is no longer there loses its place; the gear itself stays on the list. */
const withoutLostPlaces = (design: Design): Design => {
  const openings = new Set<string>();
  for (const carcass of design.cabinet.carcasses) for (const { id } of openingsFrom(carcass.opening)) openings.add(id);
  const lost = design.gear.some((gear) => gear.place && !openings.has(gear.place.opening));
  if (!lost) return design;
  return {
    ...design,
    gear: design.gear.map((gear) =>
      gear.place && !openings.has(gear.place.opening) ? { ...gear, place: null } : gear,
    ),
  };
};

/** Gear that stood in one opening, now in another that has taken its place. */
const gearMovedTo = (design: Design, from: NodeId, to: NodeId): Design => ({
  ...design,
  gear: design.gear.map((gear) =>
    gear.place?.opening === from ? { ...gear, place: { ...gear.place, opening: to } } : gear,
  ),
});

export const nameOpening = (design: Design, id: NodeId, name: string): Design =>
  changeOpening(design, id, (opening) => {
    opening.name = name;
  });

const setContent = (design: Design, id: NodeId, content: OpeningContent): Design =>
  withoutLostPlaces(
    changeOpening(design, id, (opening) => {
      opening.content = content as Draft<OpeningContent>;
    }),
  );

/** Empties an opening; gear that stood in openings inside it goes back to the list. */
export const clearOpening = (design: Design, id: NodeId): Design => setContent(design, id, { kind: 'empty' });

/**
 * Splits an opening into `count` equal shares. What the opening held moves into the first of them, so that nothing
 * is lost. Throws on a count below 2 or above 40.
 */
export const divideOpening = (
  design: Design,
  id: NodeId,
  along: Division,
  count: number,
  divider: 'panel' | 'none' = 'panel',
): Design => {
  if (!Number.isInteger(count) || count < 2 || count > 40)
    throw new RangeError(`divideOpening: ${count} is not a number of parts`);
  const found = findOpening(design, id);
  if (!found) throw new RangeError(`no opening has the id ${id}`);
  const newId = freshIds(design);
  const parts = Array.from({ length: count }, (_, i) => ({
    size: { rule: 'share', weight: 1 } as const,
    opening: {
      id: newId('opening'),
      name: '',
      content: i === 0 ? found.opening.content : ({ kind: 'empty' } as const),
    },
  }));
  const first = parts[0]?.opening.id;
  const divided = changeOpening(design, id, (opening) => {
    opening.content = { kind: 'divided', along, divider, parts } as Draft<OpeningContent>;
  });
  if (!first) return divided;
  return gearMovedTo(divided, id, first);
};

/**
 * Puts a fitting with sensible defaults into an opening. Gear that stood there, or in the fitting that was there, comes
 * to stand in the opening that the new one carries inside itself, where it has one.
 */
export const fitOpening = (design: Design, id: NodeId, kind: FittingKind): Design => {
  const fitting = freshFitting(kind, freshIds(design));
  const content = findOpening(design, id)?.opening.content;
  const left = content?.kind === 'fitted' ? openingsInside(content.fitting).map((inside) => inside.id) : [];
  const to = openingsInside(fitting)[0]?.id ?? id;
  const rehoused = [id, ...left].reduce((now, from) => gearMovedTo(now, from, to), design);
  return setContent(rehoused, id, { kind: 'fitted', fitting });
};

export const changeFitting = (design: Design, id: NodeId, change: (fitting: Draft<Fitting>) => void): Design =>
  withoutLostPlaces(
    changeOpening(design, id, (opening) => {
      if (opening.content.kind !== 'fitted') throw new RangeError(`opening ${id} holds no fitting`);
      change(opening.content.fitting);
    }),
  );

const dividedDraft = (opening: Draft<Opening>) => {
  if (opening.content.kind !== 'divided') throw new RangeError(`opening ${opening.id} is not divided`);
  return opening.content;
};

export const setPartSize = (design: Design, id: NodeId, index: number, size: SizeRule): Design =>
  changeOpening(design, id, (opening) => {
    const part = dividedDraft(opening).parts[index];
    if (!part) throw new RangeError(`opening ${id} has no part ${index}`);
    part.size = size as Draft<SizeRule>;
  });

/**
 * Moves the divider behind part `index` so that the two rooms beside it get the stated sizes. The second keeps its
 * share when no other room could take up a change of the whole; otherwise both become fixed.
 */
export const moveDivider = (design: Design, id: NodeId, index: number, firstMm: number, secondMm: number): Design =>
  changeOpening(design, id, (opening) => {
    const { parts } = dividedDraft(opening);
    const first = parts[index];
    const second = parts[index + 1];
    if (!first || !second) throw new RangeError(`opening ${id} has no divider ${index}`);
    const otherShare = parts.some((part, i) => i !== index && i !== index + 1 && part.size.rule === 'share');
    const firstYields = first.size.rule === 'share' && second.size.rule !== 'share' && !otherShare;
    if (firstYields) second.size = { rule: 'fixed', mm: secondMm };
    else {
      first.size = { rule: 'fixed', mm: firstMm };
      if (otherShare || second.size.rule !== 'share') second.size = { rule: 'fixed', mm: secondMm };
    }
  });

/** Adds an empty room behind part `index` of a divided opening. */
export const addPart = (design: Design, id: NodeId, index: number): Design => {
  const newId = freshIds(design)('opening');
  return changeOpening(design, id, (opening) => {
    dividedDraft(opening).parts.splice(index + 1, 0, {
      size: { rule: 'share', weight: 1 },
      opening: { id: newId, name: '', content: { kind: 'empty' } },
    });
  });
};

/** Takes a room out of a divided opening; with two rooms left, the other takes the place of the whole. */
export const removePart = (design: Design, id: NodeId, index: number): Design => {
  const found = findOpening(design, id);
  if (found?.opening.content.kind !== 'divided') throw new RangeError(`opening ${id} is not divided`);
  const { parts } = found.opening.content;
  if (!parts[index]) throw new RangeError(`opening ${id} has no part ${index}`);
  const rest = parts.filter((_, i) => i !== index);
  const only = rest.length === 1 ? rest[0]?.opening : undefined;
  if (!only) {
    const shared = rest.some((part) => part.size.rule === 'share');
    const kept = shared
      ? rest
      : rest.map((part, i) =>
          i === rest.length - 1 ? { ...part, size: { rule: 'share', weight: 1 } as const } : part,
        );
    return setContent(design, id, { ...found.opening.content, parts: kept });
  }
  return setContent(gearMovedTo(design, only.id, id), id, only.content);
};

const renewed = (opening: Opening, newId: (prefix: string) => NodeId): Opening => {
  const copy = structuredCopy(opening) as Draft<Opening>;
  for (const inner of openingsFrom(copy as Opening)) {
    (inner as Draft<Opening>).id = newId('opening');
    const { content } = inner;
    if (content.kind !== 'fitted') continue;
    const { fitting } = content;
    const placed = [...('rows' in fitting ? fitting.rows.flat() : []), ...('fan' in fitting ? [fitting.fan] : [])];
    for (const device of placed) if (device) (device as { id: NodeId }).id = newId('device');
  }
  return copy as Opening;
};

const structuredCopy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** Puts a copy of another opening's content here, every id in it new; gear stays where it was. */
export const pasteContent = (design: Design, id: NodeId, content: OpeningContent): Design => {
  const copy = renewed({ id, name: '', content }, freshIds(design));
  return setContent(design, id, copy.content);
};

/** A copy of an opening with every id in it new, for a carcass that is duplicated. */
export const copyOpening = (design: Design, opening: Opening): Opening => renewed(opening, freshIds(design));

/** The id of the opening around this one, or null for a carcass's own. */
export const parentOpening = (design: Design, id: NodeId): NodeId | null =>
  findOpening(design, id)?.around.at(-1)?.id ?? null;

/** The place of an opening among its parent's rooms, or −1 when its parent is not divided. */
export const partIndex = (parent: Opening, id: NodeId): number =>
  childOpenings(parent).findIndex((child) => child.id === id);
