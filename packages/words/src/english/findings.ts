import {
  calendarDay,
  meanYear_days,
  type SiteDesign,
  type StorageFinding,
  type Target,
  type YearAtTank,
} from '@eavewell/engine';
import type { FindingWords } from '../language.ts';
import { numbers } from './numbers.ts';

/** The good years counted, and how many of as many years are likely. */
function goodYears(f: StorageFinding): string {
  const years =
    f.cappedBy === 'rain.made_up'
      ? `${f.goodYears} of ${f.judgedYears} made-up years`
      : numbers.ofYears(f.goodYears, f.judgedYears);
  return `enough water in ${years}; ${numbers.likelyYears(f.goodYears_fraction_range, f.judgedYears)} of ${f.judgedYears}`;
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
  if (f.tankForTarget_L === null) return '';
  const tight = numbers.tankLitres(f.tankForTarget_L);
  if (f.tankToHold_L === null) return ` A tank of ${tight} would be tight; none would hold.`;
  const hold = numbers.tankLitres(f.tankToHold_L);
  return hold === tight
    ? ` A tank of ${hold} would hold.`
    : ` A tank of ${tight} would be tight, one of ${hold} would hold.`;
}

function tight(f: StorageFinding): string {
  if (f.cappedBy === 'rain.made_up')
    return `Meets the target, but on made-up rain, whose years are more alike than real ones: ${goodYears(f)}.`;
  if (f.cappedBy !== null) return `Meets the target, but only on an assumption that may be too kind: ${goodYears(f)}.`;
  const tank = f.tankToHold_L === null ? '' : ` A tank of ${numbers.tankLitres(f.tankToHold_L)} would hold.`;
  return `Meets the target, but not surely: ${goodYears(f)}.${tank}`;
}

function storage(f: StorageFinding): string {
  if (f.verdict === 'holds') return `${capital(goodYears(f))}.`;
  if (f.verdict === 'tight') return tight(f);
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

function target(t: Target): string {
  const share = t.daysMet_fraction >= 1 ? 'every day' : `${numbers.percent(t.daysMet_fraction)} of days`;
  const run = numbers.days(t.longestDryRun_days);
  return `enough water on ${share}, and no dry run over ${run} ${yearsShare(t.goodYears_fraction)}. A year with enough water has no dry run over ${run}`;
}

/** What a water year is called, where it is not a calendar year. */
function waterYear({ waterYear, firstDay }: YearAtTank): string | null {
  const [from, to] = [calendarDay(firstDay), calendarDay(firstDay + 364)];
  if (from.year === to.year) return null;
  return `water years: ${waterYear} is ${numbers.quantity(from.month, 'month')} ${from.year} to ${numbers.quantity(to.month, 'month')} ${to.year}`;
}

function site(design: SiteDesign, reason: string | null): string {
  if (design.storage) return storage(design.storage);
  return reason === null ? 'Not enough facts for a verdict.' : `No verdict. ${reason}`;
}

export const findings: FindingWords = { storage, site, target, waterYear };
