/** Units a name may end in, as written in names. Litres and millimetres for the water balance, SI for the rest. */
const units = [
  ...[
    'L',
    'litres',
    'usGallon',
    'imperialGallon',
    'mm',
    'cm',
    'm',
    'km',
    'in',
    'ft',
    'm2',
    'ft2',
    'm3',
    'kg',
    'lb',
    'g',
    'mg',
    't',
  ],
  ...['s', 'min', 'h', 'day', 'days', 'week', 'weeks', 'month', 'months', 'year', 'years'],
  ...[
    'person',
    'people',
    'site',
    'household',
    'count',
    'fraction',
    'deg',
    'degC',
    'NTU',
    'log10',
    'kPa',
    'Pa',
    'bar',
    'W',
    'kW',
    'kWh',
    'kJ',
    'MJ',
    'mPas',
    'Pas',
    'C',
    'K',
    'um',
    'mm2',
    'mm3',
    's2',
    'ratio',
    'N',
    'kN',
    'kNm',
    'psf',
    'mile',
    'nauticalMile',
    'kmh',
    'kn',
    'mph',
    'mL',
    '100mL',
    'mmHg',
    'log',
    'nm',
  ],
  ...['log10', 'organisms', 'DALY', 'case', 'pH'],
];
const oneUnit = `(?:${units.join('|')})`;
const unitAtEnd = new RegExp(`(?:^|_)${oneUnit}(?:_per_${oneUnit})*(?:_range)?$`);

/**
 * Words a name of a number may end in without a unit, each with its reason. The last word of `rowsUsed` is `used`; words
 * are compared in lower case.
 */
export const wordsWithoutUnit: Readonly<Record<string, string>> = {
  fraction: 'a share of a whole, 0 to 1',
  row: 'a place in a file, counted from 1',
  rows: 'a count of rows',
  governing: 'a place in a list',
  seed: 'a whole number that starts the dice',
  draws: 'a count',
  passes: 'a count',
  length: 'a count of entries',
  positions: 'places in a list',
  position: 'a place in a list',
  sites: 'a count',
  day: 'a square on the calendar: its type is DayIndex, or it is the day of a month',
  days: 'a count of days, its unit is the word itself',
  month: 'a month, 1 to 12',
  year: 'a year of the calendar',
  years: 'a count of years, its unit is the word itself',
  order: 'a place among others: the least comes first',
  needed: 'a count, the unit stands before it: goodYearsNeeded',
  label: 'the calendar year a water year ends in',
  from: 'the first of a stretch of days, an offset or a DayIndex',
  to: 'the day after a stretch of days, an offset; or a DayIndex',
  state: 'a code of how a day is known',
  dry: '1 on a dry day',
  covered: '1 on a day a second source covers',
  rationed: '1 on a day on which the tank was below its mark',
  amount: 'money, whose unit is the currency beside it',
  factor: 'a plain multiplier',
  ratio: 'a plain quotient of two of a kind',
  shape: 'a plain number: the form of a distribution',
  futures: 'a count',
  rarity: 'a plain number: one chance by another',
  tier: 'a step of a scale, 0 to 3',
  score: 'a plain number: risks of ten questions',
  spi: 'a plain number: standard deviations from the mean',
};

/** Numbers that stand for a code, not for a quantity, and types whose fields take the unit of the field that holds them. */
export const namesWithoutUnit: Readonly<Record<string, string>> = {
  measured: 'a code of how a day is known',
  stopFields: 'a count of fields',
  tripFields: 'a count of fields',
  delaySteps: 'a count',
  out: 'a code: a job that is in no trip',
  held: 'a code: a job that may not be moved',
  unknownDay: 'a code of how a day is known',
  filledDay: 'a code of how a day is known',
  neighbourDay: 'a code of how a day is known',
  'Range.low': 'the unit stands in the name of the field that holds the range',
  'Range.high': 'the unit stands in the name of the field that holds the range',
  'Spread.p10': 'the unit stands in the name of the field that holds the spread',
  'Spread.p50': 'the same',
  'CostFacts.low': 'money, in the currency beside it, as the amount',
  'CostFacts.high': 'money, in the currency beside it, as the amount',
  'Doubtful.low': 'the same',
  'Doubtful.likely': 'the same',
  'Doubtful.high': 'the same',
  'Spread.p90': 'the same',
  'RoofCovering.low': 'a runoff fraction: the type is the range of one quantity',
  'RoofCovering.used': 'a runoff fraction: the type is the range of one quantity',
  'RoofCovering.high': 'a runoff fraction: the type is the range of one quantity',
  'PipeFacts.otherLoss_k': 'a plain number: loss coefficients of a pipe, added up',
  'WorkingLine.value': 'the unit stands beside it',
  'WorkingInput.value': 'the unit stands beside it',
  'Problem.facts': 'facts carry their unit in their own key',
  'DesignStorm.intensity_range': 'mm/h, as the intensity it stands beside',
  'StormCoefficients.lambda': 'named as in the formula it belongs to, for mm/h and hours',
  'StormCoefficients.kappa': 'a power: a plain number',
  'StormCoefficients.eta': 'a power: a plain number',
  'Travel.nodes': 'a count',
  'LegTable.cost': 'money, in the currency of the programme',
  'LegTable.limitOf': 'places in a list',
  'LegTable.areaOf': 'places in a list, counted from 1',
  'CurrencyRate.perUnit': 'money of the programme that one unit of another currency bought',
};

/**
 * Types whose numbers are places in lists, codes, times or weights of the rollout, or arrays of its hot loops: the comment of each field says
 * what it is in, as `programme/rollout/problem.ts` and docs/methods/rollout.md define it.
 */
const typesOfTheRollout = new Set([
  ...['Job', 'Crew', 'Store', 'Arrival', 'Haul', 'RolloutPlan', 'PlannedTrip', 'Drawn', 'TimedStop', 'TimedTrip'],
  ...['TimedHaul', 'Outcome', 'WaitingBound', 'WaitingBounds', 'BoundsAsked', 'StockCurve', 'SiteFinish', 'TripLeg'],
  ...['StockMove', 'StretchTimes', 'ServiceAsked', 'VisitedFirst', 'WhyThen', 'TripRate'],
  ...['Retiming', 'CrewTrips', 'StockState', 'WorkDays', 'ReadyLegs', 'ReadyCrew', 'TripTimes', 'HaulTimes'],
  ...['RecordYears', 'Drawing'],
  ...['BrokenFound', 'LegFound', 'ReadyWeather', 'CrewNumbers', 'OneCrew', 'CrewLegs', 'SearchTrip', 'CrewFacts'],
  ...['JobLeast', 'AssignedJob', 'AssignmentGiven', 'AssignmentBound', 'BoundJob', 'Ranks', 'Ranked', 'DaysAsked'],
  ...[
    'LinearProgramme',
    'LinearAnswer',
    'SpreadMoments',
    'FinishAsked',
    'SiteWork',
    'MovedSite',
    'ChangedTrip',
    'HaulGone',
    'HaulRun',
    'PlanChanges',
    'KeptPlan',
    'ToldOtherwise',
  ],
  ...['LegPairs', 'TravelPair', 'TripPlace', 'NewBreak', 'BreaksBefore', 'Retimed', 'PackedStore', 'PackedHaul'],
  ...['PackedRollout', 'PackedCrew', 'PackedJobs', 'PackedTravel', 'PackedTable', 'PackedLimit', 'TightTrip'],
  ...['CrewKind', 'LegSteps', 'TripPricesBound'],
]);

/**
 * Does this name carry its unit last, or is it a word that needs none?
 *
 * `owner` is the interface of a field, and null for a constant.
 */
export function carriesUnit(name: string, owner: string | null): boolean {
  if (unitAtEnd.test(name)) return true;
  if (owner !== null && typesOfTheRollout.has(owner)) return true;
  if ((owner === null ? name : `${owner}.${name}`) in namesWithoutUnit) return true;
  const words = name.replace(/_range$/, '').split(/_|(?<=[a-z0-9])(?=[A-Z])/);
  return (words.at(-1) ?? '').toLowerCase() in wordsWithoutUnit;
}
