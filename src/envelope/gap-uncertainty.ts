import type { Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import { skinSigmaAt } from './face-sigma.ts';
import type { CargoSpace } from './space.ts';

/** What a gap of the cabinet is measured to: the skin at a point, a body of the vehicle, or anything at all. */
export type GapTo = { readonly skinAt: Vec3 } | { readonly body: string } | 'anything';

/** One standard deviation of what the gap is measured to. An unknown body counts as the worst-known skin. */
export const sigmaOfGapTo = (space: CargoSpace, to: GapTo): number => {
  if (to === 'anything') return space.sigmaMm;
  if ('body' in to) return space.bodySigmaMm[to.body] ?? space.sigmaMm;
  return skinSigmaAt(space.skin, space.faceSigmaMm, to.skinAt);
};

/**
 * Half width at 95 % of a gap between the built cabinet and the vehicle: k · √(survey² + vehicle² + build²), with k and
 * the two spreads from the house rules (`gap-sigma-factor`, `vehicle-allowance-sigma`, `build-sigma`).
 */
export const gapHalfWidth = (space: CargoSpace, rules: HouseRules, to: GapTo): number =>
  rules.value('gap-sigma-factor') * Math.hypot(sigmaOfGapTo(space, to), rules.value('build-sigma'));
