import type { WorkingCode } from '@eavewell/engine';
import type { WorkingWords } from '../language.ts';

/** Label and formula in words of every step of a working. */
export const working: Readonly<Record<WorkingCode, WorkingWords>> = {
  'rain.years': {
    label: 'Years of rain judged',
    formula: 'whole water years of the gauge, less those with too many days missing',
  },
  'rain.filled': {
    label: 'Days filled',
    formula: 'days without a reading, filled from neighbouring gauges or from the same days of other years',
  },
  'rain.made': {
    label: 'Days made up',
    formula:
      'from the normals of each month: wet or dry by chance after the day before, rain of a wet day by chance too; none was measured',
  },
  'rain.byDistance': {
    label: 'Weight of a gauge within reach',
    formula: '1 ÷ distance², of the three nearest that measured the day; the mean over the days',
  },
  'rain.mean': { label: 'Rain of a mean year', formula: 'rain of the judged years ÷ their number, × rain factor' },
  'roof.area': { label: 'Roof that catches rain', formula: 'plan length × plan width, or the plan area as given' },
  'roof.runoff': { label: 'Share that runs off', formula: 'runoff fraction as given, else that of the material' },
  'roof.firstFlush': {
    label: 'First flush',
    formula: 'depth lost at the start of each wet spell, after 3 days each under 1 mm',
  },
  'roof.inflow': {
    label: 'Water caught in a mean year',
    formula:
      'plan area × share guttered × (runoff fraction × rain − first flush), each day, all roofs that lead to the tank',
  },
  'storage.group': {
    label: 'Tanks judged on their own',
    formula:
      'tanks joined at the foot; their roofs, and people × the share who draw from them. The next steps are theirs',
  },
  'people.designYear': {
    label: 'People of the design year',
    formula: 'people as counted × (1 + growth) ^ (design year − year counted), rounded up',
  },
  'people.presence': {
    label: 'People who are there',
    formula: 'share of the people who are there, a mean over the days of the year; everyone on days without a period',
  },
  'people.highestDemand': {
    label: 'Asked on the day that asks for most',
    formula: 'people × share who are there × litres a person a day of the purposes of that day',
  },
  'people.judgedDemand': {
    label: 'Asked for drinking and cooking',
    formula: 'people × litres a person a day, judged purposes; the mean of the year where it changes',
  },
  'people.otherDemand': {
    label: 'Asked for other purposes',
    formula: 'people × litres a person a day; drawn after the judged litres and stopped first',
  },
  'storage.volume': {
    label: 'Water the tank can give',
    formula: 'π ÷ 4 × diameter² × (overflow height − outlet height), else the stated volume; joined tanks added',
  },
  'storage.order': {
    label: 'Order of each day',
    formula: 'the order in which people draw, rain runs in, and what is over spills',
  },
  'storage.rationedDays': {
    label: 'Days with water rationed',
    formula:
      'days that began with less than the mark in the tank ÷ years of the record; those that cut the judged litres are dry days too',
  },
  'storage.dryDays': {
    label: 'Dry days',
    formula:
      'days on which the judged litres were not wholly there ÷ judged years; record run twice, second run counted',
  },
  'storage.dryDaysRange': {
    label: 'Dry days, likely',
    formula:
      'the judged years, and one beyond the driest and the wettest, drawn again many times; the middle of the draws, wider for few years',
  },
  'storage.daysMet': {
    label: 'Days with enough water',
    formula: '1 − dry days ÷ judged days on which drinking and cooking water is asked',
  },
  'storage.goodYears': { label: 'Good years', formula: 'judged years without a dry run over the limit' },
  'storage.goodYearsRange': {
    label: 'Good years, likely',
    formula:
      'Jeffreys interval of good years out of judged years, and the middle of the years drawn again; the wider ends',
  },
  'storage.goodYearsNext': {
    label: 'Good years to come, likely',
    formula: 'beta-binomial range of as many coming years as were judged, no narrower than the likely share',
  },
  'storage.tankForDays': {
    label: 'Tank for the days',
    formula: 'smallest tank that has enough on the wanted share of days',
  },
  'storage.tankForRuns': {
    label: 'Tank for the dry runs',
    formula: 'smallest tank without a run over the limit in the wanted number of years',
  },
  'storage.tankForTarget': { label: 'Tank for the target', formula: 'the larger of the two' },
  'storage.catalogueTank': {
    label: 'Smallest tank that would do',
    formula: 'the smallest of the catalogue and this one; each was run on its own, so no exact size is known',
  },
  'storage.tankToHold': {
    label: 'Tank that would hold',
    formula: 'smallest tank whose worse ends meet the target too; found to two percent',
  },
  'storage.shortfall': {
    label: 'Judged litres short',
    formula: '(judged litres asked − judged litres drawn) ÷ years',
  },
  'storage.otherShort': {
    label: 'Days short for other purposes',
    formula: 'days on which what was left after the judged litres did not meet the others ÷ years of the record',
  },
  'storage.yieldBeforeSpill': {
    label: 'Dry days at the generous end',
    formula: 'the same, with the rain let in before people draw and before it spills',
  },
  'storage.secondSource': {
    label: 'Days from the second source',
    formula: 'days in its months on which the tank lacks judged litres ÷ judged years; such a day is not dry',
  },
  'storage.firstService': {
    label: 'Wait for the first day of service',
    formula: 'from an empty tank on hand-over day to the first day wholly served; the middle one of the years',
  },
  'storage.verdict': {
    label: 'Verdict',
    formula:
      'short: the target is missed; tight: met, but not at the worse end of the range, or in too few years; holds: met at both',
  },
};

/** Names of inputs that the words themselves do not give away. */
const inputs: Readonly<Record<string, string>> = {
  people: 'counted',
  firstDayOfPeriod: 'from',
  lastDayOfPeriod: 'to',
  peopleShare: 'share who draw here',
  tankVolume: 'tank',
  judgedDemand: 'asked',
  otherDemand: 'asked for the rest',
  longestDryRun: 'longest dry run allowed',
  daysMetTarget: 'wanted share of days',
  goodYearsNeeded: 'good years wanted',
  range: 'share of the draws',
  daysMetWorstEnd: 'days met, worse end',
  goodYearsWorstEnd: 'good years, worse end',
  leastYears: 'least years to hold',
  tankForDays: 'tank for the days',
  withoutSource: 'without the second source',
  tankForRuns: 'tank for the dry runs',
  handOverDay: 'hand-over',
  rationBelow: 'mark, share of the tank',
  rationedJudged: 'judged litres still given',
  rationedOther: 'other litres still given',
  waitLow: 'one year in ten at most',
  waitHigh: 'nine years in ten at most',
  statedVolume: 'stated volume',
  litres_per_person_per_day: 'each person',
};

/** The name of an input, as words. A name without an entry is spelt out: `runoffFraction` reads "runoff fraction". */
export function input(name: string): string {
  return (
    inputs[name] ??
    name
      .replace(/_(L|mm|m|m2|day|days)$/, '')
      .replaceAll('_', ' ')
      .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
      .toLowerCase()
  );
}

/** Short names of the sources that workings cite; docs/sources.json has them in full. */
const sources: Readonly<Record<string, string>> = {
  survey: "the programme's tables",
  gauge: "the gauge's readings",
  settings: "the programme's settings, or the default where they say nothing (docs/decisions, 0054)",
  normals: 'normals.csv',
  'geng-1986': 'Geng and others 1986',
  'shepard-1968': 'Shepard 1968',
  definition: 'our definition (docs/methods)',
  'brown-cai-dasgupta-2001': 'Brown, Cai and DasGupta 2001',
  'jenkins-1978': 'Jenkins and others 1978',
  'rwh-toolkit': 'rainwater harvesting training toolkit',
  'indian-manuals': 'Indian rainwater manuals',
  'warwick-dtu': 'Warwick University, Development Technology Unit',
  'thomas-martinson-2007': 'Thomas and Martinson 2007',
};

/** Where a figure comes from, as words. */
export function source(name: string): string {
  const [id = name, ...place] = name.split(', ');
  return [sources[id] ?? id, ...place].join(', ');
}

/** Values of a working that are words of the engine. */
export const values: Readonly<Record<string, string>> & { readonly none: string } = {
  drawFirst: 'draw, rain, spill',
  yas: 'rain, spill, draw what the morning had',
  ybs: 'rain, draw, spill',
  none: 'no tank would do',
  unknown: 'not known',
  corrugatedMetal: 'corrugated metal',
  fibreCement: 'fibre cement',
};
