import type { SiteDesign, StorageFinding, Target } from '@eavewell/engine';
import type { FindingWords } from '../language.ts';
import { numbers } from './numbers.ts';

/** Mean length of a Gregorian year [day]. */
const days_per_year = 365.2425;

/** The good years counted, and how many of as many years are likely. */
function goodYears(f: StorageFinding): string {
  return `enough water in ${numbers.ofYears(f.goodYears, f.judgedYears)}; ${numbers.likelyYears(f.goodYears_fraction_range, f.judgedYears)} of ${f.judgedYears}`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Why no tank would do: what the roof brings beside what is asked. */
function shortOfWater(f: StorageFinding): string {
  const brought = f.inflow_L_per_year / days_per_year;
  const asked = f.judgedDemand_L_per_day + f.otherDemand_L_per_day;
  const start = 'Short of water: no tank would do';
  if (brought < f.judgedDemand_L_per_day)
    return `${start}; the roof brings ${numbers.litres(brought)} of the ${numbers.litresADay(f.judgedDemand_L_per_day)} asked.`;
  if (brought < asked)
    return `${start}; the roof brings ${numbers.litresADay(brought)}, and ${numbers.litres(asked)} are asked for all purposes.`;
  return `${start}; the roof brings ${numbers.litresADay(brought)}, but not when the ${numbers.litres(asked)} are asked.`;
}

function storage(f: StorageFinding): string {
  if (f.verdict === 'holds') return `${capital(goodYears(f))}.`;
  if (f.verdict === 'tight') return `Meets the target, but not surely: ${goodYears(f)}.`;
  if (f.lacks === 'water') return `${shortOfWater(f)} ${capital(goodYears(f))}.`;
  const tank =
    f.tankForTarget_L === null ? '' : ` A tank of ${numbers.tankLitres(f.tankForTarget_L)} would meet the target.`;
  return `Short of tank, not of water: ${goodYears(f)}.${tank}`;
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
  return `enough water on ${share}, and no dry run over ${numbers.days(t.longestDryRun_days)} ${yearsShare(t.goodYears_fraction)}`;
}

function site(design: SiteDesign, reason: string | null): string {
  if (design.storage) return storage(design.storage);
  return reason === null ? 'Not enough facts for a verdict.' : `No verdict. ${reason}`;
}

export const findings: FindingWords = { storage, site, target };
