export { CLASS_SIZES, type ClassSizes } from './class-sizes.ts';
export * from './plan.ts';
export * from './start-survey.ts';
export * from './survey-plan.ts';
