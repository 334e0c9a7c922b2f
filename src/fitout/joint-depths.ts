import type { Joints } from '../design/index.ts';
import type { CarcassContext } from './context.ts';
import type { FitProblem } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';

export interface JointDepths {
  /** How far top, bottom and dividers reach into what they stand in. */
  readonly corner: number;
  /** How far the back reaches into sides, top and bottom. */
  readonly back: number;
  readonly problems: readonly FitProblem[];
}

const backDepth = ({ back }: Joints): number => {
  if (back.kind === 'groove') return back.grooveDepthMm;
  return back.kind === 'rabbet' ? back.depthMm : 0;
};

/**
 * Joint depths of a carcass as far as the sheet allows: dados go no deeper than half the thickness, since two may
 * meet back to back in a divider, and the joint of the back leaves the least web. A deeper wish is a problem.
 */
export const jointDepths = (context: CarcassContext): JointDepths => {
  const { carcass, material, rule } = context;
  const thickness = material.thicknessMm;
  const problems: FitProblem[] = [];
  const held = (what: string, want: number, most: number): number => {
    if (want > most)
      problems.push(badJoint(carcass.id, [`${what} ${mmWords(want)}`, `sheet ${mmWords(thickness)}`], want, most));
    return Math.min(want, most);
  };
  const { joints } = carcass;
  const corner = joints.corner === 'butt' ? 0 : held(joints.corner, joints.dadoDepthMm, thickness / 2);
  const mostAtBack = Math.max(0, thickness - rule('groove-web-min'));
  return { corner, back: held(`back ${joints.back.kind}`, backDepth(joints), mostAtBack), problems };
};
