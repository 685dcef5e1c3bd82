export type { SetLetters } from './drawing/shapesOnPaper.ts';
export * from './pack/content.ts';
export { type SitePack, sitePack } from './pack/sitePack.ts';
export type { MissingLetter } from './text/index.ts';
export { sectionForPaper } from './pack/sectionForPaper.ts';
