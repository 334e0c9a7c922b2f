import { ORIGIN, ROUNDING_MM, scale, type Vec3 } from '../../base/index.ts';
import type { InspectionInput } from '../job.ts';
import { SIGMAS_AT_95 } from '../loads/index.ts';
import { anchorUse, pullOf } from './anchor-use.ts';
import { groupForces } from './bolt-group.ts';
import { minusWrench, NO_WRENCH, plusWrench, type Wrench, wrenchAt } from './bolts-under.ts';
import { type BracedGroup, bracedGroups, groupBody } from './brace-groups.ts';
import { type BraceLinkName, type Tie, tieUse } from './brace-use.ts';
import type { HeldCarcass } from './held-carcass.ts';
import type { LinkName } from './links.ts';
import { THROWN, type Thrown, thrownBy } from './load-sets.ts';

/** The link that governs a group: of an anchor, or of a brace. `loose`: no balance without lifting off. */
export interface GroupWorst {
  readonly use: number;
  readonly link: LinkName | BraceLinkName | 'loose';
  /** The anchor or the brace. */
  readonly part: string;
  readonly thrown: Thrown;
}

export interface GroupHold {
  readonly group: BracedGroup;
  readonly kg: number;
  readonly sigmaKg: number;
  readonly centre: Vec3;
  readonly worst: GroupWorst | null;
  /** Half width of the use at 95 %, from the spread of the masses of its carcasses; infinite where the use is. */
  readonly uncertainty: number;
  /** Records whose strength nobody gives: a group that has one is not counted on. */
  readonly missing: readonly string[];
}

const middleOf = (pulls: readonly { readonly up: number; readonly at: number }[]): number => {
  const all = pulls.reduce((sum, { up }) => sum + up, 0);
  return all > 0 ? pulls.reduce((sum, { up, at }) => sum + up * at, 0) / all : 0;
};

/**
 * Where the floor bears on the toe line: under each carcass that reaches it as much as its own anchors pull, in the
 * middle of their pull; what the anchors of the others pull, under a carcass that stands there. Null where none does.
 */
const bearingOn = (
  members: readonly HeldCarcass[],
  forces: readonly (readonly Vec3[])[],
  axis: 0 | 1,
  toe: number,
  reaches: (member: HeldCarcass) => boolean,
): readonly Wrench[] | null => {
  const other = axis === 0 ? 1 : 0;
  const pulls = members.map(({ anchors }, i) =>
    anchors.flatMap(({ at, on }, k) => {
      const up = on === 'floor' ? -(forces[i]?.[k]?.[2] ?? 0) : 0;
      return up > 0 ? [{ up, at: at[other] }] : [];
    }),
  );
  const at = (along: number, { foot }: HeldCarcass, up: number): Wrench =>
    wrenchAt(axis === 0 ? [toe, along, foot.z] : [along, toe, foot.z], [0, 0, up]);
  const upOf = (list: readonly { readonly up: number }[]): number => list.reduce((sum, { up }) => sum + up, 0);
  const own = members.map((member, i): Wrench => {
    const list = pulls[i] ?? [];
    return reaches(member) ? at(middleOf(list), member, upOf(list)) : NO_WRENCH;
  });
  const rest = members.flatMap((member, i) => (reaches(member) ? [] : (pulls[i] ?? [])));
  if (upOf(rest) === 0) return own;
  const middle = middleOf(rest);
  const under = members.findIndex(
    (member) => reaches(member) && member.foot.min[other] <= middle && middle <= member.foot.max[other],
  );
  const bears = members[under];
  if (!bears) return null;
  return own.map((wrench, i) => (i === under ? plusWrench(wrench, at(middle, bears, upOf(rest))) : wrench));
};

interface Shared {
  /** Forces on the anchors of each member. */
  readonly anchors: readonly (readonly Vec3[])[];
  /** What each member still wants from its braces. */
  readonly wanted: readonly Wrench[];
}

/** The group thrown as one rigid body, and what that leaves each of its carcasses to get from its braces. */
const shareOut = (members: readonly HeldCarcass[], thrown: Thrown, gravity: number): Shared | null => {
  const body = groupBody(members);
  const way = THROWN[thrown.way];
  const push = scale(way, thrown.g * gravity);
  const forces = groupForces(
    members.flatMap(({ anchors }) => anchors),
    body.foot,
    { at: body.centre, force: scale(push, body.kg) },
  );
  if (!forces) return null;
  let next = 0;
  const anchors = members.map((member) => member.anchors.map(() => forces.anchors[next++] ?? ORIGIN));
  const axis = way[0] !== 0 ? 0 : 1;
  const ahead = way[axis] > 0;
  const edge = ({ foot }: Pick<HeldCarcass, 'foot'>): number => (ahead ? foot.max : foot.min)[axis];
  const bearing =
    forces.bearing.length === 0
      ? members.map(() => NO_WRENCH)
      : bearingOn(members, anchors, axis, edge(body), (member) => Math.abs(edge(member) - edge(body)) <= ROUNDING_MM);
  if (!bearing) return null;
  return {
    anchors,
    wanted: members.map((member, i) => {
      const held = member.anchors.map(({ at }, k) => wrenchAt(at, anchors[i]?.[k] ?? ORIGIN));
      const thrownAway = wrenchAt(member.centre, scale(push, member.kg));
      return minusWrench([thrownAway, bearing[i] ?? NO_WRENCH, ...held].reduce(plusWrench));
    }),
  };
};

/** The carcasses on the first carcass's side when a tie is cut. */
const sideOf = (tie: Tie, ties: readonly Tie[]): ReadonlySet<string> => {
  const side = new Set<string>([tie.carcasses[0]]);
  for (let before = 0; before < side.size; ) {
    before = side.size;
    for (const other of ties) {
      if (other === tie) continue;
      const [a, b] = other.carcasses;
      if (side.has(a)) side.add(b);
      else if (side.has(b)) side.add(a);
    }
  }
  return side;
};

const usesThrown = (
  job: InspectionInput,
  { ties }: BracedGroup,
  members: readonly HeldCarcass[],
  thrown: Thrown,
  missing: Set<string>,
): readonly GroupWorst[] => {
  const shared = shareOut(members, thrown, job.rules.value('standard-gravity'));
  if (!shared) return [{ use: Number.POSITIVE_INFINITY, link: 'loose', part: members[0]?.id ?? '', thrown }];
  const ofAnchors = members.flatMap(({ anchors }, i) =>
    anchors.flatMap((anchor, k) => {
      const reckoned = anchorUse(job, anchor, pullOf(anchor, shared.anchors[i]?.[k] ?? ORIGIN), null);
      for (const id of reckoned.missing) missing.add(id);
      return reckoned.links.map(({ link, use }): GroupWorst => ({ use, link, part: anchor.id, thrown }));
    }),
  );
  const ofTies = ties.flatMap((tie): readonly GroupWorst[] => {
    const side = sideOf(tie, ties);
    const onFirst = shared.wanted.filter((_, i) => side.has(members[i]?.id ?? '')).reduce(plusWrench, NO_WRENCH);
    const worst = tieUse(job, tie, onFirst);
    return worst ? [{ use: worst.use, link: worst.link, part: worst.brace.id, thrown }] : [];
  });
  return [...ofAnchors, ...ofTies];
};

/**
 * A braced group thrown each way of the load sets: all its anchors as one group about the edges of what it stands on,
 * and each tie with what has to pass it so that every carcass is in balance. Carcasses are taken as rigid, bolts of a
 * tie as equally stiff along and across, gravity is left out.
 */
export const holdGroup = (job: InspectionInput, group: BracedGroup): GroupHold => {
  const { members } = group;
  const missing = new Set(group.missing);
  const worstOf = (own: readonly HeldCarcass[]): GroupWorst | null =>
    thrownBy(job.design.holdTo, job.rules)
      .flatMap((thrown) => usesThrown(job, group, own, thrown, missing))
      .reduce<GroupWorst | null>((worst, each) => (worst === null || each.use > worst.use ? each : worst), null);
  const worst = worstOf(members);
  const spread = members.map((member, i) => {
    const shifted = [SIGMAS_AT_95, -SIGMAS_AT_95].map((sigmas) => {
      const kg = Math.max(0, member.kg + sigmas * member.sigmaKg);
      return (worstOf(members.with(i, { ...member, kg }))?.use ?? 0) - (worst?.use ?? 0);
    });
    return Math.max(0, ...shifted);
  });
  const { kg, sigmaKg, centre } = groupBody(members);
  return {
    group,
    kg,
    sigmaKg,
    centre,
    worst,
    uncertainty: worst && Number.isFinite(worst.use) ? Math.hypot(...spread) : Number.POSITIVE_INFINITY,
    missing: [...missing].sort(),
  };
};

/** Every braced group of the cabinet, thrown; none where no brace ties anything. */
export const holdGroups = (job: InspectionInput, held: readonly HeldCarcass[]): readonly GroupHold[] =>
  bracedGroups(job, held).map((group) => holdGroup(job, group));

/** Whether a group holds by a limit, with all that is known of its masses and its strengths. */
export const groupHolds = ({ worst, uncertainty, missing }: GroupHold, limit: number): boolean =>
  worst !== null && missing.length === 0 && worst.use + uncertainty <= limit;
