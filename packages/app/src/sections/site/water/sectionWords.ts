import type { MarkWords, SectionWords } from '@eavewell/drawing';
import type { Station } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import { stationsInOrder } from '../../sites/index.ts';
import type { SiteReport } from '../siteFigures.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** The words a section and a plan are lettered with. */
export function sectionWords({ say, numbers }: Words): SectionWords {
  const metres = (value: number) => say('water.metres', { value: numbers.fixed(value, 2) });
  return {
    metres: (value, how) => say(`water.length_${how}`, { length: metres(value) }),
    diameter: (value, how) => say(`water.length_${how}`, { length: `⌀ ${metres(value)}` }),
    roofOverGutters: (value, how) =>
      say('water.roof_over_gutters', { length: say(`water.length_${how}`, { length: metres(value) }) }),
    degrees: (value, how) => say(`water.length_${how}`, { length: `${numbers.fixed(value, 0)}°` }),
    scaleMark: (value, isLast) => (isLast ? `${numbers.given(value, '')} m` : numbers.given(value, '')),
    notMeasured: say('water.dashed_unknown'),
    proposed: say('water.dashed_proposed'),
    tankTooHigh: (by_m) => say('water.tank_too_high', { by: metres(by_m) }),
    guttered: (share, how) =>
      say(`water.length_${how}`, { length: say('water.guttered', { share: numbers.percent(share) }) }),
    downpipes: (count) => say('water.downpipes', { count }),
  };
}

/** What stands at each station's mark: its name with its verdict, and the figure that makes it an exception. */
export function markWords(report: SiteReport, { say, numbers }: Words): Readonly<Record<Station, MarkWords>> {
  const dry = report.storages[0]?.dryDays_per_year ?? null;
  const entries = stationsInOrder.map((station): [Station, MarkWords] => {
    const verdict = report.stations[station];
    const words = { station: say(`sites.station_${station}`), verdict: say(`sites.verdict_${verdict}`) };
    const isException = verdict === 'short' || verdict === 'tight';
    const figure = station === 'storage' && isException && dry !== null ? numbers.dryDaysAYear(dry) : null;
    return [station, { word: say('sites.station_stands', words), figure }];
  });
  return Object.fromEntries(entries) as Record<Station, MarkWords>;
}
