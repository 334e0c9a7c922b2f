import { useEffect, useMemo } from 'react';

interface Disposable {
  dispose(): void;
}

/** Something on the graphics card, made when what it is made from changes and given back when it is replaced. */
export const useDisposed = <T extends Disposable>(make: () => T, from: readonly unknown[]): T => {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the caller names what it is made from
  const made = useMemo(make, from);
  useEffect(() => () => made.dispose(), [made]);
  return made;
};
