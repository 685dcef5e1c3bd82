import type {
  ChangeKind,
  LeaveIt,
  NoCostReason,
  NotMendedReason,
  PeopleCarried,
  Remedy,
  RemedyChange,
  RemedyCost,
  SitesTogether,
  Where,
} from '@eavewell/engine';
import type { RemedyWords } from '../remedyWords.ts';
import { findings } from './findings.ts';
import { numbers } from './numbers.ts';

/** Where it is done, where the site has several tanks apart. */
function at(word: string, { tankId }: Where): string {
  return tankId === null ? '' : `${word} ${tankId}`;
}

/** What is asked of the crew, in the imperative, each short enough for a column. */
function change(one: RemedyChange): string {
  switch (one.kind) {
    case 'secondTank':
      return `join a tank of ${numbers.litres(one.volume_L)}${at(' to', one)}`;
    case 'largerTank':
      return one.tankId === null
        ? `set one of ${numbers.litres(one.volume_L)} instead`
        : `set ${numbers.litres(one.volume_L)} instead of ${one.tankId}`;
    case 'gutter':
      return `gutter ${numbers.percent(one.gutteredFraction)} of the roof${at(' to', one)}`;
    case 'firstFlush':
      return `first flush of ${numbers.quantity(one.firstFlush_mm, 'mm')}${at(' to', one)}`;
    case 'secondSource':
      return `use the ${one.sourceKind} (${one.name})`;
    case 'people':
      return `another site for ${numbers.people(one.others_people)}`;
    case 'litres':
      return one.isJudgedCut
        ? `promise ${numbers.quantity(one.judged_L_per_person_per_day, 'L')} a person`
        : 'drop the other purposes';
  }
}

function remedy({ changes }: Pick<Remedy, 'changes'>): string {
  return changes.map(change).join(' and ');
}

const noCost: Readonly<Record<NoCostReason, string>> = {
  noPart: 'no such part in the catalogue',
  noPrice: 'no price',
  onlyLaterPrices: 'only later prices',
  roofLengthUnknown: 'length of a roof not known',
  currenciesDiffer: 'prices in several currencies',
  otherSite: 'another site is not priced',
  secondSource: 'fetching water and treating it is not priced',
};

function cost(one: RemedyCost): string {
  if (one.amount === null) return 'not known';
  return one.currency === null ? 'nothing' : numbers.money(one.amount, one.currency);
}

function costOrWhy(one: RemedyCost): string {
  if (one.reason !== null) return `cost not known (${noCost[one.reason]})`;
  return one.currency === null ? 'nothing to buy' : cost(one);
}

/** How often people would drink water that is no roof's, and what it takes. */
function sourceUse(days_per_year: number): string {
  const days = numbers.daysAYear(days_per_year);
  return `Water of the second source on ${days}: it must be treated before anyone drinks it; ask the health authority.`;
}

function smallest(one: Remedy): string {
  const start = one.verdict === 'holds' ? 'Would hold' : 'Would be tight, not more';
  const cut = one.promiseCut_count > 0 ? ', which promises less' : '';
  const treated = one.sourceDays_per_year === null ? '' : ` ${sourceUse(one.sourceDays_per_year)}`;
  return `${start}: ${remedy(one)}${cut}; ${costOrWhy(one.cost)}.${treated}`;
}

const reasons: Readonly<Record<NotMendedReason, string>> = {
  assumed: 'how much of a roof is guttered is not known, so survey that first',
  growth:
    'growth of people is stated and cannot be reckoned with, so fill in when they were counted and the design year',
  roofSize: 'a roof is far larger than roofs mostly are and nothing else says so, so measure it again first',
  madeRain: 'the rain is made up, so look for daily readings first',
  record: 'the record of rain is too short for any site to hold',
  noTanks: 'the catalogue has no tank',
  tank: 'no tank of the catalogue, nor two, is large enough',
  apart: 'each of its tanks could be mended on its own, but not all of them by two changes',
  water: 'the roof does not catch enough water, and fewer litres do not make up for it',
};

function notMended(reason: NotMendedReason): string {
  return `No change, and no two, make it hold: ${reasons[reason]}.`;
}

function leaveIt(year: LeaveIt): string {
  const where = year.tankIds === null ? '' : `, at ${findings.tanksNamed(year.tankIds)}`;
  const from = year.longestRunFrom;
  const when =
    year.ofMadeYears === null
      ? `a year as the worst on record${from === null ? '' : `, as from ${numbers.date(from)},`}`
      : `about one year in ${numbers.quantity(year.ofMadeYears, 'number')} (made-up rain)`;
  return `Leave it, and tell the community: ${when} brings ${numbers.days(year.dryDays)} without enough to drink and cook, up to ${numbers.days(year.longestRun_days)} in a row, ${numbers.litres(year.shortfall_L)} short${where}.`;
}

function peopleCarried({ verdict, carried_people, others_people }: PeopleCarried): string {
  const others =
    others_people === 1 ? 'the other one needs' : `the other ${numbers.quantity(others_people, 'number')} need`;
  return `As it stands it ${verdict === 'holds' ? 'holds' : 'is tight'} for ${numbers.people(carried_people)}; ${others} water from a site of their own, at a cost not known here.`;
}

const kinds: Readonly<Record<ChangeKind, string>> = {
  gutter: 'more gutter',
  firstFlush: 'smaller first flush',
  secondTank: 'one more tank',
  largerTank: 'a larger tank',
  secondSource: 'a second source',
  people: 'another site',
  litres: 'fewer litres promised',
};

function kindsTogether(some: readonly ChangeKind[]): string {
  if (some.length === 2 && some.every((kind) => kind === 'secondTank')) return 'two more tanks';
  return some.map((kind) => kinds[kind]).join(', ');
}

function costs({ costs: sums, withoutCost_count }: SitesTogether): string {
  const known = sums.map(({ amount, currency }) => numbers.money(amount, currency));
  if (withoutCost_count > 0) known.push(`${withoutCost_count} not known`);
  return known.length === 0 ? 'nothing' : known.join(' + ');
}

export const remedies: RemedyWords = {
  change,
  remedy,
  cost,
  smallest,
  whyNoCost: (reason) => `Cost not known: ${noCost[reason]}.`,
  notMended,
  leaveIt,
  sourceUse,
  peopleCarried,
  kindsTogether,
  costs,
  heading: 'What would mend it',
  programmeHeading: 'What would mend them',
  columns: ['change', 'becomes', 'dry days a year', 'good years', 'cost'],
  programmeColumns: ['smallest change', 'becomes', 'sites', 'people', 'cost'],
  and: (text) => `and ${text}`,
  isCut: (text) => `${text} *`,
  ofYears: (good, years) => `${good} of ${years}`,
  together: 'together',
  looked: (one) =>
    `${one.sites === 1 ? '1 site is' : `${numbers.quantity(one.sites, 'number')} sites are`} short or tight: ${numbers.people(one.people)}${one.withoutPeople_count > 0 ? ` and ${one.withoutPeople_count} not counted` : ''}. Each by its smallest change:`,
  noneMends: (reason, siteIds) => {
    const some = siteIds.slice(0, listed_count).join(', ');
    const more = siteIds.length > listed_count ? ` and ${siteIds.length - listed_count} more` : '';
    return `Made to hold by none: ${some}${more}. ${reasons[reason].slice(0, 1).toUpperCase()}${reasons[reason].slice(1)}.`;
  },
  prices: (day) =>
    day === null
      ? 'There are no prices.'
      : `Prices: the latest up to ${numbers.date(day)}, of the parts alone. Not in it: downpipes, brackets, stand, carrying, work.`,
  cautions: {
    litres:
      '* cuts what was promised; where litres a person are cut, the other purposes are dropped too. Under 7.5 L a person a day the basic survival range is missed; 2.5 L is for drinking and food alone (Sphere 2018). Agree it with the people and the health authority first.',
    firstFlush: 'A smaller first flush lets more dirt into the tank: ask the health authority first.',
    people:
      'Another site needs a roof, a tank and a survey of its own; no one is sent away before it stands and holds.',
    secondTank: 'Tanks joined at the foot share one level: outlets at one height, overflows at one height.',
  },
};

/** How many sites are named before they are only counted. */
const listed_count = 8;
