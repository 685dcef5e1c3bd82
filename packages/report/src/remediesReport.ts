import {
  type AsFitted,
  type DayIndex,
  isoDay,
  type LeaveIt,
  type RemediesTogether,
  type Remedy,
  type RemedyChange,
  type SiteRemedies,
} from '@eavewell/engine';
import type { DesignReport, SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type RemedyReport = NonNullable<SiteReport['remedies']>['ranked'][number];

/** What would mend a site, field by field, as the report has it. */
export function siteRemediesReport(
  found: SiteRemedies,
  design: AsFitted,
  language: Language,
): NonNullable<SiteReport['remedies']> {
  return {
    ranked: found.remedies.map((remedy) => remedyReport(remedy, language)),
    notMended: found.notMended,
    besides: [...found.besides],
    said: [...language.remedies.beside(found, design)],
    peopleCarried: found.peopleCarried && { ...found.peopleCarried },
    leaveIt: found.leaveIt && leaveItReport(found.leaveIt),
  };
}

function leaveItReport(found: LeaveIt): NonNullable<SiteReport['remedies']>['leaveIt'] {
  const { tankIds, longestRunFrom, ofMadeYears } = found;
  // A day of made-up rain is none of the calendar.
  const from = longestRunFrom === null || ofMadeYears !== null ? null : isoDay(longestRunFrom);
  return { ...found, tankIds: tankIds && [...tankIds], longestRunFrom: from };
}

/** What would mend the programme, as the report has it. */
export function programmeRemediesReport(
  { looked, mended, groups, notMended }: RemediesTogether,
  pricesOn: DayIndex | null,
): DesignReport['remedies'] {
  return {
    pricesOn: pricesOn === null ? null : isoDay(pricesOn),
    looked: { ...looked, costs: [...looked.costs] },
    mended: { ...mended, costs: [...mended.costs] },
    groups: groups.map((group) => ({ ...group, kinds: [...group.kinds], costs: [...group.costs] })),
    notMended: notMended.map(({ reason, siteIds }) => ({ reason, siteIds: [...siteIds] })),
  };
}

function changeReport(change: RemedyChange): RemedyReport['changes'][number] {
  switch (change.kind) {
    case 'largerGutter':
    case 'outlet':
      return { ...change, gutterIds: [...change.gutterIds] };
    case 'downpipe':
      return { ...change, downpipeIds: [...change.downpipeIds] };
    case 'pipe':
      return { ...change, pipeIds: [...change.pipeIds] };
    default:
      return { ...change };
  }
}

function remedyReport(remedy: Remedy, language: Language): RemedyReport {
  const { amount, currency, reason, bought } = remedy.cost;
  return {
    changes: remedy.changes.map(changeReport),
    besides: [...remedy.besides],
    standGate: remedy.standGate,
    about: language.remedies.remedy(remedy),
    verdict: remedy.verdict,
    promiseCut_count: remedy.promiseCut_count,
    tankVolume_L: remedy.tankVolume_L,
    dryDays_per_year: remedy.dryDays_per_year,
    goodYears: remedy.goodYears,
    sourceDays_per_year: remedy.sourceDays_per_year,
    cost: {
      amount,
      currency,
      reason,
      bought: bought.map((one) => ({ ...one, priceDate: isoDay(one.priceDate) })),
    },
  };
}
