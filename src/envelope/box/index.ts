export type { Blocker } from './box-clear.ts';
export * from './largest-box.ts';
