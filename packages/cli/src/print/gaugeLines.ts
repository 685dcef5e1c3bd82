import { type GaugeFinding, measured, type ReadyProgramme, wettestDay } from '@eavewell/engine';
import { english } from '@eavewell/words';
import type { Sheet } from './sheet.ts';

const { check: words } = english.commandLine;
const { numbers } = english;

/** Gauges listed one by one before the rest are only counted. */
const mostShown = 20;

/** A line for each gauge: what its rain is, years, mean year, wettest day, share of days not read. */
export function gaugeLines(sheet: Sheet, ready: ReadyProgramme): void {
  if (ready.allGauges.length === 0) return;
  sheet.heading(words.gauges);
  const records = new Map(ready.records.map(({ record }) => [record.gaugeId, record]));
  const rows = [...ready.gauges.values()].slice(0, mostShown).map((finding) => {
    const record = records.get(finding.gaugeId);
    const wettest = record && wettestDay(record);
    const notRead = record && record.state.filter((state) => state !== measured).length / record.state.length;
    return [
      finding.gaugeId,
      rainOf(finding),
      finding.rain ? numbers.quantity(finding.rain.judgedYears, 'number') : words.none,
      finding.rain ? numbers.quantity(finding.rain.meanAnnualRain_mm, 'mm') : words.none,
      wettest ? numbers.quantity(wettest.rain_mm, 'mm') : words.none,
      notRead === undefined ? words.none : numbers.percent(notRead),
    ];
  });
  sheet.table(
    words.gaugeColumns.map((head, index) => ({ head, align: index < 2 ? 'left' : 'right' }) as const),
    rows,
  );
  const more = ready.gauges.size - rows.length;
  if (more > 0) sheet.line(words.moreGauges(more), 2);
}

function rainOf({ rain }: GaugeFinding): string {
  if (!rain) return words.noRain;
  return rain.madeDays > 0 ? words.madeRain : words.measured;
}
