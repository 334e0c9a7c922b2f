import { type RefObject, useEffect } from 'react';
import type { Stage } from '../stage.ts';

/** Runs after every frame and once at the start, to put something over the scene in its place. */
export const useDrawn = <T extends Element>(
  stage: Stage,
  element: RefObject<T | null>,
  place: (element: T) => void,
): void => {
  useEffect(() => {
    const run = (): void => {
      if (element.current) place(element.current);
    };
    run();
    return stage.onDrawn(run);
  }, [stage, element, place]);
};
