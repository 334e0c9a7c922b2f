import { type Box, boxAround, inverse, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { boxShape, type ConvexShape, clippedShape, type HalfSpace, shapeAt, shapeBox } from '../bodies/index.ts';
import type { NodeId, Wheelhouse } from '../design/index.ts';
import { gapHalfWidth } from '../envelope/index.ts';
import type { InspectionInput } from './job.ts';
import { OBSTACLE_GAPS } from './rules/body-obstacle.ts';
import { type Limit, ruleLimit } from './verdict.ts';

/** Where and how large a carcass must be cut out; everything of a wheelhouse but its name. */
export type WheelhouseCut = Omit<Wheelhouse, 'id'>;

/** The cut-out that a wheelhouse of the survey asks of a carcass. */
export interface WheelhouseAsk {
  readonly obstacle: string;
  readonly name: string;
  /** Whole millimetres, rounded away from the wheelhouse. */
  readonly cut: WheelhouseCut;
  readonly gap: Limit;
  /** Half width at 95 % of a gap to it: survey, vehicle and build together. */
  readonly halfWidthMm: number;
}

/** The box grown by so much on every side, as half spaces. */
const around = ({ min, max }: Box, by: number): readonly HalfSpace[] =>
  ([0, 1, 2] as const).flatMap((axis): readonly HalfSpace[] => {
    const unit = ([0, 1, 2] as const).map((each) => (each === axis ? 1 : 0)) as unknown as Vec3;
    const back = unit.map((value) => -value) as unknown as Vec3;
    return [
      { normal: unit, offset: max[axis] + by },
      { normal: back, offset: by - min[axis] },
    ];
  });

/**
 * What of a solid that comes into a carcass lies in it or nearer to it than the gap; a rounded one counts as its box.
 * One that only stands too near is a matter of where the carcass stands.
 */
const partNear = (shape: ConvexShape, outside: Box, need: number): Box | null => {
  const solid = shape.radius > 0 || shape.faces.length === 0 ? boxShape(shapeBox(shape)) : shape;
  if (!clippedShape(solid, around(outside, 0))) return null;
  const near = clippedShape(solid, around(outside, need));
  return near && boxAround(near.vertices);
};

type Reach = Pick<WheelhouseCut, 'side' | 'inMm'>;

/** The side from which the least of the carcass is cut away. */
const reachOf = ({ min, max }: Box, [width, depth]: Vec3, need: number): Reach => {
  const ways: readonly Reach[] = [
    { side: 'left', inMm: max[0] + need },
    { side: 'right', inMm: width - min[0] + need },
    { side: 'back', inMm: depth - min[1] + need },
  ];
  return ways.reduce((best, way) => (way.inMm < best.inMm - ROUNDING_MM ? way : best));
};

const cutFor = (near: Box, size: Vec3, need: number): WheelhouseCut => {
  const { side, inMm } = reachOf(near, size, need);
  const run = side === 'back' ? 0 : 1;
  const from = Math.max(0, Math.floor(near.min[run] - need + ROUNDING_MM));
  const to = Math.min(size[run], Math.ceil(near.max[run] + need - ROUNDING_MM));
  return {
    side,
    fromMm: from,
    lengthMm: to - from,
    inMm: Math.ceil(inMm - ROUNDING_MM),
    upMm: Math.ceil(near.max[2] + need - ROUNDING_MM),
  };
};

/**
 * The cut-outs that the wheelhouses of the survey ask of a carcass where it stands: each wheelhouse, as far as it comes
 * into the carcass, with the house's gap (`gap-floor-obstacle`) and the half width of that gap at 95 % kept off all
 * round. One that it stands over or beside asks for nothing. Wheelhouses are the
 * obstacles of that kind; one that was taped as part of the sections is not known apart from the walls. None without a
 * cargo space.
 */
export const wheelhouseAsks = (
  { design, space, fitout, rules }: Pick<InspectionInput, 'design' | 'space' | 'fitout' | 'rules'>,
  carcass: NodeId,
): readonly WheelhouseAsk[] => {
  const own = fitout.carcasses.find(({ id }) => id === carcass);
  if (!space || !own) return [];
  const kept = new Set<string>(design.survey.obstacles.flatMap(({ id, kind }) => (kind === 'wheelhouse' ? [id] : [])));
  const gap = ruleLimit(rules, OBSTACLE_GAPS.wheelhouse);
  const outside: Box = { min: [0, 0, 0], max: own.size };
  return space.bodies
    .filter(({ origin, closure }) => kept.has(origin) && closure === null)
    .flatMap(({ id, name, shape }): readonly WheelhouseAsk[] => {
      const halfWidthMm = gapHalfWidth(space, rules, { body: id });
      const need = gap.value + halfWidthMm;
      const near = partNear(shapeAt(shape, inverse(own.pose)), outside, need);
      if (!near) return [];
      return [{ obstacle: id, name, cut: cutFor(near, own.size, need), gap, halfWidthMm }];
    });
};

/** How much of the run two cut-outs at one side share (mm). */
const shared = (a: WheelhouseCut, b: WheelhouseCut): number =>
  a.side === b.side
    ? Math.min(a.fromMm + a.lengthMm, b.fromMm + b.lengthMm) - Math.max(a.fromMm, b.fromMm)
    : -Number.MAX_VALUE;

/** What the survey asks where a cut-out is: the wheelhouse at its side that it shares most of its length with. */
export const askFor = (cut: WheelhouseCut, asks: readonly WheelhouseAsk[]): WheelhouseAsk | null =>
  asks.reduce<WheelhouseAsk | null>((best, ask) => {
    const by = shared(cut, ask.cut);
    return by > 0 && (!best || by > shared(cut, best.cut)) ? ask : best;
  }, null);

/** How much a typed cut-out is short of what is asked, in each direction (mm); 0 where it is enough. */
export const shortOf = (
  typed: WheelhouseCut,
  { cut }: WheelhouseAsk,
): Readonly<Record<'before' | 'behind' | 'in' | 'up', number>> => ({
  before: Math.max(0, typed.fromMm - cut.fromMm),
  behind: Math.max(0, cut.fromMm + cut.lengthMm - typed.fromMm - typed.lengthMm),
  in: Math.max(0, cut.inMm - typed.inMm),
  up: Math.max(0, cut.upMm - typed.upMm),
});
