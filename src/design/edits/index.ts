export * from './carcasses.ts';
export * from './document.ts';
export * from './gear.ts';
export * from './openings.ts';
export * from './readings.ts';
export * from './review.ts';
export * from './stations.ts';
export * from './survey.ts';
