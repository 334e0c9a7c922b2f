export * from './plan.ts';
export * from './start-survey.ts';
export * from './survey-plan.ts';
