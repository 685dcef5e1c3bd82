import { type DesignSettings, dayOrders, gapFillings, type Target, wetDayAmountKinds } from '@eavewell/engine';
import { above, choice, fraction, from, quantity, text, whole } from './columns.ts';
import type { Column } from './table.ts';

type ColumnsFor<T> = { readonly [K in keyof T]: Column<NonNullable<T[K]>> };

/** The fields of `target`. */
export const targetColumns: ColumnsFor<Target> = {
  daysMet_fraction: fraction('Judged litres are wholly met on at least this share of days.', {
    hard: above(0, 1),
    usual: from(0.8, 1),
  }),
  longestDryRun_days: whole('day', 'No dry run is longer than this …', { hard: from(0, 366), usual: from(0, 30) }),
  goodYears_fraction: fraction('… in at least this share of years.', { hard: above(0, 1), usual: from(0.5, 1) }),
};

/** The fields of settings.json, but for `target`. */
export const settingsColumns: ColumnsFor<Omit<DesignSettings, 'target'>> = {
  programme: text('What the programme is called.'),
  litres_per_person_per_day: quantity('L/person/day', 'Litres for drinking and cooking where no demand is given.', {
    hard: above(0, 500),
    usual: from(2.5, 60),
  }),
  firstFlush_mm: quantity('mm', 'First flush of a roof without a diverter of its own.', {
    hard: from(0, 10),
    usual: from(0, 3),
  }),
  range_fraction: fraction('How much of the doubt a range holds.', { hard: from(0.5, 0.99) }),
  draws: whole('draw', 'How often the record is drawn again.', { hard: from(100, 100000), usual: from(500, 10000) }),
  seed: whole('number', 'The seed of all that is drawn.', { hard: from(0, 2147483647) }),
  missingDays_fraction: fraction('A water year with a larger share of its days unknown is not judged.', {
    usual: from(0, 0.2),
  }),
  leastYears: whole('year', 'With fewer judged years nothing holds.', { hard: from(1, 200), usual: from(10, 60) }),
  waterYearStartMonth: whole(
    'month',
    'The month the water year starts in; null: the one that least splits dry spells.',
    {
      hard: from(1, 12),
    },
  ),
  designAfterHandOver_years: whole(
    'year',
    'A site that names no design year is designed for the people of so many years after hand-over.',
    { hard: from(0, 100), usual: from(0, 20) },
  ),
  growthFraction_per_year: fraction('Growth of people where a site states none, as a share a year; null: none.', {
    hard: from(-0.5, 0.5),
    usual: from(-0.05, 0.1),
  }),
  people_per_household: quantity(
    'person',
    'People of a household, for sites where only households were counted; null: their people are not known.',
    { hard: above(0, 50), usual: from(2, 12) },
  ),
  gapFilling: choice(
    gapFillings,
    'What gaps in the rain are filled from first: other years, or neighbouring gauges by one of two methods.',
  ),
  dayOrder: choice(
    dayOrders,
    'The order of each day: people draw before the rain comes in (drawFirst, the cautious one), rain spills before they draw (yas), or they draw before it spills (ybs).',
  ),
  madeYears: whole('year', 'Years of rain made up where a gauge has normals and no record that can be judged.', {
    hard: from(10, 1000),
    usual: from(30, 300),
  }),
  wetDayAmounts: choice(
    wetDayAmountKinds,
    'How the rain of wet days is spread where months are fitted to a record; from normals it is always gamma.',
  ),
  gaugeReach_km: quantity('km', 'How far from a site without a gaugeId a gauge may be.', {
    hard: above(0, 500),
    usual: from(5, 100),
  }),
};
