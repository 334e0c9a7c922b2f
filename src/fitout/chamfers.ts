import { type Box, dot, ROUNDING_MM, type Vec2, type Vec3 } from '../base/index.ts';
import { beyondPlane, type HalfSpace } from '../bodies/index.ts';
import type { Chamfer, NodeId } from '../design/index.ts';
import { ACROSS, type Axis, DEEP, UP, withAxis } from './axes.ts';
import type { FitProblem } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';

/** One chamfer of a carcass as planes: what its neighbours and everything inside are cut by. */
export interface ChamferCut {
  readonly chamfer: Chamfer;
  /** The axis that it runs along. */
  readonly run: Axis;
  /** Everything inside the carcass, and boards that the chamfer's panel laps over, end at its inner face. */
  readonly inner: HalfSpace;
  /** Panels of the shell that it meets along its edges, each with the plane of its mitre. */
  readonly mitres: readonly { readonly role: string; readonly half: HalfSpace }[];
  /** Cross-section of the chamfer's panel at the low end of its run: the two outer corners, then the two inner ones. */
  readonly outer: readonly [Vec3, Vec3];
  readonly innerEdges: readonly [Vec3, Vec3];
}

/** One leg of a chamfer: along which axis, at which end of the carcass, how much, and the panel of the shell there. */
interface Leg {
  readonly axis: Axis;
  readonly high: boolean;
  readonly mm: number;
  readonly role: string;
}

const legsOf = (chamfer: Chamfer): readonly [Leg, Leg] => {
  const { corner } = chamfer;
  const right = corner.endsWith('right');
  const top = corner.startsWith('top');
  const side = { axis: ACROSS, high: right, role: right ? 'side-right' : 'side-left' } as const;
  const level = { axis: UP, high: top, role: top ? 'top' : 'bottom' } as const;
  const back = { axis: DEEP, high: true, role: 'back' } as const;
  switch (chamfer.along) {
    case 'deep':
      return [
        { ...side, mm: chamfer.acrossMm },
        { ...level, mm: chamfer.upMm },
      ];
    case 'up':
      return [
        { ...side, mm: chamfer.acrossMm },
        { ...back, mm: chamfer.deepMm },
      ];
    case 'across':
      return [
        { ...level, mm: chamfer.upMm },
        { ...back, mm: chamfer.deepMm },
      ];
  }
};

const RUNS: { readonly [A in Chamfer['along']]: Axis } = { deep: DEEP, up: UP, across: ACROSS };

/**
 * The plane of the mitre between a chamfer's panel and its neighbour: from the outer edge that they share to where
 * their inner faces meet, so that both are sawn at half the angle between them. The back stands in from the rear, so
 * there the end of the chamfer's panel is flush with the rear and nothing is mitred.
 *
 * Worked in distances inward from the two planes of the corner, `near` from the neighbour's plane and `far` from the
 * other; legs a (taken of `far`'s axis is b): outer line near·b + far·a = a·b with a on near's axis.
 */
const mitreAt = (role: string, a: number, b: number, t: number) => {
  const long = Math.hypot(a, b);
  if (role === 'back') return { corner: [0, b + (t * long) / a] as const, normal: null };
  const rise = (t * (long - b)) / a;
  const slant = Math.hypot(rise, t);
  return { corner: [t, b + rise] as const, normal: [rise / slant, -t / slant] as const };
};

const cutOf = (chamfer: Chamfer, box: Box, t: number): ChamferCut => {
  const [first, second] = legsOf(chamfer);
  const sign = (leg: Leg): number => (leg.high ? -1 : 1);
  // From distances inward from the planes of the first and second leg to carcass coordinates.
  const turned = ([u, v]: Vec2): Vec3 =>
    withAxis(withAxis([0, 0, 0], first.axis, sign(first) * u), second.axis, sign(second) * v);
  const end = (leg: Leg): number => (leg.high ? box.max : box.min)[leg.axis];
  const run = RUNS[chamfer.along];
  const corner = withAxis(
    withAxis(withAxis([0, 0, 0], first.axis, end(first)), second.axis, end(second)),
    run,
    box.min[run],
  );
  const at = (uv: Vec2): Vec3 => {
    const by = turned(uv);
    return [corner[0] + by[0], corner[1] + by[1], corner[2] + by[2]];
  };
  const half = (normal: Vec3, point: Vec3): HalfSpace => ({ normal, offset: dot(normal, point) });
  const [a, b] = [first.mm, second.mm];
  const long = Math.hypot(a, b);
  const atFirst = mitreAt(first.role, a, b, t);
  const atSecond = mitreAt(second.role, b, a, t);
  const edges = [at([0, b]), at([a, 0])] as const;
  const outward = turned([-b / long, -a / long]);
  const outer = half(outward, edges[0]);
  const swap = ([near, far]: Vec2): Vec2 => [far, near];
  return {
    chamfer,
    run,
    inner: { normal: outward, offset: outer.offset - t },
    mitres: [
      ...(atFirst.normal ? [{ role: first.role, half: half(turned(atFirst.normal), edges[0]) }] : []),
      ...(atSecond.normal ? [{ role: second.role, half: half(turned(swap(atSecond.normal)), edges[1]) }] : []),
    ],
    outer: edges,
    innerEdges: [at(atFirst.corner), at(swap(atSecond.corner))],
  };
};

export interface Chamfers {
  readonly cuts: readonly ChamferCut[];
  readonly problems: readonly FitProblem[];
}

/** A mitre runs from the outer edge through the whole thickness of the panel beside it: a leg is no shorter than that. */
const tooSmall = (chamfer: Chamfer, t: number, at: NodeId): readonly FitProblem[] =>
  legsOf(chamfer).flatMap(({ mm }) =>
    mm < t ? [badJoint(at, [`chamfer takes ${mmWords(mm)}`, 'no more than a panel is thick'], t, mm)] : [],
  );

/** What each leg must leave of the panels on its axis: their thickness at both ends. */
const tooLarge = (chamfer: Chamfer, box: Box, t: number, at: NodeId): readonly FitProblem[] =>
  legsOf(chamfer).flatMap(({ axis, mm }) => {
    const most = box.max[axis] - box.min[axis] - 3 * t;
    return mm > most ? [badJoint(at, [`chamfer takes ${mmWords(mm)}`, 'nothing of a panel is left'], most, mm)] : [];
  });

/** True where the panel of one chamfer reaches past the inner face of another, beside it or across from it. */
const meet = (a: ChamferCut, b: ChamferCut): boolean =>
  [
    [a, b],
    [b, a],
  ].some(([own, other]) =>
    [...(own?.outer ?? []), ...(own?.innerEdges ?? [])].some(
      (point) => other !== undefined && beyondPlane(other.inner, point) > ROUNDING_MM,
    ),
  );

/**
 * The chamfers of a carcass that can be made. Chamfers that run in different directions would meet in a point of
 * three mitres: only those along the first one's axis are cut.
 */
export const chamferCuts = (chamfers: readonly Chamfer[], box: Box, thickness: number, at: NodeId): Chamfers => {
  const problems: FitProblem[] = [];
  const cuts: ChamferCut[] = [];
  const [lead] = chamfers;
  for (const chamfer of chamfers) {
    const large = [...tooSmall(chamfer, thickness, at), ...tooLarge(chamfer, box, thickness, at)];
    const twice = cuts.some((cut) => cut.chamfer.corner === chamfer.corner);
    if (chamfer.along !== lead?.along) problems.push(badJoint(at, ['chamfers run in different directions']));
    else if (twice) problems.push(badJoint(at, [`two chamfers at ${chamfer.corner.replace('-', ' ')}`]));
    else if (large.length > 0) problems.push(...large);
    else {
      const cut = cutOf(chamfer, box, thickness);
      const other = cuts.find((each) => meet(each, cut));
      if (!other) cuts.push(cut);
      else {
        const [here, there] = [chamfer.corner, other.chamfer.corner].map((corner) => corner.replace('-', ' '));
        problems.push(badJoint(at, [`chamfers at ${there} and ${here} meet`, 'nothing of a panel is left']));
      }
    }
  }
  return { cuts, problems };
};
