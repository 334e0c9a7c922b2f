export * from './largest-box.ts';
