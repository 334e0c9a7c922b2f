import type { Carcass } from '../../src/design/index.ts';
import type { FitOut, Panel } from '../../src/fitout/index.ts';

/** The openings that lie inside a fitting, each with the opening that is so fitted. */
export const insideFittings = (fitOut: FitOut): ReadonlyMap<string, string> => {
  const fitted = new Set<string>(fitOut.openings.filter(({ content }) => content === 'fitted').map(({ id }) => id));
  const around = new Map<string, string>();
  for (const { id, parent } of fitOut.openings) {
    const outer = parent === null ? undefined : fitted.has(parent) ? parent : around.get(parent);
    if (outer !== undefined) around.set(id, outer);
  }
  return around;
};

/** Frame panels: the shell, what it stands on, and the dividers of openings that lie in no fitting. */
export const frameOf = (fitOut: FitOut, carcass: string): readonly Panel[] => {
  const within = insideFittings(fitOut);
  const divided = new Set<string>(
    fitOut.openings.filter(({ content, id }) => content === 'divided' && !within.has(id)).map(({ id }) => id),
  );
  return fitOut.panels.filter(
    (panel) => panel.carcass === carcass && (panel.origin === carcass || divided.has(panel.origin)),
  ) as readonly Panel[];
};

/** Openings that nothing divides any further, and that lie in no fitting. */
export const leavesOf = (fitOut: FitOut, carcass: string) => {
  const within = insideFittings(fitOut);
  return fitOut.openings.filter(
    (opening) => opening.carcass === carcass && !within.has(opening.id) && opening.content !== 'divided',
  );
};

/** True where a corner or a wheelhouse is cut off the carcass, so that boxes alone do not tell its wood. */
export const isCutOff = ({ chamfers, wheelhouses }: Carcass): boolean => chamfers.length + wheelhouses.length > 0;
