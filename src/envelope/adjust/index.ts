export * from './adjust.ts';
export * from './likely-slip.ts';
export * from './network.ts';
export * from './suspects.ts';
export * from './verdict.ts';
export * from './would-tell.ts';
