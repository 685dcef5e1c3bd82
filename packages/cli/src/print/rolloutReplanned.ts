import type { RolloutReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { rollout: words } = spoken.commandLine;
const { numbers } = spoken;

/** Names that are listed before the rest is counted, and sites. */
const [shownNames_count, shownSites_count] = [12, 30] as const;

type Replanned = NonNullable<RolloutReport['replanned']>;

/** What has happened of the plan that is gone on from, and what is otherwise than if nothing were changed. */
export function replannedLines(sheet: Sheet, { replanned, day, crews }: RolloutReport): void {
  if (replanned === null) return;
  happened(sheet, replanned, day);
  const crewOf = (id: string | null) =>
    id === null ? words.noCrew : (crews.find(({ crewId }) => crewId === id)?.name ?? id);
  if (replanned.toGo_count + replanned.trips.length === 0) return;
  sheet.heading(words.changes);
  for (const said of replanned.said) sheet.line(said, 2, 2);
  const { sites, trips } = replanned;
  const waterOf = waterBySite(crews);
  for (const site of sites.slice(0, shownSites_count)) sheet.line(siteSaid(site, crewOf, waterOf(site.siteId)), 4, 2);
  if (sites.length > shownSites_count) sheet.line(words.moreSites(sites.length - shownSites_count), 4, 2);
  for (const { said } of trips) sheet.line(said, 2, 2);
}

/** What a day of a site is: people drink, water that nothing treats runs, or, where its wait for rain is not known, it is handed over. */
function waterBySite(crews: RolloutReport['crews']): (siteId: string) => 'drinks' | 'runs' | 'handOver' {
  const stops = crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
  const known = new Map(stops.map((stop) => [stop.siteId, stop]));
  return (siteId) => {
    const stop = known.get(siteId);
    if (stop?.served === null) return 'handOver';
    return stop?.isUntreated === true ? 'runs' : 'drinks';
  };
}

function siteSaid(
  site: Replanned['sites'][number],
  crewOf: (id: string | null) => string,
  water: 'drinks' | 'runs' | 'handOver',
): string {
  const { name, people, crewBefore, crewAfter, servedBefore, servedAfter, later_days } = site;
  const date = (day: string | null) => (day === null ? words.notWithin : numbers.date(day));
  return words.movedSite({
    ...{
      name,
      people: numbers.people(people),
      after: date(servedAfter),
      before: date(servedBefore),
      later_days,
      water,
    },
    ...{ crew: crewOf(crewAfter), crewBefore: crewOf(crewBefore) },
  });
}

function happened(sheet: Sheet, replanned: Replanned, day: string): void {
  const { name, done_count, toGo_count, locked_count, underWay, overdue, notPlaced } = replanned;
  const counts = { done: done_count, toGo: toGo_count, locked: locked_count };
  sheet.line(words.goesOn(name, numbers.date(day), counts));
  for (const { tripId, back } of underWay) sheet.line(words.underWay(tripId, numbers.date(back)), 2, 2);
  if (overdue.length > 0) sheet.line(words.overdue(overdue.join(', ')), 2, 2);
  const isGone = ({ reason }: Replanned['dropped'][number]) => reason !== 'handedOver' && reason !== 'underWay';
  const gone = replanned.dropped.filter(isGone);
  for (const said of new Set(gone.map((one) => one.said))) {
    const names = gone.filter((one) => one.said === said).map((one) => one.name);
    sheet.line(words.dropped(names.length, ...shown(names), said), 2, 2);
  }
  const names = notPlaced.map((one) => one.name);
  if (names.length > 0) sheet.line(words.notPlaced(names.length, ...shown(names)), 2, 2);
  if (replanned.moved_count > 0) sheet.line(words.movedSince(replanned.moved_count, replanned.later_count));
}

const shown = (names: readonly string[]): [string, number] => [
  names.slice(0, shownNames_count).join(', '),
  Math.max(0, names.length - shownNames_count),
];
