export * from './kernel/index.ts';
export * from './parts/index.ts';
export * from './plan.ts';
export * from './site.ts';
export * from './water/people/index.ts';
export * from './water/rain/index.ts';
export * from './water/roof/index.ts';
export * from './water/storage/index.ts';
