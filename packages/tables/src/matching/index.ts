export { type HeaderWords, headerWords } from './headerWords.ts';
export { type Choice, mayStandFor, type Open, type Proposal, proposeColumns, type Why } from './proposeColumns.ts';
export * from './readColumns.ts';
export * from './tableOfSheet.ts';
