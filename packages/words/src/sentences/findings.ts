import { calendarDay, meanYear_days, type Target, type Verdict, verdictOrder, type YearAtTank } from '@eavewell/engine';
import type { FindingWords, StorageSaid } from '../language.ts';
import type { Speech } from '../problems.ts';
import { chlorineSaid } from './chlorineFindings.ts';
import { drainageIn } from './drainageFindings.ts';
import { headSaid } from './headFindings.ts';
import { safetySaid, sourceDaysSaid } from './safetyFindings.ts';
import { settlingSaid } from './settlingFindings.ts';
import { standWordsIn } from './standFindings.ts';
import { stormWordsIn } from './stormFindings.ts';
import { tanksThatWouldDo, tankToHold, withoutSource } from './tanksThatWouldDo.ts';
import { treatmentSaid } from './treatmentFindings.ts';
import { waterTestsSaid } from './waterTestsFindings.ts';
import { wearSaid } from './wearFindings.ts';

/** The good years counted, and how many of as many coming years are likely. */
function goodYears({ say, numbers }: Speech, f: StorageSaid): string {
  const years =
    f.cappedBy === 'rain.made_up'
      ? say('findings.ofMadeUpYears', { good: f.goodYears, all: f.judgedYears })
      : numbers.ofYears(f.goodYears, f.judgedYears);
  const next = numbers.likelyNextYears(f.comingGood_years_range, f.judgedYears);
  return say('findings.goodYears', { years, next });
}

/** The text with a large first letter. */
const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Why no tank would do: what the roof brings beside what is asked. */
function shortOfWater({ say, numbers }: Speech, f: StorageSaid): string {
  const brought = f.inflow_L_per_year / meanYear_days;
  const asked = f.judgedDemand_L_per_day + f.otherDemand_L_per_day;
  if (brought < f.judgedDemand_L_per_day)
    return say('findings.shortOfWater', {
      brought: numbers.litres(brought),
      asked: numbers.litresADay(f.judgedDemand_L_per_day),
    });
  const values = { brought: numbers.litresADay(brought), asked: numbers.litres(asked) };
  if (f.otherDemand_L_per_day > 0)
    return say('findings.shortForAll', { ...values, judged: numbers.litres(f.judgedDemand_L_per_day) });
  return say('findings.shortInSeason', values);
}

/** What this tank would do were nothing else asked, where that mends it. */
function forDrinkingAlone({ say, numbers }: Speech, f: StorageSaid): string {
  if (!f.judgedAlone?.meetsTarget) return '';
  return ` ${say('findings.forDrinkingAlone', { years: numbers.ofYears(f.judgedAlone.goodYears, f.judgedYears) })}`;
}

/** How often water is rationed, and what that does. */
function rationed({ say, numbers }: Speech, f: StorageSaid): string {
  if (f.ration === null || f.rationedDays_per_year === null) return '';
  // A ration that holds nothing back is none.
  if (f.ration.judged_fraction === 1 && f.ration.other_fraction === 1) return '';
  return ` ${say('findings.rationed', { days: numbers.daysAYear(f.rationedDays_per_year) })}`;
}

/** What comes from the second source, and what the tank does without it. */
function fromSource({ say, numbers }: Speech, { secondSource, judgedYears }: StorageSaid): string {
  if (secondSource === null) return '';
  const { kind, name, days_per_year, aloneGoodYears } = secondSource;
  const days = capital(numbers.daysAYear(days_per_year));
  const years = numbers.ofYears(aloneGoodYears, judgedYears);
  return ` ${say('findings.fromSource', { days, kind: say(`remedies.sourceKind.${kind}`), name, years })}`;
}

function tight(w: Speech, f: StorageSaid): string {
  const years = goodYears(w, f);
  if (f.cappedBy === 'site.second_source')
    return `${w.say('findings.tight.secondSource', { years })}${tankToHold(w, f, 'withoutIt')}`;
  if (f.cappedBy === 'rain.made_up') return w.say('findings.tight.madeUp', { years });
  if (f.cappedBy === 'site.gutters_assumed') return w.say('findings.tight.gutters', { years });
  if (f.cappedBy === 'site.roof_very_large') return w.say('findings.tight.roofSize', { years });
  if (f.cappedBy === 'site.growth_not_used') return w.say('findings.tight.growth', { years });
  if (f.cappedBy !== null) return w.say('findings.tight.assumption', { years });
  return `${w.say('findings.tight', { years })}${withoutSource(w, f, tankToHold(w, f))}`;
}

function storage(w: Speech, f: StorageSaid): string {
  return `${storedText(w, f)}${rationed(w, f)}${fromSource(w, f)}`;
}

function storedText(w: Speech, f: StorageSaid): string {
  const years = goodYears(w, f);
  if (f.verdict === 'holds') return w.say('findings.holds', { years: capital(years) });
  if (f.verdict === 'tight') return tight(w, f);
  if (f.lacks === 'ration') return w.say('findings.shortOfRation', { years });
  const alone = forDrinkingAlone(w, f);
  if (f.lacks === 'water') return `${shortOfWater(w, f)} ${w.say('findings.holds', { years: capital(years) })}${alone}`;
  return `${w.say('findings.shortOfTank', { years })}${tanksThatWouldDo(w, f)}${alone}`;
}

/** A share as "4 of 5" where a small denominator says it exactly, else null. */
function smallShare(fraction: number): readonly [number, number] | null {
  for (let all = 1; all <= 12; all++) {
    const part = Math.round(fraction * all);
    if (Math.abs(part / all - fraction) < 1e-9) return [part, all];
  }
  return null;
}

function yearsShare({ say, numbers }: Speech, fraction: number): string {
  if (fraction >= 1) return say('findings.everyYear');
  const share = smallShare(fraction);
  return share
    ? say('findings.yearsOf', { good: share[0], all: share[1] })
    : say('findings.shareOfYears', { share: numbers.percent(fraction) });
}

function targetDays({ say, numbers }: Speech, t: Target): string {
  return t.daysMet_fraction >= 1
    ? say('findings.everyDay')
    : say('findings.shareOfDays', { share: numbers.percent(t.daysMet_fraction) });
}

const targetValues = (w: Speech, t: Target) => ({
  days: targetDays(w, t),
  run: w.numbers.days(t.longestDryRun_days),
  years: yearsShare(w, t.goodYears_fraction),
});

/** What a water year is called, where it is not a calendar year. */
function waterYear({ say, numbers }: Speech, { waterYear: year, firstDay }: YearAtTank): string | null {
  const [from, to] = [calendarDay(firstDay), calendarDay(firstDay + 364)];
  if (from.year === to.year) return null;
  const monthOf = (day: { readonly month: number; readonly year: number }) =>
    say('findings.monthOfYear', { month: numbers.quantity(day.month, 'month'), year: String(day.year) });
  return say('findings.waterYear', { year: String(year), from: monthOf(from), to: monthOf(to) });
}

/** Tanks joined at the foot, as one water. */
function tanksNamed({ say }: Speech, tankIds: readonly string[]): string {
  const last = tankIds.at(-1) ?? '';
  return tankIds.length < 2
    ? say('findings.tank', { tank: last })
    : say('findings.tanks', { tanks: tankIds.slice(0, -1).join(', '), last });
}

/** The tanks that are no worse off: by name where there are one or two. */
function othersSaid(w: Speech, others: readonly StorageSaid[]): string {
  if (others.length <= 2)
    return others
      .map(({ tankIds, verdict }) => {
        const tanks = capital(tanksNamed(w, tankIds));
        return w.say(`findings.others.${verdict as Verdict}`, { tanks, count: tankIds.length });
      })
      .join(' ');
  const counted = verdictOrder.flatMap((verdict) => {
    const count = others.filter((one) => one.verdict === verdict).length;
    return count === 0 ? [] : [w.say(`findings.counted.${verdict}`, { count })];
  });
  return w.say('findings.ofOthers', { count: others.length, counted: counted.join(', ') });
}

function site(w: Speech, design: { readonly storages: readonly StorageSaid[] }, reason: string | null): string {
  const [worst, ...others] = design.storages;
  if (worst && others.length === 0) return storage(w, worst);
  if (worst) {
    const found = storage(w, worst);
    return w.say('findings.worstTank', {
      tanks: capital(tanksNamed(w, worst.tankIds)),
      finding: `${found.slice(0, 1).toLowerCase()}${found.slice(1)}`,
      others: othersSaid(w, others),
    });
  }
  return reason === null ? w.say('findings.noFacts') : w.say('findings.noVerdict', { reason });
}

/** What is said of findings, in a language. */
export const findingsIn = (w: Speech): FindingWords => ({
  ...drainageIn(w),
  storage: (finding) => storage(w, finding),
  site: (design, reason) => site(w, design, reason),
  tanksNamed: (tankIds) => tanksNamed(w, tankIds),
  target: (target) => w.say('findings.target', targetValues(w, target)),
  classTarget: (siteClass, target) => w.say('findings.classTarget', { siteClass, ...targetValues(w, target) }),
  waterYear: (year) => waterYear(w, year),
  ...standWordsIn(w),
  ...stormWordsIn(w),
  settling: (finding) => settlingSaid(w, finding),
  head: (finding) => headSaid(w, finding),
  treatment: (finding) => treatmentSaid(w, finding),
  wear: (finding) => wearSaid(w, finding),
  safety: (finding) => safetySaid(w, finding),
  sourceDays: (days) => sourceDaysSaid(w, days),
  waterTests: (finding) => waterTestsSaid(w, finding),
  chlorine: (finding) => chlorineSaid(w, finding),
});
