import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { StepName } from '../state/store.ts';

type Sheet = LazyExoticComponent<ComponentType>;

/** The sheet of each step, loaded when the step is first opened. */
export const SHEETS: Readonly<Record<StepName, Sheet>> = {
  survey: lazy(() => import('../sheets/survey/survey-sheet.tsx').then((it) => ({ default: it.SurveySheet }))),
  gear: lazy(() => import('../sheets/gear/gear-sheet.tsx').then((it) => ({ default: it.GearSheet }))),
  cabinet: lazy(() => import('../sheets/cabinet/index.ts').then((it) => ({ default: it.CabinetSheet }))),
  inspect: lazy(() => import('../sheets/inspect/inspect-sheet.tsx').then((it) => ({ default: it.InspectSheet }))),
  shop: lazy(() => import('../sheets/shop/shop-sheet.tsx').then((it) => ({ default: it.ShopSheet }))),
  review: lazy(() => import('../sheets/review/review-sheet.tsx').then((it) => ({ default: it.ReviewSheet }))),
};
