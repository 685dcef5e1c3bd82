import { piecesSaid } from '@eavewell/report';
import type { KitReport, StowedReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { partsShort } from './kitsPage.ts';
import { besidesFinding, cautionsOfLoadsSection, loadsSection } from './loadsSection.ts';
import { reportedProblems } from './reportedWorking.ts';
import type { Sheet } from './sheet.ts';

const { kit: words } = spoken.commandLine;

/** Several sites as one trip: parts together, loads of the boat or truck, and what is put aboard when. */
export function tripPage(sheet: Sheet, report: KitReport): void {
  const trip = report.trip!;
  const names = new Map(report.sites.map(({ siteId, name }) => [siteId, name]));
  const stops = trip.stops.map((id) => words.siteHeading(names.get(id) ?? id, id));
  sheet.line(words.trip(stops.join('; ')), 0, 2);
  for (const { name, siteId } of report.sites.filter(({ isBuilt }) => isBuilt))
    sheet.line(`${words.siteHeading(name, siteId)}: ${words.built}`, 0, 2);
  sheet.heading(words.tripParts);
  if (report.lines.length === 0) sheet.line(words.nothing, 2);
  else partsShort(sheet, report.lines, report.neededOn !== null);
  for (const { loads, stowed } of trip.carriers) {
    loadsSection(sheet, loads, true);
    stowing(sheet, stowed, names);
  }
  const loads = trip.carriers.map((one) => one.loads);
  cautionsOfLoadsSection(sheet, loads);
  reportedProblems(sheet, [...report.sites.flatMap((site) => site.problems), ...besidesFinding(loads)]);
}

/** What goes aboard in which order: stop by stop, with the rules of each. */
function stowing(sheet: Sheet, stowed: readonly StowedReport[], names: ReadonlyMap<string, string>): void {
  if (stowed.length === 0) return;
  sheet.line(words.stowing, 2);
  const groups: StowedReport[][] = [];
  for (const one of stowed) {
    const last = groups.at(-1);
    if (last !== undefined && rulesOf(last[0]!) === rulesOf(one) && last[0]!.siteId === one.siteId) last.push(one);
    else groups.push([one]);
  }
  for (const [nth, group] of groups.entries()) {
    const [{ siteId }] = group as [StowedReport];
    const pieces = group.map((one) => piecesSaid(one, spoken)).join('; ');
    sheet.line(words.stowed(pieces, names.get(siteId) ?? siteId, rulesOf(group[0]!)), 2, 2, `${nth + 1}.`);
  }
}

const rulesOf = ({ rules }: StowedReport) => rules.map(({ said }) => said).join('; ');
