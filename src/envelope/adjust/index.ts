export * from './adjust.ts';
export * from './network.ts';
export * from './verdict.ts';
