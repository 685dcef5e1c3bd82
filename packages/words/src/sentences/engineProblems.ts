import type { EngineProblemCode } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { chlorineSentences } from './chlorineProblems.ts';
import { drainageSentences } from './drainageProblems.ts';
import { headSentences } from './headProblems.ts';
import { kitSentences } from './kitProblems.ts';
import { loadsSentences } from './loadsProblems.ts';
import { costSentences, moneySentences } from './moneyProblems.ts';
import { peopleSentences } from './peopleProblems.ts';
import { placeIn } from './place.ts';
import { rolloutReadySentences } from './rolloutReadyProblems.ts';
import { safetySentences } from './safetyProblems.ts';
import { settlingSentences } from './settlingProblems.ts';
import { siteRainSentences } from './siteRainProblems.ts';
import { standSentences } from './standProblems.ts';
import { stormSentences } from './stormProblems.ts';
import { amount, part, type Sentences, says, wordFor, yes } from './telling.ts';
import { treatmentSentences } from './treatmentProblems.ts';
import { waterTestsSentences } from './waterTestsProblems.ts';
import { waysSentences } from './waysProblems.ts';
import { wearSentences } from './wearProblems.ts';

const days = (t: Told) => amount(t, ['count', 'days'], 'day');

/** How many gaps, and the longest of them. */
function gapsOf(t: Told): string {
  const gaps = t.number('gaps');
  if (gaps === null) return '';
  return part(t, 'gaps', {
    gaps,
    hasLongest: yes(t.has('longest_days')),
    days: amount(t, ['longest_days'], 'day'),
    from: t.numbers.date(t.text('longestFrom')),
  });
}

/** The gauges near by, by name where they are few. */
function nearBy(t: Told): string {
  const others = t.list('others');
  return others.length === 0 || others.length > 3 ? part(t, 'gaugesNearBy') : others.join(', ');
}

const roof = (t: Told) => (t.has('roof') ? t.text('roof') : part(t, 'theRoof'));
const tank = (t: Told) => (t.has('tank') ? t.text('tank') : part(t, 'theTank'));
const tanksNamed = (t: Told) => part(t, 'tanks', { count: t.list('tanks').length, tanks: t.text('tanks') });

/** Which years, where it is not all that could be told. */
const inYears = (t: Told) =>
  t.has('years') && t.list('years').length < t.count('telling') ? part(t, 'inYears', { years: t.text('years') }) : '';
const firstAt = (t: Told) => (t.place.day ? part(t, 'firstOn', { day: t.numbers.date(t.place.day ?? '') }) : '');

const rain = {
  'rain.none': (t) => says(t, 'rain.none'),
  'rain.too_short': (t) =>
    (t.number('wholeYears') ?? 0) > 0
      ? says(t, 'rain.too_short', { wholeYears: amount(t, ['wholeYears'], 'year') })
      : says(t, 'rain.too_short.otherwise', { days: days(t) }),
  'rain.day_twice_same': (t) => says(t, 'rain.day_twice_same', { days: t.count('count', 'days'), firstAt: firstAt(t) }),
  'rain.day_twice_differs': (t) =>
    says(t, 'rain.day_twice_differs', { days: t.count('count', 'days'), firstAt: firstAt(t) }),
  'rain.out_of_order': (t) => says(t, 'rain.out_of_order', { days: t.count('count', 'days'), firstAt: firstAt(t) }),
  'rain.day_far': (t) => says(t, 'rain.day_far', { days: t.count('count', 'days'), firstAt: firstAt(t) }),
  'rain.negative': (t) => says(t, 'rain.negative', { hasValue: yes(t.has('value')), value: t.text('value') }),
  'rain.absurd': (t) => says(t, 'rain.absurd', { hasValue: yes(t.has('value')), value: t.text('value') }),
  'rain.large': (t) => says(t, 'rain.large', { hasValue: yes(t.has('value')), value: t.text('value') }),
  'rain.in_inches': (t) =>
    says(t, 'rain.in_inches', {
      value: amount(t, ['value'], 'mm'),
      likely: amount(t, ['likely_mm'], 'mm'),
      inYears: inYears(t),
    }),
  'rain.in_tenths': (t) =>
    says(t, 'rain.in_tenths', {
      value: amount(t, ['value'], 'mm'),
      likely: amount(t, ['likely_mm'], 'mm'),
      inYears: inYears(t),
    }),
  'rain.same_for_days': (t) =>
    says(t, 'rain.same_for_days', {
      days: t.count('days'),
      value: amount(t, ['value'], 'mm'),
      firstAt: firstAt(t),
      runs: t.number('runs') ?? 1,
    }),
  'rain.month_twice': (t) =>
    says(t, 'rain.month_twice', { value: t.text('value'), other: t.text('other'), count: t.number('count') ?? 1 }),
  'rain.days_missing': (t) => says(t, 'rain.days_missing', { days: days(t), gaps: gapsOf(t) }),
  'rain.year_not_judged': (t) =>
    says(t, 'rain.year_not_judged', { count: t.list('years').length, years: t.text('years') }),
  'rain.days_filled': (t) => says(t, 'rain.days_filled', { days: t.count('count', 'days') }),
  'rain.days_filled_neighbours': (t) => says(t, 'rain.days_filled_neighbours', { days: t.count('count', 'days') }),
  'rain.no_neighbour': (t) => says(t, 'rain.no_neighbour', { days: t.count('count', 'days') }),
  'rain.gap_not_filled': (t) => says(t, 'rain.gap_not_filled', { days: days(t) }),
  'rain.shifted': (t) =>
    says(t, 'rain.shifted', { hasReadingTime: yes(t.has('readingTime')), readingTime: t.text('readingTime') }),
  'rain.part_years_cut': (t) => says(t, 'rain.part_years_cut', { days: t.count('count', 'days') }),
  'rain.double_mass_bends': (t) =>
    says(t, 'rain.double_mass_bends', {
      nearBy: nearBy(t),
      slopeRatio: amount(t, ['slopeRatio_fraction'], 'fraction'),
      hasDay: yes(t.place.day),
      day: t.numbers.date(t.place.day ?? ''),
      limit: amount(t, ['limit_fraction'], 'fraction'),
    }),
  'rain.few_years': (t) =>
    says(t, 'rain.few_years', { judgedYears: amount(t, ['judgedYears', 'years', 'count'], 'year') }),
} satisfies Partial<Sentences<EngineProblemCode>>;

const site = {
  'site.facts_in_doubt': (t) => {
    const { siteId: _, ...at } = t.place;
    const count = t.number('count') ?? 1;
    const where = { count, hasPlace: yes(at.file !== undefined), place: placeIn(t)(at) };
    if (!t.has('fault')) return says(t, 'site.facts_in_doubt.otherwise', where);
    // Sentences, whose own values were cut before: as they stand.
    const [fault, todo] = [t.list('fault').join(' '), t.list('todo').join(' ')];
    const saysVerdict = yes(todo.includes(part(t, 'verdictIn')));
    return says(t, 'site.facts_in_doubt', { ...where, fault, todo, saysVerdict });
  },
  'site.dated_ahead': (t) => says(t, 'site.dated_ahead', { count: t.number('count') ?? 1 }),
  'site.station_in_doubt': (t) => {
    const { siteId: _, ...at } = t.place;
    const station = wordFor(t, 'beside', t.text('station')) ?? t.text('station');
    return says(t, 'site.station_in_doubt', { count: t.number('count') ?? 1, place: placeIn(t)(at), station });
  },
  'site.figure_unusable': (t) =>
    says(t, 'site.figure_unusable', { value: t.text('value'), hasOf: yes(t.text('of') !== ''), of: t.text('of') }),
  'site.gauge_unknown': (t) =>
    says(t, 'site.gauge_unknown', { hasGaugeId: yes(!t.text('gaugeId').startsWith('(')), gaugeId: t.text('gaugeId') }),
  'site.roof_none': (t) => says(t, 'site.roof_none'),
  'site.roof_area_unknown': (t) => says(t, 'site.roof_area_unknown', { roof: roof(t) }),
  'site.roof_area_differs': (t) =>
    says(t, 'site.roof_area_differs', {
      roof: roof(t),
      given: amount(t, ['given_m2'], 'm2'),
      sides: amount(t, ['sides_m2'], 'm2'),
    }),
  'site.roof_material_unsafe': (t) =>
    says(t, 'site.roof_material_unsafe', {
      roof: roof(t),
      hasMaterial: yes(t.has('material')),
      material: wordFor(t, 'material', t.text('material')) ?? t.text('material'),
    }),
  'site.runoff_assumed': (t) =>
    says(t, 'site.runoff_assumed', {
      hasRoof: yes(t.has('roof')),
      roof: t.text('roof'),
      runoffFraction: amount(t, ['runoffFraction', 'used', 'value'], 'fraction'),
    }),
  'site.roof_very_large': (t) =>
    says(t, 'site.roof_very_large', {
      ...{ hasRoof: yes(t.has('roof')), roof: t.text('roof') },
      size: amount(t, ['value'], t.text('unit') === 'm' ? 'm' : 'm2'),
    }),
  'site.gutters_assumed': (t) => says(t, 'site.gutters_assumed', { hasRoof: yes(t.has('roof')), roof: t.text('roof') }),
  'site.first_flush_assumed': (t) =>
    says(t, 'site.first_flush_assumed', { firstFlush: amount(t, ['firstFlush_mm', 'used', 'value'], 'mm') }),
  'site.diverter_blocked': (t) =>
    says(t, 'site.diverter_blocked', { hasRoof: yes(t.has('roof')), roof: t.text('roof') }),
  'site.tank_none': (t) => says(t, 'site.tank_none'),
  'site.tank_volume_unknown': (t) =>
    t.has('outlet_m')
      ? says(t, 'site.tank_volume_unknown', {
          tank: tank(t),
          overflow: t.numbers.given(t.number('overflow_m') ?? 0, 'm'),
          outlet: t.numbers.given(t.number('outlet_m') ?? 0, 'm'),
        })
      : says(t, 'site.tank_volume_unknown.otherwise', { tank: tank(t) }),
  'site.tank_volume_stated': (t) =>
    says(t, 'site.tank_volume_stated', { tank: tank(t), stated: amount(t, ['stated_L'], 'L') }),
  'site.tank_volume_differs': (t) =>
    t.has('part_L')
      ? says(t, 'site.tank_volume_differs', {
          tank: tank(t),
          stated: amount(t, ['stated_L'], 'L'),
          part: amount(t, ['part_L'], 'L'),
        })
      : says(t, 'site.tank_volume_differs.otherwise', {
          tank: tank(t),
          measured: amount(t, ['measured_L'], 'L'),
          stated: amount(t, ['stated_L'], 'L'),
        }),
  'site.tank_stands_level': (t) => says(t, 'site.tank_stands_level', { tanks: t.text('tanks') }),
  'site.tank_levels_differ': (t) =>
    says(t, 'site.tank_levels_differ', { level: amount(t, ['level_L'], 'L'), summed: amount(t, ['summed_L'], 'L') }),
  'site.tank_shares_unknown': (t) => says(t, 'site.tank_shares_unknown', { tanks: t.text('tanks') }),
  'site.tank_shares_differ': (t) => says(t, 'site.tank_shares_differ', { tanks: t.text('tanks') }),
  'site.tank_shares_sum': (t) => says(t, 'site.tank_shares_sum', { sum: amount(t, ['sum_fraction'], 'fraction') }),
  'site.tank_reserve': (t) => says(t, 'site.tank_reserve', { tanks: tanksNamed(t) }),
  'site.tank_no_roof': (t) => says(t, 'site.tank_no_roof', { tanks: tanksNamed(t) }),
  'site.roof_tank_unknown': (t) =>
    says(t, 'site.roof_tank_unknown', {
      hasRoof: yes(t.has('roof')),
      roof: t.text('roof'),
      hasTanks: yes(t.has('tanks')),
      tanks: t.text('tanks'),
    }),
  'site.settling_not_counted': (t) => says(t, 'site.settling_not_counted', { tank: tank(t) }),
  'site.ration_incomplete': (t) =>
    t.place.column === 'rationBelow_fraction'
      ? says(t, 'site.ration_incomplete')
      : says(t, 'site.ration_incomplete.otherwise'),
} satisfies Partial<Sentences<EngineProblemCode>>;

/** One sentence for every problem the engine finds. */
export const engineProblemSentences: Sentences<EngineProblemCode> = {
  ...rain,
  ...siteRainSentences,
  ...site,
  ...peopleSentences,
  ...stormSentences,
  ...drainageSentences,
  ...settlingSentences,
  ...loadsSentences,
  ...waysSentences,
  ...rolloutReadySentences,
  ...standSentences,
  ...kitSentences,
  ...headSentences,
  ...treatmentSentences,
  ...wearSentences,
  ...moneySentences,
  ...costSentences,
  ...waterTestsSentences,
  ...chlorineSentences,
  ...safetySentences,
};
