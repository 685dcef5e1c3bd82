import type { Scenario, SpiClass } from '@eavewell/engine';
import { many, sites } from './counted.ts';
import { numbers } from './numbers.ts';

/** What is said of the verdicts if it had rained otherwise. */
export const scenario = {
  heading: 'If it had rained otherwise',
  standsBelow: 'A question was asked of the rain; its answer stands under "If it had rained otherwise".',
  madeWhole: (gauges: readonly string[]) =>
    `Made-up rain has no last years: at ${gauges.length > 3 ? `${numbers.quantity(gauges.length, 'number')} gauges` : gauges.join(', ')} all its years are used.`,
  asked: ({ wetDays_fraction, wetDayRain_fraction, lastYears }: Scenario) => {
    const asked = [
      ...(wetDays_fraction === 1 ? [] : [`wet days at ${numbers.percent(wetDays_fraction)} of what they were`]),
      ...(wetDayRain_fraction === 1 ? [] : [`rain of a wet day at ${numbers.percent(wetDayRain_fraction)}`]),
      ...(lastYears === null ? [] : [`the last ${many(lastYears, 'water year', 'water years')} alone`]),
    ];
    return `Asked: ${asked.length === 0 ? 'nothing changed' : asked.join(', ')}.`;
  },
  shorter: (gauges: readonly string[], years: number) =>
    `${gauges.length > 3 ? `${numbers.quantity(gauges.length, 'number')} gauges have` : `${gauges.join(', ')} ${gauges.length === 1 ? 'has' : 'have'}`} fewer than ${numbers.years(years)}; all of them are used.`,
  notForecast: 'A question put to the rain of the past, not a forecast. Remedies are for the present verdict.',
  countColumns: ['sites', 'as it is', 'then'],
  changeColumns: ['changes', '', 'is', 'then', 'dry days a year', 'then'],
  siteColumns: ['', 'as it is', 'then'],
  noneChanges: 'No verdict changes.',
  moreChange: (count: number) => `and ${sites(count)} more; --out DIR writes them all into verdicts.csv`,
  verdict: 'Verdict',
  goodYears: 'Good years',
  dryDays: 'Dry days a year',
  tankForTarget: 'Tank for the target',
  tankForTargetAlone: 'Tank for the target (without the second source)',
  noTank: 'no tank would do',
  notKnown: 'not known',
  wrongShare: (option: string, text: string, least: number, most: number) =>
    `${option} cannot be "${text}": write a share from ${least} to ${most}, as 0.9 for nine in ten.`,
  wrongYears: (text: string, most: number) =>
    `--last-years cannot be "${text}": write a whole number of years from 1 to ${numbers.quantity(most, 'number')}.`,
};

const spiClasses: Readonly<Record<SpiClass, string>> = {
  extremelyDry: 'extremely dry',
  severelyDry: 'severely dry',
  moderatelyDry: 'moderately dry',
  nearNormal: 'near normal',
  moderatelyWet: 'moderately wet',
  veryWet: 'very wet',
  extremelyWet: 'extremely wet',
};

/** What the page of a gauge says. */
export const rain = {
  who: (name: string, id: string) => `${name} (${id})`,
  unknownGauge: (id: string, near: readonly string[]) =>
    `There is no gauge ${id}.${near.length > 0 ? ` Near it: ${near.join(', ')}.` : ''}`,
  record: (from: string, to: string, days: number, missing: number) =>
    `Record: ${from} to ${to}, ${numbers.days(days)}; ${missing === 0 ? 'all measured' : `${numbers.days(missing)} not measured`}`,
  wettest: (rain: string, day: string) => `Wettest day: ${rain} on ${day}`,
  years: (month: string, judged: number, all: number) =>
    `Water year: from ${month}; ${numbers.ofYears(judged, all)} judged`,
  noYears: 'No year of it can be judged: the faults below say why.',
  notJudged: (years: readonly string[]) => `Not judged, with days missing: ${years.join(', ')}`,
  mean: (rain: string) => `Rain of a mean judged year: ${rain}`,
  longestRun: (days: string, made: boolean) =>
    `Longest run of days under 1 mm: ${days}, ${made ? 'all made up' : 'filled days among them'}`,
  filled: 'Filled days',
  filledBy: (all: number, fromYears: number, fromGauges: number) =>
    all === 0
      ? 'No day was filled.'
      : `${numbers.days(all)}: ${numbers.quantity(fromYears, 'number')} from the same days of other years, ${numbers.quantity(fromGauges, 'number')} from gauges near by`,
  judgedFilled: (filled: number, days: number, share: string) =>
    `Every verdict on this gauge rests on ${numbers.days(days)} of judged years; ${numbers.quantity(filled, 'number')} of them (${share}) are filled.`,
  sources: 'Where the judged days come from',
  sourceColumns: ['', 'days', 'share'],
  sourceNames: ['measured', 'other years', 'gauges near by', 'made up'],
  allMade: 'Nobody measured here: every verdict on this gauge rests on made-up days and is tight at best.',
  given: 'Normals as given',
  givenColumns: (made: boolean) => ['', 'rain, mm', 'wet days', made ? 'made, mm' : 'record, mm', 'wet days'],
  yearByYear: 'Year by year',
  yearColumns: ['water year', 'rain, mm', 'wet days', 'longest dry run', 'wettest day, mm'],
  yearsKey: '* with filled days; -: a day of the year not known, or for the wettest day not measured',
  latest: (span: string, ending: string, index: string, name: string) =>
    `Latest over ${span}, ending ${ending}: ${index}, ${name}`,
  beside: 'Against the gauges near by',
  mass: (others: string, share: string, day: string, months: number) =>
    `From ${day} on it measured ${share} of its earlier share beside ${others} (${many(months, 'month', 'months')}); 100 % is no change.`,
  noMass: 'No gauge near by shares ten years of whole months with it.',
  made: 'What made-up rain would make of this record',
  madeColumns: ['', 'record', 'made up'],
  madeRows: {
    rain: 'rain of a year',
    spread: 'spread between years (standard deviation)',
    wetDays: 'wet days of a year',
    run: 'longest dry run of a year, mean',
    longest: 'longest dry run of all',
  },
  amountKinds: { gamma: 'gamma', mixedExponential: 'mixed exponential' },
  madeKey: (years: number, kind: string) =>
    `${numbers.years(years)} made up from its own months, amounts ${kind}; rain of days under 1 mm is left out. No verdict rests on them. Where they spread less than the record, made-up rain understates droughts.`,
  noMade: 'Too few days, each with the day before it, to make up rain from its months.',
  withinReach: (count: number) =>
    `${sites(count)} without a gauge of their own ${count === 1 ? 'has' : 'have'} it within reach.`,
  normals: 'What a month usually brings',
  normalColumns: ['', 'rain, mm', 'wet days', 'mm a day', 'whole years'],
  none: '-',
  ofYears: (complete: number, all: number) => `${complete} of ${all}`,
  normalsKey: 'wet: 1 mm or more; -: too few years with every day measured',
  runs: 'Longest run of days under 1 mm, by water year',
  stripKey: (drawn: boolean) =>
    drawn
      ? 'one mark a year: · none, ▁ to █ up to the longest, ? a day not known'
      : 'one mark a year: . none, 1 to 9 up to the longest, ? a day not known',
  runsKey: 'each year: days of its longest run; * with filled days in the year',
  driest: 'Driest months',
  indexColumns: ['over', 'ending', 'rain', 'index', ''],
  span: (months: number) => many(months, 'month', 'months'),
  indexKey: 'index: standardised precipitation index, gamma by L-moments (WMO-No. 1090 classes)',
  noIndex: 'too few years with every day measured',
  classes: spiClasses,
  sites: 'Sites on this gauge',
  noSites: 'No site uses it.',
  noneRest: 'No dry day of theirs falls on a filled day.',
  siteColumns: ['site', '', 'verdict', 'dry days', 'not measured'],
  moreSites: (count: number) => `and ${sites(count)} more with dry days on filled days`,
  faults: 'Faults of the record',
  noFaults: 'None was found.',
};
