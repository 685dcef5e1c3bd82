export { type Open, type Proposal, proposeColumns, type Why } from './proposeColumns.ts';
export * from './readColumns.ts';
