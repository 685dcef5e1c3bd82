import { type GaugeFacts, type GaugeFinding, measured, type RainRecord, wettestDay } from '@eavewell/engine';
import { english } from '@eavewell/words';
import type { Sheet } from './sheet.ts';

const { rain: words } = english.commandLine;
const { numbers } = english;

/** Gauges shown one by one: those most sites use come first. */
const mostShown = 40;

/** What is known of one gauge, and how many sites use it. */
export interface GaugeOfCheck {
  readonly gauge: GaugeFacts;
  readonly finding: GaugeFinding;
  /** As it was measured; null where nothing of it can be used. */
  readonly record: RainRecord | null;
  readonly sites: number;
}

function cellsOf({ gauge, finding, record, sites }: GaugeOfCheck): readonly string[] {
  const { rain } = finding;
  const wettest = record === null ? null : wettestDay(record);
  const notRead = record === null ? 0 : record.state.filter((state) => state !== measured).length;
  return [
    gauge.gaugeId,
    numbers.quantity(sites, 'number'),
    rain === null ? words.none : words.ofYears(rain.judgedYears, rain.years.length),
    rain === null ? words.none : numbers.fixed(rain.meanAnnualRain_mm, 0),
    wettest === null ? words.none : numbers.fixed(wettest.rain_mm, 0),
    wettest === null ? words.none : numbers.date(wettest.day),
    record === null ? words.none : numbers.percent(Math.round((notRead / record.state.length) * 1000) / 1000),
  ];
}

/** A line for each gauge: years judged, mean rain, wettest day, and the share of days nobody read. */
export function gaugeLines(sheet: Sheet, gauges: readonly GaugeOfCheck[]): void {
  const sorted = gauges.toSorted((a, b) => b.sites - a.sites);
  sheet.table(
    words.lineColumns.map((head, index) => ({ head, align: index === 0 || index === 5 ? 'left' : 'right' }) as const),
    sorted.slice(0, mostShown).map(cellsOf),
  );
  sheet.line(words.lineKey, 2);
  if (sorted.length > mostShown) sheet.line(words.moreGauges(sorted.length - mostShown), 2);
}
