import type { Vec3 } from '../base/index.ts';
import type { Material } from '../catalog/index.ts';
import type { Opening, OpeningContent } from '../design/index.ts';
import { ACROSS, type Axis, DEEP, largerOf, UP, withAxis } from './axes.ts';
import type { CarcassContext, Counting } from './context.ts';
import { solverOf } from './fittings/index.ts';
import { stockedRoom } from './gear-size.ts';
import { leastAlong, type PartAsk } from './share-out.ts';

type Divided = Extract<OpeningContent, { readonly kind: 'divided' }>;

/** The axis that a division runs along. */
export const DIVISION_AXIS: { readonly [Along in Divided['along']]: Axis } = {
  columns: ACROSS,
  layers: DEEP,
  rows: UP,
};

export const dividerThickness = (content: Divided, material: Material): number =>
  content.divider === 'panel' ? material.thicknessMm : 0;

/**
 * What each part asks for along its division. A part that hugs always counts the gear in it, since that is what it
 * hugs; shares count as they are asked to.
 */
export const partAsks = (
  content: Divided,
  context: CarcassContext,
  counting: Counting,
  material: Material,
): readonly PartAsk[] => {
  const axis = DIVISION_AXIS[content.along];
  return content.parts.map(({ size, opening }) => ({
    rule: size,
    need: context.least(opening, size.rule === 'hug' ? 'stocked' : counting, material)[axis],
  }));
};

const leastDivided = (content: Divided, context: CarcassContext, counting: Counting, material: Material): Vec3 => {
  const axis = DIVISION_AXIS[content.along];
  const parts = content.parts.map(({ opening }) => context.least(opening, counting, material));
  const widest = parts.reduce(largerOf, [0, 0, 0] as const);
  const dividers = (content.parts.length - 1) * dividerThickness(content, material);
  return withAxis(widest, axis, leastAlong(partAsks(content, context, counting, material)) + dividers);
};

const leastOf = (opening: Opening, context: CarcassContext, counting: Counting, material: Material): Vec3 => {
  const { content } = opening;
  const stocked = counting === 'stocked' ? stockedRoom(context, opening.id) : ([0, 0, 0] as const);
  if (content.kind === 'empty') return stocked;
  if (content.kind === 'divided') return leastDivided(content, context, counting, material);
  return solverOf(content.fitting).leastRoom(content.fitting, { opening, counting }, context);
};

/** `context.least` with everything remembered that was asked once. */
export const rememberedLeast = (context: Omit<CarcassContext, 'least'>): CarcassContext['least'] => {
  const known: { readonly [C in Counting]: Map<Opening, Vec3> } = { built: new Map(), stocked: new Map() };
  const least: CarcassContext['least'] = (opening, counting, material) => {
    const before = known[counting].get(opening);
    if (before) return before;
    const found = leastOf(opening, { ...context, least }, counting, material);
    known[counting].set(opening, found);
    return found;
  };
  return least;
};
