import {
  calendarDay,
  type EngineProblemCode,
  meanYear_days,
  type SiteDesign,
  type StorageFinding,
  type Target,
  type Verdict,
  verdictOrder,
  type YearAtTank,
} from '@eavewell/engine';
import type { FindingWords } from '../language.ts';
import { numbers } from './numbers.ts';

/** The good years counted, and how many of as many coming years are likely. */
function goodYears(f: StorageFinding): string {
  const years =
    f.cappedBy === 'rain.made_up'
      ? `${f.goodYears} of ${f.judgedYears} made-up years`
      : numbers.ofYears(f.goodYears, f.judgedYears);
  return `enough water in ${years}; ${numbers.likelyNextYears(f.comingGood_years_range, f.judgedYears)}`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Why no tank would do: what the roof brings beside what is asked. */
function shortOfWater(f: StorageFinding): string {
  const brought = f.inflow_L_per_year / meanYear_days;
  const asked = f.judgedDemand_L_per_day + f.otherDemand_L_per_day;
  if (brought < f.judgedDemand_L_per_day)
    return `Short of water: no tank would do; the roof brings ${numbers.litres(brought)} of the ${numbers.litresADay(f.judgedDemand_L_per_day)} asked.`;
  if (f.otherDemand_L_per_day > 0)
    return `Short of water for all that is asked: the roof brings ${numbers.litresADay(brought)}, and ${numbers.litres(asked)} are asked, ${numbers.litres(f.judgedDemand_L_per_day)} of them for drinking and cooking.`;
  return `Short of water: no tank would do; the roof brings ${numbers.litresADay(brought)}, but not when the ${numbers.litres(asked)} are asked.`;
}

/** What this tank would do were nothing else asked, where that mends it. */
function forDrinkingAlone(f: StorageFinding): string {
  if (!f.judgedAlone?.meetsTarget) return '';
  return ` For drinking and cooking alone this tank would meet the target: enough water in ${numbers.ofYears(f.judgedAlone.goodYears, f.judgedYears)}.`;
}

/** The smallest tanks that would do: for the target, and to hold. */
function tanksThatWouldDo(f: StorageFinding): string {
  return withoutSource(f, smallestTanks(f));
}

function smallestTanks(f: StorageFinding): string {
  if (f.noExactSize !== null) return catalogueTanks(f);
  if (f.tankForTarget_L === null) return '';
  const tight = numbers.tankLitres(f.tankForTarget_L);
  if (f.tankToHold_L === null) return ` A tank of ${tight} would be tight; none would hold.`;
  const hold = numbers.tankLitres(f.tankToHold_L);
  return hold === tight
    ? ` A tank of ${hold} would hold.`
    : ` A tank of ${tight} would be tight, one of ${hold} would hold.`;
}

/** Sizes are asked for without the second source: so it is said where there is one. */
function withoutSource({ secondSource }: StorageFinding, text: string): string {
  if (secondSource === null || text === '') return text;
  return ` Without the second source, ${text.slice(1, 2).toLowerCase()}${text.slice(2)}`;
}

/** The same where sizes are run one by one: of the catalogue, and no size between. */
function catalogueTanks(f: StorageFinding): string {
  if (f.catalogueForTarget_L === null) return ' No tank of the catalogue would do.';
  const least = numbers.litres(f.catalogueForTarget_L);
  if (f.catalogueToHold_L === null) return ` Of the catalogue, ${least} would be tight; none would hold.`;
  return f.catalogueToHold_L === f.catalogueForTarget_L
    ? ` Of the catalogue, ${least} would hold.`
    : ` Of the catalogue, ${least} would be tight, ${numbers.litres(f.catalogueToHold_L)} would hold.`;
}

/** What tank would hold, of a site that is tight. */
function tankToHold(f: StorageFinding): string {
  if (f.catalogueToHold_L !== null) return ` Of the catalogue, ${numbers.litres(f.catalogueToHold_L)} would hold.`;
  return f.tankToHold_L === null ? '' : ` A tank of ${numbers.tankLitres(f.tankToHold_L)} would hold.`;
}

/** How often water is rationed, and what that does. */
function rationed(f: StorageFinding): string {
  if (f.ration === null || f.rationedDays_per_year === null) return '';
  // A ration that holds nothing back is none.
  if (f.ration.judged_fraction === 1 && f.ration.other_fraction === 1) return '';
  return ` Rationed on ${numbers.daysAYear(f.rationedDays_per_year)}.`;
}

/** What comes from the second source, and what the tank does without it. */
function fromSource({ secondSource, judgedYears }: StorageFinding): string {
  if (secondSource === null) return '';
  const { kind, name, days_per_year, aloneGoodYears } = secondSource;
  const from = `${capital(numbers.daysAYear(days_per_year))} from the ${kind} (${name})`;
  return ` ${from}; without it enough water in ${numbers.ofYears(aloneGoodYears, judgedYears)}.`;
}

/** The assumption that keeps a site from holding, named. */
const tooKind: Readonly<Partial<Record<EngineProblemCode, string>>> = {
  'site.gutters_assumed': 'only if the whole roof has gutters (not surveyed)',
  'site.roof_very_large': 'only if a roof is as large as it is said to be (far out of the usual)',
  'site.growth_not_used': 'only if nobody is added (growth is stated and could not be reckoned with)',
};

function tight(f: StorageFinding): string {
  if (f.cappedBy === 'site.second_source') {
    const tank = tankToHold(f).replace(/ would hold\.$/, ' would hold without it.');
    return `Meets the target, but not from the roof alone: ${goodYears(f)}.${tank}`;
  }
  if (f.cappedBy === 'rain.made_up')
    return `Meets the target, but on made-up rain, whose years are more alike than real ones: ${goodYears(f)}.`;
  if (f.cappedBy !== null)
    return `Meets the target, but ${tooKind[f.cappedBy] ?? 'only on an assumption'}, which may be too kind: ${goodYears(f)}.`;
  return `Meets the target, but not surely: ${goodYears(f)}.${withoutSource(f, tankToHold(f))}`;
}

function storage(f: StorageFinding): string {
  return `${storedText(f)}${rationed(f)}${fromSource(f)}`;
}

function storedText(f: StorageFinding): string {
  if (f.verdict === 'holds') return `${capital(goodYears(f))}.`;
  if (f.verdict === 'tight') return tight(f);
  if (f.lacks === 'ration')
    return `Short because of the ration: ${goodYears(f)}. With nothing rationed it would meet the target.`;
  if (f.lacks === 'water') return `${shortOfWater(f)} ${capital(goodYears(f))}.${forDrinkingAlone(f)}`;
  return `Short of tank, not of water: ${goodYears(f)}.${tanksThatWouldDo(f)}${forDrinkingAlone(f)}`;
}

/** A share as "4 of 5" where a small denominator says it exactly, else null. */
function smallShare(fraction: number): readonly [number, number] | null {
  for (let all = 1; all <= 12; all++) {
    const part = Math.round(fraction * all);
    if (Math.abs(part / all - fraction) < 1e-9) return [part, all];
  }
  return null;
}

function yearsShare(fraction: number): string {
  if (fraction >= 1) return 'in every year';
  const share = smallShare(fraction);
  return share ? `in ${share[0]} years of ${share[1]}` : `in ${numbers.percent(fraction)} of years`;
}

function targetDays(t: Target): string {
  return t.daysMet_fraction >= 1 ? 'every day' : `${numbers.percent(t.daysMet_fraction)} of days`;
}

function target(t: Target): string {
  const run = numbers.days(t.longestDryRun_days);
  return `enough water on ${targetDays(t)}, and no dry run over ${run} ${yearsShare(t.goodYears_fraction)}. A year with enough water has no dry run over ${run}`;
}

function classTarget(siteClass: string, t: Target): string {
  return `Target of ${siteClass}: ${targetDays(t)}, no dry run over ${numbers.days(t.longestDryRun_days)} ${yearsShare(t.goodYears_fraction)}`;
}

/** What a water year is called, where it is not a calendar year. */
function waterYear({ waterYear, firstDay }: YearAtTank): string | null {
  const [from, to] = [calendarDay(firstDay), calendarDay(firstDay + 364)];
  if (from.year === to.year) return null;
  return `water years: ${waterYear} is ${numbers.quantity(from.month, 'month')} ${from.year} to ${numbers.quantity(to.month, 'month')} ${to.year}`;
}

/** Tanks joined at the foot, as one water. */
function tanksNamed(tankIds: readonly string[]): string {
  const [last = '', ...before] = [...tankIds].reverse();
  return before.length === 0 ? `tank ${last}` : `tanks ${before.reverse().join(', ')} and ${last}`;
}

/** The tanks that are no worse off: by name where there are one or two. */
function othersSaid(others: readonly StorageFinding[]): string {
  const are = (verdict: Verdict, many: boolean) => {
    if (verdict === 'holds') return many ? 'hold' : 'holds';
    return `${many ? 'are' : 'is'} ${verdict}`;
  };
  if (others.length <= 2)
    return others
      .map(({ tankIds, verdict }) => `${capital(tanksNamed(tankIds))} ${are(verdict, tankIds.length > 1)}.`)
      .join(' ');
  const counted = verdictOrder.flatMap((verdict) => {
    const count = others.filter((one) => one.verdict === verdict).length;
    return count === 0 ? [] : [`${count} ${are(verdict, count > 1)}`];
  });
  return `Of its ${others.length} others, ${counted.join(', ')}.`;
}

function site(design: SiteDesign, reason: string | null): string {
  const [worst, ...others] = design.storages;
  if (worst && others.length === 0) return storage(worst);
  if (worst) {
    const found = storage(worst);
    return `${capital(tanksNamed(worst.tankIds))}: ${found.slice(0, 1).toLowerCase()}${found.slice(1)} ${othersSaid(others)}`;
  }
  return reason === null ? 'Not enough facts for a verdict.' : `No verdict. ${reason}`;
}

export const findings: FindingWords = { storage, site, tanksNamed, target, classTarget, waterYear };
