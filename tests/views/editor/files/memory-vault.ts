import type { KeptText, Vault } from '../../../../src/views/editor/files/vault.ts';

/** A vault in memory that can be told to fail, with what it holds in sight. */
export const memoryVault = () => {
  const held = new Map<string, KeptText>();
  let fault: Error | null = null;
  const puts: KeptText[] = [];
  const answer = async <T>(give: () => T): Promise<T> => {
    await Promise.resolve();
    if (fault) throw fault;
    return give();
  };
  const vault: Vault = {
    put: (kept) =>
      answer(() => {
        puts.push(kept);
        held.set(kept.id, kept);
      }),
    get: (id) => answer(() => held.get(id) ?? null),
    list: () => answer(() => [...held.values()].toSorted((a, b) => b.savedAt - a.savedAt)),
    remove: (id) => answer(() => void held.delete(id)),
  };
  return {
    vault,
    held,
    puts,
    breakWith: (next: Error | null) => {
      fault = next;
    },
  };
};
