import {
  add,
  after,
  HOME,
  length,
  type Pose,
  type Random,
  scale,
  seededRandom,
  shift,
  subtract,
  turnAbout,
  type Vec3,
} from '../../base/index.ts';
import { type ConvexShape, shapeAt, shapeBox } from '../../bodies/index.ts';
import type { CarryLeg, CarryPath, CarryPose } from './carry-result.ts';
import type { Carried, Past } from './carry-scene.ts';

export const NOTHING_NEAR: CarryLeg = { leastGap: Infinity, nearest: '', uncertainty: 0, at: null };

export const AT_HOME: CarryPose = { shift: [0, 0, 0], pitchRad: 0, rollRad: 0, yawRad: 0 };

/** The carcass turned about its middle by pitch, roll and yaw in this order, then moved. */
export const carryPoseOf = ({ shift: by, pitchRad, rollRad, yawRad }: CarryPose, middle: Vec3): Pose => {
  const turns = (
    [
      [0, 1, 0, pitchRad],
      [1, 0, 0, rollRad],
      [0, 0, 1, yawRad],
    ] as const
  ).reduce<Pose>(
    (pose, [x, y, z, angle]) => (angle === 0 ? pose : after(turnAbout(middle, [x, y, z], angle), pose)),
    HOME,
  );
  return after(shift(by), turns);
};

export interface PlanOrder {
  readonly carried: Carried;
  readonly past: readonly Past[];
  /** The gap that the house wants on the way. */
  readonly wantedMm: number;
  /** It is out once all of it lies behind this x. */
  readonly outsideX: number;
  /** Gaps that the two trees may compute before it is said that no way was found; 0 tries the plain ways alone. */
  readonly budget: number;
}

/** What is certified of a way: moved no further than this between two looks, what stands clear at both is clear. */
const FINEST_MM = 0.5;
/** How far beyond what decides a piece of the way is looked: in the search, and where the least gap is measured. */
const SEARCH_MARGIN_MM = 1;
const MEASURE_MARGIN_MM = 30;
/**
 * What is asked for in turn: what the house wants beyond any doubt of the survey, what it wants, a share of it, and no
 * gap at all, since a tight way is better than none.
 */
const ASKED = ['sure', 'wanted', 'tight', 'none'] as const;
type Asked = (typeof ASKED)[number];
const TIGHT_SHARE = 0.3;

interface Obstacle extends Past {
  readonly need: number;
  /** False for what the carcass stands near in its place: the floor, its neighbours. */
  readonly counts: boolean;
}

interface Looked {
  readonly slack: number;
  readonly gap: number;
  readonly nearest: Obstacle | null;
}

interface Edge {
  readonly clear: boolean;
  readonly least: number;
  /** What is nearest, and where it is passed so. */
  readonly by: { readonly past: Obstacle; readonly pose: CarryPose } | null;
}

class Spent extends Error {}

const between = (a: CarryPose, b: CarryPose, s: number): CarryPose => ({
  shift: add(a.shift, scale(subtract(b.shift, a.shift), s)),
  pitchRad: a.pitchRad + (b.pitchRad - a.pitchRad) * s,
  rollRad: a.rollRad + (b.rollRad - a.rollRad) * s,
  yawRad: a.yawRad + (b.yawRad - a.yawRad) * s,
});

/** No point of the carcass moves further than this from one pose to the other. */
export const mostMoved = (a: CarryPose, b: CarryPose, reach: number): number =>
  length(subtract(b.shift, a.shift)) +
  reach * (Math.abs(b.pitchRad - a.pitchRad) + Math.abs(b.rollRad - a.rollRad) + Math.abs(b.yawRad - a.yawRad));

/** Judges poses and the ways between them, and counts what it has cost. */
const createJudge = ({ carried, budget }: PlanOrder, obstacles: readonly Obstacle[]) => {
  let spent = 0;
  const met = new Map<string, number>();
  const look = (pose: CarryPose, most: number): Looked => {
    spent += 1;
    if (spent > budget) throw new Spent();
    const shape = shapeAt(carried.shape, carryPoseOf(pose, carried.middle));
    let [slack, gap, by] = [most, Infinity, ''];
    let nearest: Obstacle | null = null;
    for (const obstacle of obstacles) {
      const found = obstacle.gap(shape, slack + obstacle.need);
      if (obstacle.counts && found < gap) [gap, nearest] = [found, obstacle];
      if (found - obstacle.need < slack) [slack, by] = [found - obstacle.need, obstacle.name];
      if (slack < 0) break;
    }
    if (slack < 0) met.set(by, (met.get(by) ?? 0) + 1);
    return { slack, gap, nearest };
  };
  /**
   * Clear where every piece of the way is shorter than the slack seen at its middle lets it be. `margin` is how far
   * beyond that is looked: little for yes or no, more where the least gap is to be told.
   */
  const edge = (a: CarryPose, b: CarryPose, margin = SEARCH_MARGIN_MM): Edge => {
    const way = mostMoved(a, b, carried.reach);
    const measures = margin > SEARCH_MARGIN_MM;
    let least = Infinity;
    let by: Edge['by'] = null;
    // The longest pieces first: where a way is blocked, a few looks far apart find it before any piece is proven.
    const pieces: (readonly [from: number, to: number])[] = [[0, 1]];
    for (const [from, to] of pieces) {
      const half = ((to - from) * way) / 2;
      const pose = between(a, b, (from + to) / 2);
      const seen = look(pose, half + margin);
      if (seen.slack < 0) return { clear: false, least, by };
      const finest = half <= FINEST_MM;
      const enough = measures ? seen.gap - half >= Math.min(least, margin) : seen.slack >= half;
      if (finest || (enough && seen.slack >= half)) {
        if (seen.nearest && seen.gap - half < least) [least, by] = [seen.gap - half, { past: seen.nearest, pose }];
        continue;
      }
      const middle = (from + to) / 2;
      pieces.push([from, middle], [middle, to]);
    }
    return { clear: true, least, by };
  };
  return {
    look,
    edge,
    spent: () => spent,
    met: () => [...met].toSorted((p, q) => q[1] - p[1] || (p[0] < q[0] ? -1 : 1))[0]?.[0] ?? '',
  };
};

type Judge = ReturnType<typeof createJudge>;

const moved = (x: number, y: number, z: number): CarryPose => ({ ...AT_HOME, shift: [x, y, z] });

/** Heights that two people lift it by, and how far they set it aside, before it is drawn out straight. */
const LIFTS = [3, 8, 16, 20, 28, 45, 70, 110];
const ASIDES = [0, 2.5, 5, 15, 30, 60, 100, 150, 220, 300, 400];

/** The plain ways: lifted, set aside towards the middle, drawn out; or drawn out some way before it is set aside. */
const plainWays = ({ carried, outsideX }: PlanOrder): readonly (readonly CarryPose[])[] => {
  const box = shapeBox(carried.shape);
  const outX = outsideX - box.max[0];
  const inward = -Math.sign(carried.middle[1]) || 1;
  const room = Math.abs(carried.middle[1]) + 100;
  return ASIDES.filter((aside) => aside <= room).flatMap((aside) =>
    LIFTS.flatMap((lift) => {
      const y = inward * aside;
      const straight = [AT_HOME, moved(0, 0, lift), ...(aside === 0 ? [] : [moved(0, y, lift)]), moved(outX, y, lift)];
      if (aside === 0) return [straight];
      return [
        straight,
        ...[0.15, 0.4].map((share) => [
          AT_HOME,
          moved(0, 0, lift),
          moved(outX * share, 0, lift),
          moved(outX * share, y, lift),
          moved(outX, y, lift),
        ]),
      ];
    }),
  );
};

/** What two people lean a carcass by where it does not pass upright, and how high they then lift it. */
const LEANS = [
  ...[0.2, 0.35, 0.5].flatMap((rad) => [-rad, rad]).map((pitchRad) => ({ pitchRad, rollRad: 0 })),
  ...[0.15, 0.3].flatMap((rad) => [-rad, rad]).map((rollRad) => ({ pitchRad: 0, rollRad })),
];
/** Heights that it is lifted by to be leant over, and that its lowest edge is then carried at. */
const LEANING_LIFTS = [60, 150];
const CARRIED_AT = [5, 15, 35, 70];
/** What leans reaches further forward than upright. */
const LEANT_MM = 200;

/** The leaning ways: lifted, leant over to the front, the rear or a side, let down, and drawn out so. */
const leaningWays = ({ carried, outsideX }: PlanOrder): readonly (readonly CarryPose[])[] => {
  const box = shapeBox(carried.shape);
  const outX = outsideX - box.max[0] - LEANT_MM;
  return LEANS.flatMap((lean) => {
    const leant = shapeBox(shapeAt(carried.shape, carryPoseOf({ ...AT_HOME, ...lean }, carried.middle)));
    const down = box.min[2] - leant.min[2];
    return LEANING_LIFTS.flatMap((lift) =>
      CARRIED_AT.map((high) => [
        AT_HOME,
        moved(0, 0, lift),
        { ...moved(0, 0, lift), ...lean },
        { ...moved(0, 0, down + high), ...lean },
        { ...moved(outX, 0, down + high), ...lean },
      ]),
    );
  });
};

/** Whether a way is clear, each of its pieces judged once however many ways share it. */
const createIsWay = (judge: Judge): ((poses: readonly CarryPose[]) => boolean) => {
  const known = new Map<string, boolean>();
  const isClear = (from: CarryPose, to: CarryPose): boolean => {
    const key = [from, to].map(({ shift: by, pitchRad, rollRad }) => [...by, pitchRad, rollRad].join(' ')).join(' > ');
    const clear = known.get(key) ?? judge.edge(from, to).clear;
    known.set(key, clear);
    return clear;
  };
  return (poses) =>
    poses.slice(1).every((to, i) => {
      const from = poses[i];
      return from !== undefined && isClear(from, to);
    });
};

/** A way by its poses and what is nearest from each to the next. */
export const wayOf = (poses: readonly CarryPose[], legs: readonly CarryLeg[]): CarryPath => {
  const { leastGap, nearest, uncertainty } = legs.reduce(
    (worst, leg) => (leg.leastGap < worst.leastGap ? leg : worst),
    NOTHING_NEAR,
  );
  return { poses, leastGap, nearest, uncertainty, legs };
};

/** The least gap of a way that is clear, proven. */
const measuredWay = (carried: Carried, judge: Judge, poses: readonly CarryPose[]): CarryPath =>
  wayOf(
    poses,
    poses.slice(1).map((to, i): CarryLeg => {
      const from = poses[i];
      const { least, by } = from ? judge.edge(from, to, MEASURE_MARGIN_MM) : { least: Infinity, by: null };
      if (by === null) return NOTHING_NEAR;
      const place = by.past.place(poseShape(carried, by.pose), Math.max(0, least) + MEASURE_MARGIN_MM);
      return {
        leastGap: least,
        nearest: by.past.name,
        uncertainty: place ? by.past.halfWidth(place.to) : by.past.doubt,
        at: place && [place.from, place.to],
      };
    }),
  );

/** How far two people tilt it. */
const MOST_TILT = { pitch: 0.6, roll: 0.5, yaw: 0.9 };
const TREE_STEP_MM = 120;
/** One seed for all, so that the same design gives the same way. */
const TREE_SEED = 20_263;

interface Node {
  readonly pose: CarryPose;
  readonly from: Node | null;
}

const pathTo = (node: Node): readonly CarryPose[] => {
  const poses: CarryPose[] = [];
  for (let at: Node | null = node; at; at = at.from) poses.push(at.pose);
  return poses.toReversed();
};

/** Two trees of proven ways, one from the place and one from outside, grown towards each other (Kuffner and LaValle). */
const treeWay = (order: PlanOrder, judge: Judge, random: Random): readonly CarryPose[] => {
  const { carried, outsideX } = order;
  const box = shapeBox(carried.shape);
  const outX = outsideX - box.max[0];
  const within = (most: number): number => (2 * random() - 1) * most;
  const somewhere = (): CarryPose => ({
    shift: [outX * random() * 1.05, within(500), random() * 250 - 30],
    pitchRad: random() < 0.4 ? 0 : within(MOST_TILT.pitch),
    rollRad: random() < 0.6 ? 0 : within(MOST_TILT.roll),
    yawRad: random() < 0.6 ? 0 : within(MOST_TILT.yaw),
  });
  const inward = -carried.middle[1];
  let near: Node[] = [{ pose: AT_HOME, from: null }];
  let far: Node[] = [{ pose: moved(outX, inward, 60), from: null }];
  let swapped = false;
  const nearestIn = (tree: readonly Node[], to: CarryPose): Node | undefined =>
    tree.reduce<Node | undefined>(
      (best, node) =>
        !best || mostMoved(node.pose, to, carried.reach) < mostMoved(best.pose, to, carried.reach) ? node : best,
      undefined,
    );
  const step = (tree: Node[], to: CarryPose): Node | null => {
    const from = nearestIn(tree, to);
    if (!from) return null;
    const way = mostMoved(from.pose, to, carried.reach);
    const pose = way <= TREE_STEP_MM ? to : between(from.pose, to, TREE_STEP_MM / way);
    if (!judge.edge(from.pose, pose).clear) return null;
    const node = { pose, from };
    tree.push(node);
    return node;
  };
  for (;;) {
    const node = step(near, somewhere());
    if (node) {
      for (let reached = step(far, node.pose); reached; reached = step(far, node.pose)) {
        if (mostMoved(reached.pose, node.pose, carried.reach) > 0) continue;
        const [own, other] = [pathTo(node), pathTo(reached)];
        return swapped ? [...other, ...own.toReversed().slice(1)] : [...own, ...other.toReversed().slice(1)];
      }
    }
    [near, far, swapped] = [far, near, !swapped];
  }
};

/** The way with every waypoint left out that a proven way leads past. */
const shortened = (judge: Judge, poses: readonly CarryPose[]): readonly CarryPose[] => {
  const kept = [...poses];
  for (let i = 0; i + 2 < kept.length; ) {
    const [from, to] = [kept[i], kept[i + 2]];
    if (from && to && judge.edge(from, to).clear) kept.splice(i + 1, 1);
    else i += 1;
  }
  return kept;
};

export interface PlanResult {
  readonly path: CarryPath | null;
  readonly stuck: { readonly mm: number; readonly by: string } | null;
}

/** How far it is drawn straight out before it meets anything, for what is said where no way was found. */
const straightReach = ({ carried, outsideX }: PlanOrder, judge: Judge): number => {
  const outX = outsideX - shapeBox(carried.shape).max[0];
  let reached = 0;
  for (const lift of LIFTS) {
    let [low, high] = [0, 1];
    if (!judge.edge(AT_HOME, moved(0, 0, lift)).clear) continue;
    for (let turn = 0; turn < 7; turn++) {
      const middle = (low + high) / 2;
      if (judge.edge(moved(0, 0, lift), moved(outX * middle, 0, lift)).clear) low = middle;
      else high = middle;
    }
    reached = Math.max(reached, Math.abs(outX) * low);
  }
  return reached;
};

/**
 * A way of a carcass from its place to the open air, every piece of it proven clear: plain ways first, asking for the
 * whole wanted gap and then for less, and where none leads out a search of two trees over shifts and tilts. What the
 * carcass stands near in its place is not asked for a gap on the way. Null is *not found*, not *impossible*.
 */
export const planOut = (order: PlanOrder): PlanResult => {
  const { carried, past, wantedMm } = order;
  const homeGaps = past.map((own) => own.gap(carried.shape, wantedMm + own.doubt));
  const needOf = (own: Past, home: number, asked: Asked): number => {
    if (asked === 'none' || home < wantedMm) return 0;
    if (asked === 'tight') return wantedMm * TIGHT_SHARE;
    return asked === 'sure' && home >= wantedMm + own.doubt ? wantedMm + own.doubt : wantedMm;
  };
  const judgeFor = (asked: Asked, budget: number): Judge =>
    createJudge(
      { ...order, budget },
      past.flatMap((own, i): readonly Obstacle[] => {
        const home = homeGaps[i] ?? Infinity;
        // What it stands into is told by the checks at rest and would keep it from moving at all.
        if (home < 0) return [];
        return [{ ...own, need: needOf(own, home, asked), counts: home >= wantedMm }];
      }),
    );
  for (const asked of ASKED) {
    const judge = judgeFor(asked, Infinity);
    const poses = [...plainWays(order), ...leaningWays(order)].find(createIsWay(judge));
    if (poses) return { path: measuredWay(carried, judge, poses), stuck: null };
  }
  if (order.budget === 0) return { path: null, stuck: null };
  const judge = judgeFor('none', order.budget);
  try {
    const poses = shortened(judge, treeWay(order, judge, seededRandom(TREE_SEED)));
    return { path: measuredWay(carried, judgeFor('none', Infinity), poses), stuck: null };
  } catch (fault) {
    if (!(fault instanceof Spent)) throw fault;
  }
  return { path: null, stuck: { mm: straightReach(order, judgeFor('none', Infinity)), by: judge.met() } };
};

export const poseShape = (carried: Carried, pose: CarryPose): ConvexShape =>
  shapeAt(carried.shape, carryPoseOf(pose, carried.middle));
