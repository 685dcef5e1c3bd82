import {
  fittingKinds,
  type Market,
  type RemediesTogether,
  type Remedy,
  type SiteDesign,
  type SiteRemedies,
} from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { ColumnOfTable, Sheet } from './sheet.ts';

const { numbers, remedies: words } = spoken;

/** What would mend one site: the remedies in their order, what has to be known of them, and what leaving it brings. */
export function siteRemedySection(sheet: Sheet, found: SiteRemedies, { day }: Market, design: SiteDesign): void {
  sheet.heading(words.heading);
  if (found.remedies.length > 0)
    sheet.table(
      columns(words.columns, [0, 1]),
      found.remedies.flatMap((remedy) => rows(remedy, found.judgedYears)),
    );
  if (found.notMended !== null) sheet.line(words.notMended(found.notMended), 2, 2);
  const kinds = new Set(found.remedies.flatMap((remedy) => remedy.changes.map((change) => change.kind)));
  for (const said of words.beside(found, design)) sheet.line(said, 2, 2);
  if (fittingKinds.some((kind) => kinds.has(kind))) sheet.line(words.cautions.fittings, 2, 2);
  if (kinds.has('litres')) sheet.line(words.cautions.litres, 2, 2);
  if (kinds.has('firstFlush')) sheet.line(words.cautions.firstFlush, 2, 2);
  const sourceDays = found.remedies.flatMap(({ sourceDays_per_year: days }) => (days === null ? [] : [days]));
  if (sourceDays.length > 0) sheet.line(words.sourceUse(Math.max(...sourceDays)), 2, 2);
  if (kinds.has('people')) sheet.line(words.cautions.people, 2, 2);
  if (kinds.has('secondTank')) sheet.line(words.cautions.secondTank, 2, 2);
  if (found.remedies.length > 0) sheet.line(words.prices(day), 2, 2);
  const unknown = new Set(found.remedies.flatMap(({ cost }) => (cost.reason === null ? [] : [cost.reason])));
  for (const reason of unknown) sheet.line(words.whyNoCost(reason), 2, 2);
  if (found.peopleCarried) sheet.line(words.peopleCarried(found.peopleCarried), 2, 2);
  if (found.leaveIt) sheet.line(words.leaveIt(found.leaveIt), 2, 2);
}

/** What would mend the programme, each site by its smallest remedy, and what that costs together. */
export function programmeRemedySection(sheet: Sheet, found: RemediesTogether, { day }: Market): void {
  if (found.looked.sites === 0) return;
  const { groups, looked } = found;
  sheet.heading(words.programmeHeading);
  sheet.line(words.looked(looked), 2, 2);
  const counted = (one: RemediesTogether['looked']) => [
    numbers.quantity(one.sites, 'number'),
    numbers.quantity(one.people, 'number'),
    words.costs(one),
  ];
  if (groups.length > 0) {
    sheet.table(columns(words.programmeColumns, [0, 1]), [
      ...groups.map((group) => {
        const kinds = words.kindsTogether(group.kinds);
        return [group.isPromiseCut ? words.isCut(kinds) : kinds, spoken.verdicts[group.verdict], ...counted(group)];
      }),
      [words.together, spoken.verdicts.holds, ...counted(found.mended)],
    ]);
    if (groups.some((group) => group.isPromiseCut)) sheet.line(words.cautions.litres, 2, 2);
    sheet.line(words.prices(day), 2, 2);
  }
  for (const { reason, siteIds } of found.notMended) sheet.line(words.noneMends(reason, siteIds), 2, 2);
}

/** The second of two changes has a line of its own, so that nothing is cut off. */
function rows({ changes, ...remedy }: Remedy, judgedYears: number): string[][] {
  const texts = changes.map((change, index) => {
    const text = change.kind === 'litres' ? words.isCut(words.change(change)) : words.change(change);
    return index === 0 ? text : words.and(text);
  });
  const [first = '', ...rest] = texts;
  const figures = [
    spoken.verdicts[remedy.verdict],
    numbers.days(remedy.dryDays_per_year),
    words.ofYears(remedy.goodYears, judgedYears),
    words.cost(remedy.cost),
  ];
  return [[first, ...figures], ...rest.map((text) => [text])];
}

function columns(heads: readonly string[], left: readonly number[]): readonly ColumnOfTable[] {
  return heads.map((head, index) => ({ head, align: left.includes(index) ? 'left' : 'right' }));
}
