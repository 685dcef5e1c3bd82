import { leastSafety_factor } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import { reasonsOfReport } from '../safety/index.ts';
import type { Station } from '../sites/index.ts';
import { type Figure, type SiteReport, storageFigures } from './siteFigures.ts';
import { cupFigures, unitFigures } from './treatmentFigures.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;
type Drainage = NonNullable<SiteReport['drainage']>;
type Part = Drainage['parts'][number];

/**
 * The figures by which a station is judged, with the working each opens to.
 *
 * @param station - which
 * @param report - what the site came to
 * @param words - the language of the page
 * @returns figures in the order they are read; none where the station is not judged
 */
export function figuresOf(station: Station, report: SiteReport, words: Words): readonly Figure[] {
  switch (station) {
    case 'storage':
      return report.storages.flatMap((one) => storageFigures(one, report.target, words));
    case 'gutter':
      return report.drainage === null ? [] : drainageFigures(report.drainage, report, words);
    case 'settling':
      return report.settling.flatMap((one) => settlingFigures(one, words));
    case 'stand':
      return report.stands.flatMap((one) => standFigures(one, words));
    case 'treatmentUnit':
      return report.treatment.flatMap((one) => unitFigures(one, words));
    case 'tap':
      return report.head.flatMap((one) => headFigures(one, words));
    case 'cup':
      return report.safety === null ? [] : cupFigures(report.safety, words);
    default:
      return [];
  }
}

/** What is said under the figures of a station: what is too small and what would hold, in sentences; and the caution of its work. */
export function sentencesOf(station: Station, report: SiteReport, words: Words): readonly string[] {
  const { say } = words;
  const caution = report.cautions.find((one) => one.caution === 'stand')?.said ?? say('cautions.stand');
  switch (station) {
    case 'gutter': {
      if (report.drainage === null) return [];
      return [
        stormSentence(report, say),
        report.drainage.finding,
        ...report.drainage.firstFlush.map(({ said }) => said),
      ];
    }
    case 'settling':
      return report.settling.map(({ finding }) => finding);
    case 'stand':
      return report.stands.length === 0 ? [] : [...report.stands.map(({ said }) => said), caution];
    case 'treatmentUnit':
      return report.treatment.map(({ finding }) => finding);
    case 'tap':
      return report.head.map(({ finding }) => finding);
    case 'cup':
      return report.safety === null ? [] : [reasonsOfReport(report.safety, words)[0]];
    default:
      return [];
  }
}

/** The storm gutters are held against, and who says so. */
function stormSentence({ drainage, working }: SiteReport, say: Words['say']): string {
  const line = working.find(({ code }) => code === 'storm.intensity');
  if (drainage?.storm_mm_per_h == null || line === undefined) return say('site.storm_unknown');
  return say('site.storm_source', { source: line.sourceSaid });
}

/** Whose figure it is: left out where there is but one. */
const of = (id: string | null | undefined) => (id === null || id === undefined || id === '' ? {} : { of: id });

function drainageFigures(drainage: Drainage, report: SiteReport, words: Words): readonly Figure[] {
  const { say, numbers } = words;
  const { storm_mm_per_h, returnPeriod_years, carries_mm_per_h, parts, governing, firstFlush } = drainage;
  const storm = report.working.find(({ code }) => code === 'storm.intensity');
  const low = storm?.inputs.find(({ name }) => name === 'low')?.value;
  const high = storm?.inputs.find(({ name }) => name === 'high')?.value;
  const range = typeof low === 'number' && typeof high === 'number' ? numbers.likely({ low, high }) : '';
  return [
    ...(storm_mm_per_h === null
      ? []
      : [
          {
            code: 'drainage.storm',
            value: say('site.storm', { storm: numbers.quantity(storm_mm_per_h, 'mm_per_h') }),
            likely: range,
            target:
              returnPeriod_years === null ? '' : say('site.once_in', { years: numbers.years(returnPeriod_years) }),
          },
        ]),
    // What holds is told by the part that is fullest.
    ...parts.filter((part, i) => i === governing || part.verdict !== 'holds').map((part) => partFigure(part, words)),
    ...(carries_mm_per_h === null || storm_mm_per_h === null
      ? []
      : [
          {
            code: 'drainage.carries',
            value: say('site.carries_rain', { rain: numbers.quantity(carries_mm_per_h, 'mm_per_h') }),
            likely: '',
            target: say('site.at_least', { amount: numbers.quantity(storm_mm_per_h, 'mm_per_h') }),
          },
        ]),
    ...firstFlush.map((one) => flushFigure(one, words)),
  ];
}

function partFigure(
  { part, id, flow_L_per_s, flow_L_per_s_range, capacity_L_per_s, use_fraction }: Part,
  words: Words,
): Figure {
  const { say, numbers } = words;
  const named = { part: say(`sites.part_${part}`), id };
  const isKnown = flow_L_per_s !== null;
  return {
    code: `drainage.${part}`,
    ...of(id),
    value: isKnown
      ? say('site.part_flow', { ...named, flow: numbers.quantity(flow_L_per_s, 'L_per_s') })
      : say('site.part_unknown', named),
    likely: flow_L_per_s_range === null ? '' : numbers.likely(flow_L_per_s_range),
    target:
      capacity_L_per_s === null
        ? say('site.capacity_unknown')
        : say(use_fraction === null ? 'site.capacity' : 'site.capacity_used', {
            capacity: numbers.quantity(capacity_L_per_s, 'L_per_s'),
            use: use_fraction === null ? '' : numbers.percent(use_fraction),
          }),
  };
}

function flushFigure(flush: Drainage['firstFlush'][number], { say, numbers }: Words): Figure {
  const { roofId, diverted_mm, chamber_L, chamberWanted_L } = flush;
  const depth = numbers.quantity(diverted_mm, 'mm');
  return {
    code: 'drainage.chamber',
    ...of(roofId),
    value:
      chamber_L === null
        ? say('site.flush', { roof: roofId, depth })
        : say('site.flush_chamber', { roof: roofId, depth, chamber: numbers.litres(chamber_L) }),
    likely: '',
    target: chamberWanted_L === null ? '' : say('site.at_least', { amount: numbers.litres(chamberWanted_L) }),
  };
}

function settlingFigures(found: SiteReport['settling'][number], { say, numbers }: Words): readonly Figure[] {
  const { tankId, grain_um, settledByDay_fraction, settledInStorm_fraction, overflowRateByDay_m_per_h } = found;
  const grain = numbers.quantity(grain_um, 'um');
  const settled = (when: 'day' | 'storm', share: number | null): readonly Figure[] =>
    share === null
      ? []
      : [
          {
            code: when === 'day' ? 'settling.settledByDay' : 'settling.settledInStorm',
            ...of(tankId),
            value: say(`site.settled_${when}`, { tank: tankId ?? '', share: numbers.percent(share), grain }),
            likely: '',
            target:
              when === 'day' && overflowRateByDay_m_per_h !== null
                ? say('site.overflow_rate', { rate: numbers.quantity(overflowRateByDay_m_per_h, 'm_per_h') })
                : '',
          },
        ];
  const { cleanAfter_months } = found;
  return [
    ...settled('day', settledByDay_fraction),
    ...settled('storm', settledInStorm_fraction),
    ...(cleanAfter_months === null
      ? []
      : [
          {
            code: 'settling.cleanAfter',
            ...of(tankId),
            value: say('site.clean_after', {
              tank: tankId ?? '',
              months: numbers.quantity(cleanAfter_months, 'months'),
            }),
            likely: '',
            target: '',
          },
        ]),
  ];
}

function standFigures(found: SiteReport['stands'][number], { say, numbers }: Words): readonly Figure[] {
  const { tankId, bearing_kPa, bearingAllowed_kPa, massFull_kg, empty, full, windSpeed_m_per_s } = found;
  const kPa = (value: number) => `${numbers.fixed(value, 0)} kPa`;
  const factor = (
    key: 'overturning_empty' | 'overturning_full' | 'sliding_empty' | 'sliding_full',
    code: string,
    value: number | null,
  ): readonly Figure[] =>
    value === null
      ? []
      : [
          {
            code,
            ...of(tankId),
            value: say(`site.${key}`, { tank: tankId, factor: numbers.fixed(value, 2) }),
            likely:
              windSpeed_m_per_s === null
                ? ''
                : say('site.in_wind', { wind: numbers.quantity(windSpeed_m_per_s, 'm_per_s') }),
            target: say('site.at_least', { amount: numbers.fixed(leastSafety_factor, 1) }),
          },
        ];
  return [
    ...(bearing_kPa === null
      ? []
      : [
          {
            code: 'stand.bearing',
            ...of(tankId),
            value: say('site.bearing', { tank: tankId, pressure: kPa(bearing_kPa) }),
            likely: massFull_kg === null ? '' : say('site.mass_full', { mass: numbers.quantity(massFull_kg, 'kg') }),
            target: bearingAllowed_kPa === null ? '' : say('site.at_most', { amount: kPa(bearingAllowed_kPa) }),
          },
        ]),
    ...factor('overturning_empty', 'stand.overturningEmpty', empty.overturning_factor),
    ...factor('overturning_full', 'stand.overturningFull', full.overturning_factor),
    ...factor('sliding_empty', 'stand.slidingEmpty', empty.sliding_factor),
    ...factor('sliding_full', 'stand.slidingFull', full.sliding_factor),
  ];
}

function headFigures(found: SiteReport['head'][number], { say, numbers }: Words): readonly Figure[] {
  const { tankIds, headLeft_m, headLeftFull_m, flowWanted_L_per_min, flowLow_L_per_min, flowFull_L_per_min } = found;
  const { hasHandPump, pumpAdds_m, pumpPower_W } = found;
  const id = tankIds[0] ?? null;
  const metres = (value: number) => numbers.fixed(value, 1);
  const figures: Figure[] = [];
  if (headLeft_m !== null)
    figures.push({
      code: 'head.headLeft',
      ...of(id),
      value: say(headLeft_m < 0 ? 'site.head_missing' : 'site.head_left', { head: metres(Math.abs(headLeft_m)) }),
      likely: headLeftFull_m === null ? '' : say('site.full_tank', { value: `${metres(headLeftFull_m)} m` }),
      target:
        flowWanted_L_per_min === null
          ? ''
          : say('site.flow_wanted', { flow: numbers.quantity(flowWanted_L_per_min, 'L_per_min') }),
    });
  if (flowLow_L_per_min !== null)
    figures.push({
      code: 'head.flowLow',
      ...of(id),
      value: say('site.flow_by_itself', { flow: numbers.quantity(flowLow_L_per_min, 'L_per_min') }),
      likely:
        flowFull_L_per_min === null
          ? ''
          : say('site.full_tank', { value: numbers.quantity(flowFull_L_per_min, 'L_per_min') }),
      target:
        hasHandPump || flowWanted_L_per_min === null
          ? ''
          : say('site.at_least', { amount: numbers.quantity(flowWanted_L_per_min, 'L_per_min') }),
    });
  if (pumpAdds_m !== null)
    figures.push({
      code: 'head.pumpAdds',
      ...of(id),
      value: say('site.pump_adds', { head: metres(pumpAdds_m) }),
      likely: pumpPower_W === null ? '' : say('site.pump_power', { power: numbers.quantity(pumpPower_W, 'W') }),
      target: say('site.pump_target'),
    });
  return figures;
}

/** Has this figure a working? Else it is told and does not open. */
export const isOpened = ({ code }: Figure, { working }: Pick<SiteReport, 'working'>): boolean =>
  working.some((line) => line.code === code);
