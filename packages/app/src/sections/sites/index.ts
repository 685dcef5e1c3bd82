export { askedOf } from './asked.ts';
export { saveAs } from './csvOfSites.ts';
export { SiteFinder } from './findSites.ts';
export { type SiteEntry, type Station, standings, stationsInOrder } from './overview.ts';
export type { Overview } from './overviewOpened.ts';
export { overviewQuery } from './overviewQuery.ts';
export { Progress, WorkOutAgain } from './Progress.tsx';
export { costWords } from './rowWords.ts';
export { Sites } from './Sites.tsx';
