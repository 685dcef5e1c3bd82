import {
  type DesignSettings,
  dayOrders,
  gapFillings,
  judgings,
  type Target,
  wetDayAmountKinds,
  windExposures,
} from '@eavewell/engine';
import { above, choice, currency, date, fraction, from, id, quantity, text, whole, yesNo } from './columns.ts';
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

const installDays = { hard: above(0, 1000), usual: from(0.25, 30) };

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
  judgeDrainage: choice(judgings, 'Where gutters, downpipes and overflows are judged.'),
  judgeSettling: choice(judgings, 'Where settling tanks are judged.'),
  judgeHead: choice(judgings, 'Where the pipes to the taps are judged.'),
  judgeStand: choice(judgings, 'Where stands and their ground are judged.'),
  judgeTreatment: choice(judgings, 'Where treatment units are judged.'),
  judgeSafety: choice(judgings, 'Where it is judged whether the water is fit to drink.'),
  stormReturnPeriod_years: whole(
    'year',
    'Gutters and overflows are to carry the storm that comes once in so many years.',
    {
      hard: from(2, 1000),
      usual: from(2, 100),
    },
  ),
  stormMargin_fraction: fraction("What a storm's flow may be more by, where no range of it is stated.", {
    usual: from(0, 0.5),
  }),
  fiveMinutesOfDay_fraction: fraction(
    "Share of the wettest day's rain that falls in its wettest five minutes; null: no storm is made from daily rain.",
    { hard: above(0, 1), usual: from(0.02, 0.3) },
  ),
  fiveMinutesOfDaySource: text('Who says so, and where.'),
  waterTemperature_C: quantity('C', 'Temperature of the water.', { hard: from(0, 40), usual: from(5, 35) }),
  settlingGrain_um: quantity('um', 'The grain that is to settle.', { hard: above(0, 2000), usual: from(5, 200) }),
  settlingGrainDensity_kg_per_m3: quantity('kg/m3', 'How heavy it is.', {
    hard: from(1001, 8000),
    usual: from(1200, 2700),
  }),
  settledTarget_fraction: fraction('The share of it that is to settle.', { usual: from(0.3, 0.95) }),
  roofSolids_g_per_m2_per_year: quantity('g/m2/year', 'Solids a roof sheds in a year; null: not known.', {
    hard: from(0, 10000),
    usual: from(5, 500),
  }),
  pumping_h_per_day: quantity('h/day', 'Hours of a day in which people pump.', {
    hard: above(0, 24),
    usual: from(2, 14),
  }),
  tapFlow_L_per_min: quantity('L/min', 'Flow wanted of one open tap.', { hard: above(0, 200), usual: from(3, 20) }),
  residualHead_m: quantity('m', 'Head wanted at an open tap.', { hard: from(0, 50), usual: from(0.3, 5) }),
  headMargin_m: quantity('m', 'What it may be less by.', { hard: from(0, 20), usual: from(0, 2) }),
  unitHead_m: quantity('m', 'Head the treatment unit takes at the flow of its taps; null: not known.', {
    hard: from(0, 100),
    usual: from(0.2, 20),
  }),
  windSpeed_m_per_s: quantity('m/s', 'The wind stands are held against, in metres a second; null: not known.', {
    hard: from(0, 1000),
    usual: from(15, 80),
  }),
  windExposure: choice(
    windExposures,
    'How open a place lies to the wind: among houses and trees, in open country, or by open water.',
  ),
  standMargin_fraction: fraction('What loads and wind on a stand may be more by.', { usual: from(0, 0.5) }),
  peakShare_fraction: fraction(
    "Share of a day's litres fetched in the busiest hour of the morning, and of the evening.",
    {
      hard: from(0, 0.5),
      usual: from(0.1, 0.45),
    },
  ),
  waitLimit_min: quantity('min', 'The last in line is to wait no longer than this.', {
    hard: above(0, 1440),
    usual: from(5, 60),
  }),
  treatmentMargin_fraction: fraction('What may be asked of a treatment unit beyond the day that asks for most.', {
    usual: from(0, 0.5),
  }),
  roofTurbidity_NTU: quantity('NTU', 'Turbidity of roof water in the tank, as is usual; null: not known.', {
    hard: from(0, 10000),
    usual: from(0.2, 20),
  }),
  roofTurbidityHigh_NTU: quantity('NTU', 'The same at the worse end.', { hard: from(0, 10000), usual: from(0.2, 100) }),
  settledTurbidity_fraction: fraction('Share of the turbidity that settles before the unit.', { usual: from(0, 0.8) }),
  foulingSpread_fraction: fraction(
    "How far the fall of a site's flow may lie from its rating, as the spread of its logarithm.",
    { hard: above(0, 3), usual: from(0.2, 1) },
  ),
  flowReadingError_fraction: fraction('How far a reading of flow may be out.', {
    hard: above(0, 1),
    usual: from(0.03, 0.3),
  }),
  cartridgeFailures_per_year: quantity('1/year', 'How often a set fails by itself; null: not reckoned with.', {
    hard: from(0, 20),
    usual: from(0, 0.5),
  }),
  futures: whole('number', 'How many futures of a set of cartridges are run.', {
    hard: from(50, 10000),
    usual: from(100, 2000),
  }),
  healthTarget_DALY_per_person_per_year: quantity(
    'DALY/person/year',
    'Years of healthy life lost to drinking water that are accepted.',
    {
      hard: above(0, 1),
      usual: from(1e-7, 1e-3),
    },
  ),
  litresDrunk_L_per_person_per_day: quantity('L/person/day', 'Water a person drinks unboiled.', {
    hard: above(0, 20),
    usual: from(0.2, 3),
  }),
  litresDrunkHigh_L_per_person_per_day: quantity('L/person/day', 'The same at the worse end.', {
    hard: above(0, 20),
    usual: from(0.5, 5),
  }),
  skipping_fraction: fraction('Share of the people who drink untreated water; null: not known.', {
    usual: from(0, 0.5),
  }),
  daysOff_per_year: quantity('day/year', 'Days of a year on which nobody’s water is treated; null: not known.', {
    hard: from(0, 366),
    usual: from(0, 60),
  }),
  recontamination_fraction: fraction(
    "Share of the raw water's germs that come back into a container; null: not reckoned with.",
    { usual: from(0, 0.01) },
  ),
  leak_fraction: fraction('Share of the flow of one leaking cartridge that goes through unfiltered.', {
    usual: from(0.0001, 0.2),
  }),
  sampleAge_days: whole('day', 'The longest time since a clean sample that a verdict of fit may rest on.', {
    hard: from(1, 3660),
    usual: from(90, 3660),
  }),
  susceptibleToRotavirus_fraction: fraction('Share of the people who can fall ill of rotavirus.', {
    usual: from(0.02, 0.3),
  }),
  currency: currency("The programme's currency; null: that of the latest price."),
  priceChange_fraction_per_year: fraction('What prices change by in a year after their own day; null: they stand.', {
    hard: from(-0.9, 10),
    usual: from(-0.05, 0.3),
  }),
  oldRate_days: whole('day', 'A rate older than this is told of.', { hard: from(1, 36500), usual: from(30, 800) }),
  interest_fraction_per_year: fraction('What money costs in a year; null: nothing is reckoned for it.', {
    hard: from(0, 2),
    usual: from(0, 0.2),
  }),
  inflation_fraction_per_year: fraction('What prices rise by in a year, where interest is told with it; null: none.', {
    hard: from(-0.5, 10),
    usual: from(0, 0.2),
  }),
  costYears: whole('year', 'Over how many years costs are told.', { hard: from(1, 100), usual: from(5, 40) }),
  cutWaste_mm: quantity('mm', 'What one cut takes of a gutter or a pipe.', { hard: from(0, 100), usual: from(0, 10) }),
  workingService_fraction: fraction('Share of the time for which a system works, most likely; null: not known.', {
    hard: above(0, 1),
  }),
  workingServiceLow_fraction: fraction('How little that may be.', { hard: above(0, 1) }),
  workingServiceHigh_fraction: fraction('How much it may be.', { hard: above(0, 1) }),
  boughtWater_L_per_person_per_day: quantity('L/person/day', 'Water people buy today.', {
    hard: from(0, 500),
    usual: from(0, 20),
  }),
  boughtWater_amount_per_L: quantity('currency/L', 'What a litre of it costs.', { hard: from(0, 1e9) }),
  boiledWater_L_per_person_per_day: quantity('L/person/day', 'Water people boil today.', {
    hard: from(0, 500),
    usual: from(0, 5.5),
  }),
  fuel_amount_per_kg: quantity('currency/kg', 'What a kilogram of their fuel costs.', { hard: from(0, 1e9) }),
  fuelHeat_MJ_per_kg: quantity('MJ/kg', 'The heat of a kilogram of it.', { hard: above(0, 150), usual: from(10, 55) }),
  stoveEfficiency_fraction: fraction('Share of that heat that goes into the water.', {
    hard: above(0, 1),
    usual: from(0.05, 0.6),
  }),
  pipedScheme_amount_per_person: quantity('currency/person', 'What a piped scheme would cost to build, a person.', {
    hard: from(0, 1e12),
  }),
  pipedScheme_years: quantity('year', 'For how long it would serve.', { hard: above(0, 200), usual: from(5, 60) }),
  pipedScheme_amount_per_person_per_year: quantity('currency/person/year', 'What it would cost in a year, a person.', {
    hard: from(0, 1e12),
  }),
  rolloutStart: date(
    'The first day of the plan of the rollout; null: the day it is asked on.',
    '1950-01-01',
    '2150-12-31',
  ),
  rolloutHorizon_days: whole('day', 'How far the rollout looks ahead.', {
    hard: from(14, 7300),
    usual: from(90, 1500),
  }),
  installLow_days: quantity('day', 'Days of work for a crew at a site that states none, at the least.', installDays),
  installLikely_days: quantity('day', 'The same, most likely.', installDays),
  installHigh_days: quantity('day', 'The same, at the most.', installDays),
  learning_fraction: fraction(
    "What a crew's work takes each time the number of its jobs doubles, as a share of before; 1: nobody learns.",
    { hard: from(0.5, 1), usual: from(0.8, 1) },
  ),
  riverEnds_h: quantity('h', "Boats are ashore so many hours after a crew's day begins, at the latest.", {
    hard: above(0, 24),
    usual: from(4, 12),
  }),
  fuelPrice_per_L: quantity('currency/L', 'What a litre of fuel for boats and trucks costs; null: not known.', {
    hard: from(0, 1e9),
  }),
  porterLoad_kg: quantity('kg', 'What a porter carries. Local rules on lifting come first.', {
    hard: above(0, 100),
    usual: from(10, 30),
  }),
  changeOver_h: quantity('h', 'What changing from one carrier to another takes, where a place says nothing.', {
    hard: from(0, 240),
    usual: from(0, 6),
  }),
  openChance_fraction: fraction('A week in which a river was open in fewer years than this counts as closed.', {
    usual: from(0.5, 1),
  }),
  closedRain_mm: quantity('mm', 'With more rain on a day nobody travels; null: weather is not drawn from rain.', {
    hard: above(0, 1000),
    usual: from(10, 150),
  }),
  mustHold: yesNo('Is a site that is not shown to hold left out of the plan?'),
  mainStore: id('The place where what the table of parts counts lies; null: the only store there is.'),
};
