/** Who may keep a design: one tab at a time. */
export interface Claims {
  /** Takes the design when no other tab has it. `onLost` is called if another tab takes it over later. */
  readonly claim: (id: string, hooks: ClaimHooks) => Promise<boolean>;
  /** Asks the tab that has it to hand it over, then takes it in any case. */
  readonly takeOver: (id: string, hooks: ClaimHooks) => Promise<void>;
  readonly release: () => void;
}

export interface ClaimHooks {
  /** Another tab asks for the design: whatever is not kept yet must be kept before this resolves. */
  readonly beforeLoss: () => Promise<void>;
  readonly onLost: () => void;
}

/** What two tabs say to each other. */
interface Word {
  readonly kind: 'hand-over' | 'handed-over';
  readonly id: string;
}

/** How long another tab is given to keep its last change. */
const HAND_OVER_MS = 1500;

const lockName = (id: string): string => `hatchwright-design-${id}`;

/** Claims by the browser's locks, which end with the tab; tabs talk over a channel. */
export const browserClaims = (locks: LockManager, channel: BroadcastChannel): Claims => {
  let held: { readonly id: string; readonly hooks: ClaimHooks; readonly release: () => void } | null = null;

  const request = (id: string, options: LockOptions, hooks: ClaimHooks): Promise<boolean> =>
    new Promise((granted) => {
      locks
        .request(lockName(id), options, (lock) => {
          if (!lock) {
            granted(false);
            return undefined;
          }
          return new Promise<void>((release) => {
            held = { id, hooks, release };
            granted(true);
          });
        })
        .catch(() => {
          // Only a lock that was taken away ends this way.
          if (held?.id !== id) return;
          held = null;
          hooks.onLost();
        });
    });

  const release = (): void => {
    held?.release();
    held = null;
  };

  const handOver = async (id: string): Promise<void> => {
    const mine = held;
    if (mine?.id !== id) return;
    await mine.hooks.beforeLoss();
    if (held === mine) {
      release();
      mine.hooks.onLost();
    }
    channel.postMessage({ kind: 'handed-over', id } satisfies Word);
  };

  channel.addEventListener('message', (event: MessageEvent<Word>) => {
    if (event.data.kind === 'hand-over') void handOver(event.data.id);
  });

  const asked = (id: string): Promise<void> =>
    new Promise((done) => {
      const hear = (event: MessageEvent<Word>): void => {
        if (event.data.kind === 'handed-over' && event.data.id === id) finish();
      };
      const timer = setTimeout(() => finish(), HAND_OVER_MS);
      const finish = (): void => {
        clearTimeout(timer);
        channel.removeEventListener('message', hear);
        done();
      };
      channel.addEventListener('message', hear);
      channel.postMessage({ kind: 'hand-over', id } satisfies Word);
    });

  return {
    claim: (id, hooks) => {
      release();
      return request(id, { ifAvailable: true }, hooks);
    },
    takeOver: async (id, hooks) => {
      release();
      await asked(id);
      await request(id, { steal: true }, hooks);
    },
    release,
  };
};

/** For a browser without locks: every claim is granted, as if there were one tab. */
export const soleClaims = (): Claims => ({
  claim: () => Promise.resolve(true),
  takeOver: () => Promise.resolve(),
  release: () => undefined,
});
