import { groupBy } from '../base/index.ts';
import type { FitOut, Panel } from '../fitout/index.ts';

/** What people call a node of the design; an id that nobody named stays an id. */
export type NameOf = (id: string) => string;

/** Names of the places of a fit-out, for papers. */
export interface Places {
  readonly carcass: (id: string | null) => string;
  /** The opening's name; empty when the node is not an opening. */
  readonly opening: (id: string) => string;
  /** Where a part goes: `Main cabinet, top left`; the carcass alone for its own panels. */
  readonly of: (item: { readonly origin: string; readonly carcass: string | null }) => string;
}

const OUTSIDE = 'outside the cabinet';

/** The names that carcasses and openings carry in the fit-out, where nobody knows better ones. */
const ownNames = (fitout: FitOut): NameOf => {
  const named = [...fitout.carcasses, ...fitout.openings].filter(({ name }) => name !== '');
  const names = new Map<string, string>(named.map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
};

export const placesOf = (fitout: FitOut, names: NameOf = ownNames(fitout)): Places => {
  const openings = new Set<string>(fitout.openings.map(({ id }) => id));
  const roots = new Set<string>(fitout.openings.filter(({ parent }) => parent === null).map(({ id }) => id));
  const carcass = (id: string | null): string => (id === null ? OUTSIDE : names(id));
  const opening = (id: string): string => (openings.has(id) ? names(id) : '');
  const of: Places['of'] = (item) => {
    const outer = carcass(item.carcass);
    const inside = roots.has(item.origin) ? '' : opening(item.origin);
    // A name that was made from the place ends in the carcass already.
    const own = inside.endsWith(`, ${outer}`) ? inside.slice(0, -outer.length - 2) : inside;
    return [outer, own].filter((word) => word !== '').join(', ');
  };
  return { carcass, opening, of };
};

/** Words that may repeat, each once in the order met, with its count where it came more than once: `shelf ×3, lip`. */
export const counted = (words: readonly string[]): string =>
  [...groupBy(words, (word) => word)]
    .map(([word, all]) => (all.length > 1 ? `${word} ×${all.length}` : word))
    .join('; ');

const without = (name: string, prefix: string): string =>
  prefix !== '' && name.startsWith(`${prefix} `) ? name.slice(prefix.length + 1) : name;

/** Names of all panels that share a mark, each once, without carcass and opening, which every row gives beside them. */
export const sharedName = (panels: readonly Panel[], places: Places): string => {
  const bare = ({ name, carcass, origin }: Panel): string =>
    without(without(name, places.carcass(carcass)), places.opening(origin));
  return [...new Set(panels.map(bare))].join(', ');
};
