import { type GaugeFinding, measured, type ProgrammeFacts, type ReadyProgramme, wettestDay } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { check: words } = spoken.commandLine;
const { numbers } = spoken;

/** Gauges listed one by one before the rest are only counted: those most sites use come first. */
const mostShown = 40;

/** A line for each gauge: how many sites name it, what its rain is, years, mean year, wettest day, share of days not read. */
export function gaugeLines(sheet: Sheet, { sites }: ProgrammeFacts, ready: ReadyProgramme): void {
  if (ready.allGauges.length === 0) return;
  sheet.heading(words.gauges);
  const records = new Map(ready.records.map(({ record }) => [record.gaugeId, record]));
  const count = new Map<string, number>();
  for (const { gaugeId } of sites) if (gaugeId !== null) count.set(gaugeId, (count.get(gaugeId) ?? 0) + 1);
  const usedBy = ({ gaugeId }: GaugeFinding) => count.get(gaugeId) ?? 0;
  const sorted = [...ready.gauges.values()].sort((a, b) => usedBy(b) - usedBy(a));
  const rows = sorted.slice(0, mostShown).map((finding) => {
    const { gaugeId, rain } = finding;
    const record = records.get(gaugeId);
    const wettest = record && wettestDay(record);
    const notRead = record && record.state.filter((state) => state !== measured).length / record.state.length;
    return [
      gaugeId,
      numbers.quantity(usedBy(finding), 'number'),
      rainOf(finding),
      rain === null ? words.none : words.ofYears(rain.judgedYears, rain.years.length),
      rain === null ? words.none : numbers.fixed(rain.meanAnnualRain_mm, 0),
      wettest ? numbers.fixed(wettest.rain_mm, 0) : words.none,
      wettest ? numbers.date(wettest.day) : words.none,
      notRead === undefined ? words.none : numbers.percent(Math.round(notRead * 1000) / 1000),
    ];
  });
  const isText = [0, 2, 6];
  sheet.table(
    words.gaugeColumns.map((head, index) => ({ head, align: isText.includes(index) ? 'left' : 'right' }) as const),
    rows,
  );
  sheet.line(words.gaugeKey, 2);
  const more = ready.gauges.size - rows.length;
  if (more > 0) sheet.line(words.moreGauges(more), 2);
}

function rainOf({ rain }: GaugeFinding): string {
  if (!rain) return words.noRain;
  return rain.madeDays > 0 ? words.madeRain : words.measured;
}
