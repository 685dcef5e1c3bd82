export * from './kernel/index.ts';
export * from './water/roof/index.ts';
export * from './water/storage/index.ts';
