import type { HouseRules, Slide } from '../catalog/index.ts';

/**
 * Load (kg) that a pair of slides may carry in a vehicle: its rating times the vehicle factor, times the share that
 * its length has of the mover's width (times the house share) where that is below one, times the over-travel factor
 * where it runs out further than its length, times the flat-mount factor where a side slide is laid flat.
 */
export const allowedSlideLoadKg = (slide: Slide, lengthMm: number, widthMm: number, rules: HouseRules): number => {
  const slender = Math.min(1, lengthMm / (widthMm * rules.value('slide-length-over-width')));
  const over = slide.extension > 1 ? rules.value('slide-over-travel-factor') : 1;
  const flat = slide.laidFlat === true ? rules.value('slide-flat-mount-factor') : 1;
  return slide.ratingKg * rules.value('slide-vehicle-factor') * slender * over * flat;
};
