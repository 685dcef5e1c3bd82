export * from './kernel/index.ts';
