import { type ConvexShape as Shape, shapeBox } from '../../../bodies/index.ts';
import type { Catalog } from '../../../catalog/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Inspection } from '../../../inspection/index.ts';

/** What a mover on slides came to: the slides it runs on, what they carry, and what they may carry. */
export interface SlideResult {
  readonly name: string;
  readonly lengthMm: number | null;
  readonly ratedKg: number;
  /** Everything that moves on the slides. */
  readonly loadKg: number;
  /** What the inspection lets them carry here, or null while it has not said so. */
  readonly allowedKg: number | null;
  /** How far it comes out past the hatch sill, and how much of it is then still before that; null for other faces. */
  readonly sill: { readonly beyondMm: number; readonly leftMm: number } | null;
  /** What its plate says may be put on it, or null where it has none. */
  readonly safeLoadKg: number | null;
}

/** Out of the rear face, more or less, counts as over the sill at x = 0. */
const REARWARD = -0.99;

const overSill = (fitOut: FitOut, mover: FitOut['movers'][number]): SlideResult['sill'] => {
  const { motion } = mover;
  if (motion.kind !== 'slide' || motion.direction[0] > REARWARD) return null;
  const boxes = fitOut.bodies.filter((body) => body.mover === mover.id).map(({ shape }) => shapeBox(shape as Shape));
  if (boxes.length === 0) return null;
  const [front, rear] = [Math.min(...boxes.map(({ min }) => min[0])), Math.max(...boxes.map(({ max }) => max[0]))];
  return { beyondMm: Math.max(0, motion.travel - front), leftMm: Math.max(0, rear - motion.travel) };
};

/** A mover and everything that it carries, itself included. */
const carriedBy = (fitOut: FitOut, id: string): ReadonlySet<string> => {
  const found = new Set([id]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const mover of fitOut.movers) if (mover.carriedBy !== null && found.has(mover.carriedBy)) found.add(mover.id);
  }
  return found;
};

/** The slides of the mover in an opening, or null where it has none. */
export const slideResult = (
  opening: string,
  fitOut: FitOut,
  catalog: Catalog,
  inspection: Inspection | null,
): SlideResult | null => {
  const mover = fitOut.movers.find((candidate) => candidate.origin === opening);
  const use = fitOut.hardware.find((one) => one.from === 'slide' && one.origin === opening);
  const slide = use && catalog.slides.get(use.item);
  if (!mover || !use || !slide) return null;
  const moving = carriedBy(fitOut, mover.id);
  const loadKg = fitOut.masses
    .filter((mass) => mass.mover !== null && moving.has(mass.mover))
    .reduce((sum, mass) => sum + mass.massKg, 0);
  const measured = inspection?.measured.find(
    (one) =>
      one.rule.startsWith('slide') &&
      one.unit === 'kg' &&
      one.parts.some((part) => part === opening || part === mover.id),
  );
  return {
    name: slide.name,
    lengthMm: use.lengthMm,
    ratedKg: slide.ratingKg,
    loadKg,
    allowedKg: measured?.limit ?? null,
    sill: overSill(fitOut, mover),
    safeLoadKg:
      fitOut.hardware.find((one) => one.origin === opening && one.safeLoadKg !== undefined)?.safeLoadKg ?? null,
  };
};
