export type { SetLetters } from './drawing/shapesOnPaper.ts';
export * from './pack/content.ts';
export { detailForPaper, sectionForPaper } from './pack/sectionForPaper.ts';
export { type SitePack, sitePack } from './pack/sitePack.ts';
export type { MissingLetter } from './text/index.ts';
