import { groupBy } from '../base/index.ts';
import type { FitOut, Panel } from '../fitout/index.ts';

/** Names of the places of a fit-out, for papers: ids stand in where a person gave no name. */
export interface Places {
  readonly carcass: (id: string | null) => string;
  /** The opening's own name, or the id; empty when the node is not an opening. */
  readonly opening: (id: string) => string;
  /** Where a part goes: `Main cabinet, top left`; the carcass alone for its own panels. */
  readonly of: (item: { readonly origin: string; readonly carcass: string | null }) => string;
}

export const placesOf = (fitout: FitOut): Places => {
  const carcassNames = new Map<string, string>(fitout.carcasses.map(({ id, name }) => [id, name === '' ? id : name]));
  const openingNames = new Map<string, string>(fitout.openings.map(({ id, name }) => [id, name === '' ? id : name]));
  const roots = new Set<string>(fitout.openings.filter(({ parent }) => parent === null).map(({ id }) => id));
  const carcass = (id: string | null): string => (id === null ? '' : (carcassNames.get(id) ?? id));
  const opening = (id: string): string => openingNames.get(id) ?? '';
  const of: Places['of'] = (item) => {
    const inside = roots.has(item.origin) ? '' : opening(item.origin);
    return [carcass(item.carcass), inside].filter((word) => word !== '').join(', ');
  };
  return { carcass, opening, of };
};

/** Words that may repeat, each once in the order met, with its count where it came more than once: `shelf ×3, lip`. */
export const counted = (words: readonly string[]): string =>
  [...groupBy(words, (word) => word)]
    .map(([word, all]) => (all.length > 1 ? `${word} ×${all.length}` : word))
    .join('; ');

/** Names of all panels that share a mark, each once, without the carcass's own name, which every row gives beside it. */
export const sharedName = (panels: readonly Panel[], places: Places): string => {
  const bare = ({ name, carcass }: Panel): string => {
    const prefix = `${places.carcass(carcass)} `;
    return name.startsWith(prefix) && name.length > prefix.length ? name.slice(prefix.length) : name;
  };
  return [...new Set(panels.map(bare))].join(', ');
};
