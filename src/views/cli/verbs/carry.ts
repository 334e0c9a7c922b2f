import { nameOfPart, sayCarried, sayCarryIn, sayCarrySteps } from '../../../says/index.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';

/** `carry DESIGN`: how each carcass is carried in, in which order and by which steps; 1 where no way was found. */
export const carry = async (path: string): Promise<Outcome> => {
  const design = readDesignFile(path);
  const flow = await openFlow();
  const found = flow.carryIn(design);
  if (!found)
    return { lines: ['The survey does not make a cargo space yet: nothing to carry into.'], json: null, exitCode: 1 };
  const names = nameOfPart(design, flow.fitOut(design));
  const { wantedMm } = found;
  return {
    lines: [`${design.title}: carrying in`, ...sayCarryIn(found, design.units, names)],
    json: {
      wantedMm,
      carcasses: found.carcasses.map((own) => ({
        ...own,
        says: sayCarried(own, wantedMm, design.units, names),
        steps: sayCarrySteps(own, design.units),
      })),
      mounts: found.mounts,
    },
    exitCode: found.carcasses.every(({ path: way }) => way !== null) ? 0 : 1,
  };
};
