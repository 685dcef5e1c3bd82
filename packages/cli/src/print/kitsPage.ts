import type { ProgrammeFacts } from '@eavewell/engine';
import type { KitLineReport, KitReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { besideSection, costSection } from './kitCost.ts';
import { countSaid } from './kitCounts.ts';
import { reportedProblems } from './reportedWorking.ts';
import type { Sheet } from './sheet.ts';

const { kit: words } = spoken.commandLine;
const { numbers } = spoken;

/** Rows of a list that are shown; a workbook has all. */
const shownSites = 8;
const shownRows = 40;

/** The programme: exceptions first, then what is short, what is bought, how many kits are carried, and what it costs. */
export function kitsPage(sheet: Sheet, report: KitReport, facts: ProgrammeFacts, folder: string): void {
  sheet.line(report.programme);
  sheet.line(words.programme(report.sites.length, report.built_count, report.lines.length));
  exceptions(sheet, report, facts, folder);
  sheet.heading(words.short);
  const short = report.lines.filter(({ short_count }) => short_count !== 0);
  if (short.length === 0) sheet.line(words.nothingShort, 2);
  else partsShort(sheet, short, report.neededOn !== null);
  purchases(sheet, report);
  if (report.kitsCarried.length > 0) sheet.heading(words.carried);
  for (const { name, finding } of report.kitsCarried) sheet.line(words.besideOf(name, finding), 2, 2);
  costs(sheet, report);
  besideSection(sheet, report);
}

/** What stands in the way: kits that cannot be counted, parts without mass or price, late orders, rules and parts that meet nothing. */
function exceptions(sheet: Sheet, report: KitReport, { parts }: ProgrammeFacts, folder: string): void {
  sheet.heading(words.exceptions);
  const open = report.sites
    .filter(({ lines }) => lines.some(({ isAtLeast, total_count }) => isAtLeast || total_count === null))
    .sort((a, b) => b.problems.length - a.problems.length);
  if (open.length > 0) {
    sheet.line(words.notCounted(open.length), 2);
    for (const { name, siteId, problems } of open.slice(0, shownSites))
      sheet.line(words.siteCounts(name, siteId, problems.length), 4, 2);
    if (open.length > shownSites)
      sheet.line(words.moreSites(open.length - shownSites, folder, open[shownSites]!.siteId), 4, 2);
  }
  const masses = new Map(
    parts.map(({ partId, mass_kg, kit }) => [partId, mass_kg ?? (kit.countedIn === 'kg' ? 1 : null)]),
  );
  const named = (lines: readonly KitLineReport[]) => lines.map(({ partId }) => partId).join(', ');
  const unpriced = report.lines.filter(({ price, bought_count }) => price === null && bought_count !== 0);
  const unweighed = report.lines.filter(({ partId }) => (masses.get(partId) ?? null) === null);
  const late = report.lines.filter(({ isLate }) => isLate === true);
  if (unpriced.length > 0) sheet.line(words.unpriced(named(unpriced)), 2, 2);
  if (unweighed.length > 0) sheet.line(words.unweighed(named(unweighed)), 2, 2);
  if (late.length > 0) sheet.line(words.late(named(late)), 2, 2);
  if (open.length + unpriced.length + unweighed.length + late.length + report.problems.length === 0)
    sheet.line(words.noExceptions, 2);
  reportedProblems(sheet, report.problems);
}

/** Parts with what is needed, in the store and short, and when they are ordered. */
export function partsShort(sheet: Sheet, lines: readonly KitLineReport[], hasDay: boolean): void {
  const order = ({ orderBy, isLate, late_days }: KitLineReport): string => {
    if (orderBy === null) return '';
    return isLate === true ? words.atOnce(numbers.date(orderBy), late_days ?? 0) : numbers.date(orderBy);
  };
  const day = (line: KitLineReport) => line.orderBy ?? '9999';
  const sorted = [...lines].sort((a, b) => day(a).localeCompare(day(b)));
  sheet.table(
    words.shortColumns
      .slice(0, hasDay ? 5 : 4)
      .map((head, at) => ({ head, align: at === 0 || at === 4 ? 'left' : 'right' }) as const),
    sorted
      .slice(0, shownRows)
      .map((line) => [
        `${line.name}, ${line.partId}`,
        countSaid(line.total_count, line.countedIn, line.isAtLeast),
        line.inStock_count === null ? words.notCountedYet : countSaid(line.inStock_count, line.countedIn),
        countSaid(line.short_count, line.countedIn),
        ...(hasDay ? [order(line)] : []),
      ]),
  );
  if (sorted.length > shownRows) sheet.line(words.moreRows(sorted.length - shownRows), 2);
  if (!hasDay) sheet.line(words.noDay, 2);
}

function purchases(sheet: Sheet, { lines, suppliers }: KitReport): void {
  if (suppliers.length === 0) return;
  sheet.heading(words.purchases);
  const byId = new Map(lines.map((line) => [line.partId, line]));
  for (const { supplier, partIds, sums, unpriced, orderBy } of suppliers) {
    const told = sums.map(({ amount, currency }) => numbers.money(amount, currency));
    sheet.line(words.supplier(supplier, told, unpriced.length, orderBy && numbers.date(orderBy)), 2, 2);
    const own = partIds.flatMap((partId) => byId.get(partId) ?? []);
    sheet.table(
      words.buyColumns.map((head, at) => ({ head, align: at === 0 ? 'left' : 'right' }) as const),
      own
        .slice(0, shownRows)
        .map(({ name, partId, packs_count, packSize_count, price, amount, noPrice }) => [
          `${name}, ${partId}`,
          packs_count === null
            ? words.notKnown
            : packSize_count === 1
              ? numbers.quantity(packs_count, '')
              : `${numbers.quantity(packs_count, '')} × ${numbers.quantity(packSize_count, '')}`,
          amount === null || price === null ? (noPrice ?? words.notKnown) : numbers.money(amount, price.currency),
        ]),
      4,
    );
    if (own.length > shownRows) sheet.line(words.moreRows(own.length - shownRows), 4);
  }
}

function costs(sheet: Sheet, { cost }: KitReport): void {
  sheet.heading(words.cost);
  if (cost.all === null) {
    sheet.line(words.noCost, 2);
    return;
  }
  const isServed = cost.ofServed !== null && cost.ofServed_count < cost.sites_count;
  if (isServed) {
    sheet.line(cost.all.finding, 2);
    sheet.blank();
    sheet.line(words.ofServed(cost.ofServed_count, cost.sites_count), 2);
  }
  costSection(sheet, isServed ? cost.ofServed! : cost.all);
  if (cost.unknown_count > 0) sheet.line(words.sitesWithoutCost(cost.unknown_count), 2);
}
