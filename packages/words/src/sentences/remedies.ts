import {
  type AsFitted,
  type FittingChange,
  type GroupKind,
  type LeaveIt,
  type NotMendedReason,
  type PeopleCarried,
  type Remedy,
  type RemedyChange,
  type RemedyCost,
  type SitesTogether,
  type Station,
  type Where,
  wantsFacts,
} from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import type { BesideRemedies, RemedyWords } from '../remedyWords.ts';
import { findingsIn } from './findings.ts';
import { yes } from './telling.ts';

/** Where it is done, where the site has several tanks apart. */
const at = ({ tankId }: Where) => ({ hasTank: yes(tankId !== null), tank: tankId ?? '' });

/** Gutters and pipes, each thing by its name. */
function fitting({ say, numbers }: Speech, one: FittingChange): string {
  const mm = (figure: number) => numbers.quantity(figure, 'mm');
  switch (one.kind) {
    case 'largerGutter':
      return say('remedies.change.largerGutter', {
        ...{ width: mm(one.topWidth_mm), depth: mm(one.depth_mm), gutters: one.gutterIds.join(', ') },
      });
    case 'outlet':
      return say('remedies.change.outlet', {
        ...{ count: one.added_count, isLarger: yes(one.outlet_mm !== null), gutters: one.gutterIds.join(', ') },
        bore: one.outlet_mm === null ? '' : mm(one.outlet_mm),
      });
    case 'downpipe':
      return say('remedies.change.downpipe', {
        ...{ count: one.added_count, isLarger: yes(one.downpipeIds.length > 0), bore: mm(one.bore_mm) },
        ...{ roof: one.roofId, pipes: one.downpipeIds.join(', ') },
      });
    case 'overflow':
      return say('remedies.change.overflow', { bore: mm(one.bore_mm), tank: one.tankId });
    case 'pipe':
      return say('remedies.change.pipe', { bore: mm(one.bore_mm), pipes: one.pipeIds.join(', ') });
  }
}

/** What is asked of the crew, in the imperative, each short enough for a column. */
function change(w: Speech, one: RemedyChange): string {
  const { say, numbers } = w;
  switch (one.kind) {
    case 'secondTank':
      return say('remedies.change.secondTank', { litres: numbers.litres(one.volume_L), ...at(one) });
    case 'largerTank':
      return say('remedies.change.largerTank', { litres: numbers.litres(one.volume_L), ...at(one) });
    case 'gutter':
      return say('remedies.change.gutter', { share: numbers.percent(one.gutteredFraction), ...at(one) });
    case 'firstFlush':
      return say('remedies.change.firstFlush', { depth: numbers.quantity(one.firstFlush_mm, 'mm'), ...at(one) });
    case 'largerGutter':
    case 'outlet':
    case 'downpipe':
    case 'overflow':
    case 'pipe':
      return fitting(w, one);
    case 'secondSource':
      return say('remedies.change.secondSource', {
        kind: say(`remedies.sourceKind.${one.sourceKind}`),
        name: one.name,
      });
    case 'people':
      return say('remedies.change.people', { people: numbers.people(one.others_people) });
    case 'litres':
      return one.isJudgedCut
        ? say('remedies.change.litres', { litres: numbers.quantity(one.judged_L_per_person_per_day, 'L') })
        : say('remedies.change.otherLitres');
  }
}

/** Several texts as "a and b". */
const both = ({ say }: Speech, texts: readonly string[]) =>
  texts.length === 0 ? '' : texts.reduce((first, second) => say('remedies.both', { first, second }));

const remedy = (w: Speech, { changes }: Pick<Remedy, 'changes'>) =>
  both(
    w,
    changes.map((one) => change(w, one)),
  );

function cost({ say, numbers }: Speech, one: RemedyCost): string {
  if (one.amount === null) return say('numbers.notKnown');
  return one.currency === null ? say('remedies.nothing') : numbers.money(one.amount, one.currency);
}

function costOrWhy(w: Speech, one: RemedyCost): string {
  if (one.reason !== null) return w.say('remedies.costNotKnown', { reason: w.say(`remedies.noCost.${one.reason}`) });
  return one.currency === null ? w.say('remedies.nothingToBuy') : cost(w, one);
}

/** How often people would drink water that is no roof's, and what it takes. */
const sourceUse = ({ say, numbers }: Speech, days_per_year: number) =>
  say('remedies.sourceUse', { days: numbers.daysAYear(days_per_year) });

function smallest(w: Speech, one: Remedy): string {
  const values = {
    remedy: remedy(w, one),
    isCut: yes(one.promiseCut_count > 0),
    cost: costOrWhy(w, one.cost),
  };
  const text = one.verdict === 'holds' ? w.say('remedies.smallest', values) : w.say('remedies.smallestTight', values);
  const stations = one.besides.map((station) => w.say('remedies.stationNamed', { station })).join(', ');
  return [
    text,
    ...(stations === '' ? [] : [w.say('remedies.notIn', { stations })]),
    ...(one.sourceDays_per_year === null ? [] : [sourceUse(w, one.sourceDays_per_year)]),
  ].join(' ');
}

function leaveIt(w: Speech, year: LeaveIt): string {
  const { say, numbers } = w;
  const from = year.longestRunFrom;
  const values = {
    days: numbers.days(year.dryDays),
    run: numbers.days(year.longestRun_days),
    litres: numbers.litres(year.shortfall_L),
    hasTanks: yes(year.tankIds !== null),
    tanks: findingsIn(w).tanksNamed(year.tankIds ?? []),
  };
  return year.ofMadeYears === null
    ? say('remedies.leaveIt', { ...values, hasDay: yes(from !== null), day: from === null ? '' : numbers.date(from) })
    : say('remedies.leaveItMadeUp', { ...values, years: numbers.quantity(year.ofMadeYears, 'number') });
}

function peopleCarried({ say, numbers }: Speech, { verdict, carried_people, others_people }: PeopleCarried): string {
  const values = { people: numbers.people(carried_people), others: others_people };
  return verdict === 'holds' ? say('remedies.peopleCarried', values) : say('remedies.peopleCarriedTight', values);
}

function kindsTogether({ say }: Speech, some: readonly GroupKind[]): string {
  if (some.length === 2 && some.every((kind) => kind === 'secondTank')) return say('remedies.kind.twoTanks');
  return some.map((kind) => say(`remedies.kind.${kind}`)).join(', ');
}

function costs({ say, numbers }: Speech, { costs: sums, withoutCost_count }: SitesTogether): string {
  const known = sums.map(({ amount, currency }) => numbers.money(amount, currency));
  if (withoutCost_count > 0) known.push(say('remedies.costsNotKnown', { count: withoutCost_count }));
  return known.length === 0 ? say('remedies.nothing') : known.join(' + ');
}

function noneMends({ say }: Speech, reason: NotMendedReason, siteIds: readonly string[]): string {
  const why = say(`remedies.notMended.${reason}`);
  const sites = siteIds.slice(0, listed_count).join(', ');
  return say('remedies.noneMends', {
    sites,
    hasMore: yes(siteIds.length > listed_count),
    more: siteIds.length - listed_count,
    reason: `${why.slice(0, 1).toUpperCase()}${why.slice(1)}`,
  });
}

/** What stays as it is at a station, whatever is changed, and what is to be done about it. */
function besides({ say }: Speech, station: Station, design: AsFitted): string {
  const verdict = design.stations[station];
  const byStation: Partial<Record<Station, string>> = {
    ...{ stand: 'engineer', settling: 'engineer', storage: 'water' },
    ...{ treatmentUnit: 'treatment', cup: 'treatment' },
  };
  const why = wantsFacts(station, design) ? 'survey' : (byStation[station] ?? 'parts');
  return say('remedies.besides', { station, verdict, why });
}

/** Does it set a tank where nobody may fill one yet? */
function isTankOnStand({ changes, standGate }: BesideRemedies['remedies'][number]): boolean {
  return standGate === 'closed' && changes.some(({ kind }) => kind === 'secondTank' || kind === 'largerTank');
}

/** The same of all stations, then what is not judged with what is new, and stands that nobody signed for. */
function beside(w: Speech, { besides: staying, remedies }: BesideRemedies, design: AsFitted): readonly string[] {
  const anew = new Set(remedies.flatMap((one) => one.besides.filter((station) => !staying.includes(station))));
  return [
    ...staying.map((station) => besides(w, station, design)),
    ...[...anew].map((station) => w.say('remedies.anew', { station })),
    ...(remedies.some(isTankOnStand) ? [w.say('remedies.caution.gate')] : []),
  ];
}

/** How many sites are named before they are only counted. */
const listed_count = 8;

/** What is said of remedies, in a language. */
export const remediesIn = (w: Speech): RemedyWords => {
  const { say, numbers } = w;
  return {
    change: (one) => change(w, one),
    remedy: (one) => remedy(w, one),
    cost: (one) => cost(w, one),
    smallest: (one) => smallest(w, one),
    whyNoCost: (reason) => say('remedies.whyNoCost', { reason: say(`remedies.noCost.${reason}`) }),
    notMended: (reason) => say('remedies.noChange', { reason: say(`remedies.notMended.${reason}`) }),
    leaveIt: (year) => leaveIt(w, year),
    sourceUse: (days_per_year) => sourceUse(w, days_per_year),
    beside: (found, design) => beside(w, found, design),
    peopleCarried: (carried) => peopleCarried(w, carried),
    kindsTogether: (some) => kindsTogether(w, some),
    costs: (sites) => costs(w, sites),
    heading: say('remedies.heading'),
    programmeHeading: say('remedies.programmeHeading'),
    columns: ([1, 2, 3, 4, 5] as const).map((column) => say(`remedies.columns.${column}`)),
    programmeColumns: ([1, 2, 3, 4, 5] as const).map((column) => say(`remedies.programmeColumns.${column}`)),
    and: (text) => say('remedies.and', { text }),
    isCut: (text) => `${text} *`,
    ofYears: (good, years) => say('remedies.ofYears', { good, years }),
    together: say('remedies.together'),
    looked: (one) =>
      say('remedies.looked', {
        sites: one.sites,
        people: numbers.people(one.people),
        hasUncounted: yes(one.withoutPeople_count > 0),
        uncounted: one.withoutPeople_count,
      }),
    noneMends: (reason, siteIds) => noneMends(w, reason, siteIds),
    prices: (day) => (day === null ? say('remedies.noPrices') : say('remedies.prices', { day: numbers.date(day) })),
    cautions: {
      litres: say('remedies.caution.litres'),
      firstFlush: say('remedies.caution.firstFlush'),
      people: say('remedies.caution.people'),
      secondTank: say('remedies.caution.secondTank'),
      fittings: say('remedies.caution.fittings'),
    },
  };
};
