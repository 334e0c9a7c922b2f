import { type Box, bad, boxSize, boxVolume, good, type Result, type Vec3 } from '../../base/index.ts';
import type { HouseRules } from '../../catalog/index.ts';
import type { Survey } from '../../design/index.ts';
import { gapHalfWidth } from '../gap-uncertainty.ts';
import type { CargoSpace } from '../space.ts';
import { type Blocker, type BoxCheck, makeBoxCheck } from './box-clear.ts';
import { keepOuts, type StandingCarcass, skinAround } from './keep-out.ts';

export const BOX_SIDES = ['rear', 'front', 'right', 'left', 'bottom', 'top'] as const;
export type BoxSide = (typeof BOX_SIDES)[number];

export interface LargestBox {
  readonly box: Box;
  /** Depth (x), width (y), height (z). */
  readonly sizeMm: Vec3;
  readonly volumeMm3: number;
  /** What keeps each side from going further. The bottom stands where it was put. */
  readonly limits: Readonly<Record<BoxSide, Blocker | null>>;
  /** Raster of the search in plan. */
  readonly gridMm: number;
  /**
   * No box over this spot that keeps the gaps has more volume: whole raster columns inside such a box are free, and it
   * reaches at most one column beyond them on each side.
   */
  readonly boundMm3: number;
}

export interface LargestBoxOptions {
  /** Where the carcass stands, [forward, left]. */
  readonly at: readonly [number, number];
  /** Height of its underside; the highest floor point of the sections when left out. */
  readonly underside?: number;
  readonly gridMm?: number;
  /** Carcasses that stay where they are; none when left out. */
  readonly carcasses?: readonly StandingCarcass[];
  /** Adds the half width at 95 % to every gap; true when left out. */
  readonly withUncertainty?: boolean;
}

const GRID_MM = 25;
/** The raster knows the height of a column to this share of its width; the search that follows knows it better. */
const FINE_SHARE = 0.2;
/** The search ends when no side can be moved by this to any gain. */
const FINEST_MM = 0.5;

interface Plan {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

const boxOn = ({ x0, x1, y0, y1 }: Plan, underside: number, height: number): Box => ({
  min: [x0, y0, underside],
  max: [x1, y1, underside + height],
});

/**
 * The greatest height of a box over this ground, to `fine`, never too great; 0 where none stands, or none of at least
 * `atLeast`. A `guess`, such as the height next to it, saves most of the search where the roof runs on.
 */
const heightOver = (
  check: BoxCheck,
  plan: Plan,
  underside: number,
  { fine, atLeast = 0, guess = 0 }: { readonly fine: number; readonly atLeast?: number; readonly guess?: number },
): number => {
  const clear = (height: number): boolean => check.blocker(boxOn(plan, underside, height)) === null;
  let low = Math.max(FINEST_MM, atLeast);
  let high = check.bounds.max[2] - underside;
  if (high <= low) return 0;
  if (guess > low && guess < high && clear(guess)) low = guess;
  else if (!clear(low)) return 0;
  else if (guess > low) high = Math.min(high, guess);
  if (low === guess && guess + fine < high && !clear(guess + fine)) return guess;
  while (high - low > fine) {
    const middle = (low + high) / 2;
    if (clear(middle)) low = middle;
    else high = middle;
  }
  return low;
};

/** Free height of every raster column; `i` and `j` count from the spot, negative behind it and to its right. */
interface Raster {
  readonly from: readonly [number, number];
  readonly counts: readonly [number, number];
  readonly heights: Float64Array;
}

const rasterOf = (check: BoxCheck, [x, y]: readonly [number, number], underside: number, grid: number): Raster => {
  const { min, max } = check.bounds;
  const from = [Math.floor((min[0] - x) / grid), Math.floor((min[1] - y) / grid)] as const;
  const counts = [Math.ceil((max[0] - x) / grid) - from[0], Math.ceil((max[1] - y) / grid) - from[1]] as const;
  const heights = new Float64Array(Math.max(0, counts[0]) * Math.max(0, counts[1]));
  // A spot beside the room has no columns around it.
  if (from[0] > 0 || from[1] > 0 || counts[0] + from[0] < 0 || counts[1] + from[1] < 0)
    return { from: [0, 0], counts: [0, 0], heights };
  for (let i = 0; i < counts[0]; i++)
    for (let j = 0; j < counts[1]; j++) {
      const [x0, y0] = [x + (from[0] + i) * grid, y + (from[1] + j) * grid];
      const guess = (j > 0 ? heights[i * counts[1] + j - 1] : heights[(i - 1) * counts[1] + j]) ?? 0;
      const plan: Plan = { x0, x1: x0 + grid, y0, y1: y0 + grid };
      heights[i * counts[1] + j] = heightOver(check, plan, underside, { fine: grid * FINE_SHARE, guess });
    }
  return { from, counts, heights };
};

interface Ground {
  readonly i0: number;
  readonly i1: number;
  readonly j0: number;
  readonly j1: number;
}

/** Tries every block of columns around the spot: `visit` gets its ends and the least height in it. Marked hot. */
const eachGround = ({ from, counts, heights }: Raster, visit: (ground: Ground, height: number) => void): void => {
  const [si, sj] = [-from[0], -from[1]];
  for (let i0 = si; i0 >= 0; i0--)
    for (let i1 = Math.max(si, i0 + 1); i1 <= counts[0]; i1++) {
      const least = new Float64Array(counts[1]).fill(Infinity);
      for (let i = i0; i < i1; i++)
        for (let j = 0; j < counts[1]; j++) least[j] = Math.min(least[j] ?? 0, heights[i * counts[1] + j] ?? 0);
      let left = Infinity;
      for (let j0 = sj; j0 >= 0; j0--) {
        if (j0 < sj) left = Math.min(left, least[j0] ?? 0);
        if (left === 0) break;
        let height = left;
        if (j0 < sj) visit({ i0, i1, j0, j1: sj }, height);
        for (let j1 = sj + 1; j1 <= counts[1]; j1++) {
          height = Math.min(height, least[j1 - 1] ?? 0);
          if (height === 0) break;
          visit({ i0, i1, j0, j1 }, height);
        }
      }
    }
};

interface Found {
  readonly plan: Plan;
  readonly height: number;
}

const volumeOf = ({ plan, height }: Found): number => (plan.x1 - plan.x0) * (plan.y1 - plan.y0) * height;

const MOVES: readonly (readonly [keyof Plan, 1 | -1])[] = [
  ['x0', -1],
  ['x1', 1],
  ['y0', -1],
  ['y1', 1],
  ['x0', 1],
  ['x1', -1],
  ['y0', 1],
  ['y1', -1],
];

/** Moves one side at a time, ever finer, as long as the volume grows; the height follows the ground. */
const climbed = (
  check: BoxCheck,
  start: Found,
  underside: number,
  at: readonly [number, number],
  grid: number,
): Found => {
  let best = start;
  for (let step = grid; step >= FINEST_MM; step /= 2)
    for (let grew = true; grew; ) {
      grew = false;
      for (const [side, sign] of MOVES) {
        const plan = { ...best.plan, [side]: best.plan[side] + sign * step };
        const holds = plan.x0 <= at[0] && at[0] <= plan.x1 && plan.y0 <= at[1] && at[1] <= plan.y1;
        const area = (plan.x1 - plan.x0) * (plan.y1 - plan.y0);
        if (!holds || area <= 0) continue;
        // Only a height that would make up for the ground is worth the search for the exact one.
        const height = heightOver(check, plan, underside, {
          fine: FINEST_MM,
          atLeast: volumeOf(best) / area + FINEST_MM,
        });
        if (height === 0) continue;
        best = { plan, height };
        grew = true;
      }
    }
  return best;
};

/** Sides are pushed by this to see what they meet: twice what the search can tell apart. */
const PUSH_MM = 2 * FINEST_MM;

const PUSHED: Readonly<Record<Exclude<BoxSide, 'bottom'>, (box: Box) => Box>> = {
  rear: ({ min, max }) => ({ min: [min[0] - PUSH_MM, min[1], min[2]], max }),
  front: ({ min, max }) => ({ min, max: [max[0] + PUSH_MM, max[1], max[2]] }),
  right: ({ min, max }) => ({ min: [min[0], min[1] - PUSH_MM, min[2]], max }),
  left: ({ min, max }) => ({ min, max: [max[0], max[1] + PUSH_MM, max[2]] }),
  top: ({ min, max }) => ({ min, max: [max[0], max[1], max[2] + PUSH_MM] }),
};

const highestFloor = (space: CargoSpace): number => Math.max(...space.sections.map(({ ring }) => floorOf(ring)));

/** Highest end of the floor of a ring: its first point and its last are the two floor edges. */
const floorOf = (ring: CargoSpace['sections'][number]['ring']): number =>
  Math.max(ring[0]?.[1] ?? 0, ring.at(-1)?.[1] ?? 0);

/** What a grain on the spot is too near to; null outside of the room, where nothing is in the way and nothing stands. */
const inTheWay = (check: BoxCheck, [x, y]: readonly [number, number], underside: number): Blocker | null => {
  const { min, max } = check.bounds;
  if (x < min[0] || x > max[0] || y < min[1] || y > max[1] || underside >= max[2]) return null;
  return check.blocker(boxOn({ x0: x, x1: x + FINEST_MM, y0: y, y1: y + FINEST_MM }, underside, FINEST_MM));
};

/**
 * The greatest upright box, square to the vehicle, that stands over a spot and keeps every gap: to the skin, to
 * obstacles, to closures on their whole way, to zones, to carcasses that stand there. A raster of columns in plan gives the best block of columns and
 * a bound that nothing can exceed; then each side is moved to half a millimetre. Where nothing stands, what keeps it from the spot, or null for
 * one outside of the room. A suggestion: hands, slides and the way in are other checks' business.
 */
export const largestBox = (
  space: CargoSpace,
  survey: Survey,
  rules: HouseRules,
  options: LargestBoxOptions,
): Result<LargestBox, Blocker | null> => {
  const grid = options.gridMm ?? GRID_MM;
  const withUncertainty = options.withUncertainty ?? true;
  const underside = options.underside ?? highestFloor(space);
  const kinds = new Map<string, Survey['obstacles'][number]['kind']>(
    survey.obstacles.map(({ id, kind }) => [id, kind]),
  );
  const opensRear = survey.closures.some((closure) => closure.outward === 'rear');
  const check = makeBoxCheck({
    space,
    around: skinAround(space, underside, opensRear),
    skinGapMm: rules.value('gap-trim') + (withUncertainty ? gapHalfWidth(space, rules, 'anything') : 0),
    keepOuts: keepOuts(space, rules, { carcasses: options.carcasses ?? [], kinds, withUncertainty, underside }),
  });
  const raster = rasterOf(check, options.at, underside, grid);
  let best: Found | null = null;
  let boundMm3 = 0;
  eachGround(raster, ({ i0, i1, j0, j1 }, height) => {
    const [x, y] = options.at;
    const plan: Plan = {
      x0: x + (raster.from[0] + i0) * grid,
      x1: x + (raster.from[0] + i1) * grid,
      y0: y + (raster.from[1] + j0) * grid,
      y1: y + (raster.from[1] + j1) * grid,
    };
    const found = { plan, height };
    if (best === null || volumeOf(found) > volumeOf(best)) best = found;
    const wider = (i1 - i0 + 2) * (j1 - j0 + 2) * grid * grid;
    boundMm3 = Math.max(boundMm3, wider * (height + grid * FINE_SHARE));
  });
  if (best === null) return bad(inTheWay(check, options.at, underside));
  const settled = climbed(check, best, underside, options.at, grid);
  const box = boxOn(settled.plan, underside, settled.height);
  const limit = (side: Exclude<BoxSide, 'bottom'>): Blocker | null => check.blocker(PUSHED[side](box));
  return good({
    box,
    sizeMm: boxSize(box),
    volumeMm3: boxVolume(box),
    limits: {
      rear: limit('rear'),
      front: limit('front'),
      right: limit('right'),
      left: limit('left'),
      top: limit('top'),
      bottom: null,
    },
    gridMm: grid,
    boundMm3,
  });
};
