export type { SetLetters } from './drawing/shapesOnPaper.ts';
export * from './pack/content.ts';
export { contentOf, type Gathered } from './pack/contentOf.ts';
export { type Carried, loadsSaid } from './pack/loadsSaid.ts';
export {
  type KitCarried,
  kitSaid,
  type PackGiven,
  type PacksReady,
  packOf,
  packOfSite,
  usualCarrier,
} from './pack/packOfSite.ts';
export { detailForPaper, sectionForPaper } from './pack/sectionForPaper.ts';
export { type SitePack, sitePack } from './pack/sitePack.ts';
export type { PaperOptions, TripOnPaper } from './rollout/given.ts';
export { haulsPaper } from './rollout/hauls.ts';
export { type CrewOnPaper, itineraryPaper } from './rollout/itinerary.ts';
export type { RolloutPaper } from './rollout/laid.ts';
export { manifestPaper } from './rollout/manifest.ts';
export { noticesPaper } from './rollout/notices.ts';
export type { MissingLetter } from './text/index.ts';
