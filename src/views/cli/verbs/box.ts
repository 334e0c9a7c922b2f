import { parseLength } from '../../../base/index.ts';
import type { Design } from '../../../design/index.ts';
import { BOX_ASIDE, nameOfPart, sayBox, sayNoBox } from '../../../says/index.ts';
import { badInput } from '../bad-input.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';

export interface BoxOptions {
  readonly depth: string;
  readonly left: string;
  readonly underside?: string;
  readonly insteadOf?: string;
}

const lengthOf = (text: string, option: string, { units }: Design): number => {
  const read = parseLength(text, units);
  if (!read.ok) throw badInput(`${option} takes a length, as 600 mm or "23 5/8 in"; found "${text}"`);
  return read.value;
};

/** `box DESIGN --depth X`: the largest carcass that stands over a spot, with what stops it on each side; 1 where none stands. */
export const box = async (path: string, options: BoxOptions): Promise<Outcome> => {
  const design = readDesignFile(path);
  const at = [lengthOf(options.depth, '--depth', design), lengthOf(options.left, '--left', design)] as const;
  const underside = options.underside === undefined ? null : lengthOf(options.underside, '--underside', design);
  const insteadOf = options.insteadOf ?? null;
  const carcasses = design.cabinet.carcasses.map(({ id }) => id);
  if (insteadOf !== null && !carcasses.some((id) => id === insteadOf))
    throw badInput(`there is no carcass "${insteadOf}"; there is ${carcasses.join(', ') || 'none yet'}`, path);
  const flow = await openFlow();
  const found = flow.largestBox(design, { at, underside, insteadOf });
  const names = nameOfPart(design, flow.fitOut(design));
  if (!found) return { lines: ['The survey does not make a cargo space yet.'], json: null, exitCode: 1 };
  if (!found.ok) return { lines: [sayNoBox(found.error, design.units, names)], json: null, exitCode: 1 };
  const { box: room, sizeMm, volumeMm3, boundMm3, limits } = found.value;
  const said = sayBox(found.value, design.units, names);
  return {
    lines: [said.size, ...said.sides.map(({ side, limit }) => `  ${side}: ${limit}`), BOX_ASIDE],
    json: {
      box: room,
      sizeMm,
      volumeMm3,
      boundMm3,
      sides: said.sides.map(({ side, limit }) => ({ side, says: limit, stopsIt: limits[side] })),
      says: said.size,
    },
    exitCode: 0,
  };
};
