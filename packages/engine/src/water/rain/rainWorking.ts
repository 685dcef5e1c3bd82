import { explain, isoDay, type JudgedRain, type WorkingLine, workingInput } from '../../kernel/index.ts';

/**
 * How did the rain of the balance come to be? Writes down years, filled days and mean rain at the site.
 *
 * @param rain - rain ready for the balance
 * @param rainFactor - what the gauge's rain is multiplied by at the site [fraction], 0 or more
 * @returns working lines: judged years [year], filled days [day], mean rain of a judged year [mm/year]
 * @definition ours: docs/methods/rain.md
 */
export function rainWorking(rain: JudgedRain, rainFactor = 1): readonly WorkingLine[] {
  const { record, years } = rain;
  const lines: WorkingLine[] = [];
  const gauge = workingInput('gauge', record.gaugeId, 'text');
  explain(lines, {
    code: 'rain.years',
    value: rain.judgedYears,
    unit: 'year',
    inputs: [
      gauge,
      workingInput('wholeYears', years.length, 'year'),
      workingInput('firstDay', isoDay(record.firstDay), 'text'),
      workingInput('lastDay', isoDay(record.firstDay + record.rain_mm.length - 1), 'text'),
      workingInput('startMonth', rain.startMonth, 'month'),
      workingInput('cutDays', rain.cutDays, 'day'),
    ],
    source: 'definition',
  });
  const days = workingInput('days', record.rain_mm.length, 'day');
  explain(lines, {
    code: 'rain.filled',
    value: rain.filledDays,
    unit: 'day',
    inputs: [gauge, days],
    source: 'definition',
  });
  const judged = workingInput('judgedYears', rain.judgedYears, 'year');
  const factor = workingInput('rainFactor', rainFactor, 'fraction');
  const mean = rain.meanAnnualRain_mm * rainFactor;
  explain(lines, {
    code: 'rain.mean',
    value: mean,
    unit: 'mm/year',
    inputs: [gauge, judged, factor],
    source: 'gauge',
  });
  return lines;
}
