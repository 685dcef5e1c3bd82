export { askedOf } from './asked.ts';
export { saveAs } from './csvOfSites.ts';
export { SiteFinder } from './findSites.ts';
export { type Overview, type SiteEntry, type Station, standingOf, stationsInOrder } from './overview.ts';
export { overviewQuery } from './overviewQuery.ts';
export { Progress, WorkOutAgain } from './Progress.tsx';
export { costWords } from './rowWords.ts';
export { Sites } from './Sites.tsx';
