import type { EngineProblemCode } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';
import { peopleSentences } from './peopleProblems.ts';
import { place } from './place.ts';
import { amount, type Sentences, say } from './sentences.ts';
import { siteRainSentences } from './siteRainProblems.ts';

function named(t: Told, name: string, otherwise: string): string {
  return t.has(name) ? `${t.text(name)}` : otherwise;
}

const days = (t: Told, otherwise = 'Some days') => amount(t, ['count', 'days'], 'day', otherwise);
/** "1 day stands", "3 days stand". */
const daysDo = (t: Told, one: string, many: string) =>
  `${days(t)} ${(t.number('count') ?? t.number('days')) === 1 ? one : many}`;
/** How many gaps, and the longest of them. */
function gapsOf(t: Told): string {
  const gaps = t.number('gaps');
  if (gaps === null) return '';
  const longest = t.has('longest_days')
    ? ` ${amount(t, ['longest_days'], 'day', '')} from ${numbers.date(t.text('longestFrom'))}`
    : '';
  return gaps === 1
    ? `, in one gap:${longest}`
    : `, in ${numbers.quantity(gaps, 'number')} gaps; the longest${longest}`;
}

/** The gauges near by, by name where they are few. */
function nearBy(t: Told): string {
  const others = t.list('others');
  return others.length === 0 || others.length > 3 ? 'the gauges near by' : others.join(', ');
}

const roof = (t: Told) => named(t, 'roof', 'The roof');
const tank = (t: Told) => named(t, 'tank', 'The tank');
const tanksNamed = (t: Told) => `tank${t.list('tanks').length > 1 ? 's' : ''} ${named(t, 'tanks', 'named')}`;
/** Which years, where it is not all that could be told. */
const inYears = (t: Told) =>
  t.has('years') && t.list('years').length < (t.number('telling') ?? 0) ? `, in ${t.text('years')}` : '';
const firstAt = (t: Told) => (t.place.day ? `, the first on ${numbers.date(t.place.day)}` : '');

const rain = {
  'rain.none': () => say('The gauge has no day of rain that can be used.', 'Add its readings to its rain file.'),
  'rain.too_short': (t) =>
    (t.number('wholeYears') ?? 0) > 0
      ? say(
          `None of its ${amount(t, ['wholeYears'], 'year', 'years')} can be judged: too many days are missing.`,
          'Look for the missing readings.',
        )
      : say(
          `The record is too short: ${days(t, 'its days')} hold no whole water year.`,
          'Add earlier or later readings; two whole calendar years always hold one.',
        ),
  'rain.day_twice_same': (t) =>
    say(`${daysDo(t, 'stands', 'stand')} twice with the same rain${firstAt(t)}.`, 'Each counts once.'),
  'rain.day_twice_differs': (t) =>
    say(
      `${daysDo(t, 'stands', 'stand')} twice with different rain${firstAt(t)}.`,
      'Keep the right one; it counts as not read.',
    ),
  'rain.out_of_order': (t) =>
    say(
      `${daysDo(t, 'stands', 'stand')} out of order${firstAt(t)}.`,
      'They were sorted. Check that no date is mistyped.',
    ),
  'rain.day_far': (t) =>
    say(
      `${daysDo(t, 'lies', 'lie')} more than five years from every other${firstAt(t)}, and ${t.number('count') === 1 ? 'is' : 'are'} not used.`,
      'Correct the year if it is mistyped.',
    ),
  'rain.negative': (t) =>
    say(
      `Rain below zero${t.has('value') ? ` (${t.text('value')} mm)` : ''}; the day counts as not read.`,
      'Write the rain, or leave the cell empty where it was not read.',
    ),
  'rain.absurd': (t) =>
    say(
      `More rain than ever fell in a day${t.has('value') ? ` (${t.text('value')} mm)` : ''}; it counts as not read.`,
      'Check the unit (mm, not tenths) and whether several days were read at once.',
    ),
  'rain.large': (t) =>
    say(`A great deal of rain in a day${t.has('value') ? `: ${t.text('value')} mm` : ''}.`, 'It was used. Check it.'),
  'rain.in_inches': (t) =>
    say(
      `The rain looks like inches, not mm: ${amount(t, ['value'], 'mm', 'very little')} a year, which would be ${amount(t, ['likely_mm'], 'mm', 'far more')}${inYears(t)}.`,
      'Write it in mm (1 inch is 25.4 mm). If it is mm, round it to 0.1 mm; until then its sites have no verdict.',
    ),
  'rain.in_tenths': (t) =>
    say(
      `The rain looks like tenths of mm: ${amount(t, ['value'], 'mm', 'very much')} a year, which would be ${amount(t, ['likely_mm'], 'mm', 'far less')}${inYears(t)}.`,
      'Write it in mm, one decimal. A tank would look ten times too good; until then its sites have no verdict.',
    ),
  'rain.same_for_days': (t) =>
    say(
      `${amount(t, ['days'], 'day', 'Many days')} in a row have the same rain, ${amount(t, ['value'], 'mm', 'not 0')}${firstAt(t)}${(t.number('runs') ?? 1) > 1 ? `; ${t.text('runs')} such runs in all` : ''}.`,
      'It was used. Compare with the sheets: one total may have been shared out over the days.',
    ),
  'rain.month_twice': (t) =>
    say(
      `The month ${named(t, 'value', 'named')} is day by day the same as ${named(t, 'other', 'another')}${(t.number('count') ?? 1) > 1 ? `; ${t.text('count')} such copies in all` : ''}.`,
      'Both were used. Compare with the sheets, and empty the one that was copied.',
    ),
  'rain.days_missing': (t) =>
    say(
      `${days(t)} without a reading${gapsOf(t)}.`,
      'Look for the missing sheets; until then the gaps are filled, and marked.',
    ),
  'rain.year_not_judged': (t) =>
    say(
      `Too many days are missing to judge ${t.list('years').length > 1 ? 'the years' : 'the year'} ${named(t, 'years', 'named')}.`,
      'They are left out of every count. Look for the missing readings.',
    ),
  'rain.days_filled': (t) =>
    say(`${daysDo(t, 'was', 'were')} filled from the same days of other years, and marked.`, 'Nothing to do.'),
  'rain.days_filled_neighbours': (t) =>
    say(`${daysDo(t, 'was', 'were')} filled from gauges near by, and marked.`, 'Nothing to do.'),
  'rain.no_neighbour': (t) =>
    say(
      `${daysDo(t, 'could', 'could')} not be filled from gauges near by: none within 100 km, with a position and three years in common, measured them.`,
      'Other years filled them where they could. Add positions to gauges.csv, or another gauge.',
    ),
  'rain.gap_not_filled': (t) =>
    say(
      `${days(t)} could not be filled: no other year has those days.`,
      'The year is not judged. Look for the missing readings.',
    ),
  'rain.shifted': (t) =>
    say(
      `The gauge is read ${t.has('readingTime') ? `at ${t.text('readingTime')}` : 'in the morning'}, so its rain belongs to the day before.`,
      'Every reading was moved back one day. Correct readingTime if the file is already moved.',
    ),
  'rain.part_years_cut': (t) =>
    say(`${daysDo(t, 'at the ends makes', 'at the ends make')} no whole water year; cut off.`, 'Nothing to do.'),
  'rain.double_mass_bends': (t) =>
    say(
      `Beside ${nearBy(t)} it measures ${amount(t, ['slopeRatio_fraction'], 'fraction', 'a different share')} of what it did before${t.place.day ? ` ${numbers.date(t.place.day)}` : ''}.`,
      `Ask whether the gauge, its place or its reader changed. A change under ${amount(t, ['limit_fraction'], 'fraction', 'a fifth')} would not be named.`,
    ),
  'rain.few_years': (t) =>
    say(
      `Only ${amount(t, ['judgedYears', 'years', 'count'], 'year', 'a few years')} of rain can be judged.`,
      'So short a record never holds: it is tight at best. Look for a longer one.',
    ),
} satisfies Partial<Sentences<EngineProblemCode>>;

const site = {
  'site.facts_in_doubt': (t) => {
    const { siteId: _, ...at } = t.place;
    const count = t.number('count') ?? 1;
    const rows = count === 1 ? 'A row about this site' : `${numbers.quantity(count, 'number')} rows about this site`;
    const where = at.file === undefined ? '' : `${count === 1 ? '' : ', the first'}: ${place(at)}`;
    if (t.has('fault')) {
      // Sentences, whose own values were cut before: as they stand.
      const [fault, todo] = [t.list('fault').join(' '), t.list('todo').join(' ')];
      const until = todo.includes('verdict') ? '' : ' Until then it has no verdict.';
      return say(`${rows} could not be used${where}: ${fault}`, `${todo}${until}`);
    }
    return say(`${rows} could not be used${where}.`, 'Mend what "eavewell check" names; until then it has no verdict.');
  },
  'site.figure_unusable': (t) =>
    say(
      `The figure ${t.text('value')}${t.text('of') === '' ? '' : ` of ${t.text('of')}`} is no measure of anything real.`,
      'Measure again, or leave it empty where it is not known.',
    ),
  'site.gauge_unknown': (t) =>
    say(
      t.text('gaugeId').startsWith('(') ? 'No gauge is named.' : `There is no gauge ${t.text('gaugeId')}.`,
      'Name one of the gauges of gauges.csv for the site in sites.csv, or fill in positions of site and gauges.',
    ),
  'site.roof_none': () => say('No roof is listed.', 'Add the roof to roofs.csv.'),
  'site.roof_area_unknown': (t) =>
    say(
      `${roof(t)} has neither length and width nor an area.`,
      'Measure it on the ground, eaves to eaves, and fill it in.',
    ),
  'site.roof_area_differs': (t) =>
    say(
      `${roof(t)} has an area of ${amount(t, ['given_m2'], 'm2', 'one size')}, but its sides make ${amount(t, ['sides_m2'], 'm2', 'another')}.`,
      'The area is used. Measure again, and leave the wrong one empty.',
    ),
  'site.roof_material_unsafe': (t) =>
    say(
      `${roof(t)}${t.has('material') ? ` (${t.text('material')})` : ''} may not be fit to drink from.`,
      'Ask the health authority before anyone drinks from it.',
    ),
  'site.runoff_assumed': (t) =>
    say(
      `What runs off ${t.has('roof') ? `roof ${t.text('roof')}` : 'the roof'} is assumed: ${amount(t, ['runoffFraction', 'used', 'value'], 'fraction', 'the usual share')}.`,
      'Fill in material or runoffFraction where it is known.',
    ),
  'site.roof_very_large': (t) =>
    say(
      `${t.has('roof') ? `Roof ${t.text('roof')}` : 'A roof'} is far larger than roofs mostly are, ${amount(t, ['value'], t.text('unit') === 'm' ? 'm' : 'm2', 'by its survey')}, and nothing else says so.`,
      'Where it is so, fill in both sides and roofPlanArea_m2: once they agree it is believed. Until then the site is tight at best.',
    ),
  'site.gutters_assumed': (t) =>
    say(
      `How much of ${t.has('roof') ? `roof ${t.text('roof')}` : 'the roof'} has gutters is not said; all of it was taken.`,
      'Fill in gutteredFraction: with fewer gutters there is less water. Until then the site is tight at best.',
    ),
  'site.first_flush_assumed': (t) =>
    say(
      `The first flush is assumed: ${amount(t, ['firstFlush_mm', 'used', 'value'], 'mm', 'the usual depth')}.`,
      'Fill in diverters.csv where it is known.',
    ),
  'site.diverter_blocked': (t) =>
    say(
      `The drain hole of the diverter${t.has('roof') ? ` of roof ${t.text('roof')}` : ''} is blocked.`,
      'Clear it: until then dirt of every rain but the first goes into the tank.',
    ),
  'site.tank_none': () => say('No tank is listed.', 'Add the tank to tanks.csv.'),
  'site.tank_volume_unknown': (t) =>
    t.has('outlet_m')
      ? say(
          `The overflow of tank ${tank(t)} (${numbers.given(t.number('overflow_m') ?? 0, 'm')}) is not above its outlet (${numbers.given(t.number('outlet_m') ?? 0, 'm')}).`,
          'Measure both heights from the floor of the tank.',
        )
      : say(
          `The volume of tank ${tank(t)} is not known.`,
          'Fill in diameter, outlet and overflow height; or nominal_L; or a part.',
        ),
  'site.tank_volume_stated': (t) =>
    say(
      `The stated volume of tank ${tank(t)} is used, ${amount(t, ['stated_L'], 'L', 'as it is')}; not all of it may be drawn.`,
      'Measure diameter, outlet height and overflow height.',
    ),
  'site.tank_volume_differs': (t) =>
    t.has('part_L')
      ? say(
          `Tank ${tank(t)} is stated as ${amount(t, ['stated_L'], 'L', 'one volume')}, but its part has ${amount(t, ['part_L'], 'L', 'another')}.`,
          'The stated volume is used. Check nominal_L and partId.',
        )
      : say(
          `Tank ${tank(t)} measures ${amount(t, ['measured_L'], 'L', 'one volume')}, but ${amount(t, ['stated_L'], 'L', 'another')} is stated.`,
          'The measured volume is used. Check heights and diameter.',
        ),
  'site.tank_levels_differ': (t) =>
    say(
      `Joined tanks share one level: between the highest outlet and the lowest overflow they hold ${amount(t, ['level_L'], 'L', 'less')}, not ${amount(t, ['summed_L'], 'L', 'what each holds alone')}.`,
      'The smaller volume is used. Check the heights; raise the low overflow or lower the high outlet.',
    ),
  'site.tank_shares_unknown': (t) =>
    say(
      `The tanks of this site are not all joined, and how many of the people draw from ${named(t, 'tanks', 'each')} is not said.`,
      'Fill in peopleFraction in tanks.csv (0.4 for 40 %), or joinedTo where tanks are joined at the foot.',
    ),
  'site.tank_shares_differ': (t) =>
    say(
      `The joined tanks ${named(t, 'tanks', 'of this site')} have different shares of the people, though they are one water.`,
      'Give all of them the same peopleFraction, or give it once.',
    ),
  'site.tank_shares_sum': (t) =>
    say(
      `The shares of the people at the tanks sum to ${amount(t, ['sum_fraction'], 'fraction', 'more or less than all')}, not to 100 %.`,
      'Correct peopleFraction in tanks.csv. For a tank nobody draws from it is 0.',
    ),
  'site.tank_reserve': (t) => say(`Nobody draws from ${tanksNamed(t)}, a reserve; it is not judged.`, 'Nothing to do.'),
  'site.tank_no_roof': (t) =>
    say(
      `No roof leads to ${tanksNamed(t)}, so no rain fills it.`,
      'Fill in tankId of its roof in roofs.csv, or joinedTo where another tank fills it.',
    ),
  'site.roof_tank_unknown': (t) =>
    say(
      `To which tank the gutter of ${t.has('roof') ? `roof ${t.text('roof')}` : 'the roof'} leads is not said.`,
      `Fill in tankId in roofs.csv${t.has('tanks') ? `: ${t.text('tanks')}` : ''}.`,
    ),
  'site.settling_not_counted': (t) =>
    say(
      `Tank ${tank(t)} is for settling, and its heights are not known; none of its water was counted.`,
      'Measure diameter, draw-off (outletHeight_m) and overflow: what lies between them counts.',
    ),
  'site.ration_incomplete': (t) =>
    t.place.column === 'rationBelow_fraction'
      ? say(
          'What is rationed is said, but not below which mark in the tank.',
          'Fill in rationBelow_fraction in sites.csv, or empty the shares.',
        )
      : say(
          'A mark for rationing is given, but not what is still given below it.',
          'Fill in rationedJudged_fraction or rationedOther_fraction in sites.csv (0 for nothing), or empty the mark.',
        ),
} satisfies Partial<Sentences<EngineProblemCode>>;

/** One sentence for every problem the engine finds. */
export const engineProblemSentences: Sentences<EngineProblemCode> = {
  ...rain,
  ...siteRainSentences,
  ...site,
  ...peopleSentences,
};
