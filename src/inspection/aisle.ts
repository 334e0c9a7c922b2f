import { dot, type Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Design } from '../design/index.ts';
import { OUTWARD } from '../envelope/index.ts';

const THAT_WAY = 0.5;

/** Height of the highest point that was measured of the sections (mm). */
const headroom = ({ stations }: Design['survey']): number =>
  Math.max(0, ...stations.flatMap(({ left, right }) => [...left, ...right].map(([, z]) => z)));

/**
 * True for a face that looks aside where no closure opens, in a vehicle that a small person stands up in: whoever
 * works at it stands in the aisle, on the floor of the vehicle and not on the ground. Without any closure measured
 * nobody is taken to stand inside.
 */
export const standsInAisle = (
  { survey }: Pick<Design, 'survey'>,
  rules: Pick<HouseRules, 'value'>,
): ((out: Vec3) => boolean) => {
  const ways = survey.closures.map(({ outward }) => OUTWARD[outward]);
  const standing = headroom(survey) >= rules.value('stature-small') + rules.value('boots-height');
  return (out) =>
    standing && ways.length > 0 && Math.abs(out[1]) > THAT_WAY && !ways.some((way) => dot(way, out) > THAT_WAY);
};
