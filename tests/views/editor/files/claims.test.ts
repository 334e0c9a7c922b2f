import { describe, expect, it } from 'vitest';
import { browserClaims, type ClaimHooks } from '../../../../src/views/editor/files/claims.ts';

type Grant = (lock: Lock | null) => Promise<unknown> | undefined;

interface Holder {
  readonly rob: (why: Error) => void;
}

/** Locks as a browser keeps them for all tabs: one holder a name, stealing rejects the robbed request. */
const locks = (): LockManager => {
  const holders = new Map<string, Holder>();
  const request = (name: string, options: LockOptions, grant: Grant): Promise<unknown> => {
    const present = holders.get(name);
    if (present && options.ifAvailable) return Promise.resolve(grant(null));
    if (present && options.steal) present.rob(new DOMException('stolen', 'AbortError'));
    return new Promise((done, failed) => {
      const mine: Holder = { rob: failed };
      holders.set(name, mine);
      Promise.resolve(grant({ name, mode: 'exclusive' }))
        .then(done, failed)
        .finally(() => {
          if (holders.get(name) === mine) holders.delete(name);
        });
    });
  };
  return { request, query: () => Promise.resolve({}) } as unknown as LockManager;
};

const tab = (shared: LockManager, channel: string) => {
  const lost: string[] = [];
  const claims = browserClaims(shared, new BroadcastChannel(channel));
  const hooks = (id: string, before: () => Promise<void> = () => Promise.resolve()): ClaimHooks => ({
    beforeLoss: before,
    onLost: () => lost.push(id),
  });
  return { claims, hooks, lost };
};

describe('one tab at a time', () => {
  it('gives a design to the first tab that asks and refuses the second', async () => {
    const shared = locks();
    const [first, second] = [tab(shared, 'a'), tab(shared, 'a')];
    expect(await first.claims.claim('one', first.hooks('one'))).toBe(true);
    expect(await second.claims.claim('one', second.hooks('one'))).toBe(false);
    expect(await second.claims.claim('two', second.hooks('two'))).toBe(true);
  });

  it('lets go of a design when another is claimed', async () => {
    const shared = locks();
    const [first, second] = [tab(shared, 'b'), tab(shared, 'b')];
    await first.claims.claim('one', first.hooks('one'));
    await first.claims.claim('two', first.hooks('two'));
    await new Promise((done) => setTimeout(done, 0));
    expect(await second.claims.claim('one', second.hooks('one'))).toBe(true);
    expect(first.lost).toEqual([]);
  });

  it('hands over after the other tab has kept its last change', async () => {
    const shared = locks();
    const [first, second] = [tab(shared, 'c'), tab(shared, 'c')];
    const order: string[] = [];
    const slow = () => new Promise<void>((done) => setTimeout(done, 20)).then(() => void order.push('kept'));
    await first.claims.claim('one', first.hooks('one', slow));
    await second.claims.takeOver('one', second.hooks('one'));
    order.push('taken');
    expect(order).toEqual(['kept', 'taken']);
    expect(first.lost).toEqual(['one']);
    expect(await first.claims.claim('one', first.hooks('one'))).toBe(false);
  });

  it('takes a design from a tab that does not answer', async () => {
    const shared = locks();
    const silent = tab(shared, 'nobody listens here');
    const second = tab(shared, 'd');
    await silent.claims.claim('one', silent.hooks('one'));
    await second.claims.takeOver('one', second.hooks('one'));
    await new Promise((done) => setTimeout(done, 0));
    expect(silent.lost).toEqual(['one']);
  });
});
