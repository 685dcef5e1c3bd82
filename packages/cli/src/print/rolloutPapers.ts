import { type CrewOfPaper, loadOfTrip, massAboard, piecesSaid, totalsOfLoad, tripDaysSaid } from '@eavewell/report';
import type { RolloutReport, RolloutTripReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { haulLines } from './rolloutPage.ts';
import { Sheet } from './sheet.ts';
import type { Look } from './terminal.ts';

const { rollout: words } = spoken.commandLine;
const { numbers, say } = spoken;

type Crew = RolloutReport['crews'][number];
type TripOfPaper = CrewOfPaper['trips'][number];

/** A text that is written into a file of its own. */
export interface PaperText {
  readonly file: string;
  readonly text: string;
}

const manifestFile = (tripId: string) => `manifest-${tripId}.txt`;

/** What a crew is given: one itinerary each, and a manifest of every trip. */
export function rolloutPapers(
  report: RolloutReport,
  crewsOfPaper: readonly CrewOfPaper[],
  look: Look,
): readonly PaperText[] {
  const ofPaper = new Map(crewsOfPaper.flatMap(({ trips }) => trips.map((one) => [one.trip.tripId, one] as const)));
  return report.crews.flatMap((crew) => [
    { file: `itinerary-${crew.crewId}.txt`, text: itinerary(report, crew, ofPaper, new Sheet(look)) },
    ...crew.trips.map((trip) => ({
      file: manifestFile(trip.tripId),
      text: manifest(report, trip, ofPaper.get(trip.tripId)!, new Sheet(look)),
    })),
  ]);
}

function itinerary(report: RolloutReport, crew: Crew, ofPaper: ReadonlyMap<string, TripOfPaper>, sheet: Sheet): string {
  sheet.line(words.itinerary.title(crew.name));
  sheet.line(words.itinerary.made(report.programme, numbers.date(report.day)));
  if (crew.trips.length === 0) sheet.line(words.itinerary.noTrip);
  else cautions(sheet, crew.trips);
  for (const trip of crew.trips) {
    sheet.heading(trip.tripId);
    sheet.line(trip.said);
    const pieces_count = trip.aboard.reduce((sum, { count }) => sum + count, 0);
    sheet.line(
      words.itinerary.take(pieces_count, massAboard(trip.loaded_kg, trip.stops, spoken), manifestFile(trip.tripId)),
    );
    days(sheet, ofPaper.get(trip.tripId)!, namesOf(report));
  }
  return sheet.text();
}

/** Day by day, with each night, as on the printed sheet. */
function days(sheet: Sheet, ofPaper: TripOfPaper, name: (id: string) => string): void {
  for (const { day, isOnRiver, said } of tripDaysSaid(ofPaper, ofPaper.crew.store, name, spoken)) {
    sheet.line(numbers.date(day), 2, 2);
    for (const one of [...(isOnRiver ? [say('rolloutPapers.day_river')] : []), ...said]) sheet.line(one, 4, 2);
  }
}

/** In the order it is put in, a box to tick before each line; cautions first. */
function manifest(report: RolloutReport, trip: RolloutTripReport, ofPaper: TripOfPaper, sheet: Sheet): string {
  sheet.line(words.manifest.title(trip.tripId, ofPaper.crew.name));
  sheet.line(words.itinerary.made(report.programme, numbers.date(report.day)));
  cautions(sheet, [trip]);
  sheet.blank();
  if (new Set(trip.aboard.flatMap(({ danger }) => danger ?? [])).size > 1) sheet.line(words.manifest.apart);
  sheet.line(words.manifest.leaves(numbers.date(trip.leaves)));
  if (ofPaper.hauls.length > 0) {
    sheet.heading(words.manifest.hauls);
    haulLines(sheet, ofPaper.hauls, namesOf(report));
  }
  if (trip.aboard.length === 0) sheet.line(words.manifest.nothing);
  const presumed = new Set(ofPaper.aboard.flatMap(({ partId, isPresumed }) => (isPresumed ? [partId] : [])));
  let siteId: string | null = null;
  for (const one of trip.aboard) {
    if (one.siteId !== siteId) sheet.heading(words.manifest.forSite(namesOf(report)(one.siteId), one.siteId));
    siteId = one.siteId;
    const mass = one.mass_kg === null ? null : numbers.quantity(one.mass_kg, 'kg');
    const pieces = piecesSaid(one, spoken);
    const said = presumed.has(one.partId) ? say('rolloutPapers.presumed', { name: pieces }) : pieces;
    sheet.line(words.manifest.pieces(said, mass), 2, 0, '[ ]');
  }
  sheet.blank();
  sheet.table(
    [
      { head: '', align: 'right' },
      { head: '', align: 'left' },
    ],
    totalsOfLoad(loadOfTrip(ofPaper), ofPaper, spoken).map(({ said, mass }) => [mass, said]),
  );
  return sheet.text();
}

function cautions(sheet: Sheet, trips: readonly RolloutTripReport[]): void {
  sheet.heading(words.cautions);
  for (const said of new Set(trips.flatMap((trip) => trip.cautions.map((one) => one.said))))
    sheet.line(said, 2, 0, '-');
  sheet.line(words.cautionPlan, 2, 0, '-');
}

function namesOf({ places, crews }: RolloutReport): (id: string) => string {
  const stops = crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
  const names = new Map([
    ...places.map(({ id, name }) => [id, name] as const),
    ...stops.map(({ siteId, name }) => [siteId, name] as const),
  ]);
  return (id) => names.get(id) ?? id;
}
