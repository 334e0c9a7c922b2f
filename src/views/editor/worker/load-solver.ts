import type { Highs } from 'highs';

/** The solver of programs, fetched when it is first needed. */
export const loadSolver = async (): Promise<Highs> => {
  const [{ default: loadHighs }, { default: address }] = await Promise.all([
    import('highs'),
    import('highs/runtime?url'),
  ]);
  return loadHighs({ locateFile: () => address });
};
