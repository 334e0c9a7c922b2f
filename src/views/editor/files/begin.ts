import type { Problem } from '../../../base/index.ts';
import { type Design, emptyDesign, readDesign } from '../../../design/index.ts';
import { NEW_TITLE } from './session.ts';
import type { Vault } from './vault.ts';

/** What a tab begins with. */
export interface Beginning {
  readonly id: string;
  readonly design: Design;
  /** True when it was found in the vault. */
  readonly found: boolean;
  /** A kept design that could not be read; it stays in the vault as it is. */
  readonly unreadable: { readonly name: string; readonly problems: readonly Problem[] } | null;
}

/** The design that this tab, or else this browser, had open last; an empty one where there is none. */
export const beginning = async (vault: Vault, lastIds: readonly string[], newId: () => string): Promise<Beginning> => {
  const fresh = { id: newId(), design: emptyDesign(NEW_TITLE, 'in'), found: false } as const;
  for (const id of lastIds) {
    const kept = await vault.get(id).catch(() => null);
    if (!kept) continue;
    const read = readDesign(kept.text);
    if (read.ok) return { id, design: read.value, found: true, unreadable: null };
    return { ...fresh, unreadable: { name: kept.title, problems: read.error } };
  }
  return { ...fresh, unreadable: null };
};
