import { piecesSaid } from '@eavewell/report';
import type { KitReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { partsShort } from './kitsPage.ts';
import { cautionsOfLoadsSection, loadsSection } from './loadsSection.ts';
import { reportedProblems } from './reportedWorking.ts';
import type { Sheet } from './sheet.ts';

const { kit: words } = spoken.commandLine;

/** Several sites as one trip: parts together, loads of the boat or truck, and what is put aboard when. */
export function tripPage(sheet: Sheet, report: KitReport): void {
  const trip = report.trip!;
  const names = new Map(report.sites.map(({ siteId, name }) => [siteId, name]));
  const stops = trip.stops.map((id) => words.siteHeading(names.get(id) ?? id, id));
  sheet.line(words.trip(stops.join('; ')), 0, 2);
  for (const { name, siteId, isBuilt } of report.sites.filter((site) => site.isBuilt))
    if (isBuilt) sheet.line(`${words.siteHeading(name, siteId)}: ${words.built}`, 0, 2);
  sheet.heading(words.tripParts);
  if (report.lines.length === 0) sheet.line(words.nothing, 2);
  else partsShort(sheet, report.lines, report.neededOn !== null);
  for (const found of trip.loads) loadsSection(sheet, found, true);
  if (trip.stowed.length > 0) {
    sheet.heading(words.stowing);
    for (const [nth, one] of trip.stowed.entries())
      sheet.line(
        words.stowed(
          piecesSaid(one, spoken),
          names.get(one.siteId) ?? one.siteId,
          one.rules.map(({ said }) => said).join('; '),
        ),
        2,
        2,
        `${nth + 1}.`,
      );
  }
  cautionsOfLoadsSection(sheet, trip.loads);
  const problems = [...report.sites.flatMap((site) => site.problems), ...trip.loads.flatMap((one) => one.problems)];
  reportedProblems(sheet, problems);
}
