import { boxUnion, compareText, ROUNDING_MM, scale } from '../../base/index.ts';
import type { InspectionInput } from '../job.ts';
import { fittedItems } from '../loads/index.ts';
import { type Tie, tieMissing } from './brace-use.ts';
import type { HeldCarcass } from './held-carcass.ts';

type Brace = InspectionInput['fitout']['braces'][number];

/** Carcasses that braces tie into one, as one rigid body with all their anchors. */
export interface BracedGroup {
  /** By their ids, each with half of every brace at it. */
  readonly members: readonly HeldCarcass[];
  /** The ties that join them without a ring: one fewer than carcasses. */
  readonly ties: readonly Tie[];
  /** All braces in the group, those that close a ring as well. */
  readonly braces: readonly Brace[];
  readonly missing: readonly string[];
}

interface Weight {
  readonly kg: number;
  readonly varianceKg2: number;
}

/** What each brace weighs with its bolts, with the contingency that loading cases carry, and how far that is known. */
const braceWeights = ({ fitout, rules }: InspectionInput): ReadonlyMap<string, Weight> => {
  const ids = new Set<string>(fitout.braces.map(({ id }) => id));
  const weights = new Map<string, Weight>();
  fittedItems(fitout, rules).forEach(({ kg, sigmaKg }, i) => {
    const origin = fitout.masses[i]?.origin ?? '';
    if (!ids.has(origin)) return;
    const before = weights.get(origin) ?? { kg: 0, varianceKg2: 0 };
    weights.set(origin, { kg: before.kg + kg, varianceKg2: before.varianceKg2 + sigmaKg ** 2 });
  });
  return weights;
};

/** A carcass with half of a brace hung on it. */
const withHalf = (held: HeldCarcass, brace: Brace, weight: Weight): HeldCarcass => {
  const half = weight.kg / 2;
  const kg = held.kg + half;
  if (kg <= 0) return held;
  const [x, y, z] = [0, 1, 2].map((i) => ((held.centre[i] ?? 0) * held.kg + (brace.at[i] ?? 0) * half) / kg);
  return {
    ...held,
    kg,
    sigmaKg: Math.sqrt(held.sigmaKg ** 2 + weight.varianceKg2 / 4),
    centre: [x ?? 0, y ?? 0, z ?? 0],
  };
};

const pairOf = ({ carcasses: [a, b] }: Brace): readonly [string, string] => (compareText(a, b) <= 0 ? [a, b] : [b, a]);

/** The group at the end of a chain of joins. */
const rootOf = (parents: ReadonlyMap<string, string>, id: string): string => {
  let root = id;
  for (let up = parents.get(root); up !== undefined; up = parents.get(root)) root = up;
  return root;
};

/**
 * The groups of carcasses that stand on the floor of the vehicle, on one level, and are tied by braces without a
 * problem. Ties are taken in the order of their braces' ids; one that would close a ring is left out, so that what
 * passes each tie follows from statics alone.
 */
export const bracedGroups = (job: InspectionInput, held: readonly HeldCarcass[]): readonly BracedGroup[] => {
  const standing = new Map(held.filter(({ standsOn }) => standsOn === null).map((each) => [each.id, each]));
  const braces = job.fitout.braces
    .filter(({ sound, carcasses: [a, b] }) => {
      const [one, other] = [standing.get(a), standing.get(b)];
      return sound && one && other && Math.abs(one.foot.z - other.foot.z) <= ROUNDING_MM;
    })
    .toSorted((a, b) => compareText(a.id, b.id));
  const byPair = new Map<string, { carcasses: readonly [string, string]; braces: Brace[] }>();
  for (const brace of braces) {
    const carcasses = pairOf(brace);
    const tie = byPair.get(carcasses.join(' ')) ?? { carcasses, braces: [] };
    tie.braces.push(brace);
    byPair.set(carcasses.join(' '), tie);
  }
  const parents = new Map<string, string>();
  const ties: Tie[] = [];
  for (const tie of byPair.values()) {
    const [a, b] = tie.carcasses.map((id) => rootOf(parents, id));
    if (a === undefined || b === undefined || a === b) continue;
    parents.set(b, a);
    ties.push(tie);
  }
  const weights = braceWeights(job);
  const roots = new Set(ties.map(({ carcasses: [a] }) => rootOf(parents, a)));
  return [...roots].map((root): BracedGroup => {
    const own = braces.filter(({ carcasses: [a] }) => rootOf(parents, a) === root);
    const members = [...standing.values()]
      .filter(({ id }) => rootOf(parents, id) === root)
      .toSorted((a, b) => compareText(a.id, b.id))
      .map((member) =>
        own
          .filter(({ carcasses }) => carcasses.some((id) => id === member.id))
          .reduce<HeldCarcass>(
            (sum, brace) => withHalf(sum, brace, weights.get(brace.id) ?? { kg: 0, varianceKg2: 0 }),
            {
              ...member,
              anchors: member.anchors.toSorted((a, b) => compareText(a.id, b.id)),
            },
          ),
      );
    const joined = ties.filter(({ carcasses: [a] }) => rootOf(parents, a) === root);
    const missing = [...new Set(joined.flatMap((tie) => tieMissing(job, tie)))].sort();
    return { members, ties: joined, braces: own, missing };
  });
};

/** The group as one body: its mass, its middle, and the rectangle round all that it stands on. */
export const groupBody = (members: readonly HeldCarcass[]): Pick<HeldCarcass, 'kg' | 'sigmaKg' | 'centre' | 'foot'> => {
  const kg = members.reduce((sum, member) => sum + member.kg, 0);
  const moment = members.reduce<[number, number, number]>(
    ([x, y, z], { kg: own, centre }) => [x + own * centre[0], y + own * centre[1], z + own * centre[2]],
    [0, 0, 0],
  );
  const boxes = members.map(({ box }) => box);
  const box = boxes.slice(1).reduce(boxUnion, boxes[0] ?? { min: [0, 0, 0], max: [0, 0, 0] });
  return {
    kg,
    sigmaKg: Math.hypot(...members.map(({ sigmaKg }) => sigmaKg)),
    centre: kg > 0 ? scale(moment, 1 / kg) : [0, 0, 0],
    foot: { min: [box.min[0], box.min[1]], max: [box.max[0], box.max[1]], z: members[0]?.foot.z ?? 0 },
  };
};
