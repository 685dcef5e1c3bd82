import { type GaugeFinding, type Scenario, type SiteDesign, type Verdict, verdictOrder } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { scenario: words } = spoken.commandLine;
const { numbers } = spoken;

/** Sites listed one by one before the rest are only counted. */
const mostShown = 40;

/** A site whose verdict changes. */
export interface ChangedVerdict {
  readonly siteId: string;
  readonly verdict: Verdict;
  readonly under: Verdict;
}

type Counts = Record<Verdict, number>;

const none = (): Counts => ({ short: 0, unknown: 0, tight: 0, holds: 0 });

/** Every site as it is and as it would be, counted; those whose verdict changes kept. */
export class ScenarioCounts {
  readonly present: Counts = none();
  readonly under: Counts = none();
  readonly changed: ChangedVerdict[] = [];
  readonly #rows: (ChangedVerdict & { readonly cells: readonly string[] })[] = [];

  add(site: SiteDesign, under: SiteDesign): void {
    this.present[site.verdict]++;
    this.under[under.verdict]++;
    if (site.verdict === under.verdict) return;
    const change = { siteId: site.siteId, verdict: site.verdict, under: under.verdict };
    this.changed.push(change);
    const dry = [site, under].map(({ storages: [storage] }) =>
      storage ? numbers.days(storage.dryDays_per_year) : words.notKnown,
    );
    const cells = [site.siteId, site.name, spoken.verdicts[site.verdict], spoken.verdicts[under.verdict], ...dry];
    this.#rows.push({ ...change, cells });
  }

  /** Counts before and after, and the sites whose verdict changes, those that get worst first. */
  print(sheet: Sheet, scenario: Scenario, gauges: Iterable<GaugeFinding>): void {
    sheet.heading(words.heading);
    askedLines(sheet, scenario, gauges);
    sheet.table(
      words.countColumns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
      verdictOrder.map((verdict) => [
        spoken.verdicts[verdict],
        numbers.quantity(this.present[verdict], 'number'),
        numbers.quantity(this.under[verdict], 'number'),
      ]),
    );
    if (this.#rows.length === 0) {
      sheet.line(words.noneChanges, 2);
      return;
    }
    const badness = (verdict: Verdict) => verdictOrder.indexOf(verdict);
    const rows = [...this.#rows].sort(
      (a, b) =>
        badness(a.under) - badness(b.under) ||
        badness(a.verdict) - badness(b.verdict) ||
        (a.siteId < b.siteId ? -1 : 1),
    );
    sheet.blank();
    sheet.table(
      words.changeColumns.map((head, index) => ({ head, align: index < 4 ? 'left' : 'right' }) as const),
      rows.slice(0, mostShown).map(({ cells }) => cells),
    );
    if (rows.length > mostShown) sheet.line(words.moreChange(rows.length - mostShown), 2);
  }
}

/** One site as it is and as it would be. */
export function siteUnderSection(
  sheet: Sheet,
  site: SiteDesign,
  under: SiteDesign,
  scenario: Scenario,
  gauges: Iterable<GaugeFinding>,
): void {
  sheet.heading(words.heading);
  const own = [...gauges].filter(({ gaugeId }) => gaugeId === site.gaugeId);
  askedLines(sheet, scenario, own);
  sheet.table(
    words.siteColumns.map((head) => ({ head, align: 'left' }) as const),
    [
      [words.verdict, spoken.verdicts[site.verdict], spoken.verdicts[under.verdict]],
      [words.goodYears, goodYears(site), goodYears(under)],
      [words.dryDays, dryDays(site), dryDays(under)],
      [isFallenBackOn(site) ? words.tankForTargetAlone : words.tankForTarget, tank(site), tank(under)],
    ],
  );
}

/** Where tanks are not joined, the figures are those of the one that is worst off. */
const goodYears = ({ storages: [storage] }: SiteDesign) =>
  storage ? numbers.ofYears(storage.goodYears, storage.judgedYears) : words.notKnown;
const dryDays = ({ storages: [storage] }: SiteDesign) =>
  storage ? numbers.days(storage.dryDays_per_year) : words.notKnown;
const isFallenBackOn = ({ storages: [storage] }: SiteDesign) => (storage?.secondSource ?? null) !== null;
const tank = ({ storages: [storage] }: SiteDesign) =>
  !storage
    ? words.notKnown
    : storage.tankForTarget_L === null
      ? words.noTank
      : numbers.tankLitres(storage.tankForTarget_L);

/** What was asked, and what it is not. */
function askedLines(sheet: Sheet, scenario: Scenario, gauges: Iterable<GaugeFinding>): void {
  sheet.line(words.asked(scenario), 2);
  const { lastYears } = scenario;
  const all = [...gauges];
  const made = lastYears === null ? [] : all.filter(({ rain }) => rain && rain.madeDays > 0);
  const shorter = all.filter(
    (one) => one.rain && lastYears !== null && one.rain.years.length < lastYears && !made.includes(one),
  );
  if (made.length > 0) sheet.line(words.madeWhole(made.map(({ gaugeId }) => gaugeId)), 2);
  if (lastYears !== null && shorter.length > 0)
    sheet.line(
      words.shorter(
        shorter.map(({ gaugeId }) => gaugeId),
        lastYears,
      ),
      2,
    );
  sheet.line(words.notForecast, 2);
}
