import {
  type DesignSettings,
  type Judged,
  type Market,
  meanYear_days,
  type Problem,
  type SiteDesign,
  type SiteRemedies,
  type StorageFinding,
  stations,
  type Target,
  type WearFinding,
} from '@eavewell/engine';
import { findingOf } from '@eavewell/report';
import { type CautionName, cautionNames, verdictMarks } from '@eavewell/words';
import { spoken } from '../language.ts';
import { drainageSection } from './drainage.ts';
import { ownTarget, whoText } from './exceptions.ts';
import { headSection } from './headSection.ts';
import { siteRemedySection } from './remedies.ts';
import { safetySection } from './safetySection.ts';
import { settlingSection } from './settlingSection.ts';
import type { Sheet } from './sheet.ts';
import { hasStandSection, standSection } from './standSection.ts';
import { treatmentSection, wearSection } from './treatmentSection.ts';
import { problemsSection, workingSection } from './workings.ts';
import { yearsStrip } from './yearsStrip.ts';

const { design, figures, headings } = spoken.commandLine;
const { numbers } = spoken;

/** One site in full: finding, figures, years, runs, sizes, first day, treatment, safety, remedies, working, problems and cautions. */
export function sitePage(
  sheet: Sheet,
  site: SiteDesign,
  remedies: SiteRemedies | null,
  wear: Judged<readonly WearFinding[]>,
  settings: DesignSettings,
  market: Market,
  afterRemedies: () => void = () => undefined,
): void {
  sheet.blank();
  sheet.verdict(
    site.verdict,
    [whoText(site), ownTarget(site), findingOf(site, spoken)].filter((text) => text !== null),
  );
  sheet.heading(headings.stations);
  for (const station of stations) {
    const mark = verdictMarks[site.stations[station]][sheet.look.drawn ? 'drawn' : 'plain'];
    sheet.line(`${spoken.stations[station]} ${spoken.verdicts[site.stations[station]]}`, 2, 2, mark);
  }
  for (const storage of site.storages) {
    const one = site.storages.length === 1;
    const heading = headings.figuresOf(spoken.findings.tanksNamed(storage.tankIds), numbers.people(storage.people));
    storageSections(sheet, storage, site.target, settings, one ? headings.figures : heading);
  }
  if (site.drainage) drainageSection(sheet, site.drainage);
  standSection(sheet, site);
  for (const finding of site.settling) settlingSection(sheet, finding);
  for (const finding of site.treatment) treatmentSection(sheet, finding);
  for (const finding of wear.finding ?? []) wearSection(sheet, finding);
  for (const finding of site.head) headSection(sheet, finding);
  if (site.safety) safetySection(sheet, site.safety);
  if (remedies) siteRemedySection(sheet, remedies, market, site);
  afterRemedies();
  workingSection(sheet, [...site.working, ...wear.working]);
  problemsSection(sheet, [...site.problems, ...wear.problems]);
  sheet.heading(headings.cautions);
  for (const name of cautionNames) if (isDue(name, site)) sheet.line(spoken.cautions[name], 2);
}

/** Is this caution still due at the end of this site's page? Those of drinking and planning always are; that of stands stands beside them. */
function isDue(name: CautionName, site: SiteDesign): boolean {
  if (name === 'otherWater') return hasOtherWater(site.problems);
  if (name === 'stand' && hasStandSection(site)) return false;
  return name === 'drinking' || name === 'plans' || site.cautions.some((one) => one === name);
}

/** Do people fall back on other water, so that its caution is due? */
export function hasOtherWater(problems: readonly Problem[]): boolean {
  return problems.some(({ code }) => code === 'site.second_source');
}

function storageSections(
  sheet: Sheet,
  f: StorageFinding,
  target: Target,
  settings: DesignSettings,
  heading: string,
): void {
  sheet.heading(heading);
  sheet.table(
    figures.columns.map((head) => ({ head, align: 'left' }) as const),
    figureRows(f, target),
  );
  sheet.line(design.range(settings.range_fraction), 2);
  if (f.ration !== null) sheet.line(design.ration(f.ration, f.tankVolume_L), 2);
  if (f.noExactSize !== null) sheet.line(design.noExactSize, 2);
  sheet.heading(headings.years);
  const called = f.years[0] ? spoken.findings.waterYear(f.years[0]) : null;
  if (called !== null) sheet.line(called, 2);
  yearsStrip(sheet, f.years);
  sheet.heading(headings.dryRuns);
  if (f.dryRuns.length === 0) sheet.line(design.noDryRuns, 2);
  for (const run of f.dryRuns.slice(0, 5))
    sheet.line(design.run(run.days, numbers.date(run.from), numbers.date(run.to)), 2);
  sheet.heading(f.secondSource === null ? headings.sizes : headings.sizesAlone);
  sheet.table(
    figures.sizeColumns.map((head, index) => ({ head, align: index === 1 ? 'left' : 'right' }) as const),
    f.sizes.map((size) => [
      numbers.litres(size.tankVolume_L),
      size.tankVolume_L === f.tankVolume_L ? figures.thisTank : (size.partId ?? ''),
      numbers.days(size.dryDays_per_year),
      numbers.ofYears(size.goodYears, f.judgedYears),
      size.meetsTarget ? figures.meets : figures.misses,
    ]),
  );
  sheet.heading(headings.firstService);
  const first = f.firstService;
  sheet.line(
    first
      ? design.firstService(
          numbers.date(first.handOverDay),
          numbers.days(first.wait_days),
          numbers.quantity(first.wait_days_range, 'day'),
          numbers.date(first.firstServiceDay),
        )
      : design.neverServes,
    2,
  );
}

/** Value, likely range and target, in that order, close together. */
function figureRows(f: StorageFinding, target: Target): readonly (readonly string[])[] {
  return [
    [
      figures.goodYears,
      numbers.ofYears(f.goodYears, f.judgedYears),
      numbers.rangeOfYears(f.comingGood_years_range, f.judgedYears),
      figures.atLeast(numbers.years(f.goodYearsNeeded)),
    ],
    [
      figures.dryDays,
      numbers.daysAYear(f.dryDays_per_year),
      numbers.range(f.dryDays_per_year_range),
      figures.atMost(numbers.days((1 - target.daysMet_fraction) * f.askedDays_per_year)),
    ],
    [
      figures.daysMet,
      numbers.percent(f.daysMet_fraction),
      numbers.quantity(f.daysMet_fraction_range, 'fraction'),
      figures.atLeast(numbers.percent(target.daysMet_fraction)),
    ],
    [figures.longestRun, numbers.days(f.longestRun?.days ?? 0), '', figures.limitIn(target.longestDryRun_days)],
    ...tankRows(f),
    ...askedRows(f),
    ...otherRows(f),
    ...rationRows(f),
    [figures.caught, numbers.litresADay(f.inflow_L_per_year / meanYear_days), '', ''],
    [figures.shortfall, numbers.quantity(f.shortfall_L_per_year, 'L_per_year'), '', ''],
    [
      figures.generous,
      numbers.daysAYear(f.yieldBeforeSpill.dryDays_per_year),
      numbers.ofYears(f.yieldBeforeSpill.goodYears, f.judgedYears),
      '',
    ],
  ];
}

/** The tank there is and the least that would do; with a second source, the least that would do without it. */
function tankRows(f: StorageFinding): readonly (readonly string[])[] {
  const tank = [figures.tank, numbers.litres(f.tankVolume_L), ''];
  if (f.secondSource === null) return [[...tank, leastTank(f)]];
  return [
    [...tank, ''],
    [figures.tankAlone, '', '', leastTank(f)],
  ];
}

/** The tank for the target: exact, or of the catalogue where sizes are run one by one. */
function leastTank(f: StorageFinding): string {
  if (f.noExactSize !== null)
    return f.catalogueForTarget_L === null ? figures.noneOfCatalogue : numbers.litres(f.catalogueForTarget_L);
  return f.tankForTarget_L === null ? figures.noTank : figures.atLeast(numbers.tankLitres(f.tankForTarget_L));
}

/** How often water is rationed, and what would be without it. */
function rationRows(f: StorageFinding): readonly (readonly string[])[] {
  if (f.ration === null || f.rationedDays_per_year === null || f.unrationed === null) return [];
  return [
    [figures.rationed, numbers.daysAYear(f.rationedDays_per_year), '', ''],
    [
      figures.unrationed,
      numbers.daysAYear(f.unrationed.dryDays_per_year),
      numbers.ofYears(f.unrationed.goodYears, f.judgedYears),
      '',
    ],
  ];
}

/** The judged litres asked; where they change through the year, the mean, the highest day and the days they are asked on. */
function askedRows(f: StorageFinding): readonly (readonly string[])[] {
  const asked = [figures.asked, numbers.litresADay(f.judgedDemand_L_per_day), '', ''];
  if (f.judgedDemandHighest_L_per_day === f.judgedDemand_L_per_day) return [asked];
  const highest = figures.upTo(numbers.litresADay(f.judgedDemandHighest_L_per_day));
  const days = [figures.askedDays, numbers.daysAYear(f.askedDays_per_year), '', ''];
  return [[...asked.slice(0, 2), highest, ''], days];
}

/** What is asked besides the judged litres, and how often it is not wholly there. */
function otherRows(f: StorageFinding): readonly (readonly string[])[] {
  if (f.otherDemand_L_per_day === 0) return [];
  return [
    [figures.askedOther, numbers.litresADay(f.otherDemand_L_per_day), '', ''],
    [figures.otherShort, numbers.daysAYear(f.otherShortDays_per_year), '', ''],
  ];
}
