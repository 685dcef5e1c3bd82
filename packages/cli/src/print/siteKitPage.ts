import type { KitReport, SiteKitReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { besideSection, costSection } from './kitCost.ts';
import { countSaid } from './kitCounts.ts';
import { besidesFinding, cautionsOfLoadsSection, loadsSection } from './loadsSection.ts';
import { reportedProblems, reportedWorking } from './reportedWorking.ts';
import type { Sheet } from './sheet.ts';

const { kit: words } = spoken.commandLine;

/** One site in full: parts and cuts, loads, cost, working, problems. */
export function siteKitPage(sheet: Sheet, site: SiteKitReport, report: KitReport): void {
  sheet.line(words.siteHeading(site.name, site.siteId));
  kitSection(sheet, site);
  const loads = site.loads ?? [];
  if (site.lines.length > 0) {
    for (const found of loads) loadsSection(sheet, found, report.asked.carrier !== null);
    cautionsOfLoadsSection(sheet, loads);
  }
  sheet.heading(words.cost);
  if (site.cost === null) sheet.line(words.noCost, 2);
  else costSection(sheet, site.cost);
  besideSection(sheet, report);
  reportedWorking(sheet, site.working ?? []);
  reportedProblems(sheet, [...site.problems, ...besidesFinding(loads)]);
}

/** Its parts, and which pieces are cut from which bars. */
function kitSection(sheet: Sheet, { isBuilt, lines }: SiteKitReport): void {
  sheet.heading(words.kit);
  if (lines.length === 0) {
    sheet.line(isBuilt ? words.built : words.nothing, 2);
    return;
  }
  sheet.table(
    words.kitColumns.map((head, at) => ({ head, align: at === 0 ? 'left' : 'right' }) as const),
    lines.map(({ name, partId, countedIn, needed_count, spare_count, total_count, isAtLeast }) => [
      `${name}, ${partId}`,
      countSaid(needed_count, countedIn),
      countSaid(spare_count, countedIn),
      countSaid(total_count, countedIn, isAtLeast),
    ]),
  );
  const cut = lines.filter(({ cuts }) => cuts !== null);
  if (cut.length === 0) return;
  sheet.heading(words.cuts);
  for (const { name, cuts } of cut) {
    sheet.line(words.cutsOf(name, cuts!.bars_count, cuts!.joints_count), 2, 2);
    for (const { said } of cuts!.bars) sheet.line(said, 4, 2);
  }
}
