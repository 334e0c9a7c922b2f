import { useEffect, useRef, useState } from 'react';
import type { Design } from '../../../../design/index.ts';
import type { Engine } from '../../worker/api.ts';
import type { Connection } from '../../worker/client.ts';
import { connectWorker } from '../../worker/connect.ts';

export type Search<T> =
  | { readonly kind: 'none' }
  | { readonly kind: 'searching' }
  | { readonly kind: 'broke' }
  | { readonly kind: 'done'; readonly of: Design; readonly found: T };

/** A search that takes seconds: asked for by hand, in a worker of its own that is ended to stop it. */
export const useSearch = <T>(): {
  readonly search: Search<T>;
  readonly start: (design: Design, ask: (engine: Engine) => Promise<T>) => void;
  readonly cancel: () => void;
} => {
  const [search, setSearch] = useState<Search<T>>({ kind: 'none' });
  const running = useRef<Connection | null>(null);
  const stop = (): void => {
    running.current?.end();
    running.current = null;
  };
  useEffect(
    () => () => {
      running.current?.end();
    },
    [],
  );
  return {
    search,
    start: (design, ask) => {
      stop();
      const mine = connectWorker(() => {
        if (running.current === mine) setSearch({ kind: 'broke' });
      });
      running.current = mine;
      setSearch({ kind: 'searching' });
      const finish = (next: Search<T>): void => {
        if (running.current !== mine) return;
        stop();
        setSearch(next);
      };
      ask(mine.engine).then(
        (found) => finish({ kind: 'done', of: design, found }),
        () => finish({ kind: 'broke' }),
      );
    },
    cancel: () => {
      stop();
      setSearch({ kind: 'none' });
    },
  };
};
