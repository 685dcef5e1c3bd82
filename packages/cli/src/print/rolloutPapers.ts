import { type CrewOfPaper, loadOfTrip, massAboard, piecesSaid, totalsOfLoad } from '@eavewell/report';
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
    { file: `itinerary-${crew.crewId}.txt`, text: itinerary(report, crew, new Sheet(look)) },
    ...crew.trips.map((trip) => ({
      file: manifestFile(trip.tripId),
      text: manifest(report, trip, ofPaper.get(trip.tripId)!, new Sheet(look)),
    })),
  ]);
}

function itinerary(report: RolloutReport, crew: Crew, sheet: Sheet): string {
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
    const porters_count = Math.max(0, ...trip.legs.map((leg) => leg.porters_count));
    if (porters_count > 0) sheet.line(words.itinerary.porters(porters_count));
    days(sheet, trip, namesOf(report));
  }
  return sheet.text();
}

/** Leg by leg, with the work at each site after the leg that leads there. */
function days(sheet: Sheet, trip: RolloutTripReport, name: (id: string) => string): void {
  let begins = trip.leaves;
  for (const leg of trip.legs) {
    const from = leg.leaves ?? begins;
    const to = leg.arrives ?? from;
    if (leg.stretches.length === 0) sheet.line(words.itinerary.noWay(name(leg.from), name(leg.to)), 2, 2);
    else sheet.line(words.itinerary.between(numbers.date(from), numbers.date(to), leg.said), 2, 2);
    for (const { from: place, changeOver_h } of leg.stretches)
      if (changeOver_h > 0)
        sheet.line(words.itinerary.changeOver(name(place), numbers.quantity(changeOver_h, 'h')), 4, 2);
    const stop = trip.stops.find(({ siteId }) => siteId === leg.to);
    begins = stop?.handOver ?? to;
    if (stop !== undefined)
      sheet.line(
        words.itinerary.work(
          ...([numbers.date(stop.starts), numbers.date(stop.handOver)] as const),
          ...([stop.name, numbers.people(stop.people)] as const),
        ),
        2,
        2,
      );
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
