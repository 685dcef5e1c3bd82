import type { DesignSettings, SiteDesign, SiteFacts, SiteRemedies, StorageFinding } from '@eavewell/engine';
import type { SiteShort } from '@eavewell/tables';
import { type Language, problemSentence } from '@eavewell/words';
import { decidingFigure, withheld } from './decidingFigure.ts';
import { peopleDays } from './peopleDays.ts';
import { findingOf } from './siteReport.ts';

/** Figures of a list are told to a tenth: the whole figure stands in the site's own report. */
const tenth = (value: number) => Math.round(value * 10) / 10;

/**
 * What a list tells of one site.
 *
 * @param site - its facts, for name and position [deg]
 * @param design - what it came to
 * @param remedies - what would mend it; null where it is neither short nor tight
 * @param language - the language of its sentences
 * @param settings - those of the programme: what is judged by hours and waits is held against them
 * @returns verdicts, sentence, first remedy and the figures of the tank that is worst off [L, day/year, year]
 * @definition ours
 */
export function siteShort(
  site: SiteFacts,
  design: SiteDesign,
  remedies: SiteRemedies | null,
  language: Language,
  settings: Pick<DesignSettings, 'pumping_h_per_day' | 'waitLimit_min'>,
): SiteShort {
  const { siteId, name, people, design_people, verdict, stations, target, storages } = design;
  const first = remedies?.remedies[0];
  const [worst] = storages;
  const problem = withheld(design);
  return {
    siteId,
    name,
    latitude_deg: site.latitude_deg,
    longitude_deg: site.longitude_deg,
    siteClass: site.siteClass,
    people,
    design_people,
    verdict,
    stations: { ...stations },
    finding: findingOf(design, language),
    withheldBy: problem && problemSentence(problem, language).what,
    decides: decidingFigure(design, settings),
    isNotToDrink: design.safety?.mayDrink === 'no',
    standGate: design.standGate,
    hasStorm: design.storm !== null,
    remedy: first
      ? {
          about: language.remedies.remedy(first),
          sentence: language.remedies.smallest(first),
          verdict: first.verdict,
          promiseCut_count: first.promiseCut_count,
          amount: first.cost.amount,
          currency: first.cost.currency,
          noCost: first.cost.reason,
        }
      : null,
    notMended: !first && remedies?.notMended ? language.remedies.notMended(remedies.notMended) : null,
    figures: worst ? figuresOf(worst, storages.length, target.daysMet_fraction) : null,
    target: { ...target },
    weight: tenth(peopleDays(design)),
  };
}

function figuresOf(worst: StorageFinding, storages_count: number, wanted_fraction: number): SiteShort['figures'] {
  const { low, high } = worst.dryDays_per_year_range;
  return {
    storages_count,
    tankVolume_L: worst.tankVolume_L,
    judgedYears: worst.judgedYears,
    goodYears: worst.goodYears,
    goodYearsNeeded: worst.goodYearsNeeded,
    comingGood_years_range: worst.comingGood_years_range,
    dryDays_per_year: tenth(worst.dryDays_per_year),
    dryDays_per_year_range: { low: tenth(low), high: tenth(high) },
    dryDaysAllowed_per_year: tenth((1 - wanted_fraction) * worst.askedDays_per_year),
    isDaysMet: worst.daysMet_fraction >= wanted_fraction,
    longestRun_days: worst.longestRun?.days ?? null,
    cappedBy: worst.cappedBy,
    lacks: worst.lacks,
  };
}
