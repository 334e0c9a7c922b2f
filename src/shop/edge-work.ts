import { formatMillimetres } from '../base/index.ts';
import type { Panel } from '../fitout/index.ts';

const DEGREES = 180 / Math.PI;
const TENTHS = 10;

/** An angle as it is set at a saw or a brake, to a tenth of a degree: 18.4°. */
export const angleText = (rad: number): string => `${Math.round(rad * DEGREES * TENTHS) / TENTHS}°`;

/** What the saw and the brake must know of the edges and bends of a part, each in a few words; empty for a plain one. */
export const edgeWork = ({ bevels = [], bends = [] }: Pick<Panel, 'bevels' | 'bends'>): readonly string[] => [
  ...bevels.map(
    ({ edge, tiltRad, longFace, setMm, landMm }) =>
      `bevel ${edge.toUpperCase()} ${angleText(tiltRad)}, long on face ${longFace}, ${formatMillimetres(setMm)} mm back${
        landMm === undefined ? '' : `, ${formatMillimetres(landMm)} mm of the edge left square`
      }`,
  ),
  ...bends.map(
    ({ angleRad, towards, insideRadiusMm, deductionMm, from, to }) =>
      `bend ${angleText(angleRad)} to face ${towards} at ${from[1] === to[1] ? 'y' : 'x'} ${formatMillimetres(
        from[1] === to[1] ? from[1] : from[0],
      )}, inside radius ${formatMillimetres(insideRadiusMm)}, deduction ${formatMillimetres(deductionMm, 2)} mm`,
  ),
];
