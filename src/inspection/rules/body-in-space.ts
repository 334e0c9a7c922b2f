import { ROUNDING_MM } from '../../base/index.ts';
import {
  clearanceInside,
  type Gap,
  type PreparedShell,
  prepareShell,
  type Shell,
  shellTriangles,
  skinGap,
  type Triangle,
} from '../../bodies/index.ts';
import { type CargoSpace, gapHalfWidth } from '../../envelope/index.ts';
import { wholePart } from '../../fitout/index.ts';
import type { Job } from '../job.ts';
import type { StandingBody } from '../standing.ts';
import { NOTHING, ruleLimit, type Verdict } from '../verdict.ts';
import { judgeGaps, type Nearness, segmentOf } from './nearness.ts';

type Keep = (triangle: Triangle) => boolean;

const partOf = (skin: Shell, keep: Keep): PreparedShell => {
  const triangles = shellTriangles(skin).flatMap((triangle, i) =>
    keep(triangle) ? Array.from({ length: 3 }, (_, corner) => skin.triangles[3 * i + corner] ?? 0) : [],
  );
  return prepareShell({ positions: skin.positions, triangles });
};

/**
 * The skin that a body must keep off. Left out: what its carcass stands on or over, that is every triangle wholly at or
 * below the underside of the carcass, since the floor bears the carcass and does not rub against it; and the rear end
 * of the lofted skin where a closure of the survey looks rearward, since there is an opening there and no trim: the
 * closed closure is another rule's business.
 */
const skinToKeepOff = (space: CargoSpace, opensRear: boolean, underside: number): PreparedShell => {
  const rear = space.sections[0]?.x ?? -Infinity;
  return partOf(space.skin, (triangle) => {
    const under = triangle.every((corner) => corner[2] <= underside + ROUNDING_MM);
    const end = opensRear && triangle.every((corner) => Math.abs(corner[0] - rear) <= ROUNDING_MM);
    return !under && !end;
  });
};

/** The skins of one cargo space, made ready for questions as they are first asked for. */
interface Skins {
  readonly whole: PreparedShell;
  readonly keptOff: (opensRear: boolean, underside: number) => PreparedShell;
}

const makeSkins = (space: CargoSpace): Skins => {
  const byUnderside = new Map<string, PreparedShell>();
  return {
    whole: prepareShell(space.skin),
    keptOff: (opensRear, underside) => {
      const key = `${opensRear} ${underside}`;
      const known = byUnderside.get(key) ?? skinToKeepOff(space, opensRear, underside);
      byUnderside.set(key, known);
      return known;
    },
  };
};

/** Kept with the space: they hold nothing that it does not say, and the same space is inspected at every edit. */
const remembered = new WeakMap<CargoSpace, Skins>();

const skinsOf = (space: CargoSpace): Skins => {
  const known = remembered.get(space) ?? makeSkins(space);
  remembered.set(space, known);
  return known;
};

/** How a body stands to the skin: the depth by which it pokes out, or else its gap to what it must keep off. */
const gapOf = (standing: StandingBody, whole: PreparedShell, keptOff: PreparedShell, limit: number): Gap | null => {
  const { shape } = standing.body;
  const poking = clearanceInside(shape, whole, 0);
  if (poking && poking.distance < -ROUNDING_MM) return poking;
  return skinGap(shape, keptOff, limit);
};

/** How well the skin is known where the gap ends; clear even of the worst-known skin, that question is not asked. */
const halfWidthAt = (job: Job, space: CargoSpace, gap: Gap, limit: number): number =>
  gap.distance - limit >= job.gapUncertainty ? job.gapUncertainty : gapHalfWidth(space, job.rules, { skinAt: gap.to });

/**
 * Every body of the cabinet, at rest, inside the skin of the cargo space and clear of it by the gap to trim. The worst
 * body of a carcass, of an item of gear and of a device speaks for it. What hangs on the trim or on a closure is left
 * out: it is meant to touch.
 */
export const bodyInSpace = (job: Job): Verdict => {
  const { space } = job;
  if (!space) return NOTHING;
  const limit = ruleLimit(job.rules, 'gap-trim');
  const skins = skinsOf(space);
  const opensRear = job.design.survey.closures.some((closure) => closure.outward === 'rear');
  const worst = new Map<string, { readonly gap: Gap; readonly standing: StandingBody }>();
  const inside = job.standing.filter(({ body, closure }) => closure === null && body.carcass !== null);
  for (const standing of inside) {
    const { subject, underside } = standing;
    const least = worst.get(subject)?.gap.distance ?? Infinity;
    const gap = gapOf(standing, skins.whole, skins.keptOff(opensRear, underside), least);
    if (gap && gap.distance < least) worst.set(subject, { gap, standing });
  }
  const seen = [...worst].map(
    ([subject, { gap, standing }]): Nearness => ({
      parts: [subject],
      value: gap.distance,
      limit,
      uncertainty: halfWidthAt(job, space, gap, limit.value),
      at: segmentOf(gap),
      facts: { body: wholePart(standing.body.id), bodyName: standing.body.name },
    }),
  );
  return judgeGaps('body-in-space', 'gap', seen, inside.length);
};
