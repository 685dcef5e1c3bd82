export { askedOf } from './asked.ts';
export { exceptions, type SiteEntry, type Station, standingOf, stationsInOrder } from './overview.ts';
export { overviewQuery } from './overviewQuery.ts';
export { Sites } from './Sites.tsx';
