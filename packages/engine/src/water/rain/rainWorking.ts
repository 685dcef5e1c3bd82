import {
  explain,
  type GaugeShare,
  isoDay,
  type JudgedRain,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';

/**
 * How did the rain of the balance come to be? Writes down years, filled or made-up days, gauges within reach and mean rain at the site.
 *
 * @param rain - rain ready for the balance
 * @param rainFactor - what the gauge's rain is multiplied by at the site [fraction], 0 or more
 * @param byDistance - the gauges within reach, distance_km [km] and weight_fraction [fraction]; none for a gauge given for the site
 * @returns working lines: judged years [year], filled or made days [day], weights of gauges, mean rain of a judged year [mm/year]
 * @definition ours: docs/methods/rain.md
 */
export function rainWorking(
  rain: JudgedRain,
  rainFactor = 1,
  byDistance: readonly GaugeShare[] = [],
): readonly WorkingLine[] {
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
  const isMade = rain.madeDays > 0;
  explain(lines, {
    code: isMade ? 'rain.made' : 'rain.filled',
    value: isMade ? rain.madeDays : rain.filledDays,
    unit: 'day',
    inputs: isMade ? [gauge, days] : [gauge, days, workingInput('neighbourDays', rain.neighbourDays, 'day')],
    source: isMade ? 'geng-1986' : 'definition',
  });
  explainShares(lines, byDistance);
  const judged = workingInput('judgedYears', rain.judgedYears, 'year');
  const factor = workingInput('rainFactor', rainFactor, 'fraction');
  const mean = rain.meanAnnualRain_mm * rainFactor;
  explain(lines, {
    code: 'rain.mean',
    value: mean,
    unit: 'mm/year',
    inputs: [gauge, judged, factor],
    source: isMade ? 'normals' : 'gauge',
  });
  return lines;
}

/** Who gave how much, for a site without a gauge of its own. */
function explainShares(lines: WorkingLine[], byDistance: readonly GaugeShare[]): void {
  for (const { gaugeId, distance_km, weight_fraction } of byDistance)
    explain(lines, {
      code: 'rain.byDistance',
      value: weight_fraction,
      unit: 'fraction',
      inputs: [workingInput('gauge', gaugeId, 'text'), workingInput('distance', distance_km, 'km')],
      source: 'shepard-1968',
    });
}
