import { groupBy, sameLength, type Vec2 } from '../../base/index.ts';
import type { SolvedOpening } from '../../fitout/index.ts';

/** Clear sizes side by side on one line: between which coordinates, and where the line may run. */
export interface OpeningChain {
  readonly axis: 'across' | 'up';
  readonly spans: readonly (readonly [number, number])[];
  /** The edge of the face outside which the chain runs, or inside the divided opening where all sides are taken. */
  readonly side: 'low' | 'high' | 'inside';
  /** The edge of the divided opening that the chain keeps to, on the other axis. */
  readonly edge: number;
}

interface Face {
  readonly opening: SolvedOpening;
  readonly low: Vec2;
  readonly high: Vec2;
}

const faceOf = (opening: SolvedOpening): Face => ({
  opening,
  low: [opening.from[0], opening.from[2]],
  high: [opening.from[0] + opening.size[0], opening.from[2] + opening.size[2]],
});

/** How the parts of a divided opening lie on the face: null for layers, which stand one behind the other. */
const axisOf = (parts: readonly Face[]): OpeningChain['axis'] | null => {
  const [first, second] = parts;
  if (!first || !second) return null;
  if (!sameLength(first.low[0], second.low[0])) return 'across';
  return sameLength(first.low[1], second.low[1]) ? null : 'up';
};

/**
 * The dimension chains of a face: one for every divided opening that stays put. The outermost chain on each side runs
 * outside the face where its opening reaches that side, the others run inside the opening that they divide.
 */
export const openingChains = (openings: readonly SolvedOpening[]): readonly OpeningChain[] => {
  const still = openings.filter(({ mover }) => mover === null).map(faceOf);
  const root = still.find(({ opening }) => opening.parent === null);
  if (!root) return [];
  const parts = groupBy(still, ({ opening }) => opening.parent);
  const taken = new Set<string>();
  const claim = (axis: OpeningChain['axis'], parent: Face): OpeningChain['side'] => {
    const other = axis === 'across' ? 1 : 0;
    const reaches = {
      low: sameLength(parent.low[other], root.low[other]),
      high: sameLength(parent.high[other], root.high[other]),
    };
    const side = (['low', 'high'] as const).find((each) => reaches[each] && !taken.has(`${axis} ${each}`));
    if (side) taken.add(`${axis} ${side}`);
    return side ?? 'inside';
  };
  return still.flatMap((parent): readonly OpeningChain[] => {
    const inside = parts.get(parent.opening.id) ?? [];
    const axis = axisOf(inside);
    if (axis === null) return [];
    const along = axis === 'across' ? 0 : 1;
    const side = claim(axis, parent);
    const spans = inside.map(({ low, high }) => [low[along], high[along]] as const).sort(([a], [b]) => a - b);
    return [{ axis, spans, side, edge: (side === 'high' ? parent.high : parent.low)[1 - along] ?? 0 }];
  });
};
