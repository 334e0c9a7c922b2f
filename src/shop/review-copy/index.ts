export { STEP_MM } from './pack.ts';
export {
  createGearMap,
  createReviewData,
  type GearMapData,
  REVIEW_FORMAT,
  type ReviewCarcass,
  type ReviewData,
  type ReviewGear,
  type ReviewInput,
  type ReviewLoad,
  type ReviewOpening,
  type ReviewStep,
} from './review-data.ts';
export { DATA_MARK, fillReviewPage, pageJson } from './review-page.ts';
export type { PackedSolids, ReviewMover, ReviewScene, TouchBox } from './review-scene.ts';
export { type ReviewShop, SHOP_EXTRAS, type ShopExtra } from './review-shop.ts';
