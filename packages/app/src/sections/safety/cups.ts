import { type CupRanked, compareCups } from '@eavewell/engine';
import type { components } from '../../api/apiTypes.ts';
import type { SiteFinder } from '../sites/index.ts';

/** The cups of all sites as the server answers them. */
export type SafetyBody = components['schemas']['programmeSafety'];
export type SafetyHead = Omit<SafetyBody, 'sites'>;
export type SiteOfSafety = SafetyBody['sites'][number];
export type Cup = NonNullable<SiteOfSafety['cup']>;

/** What may be said of drinking the water of a site; `notJudged` where nothing is told of its treatment and its water. */
export const drinks = ['no', 'notShown', 'yes', 'notJudged'] as const;
export type Drink = (typeof drinks)[number];

/** What is due at a site: a sample, for whatever reason one is wanted; or a set of cartridges. */
export const dues = ['sample', 'set'] as const;
export type Due = (typeof dues)[number];

/** Which sites are shown: it stands in the address, so that a link keeps it and back brings it again. */
export interface SafetyAsked {
  /** Without it those that may not be drunk of, are not shown to be fit, or need a test; all that fit the rest where `due` is asked. */
  readonly drink?: Drink;
  readonly due?: Due;
  readonly area?: string;
}

/** What an address asks for; what it does not know is left out. */
export function safetyAskedOf({ drink, due, area }: Readonly<Record<string, unknown>>): SafetyAsked {
  const [wanted, wantedDue] = [drinks.find((one) => one === drink), dues.find((one) => one === due)];
  const text = typeof area === 'number' ? String(area) : area;
  return {
    ...(wanted === undefined ? {} : { drink: wanted }),
    ...(wantedDue === undefined ? {} : { due: wantedDue }),
    ...(typeof text === 'string' && text.trim() !== '' ? { area: text.slice(0, 200) } : {}),
  };
}

/** The address with one thing more asked, or no longer where it was asked already. */
export function withAsked<K extends keyof SafetyAsked>(asked: SafetyAsked, key: K, value: SafetyAsked[K]): SafetyAsked {
  const { [key]: before, ...rest } = asked;
  return before === value || value === undefined ? (rest as SafetyAsked) : { ...asked, [key]: value };
}

/** What may be said of drinking the water of a site. */
export const drinkOf = ({ cup }: SiteOfSafety): Drink => cup?.mayDrink ?? 'notJudged';

/** Is a sample wanted: none, too old, failed, or something failed since? */
export const isSampleDue = ({ cup }: SiteOfSafety): boolean => cup !== null && cup.needsTest.length > 0;

/** Sets that may be due within so long are told of [month]: some months go by before new ones are there. Ours. */
const soon_months = 6;

/** May a set of cartridges be due within half a year? */
export const isSetDue = ({ cup }: SiteOfSafety, today: string): boolean =>
  cup?.sets.some(({ early }) => monthsTo(early, today) <= soon_months) ?? false;

const rankedOf = ({ people }: SiteOfSafety, { mayDrink, verdict, reasons, worst }: Cup): CupRanked => ({
  ...{ mayDrink, verdict, reasons, people },
  burden_DALY_per_person_per_year: worst?.DALYHigh_per_person_per_year ?? null,
});

/** The worst first, as compareCups has it; what is not judged last. */
export function worstFirst(a: SiteOfSafety, b: SiteOfSafety): number {
  const [one, other] = [a.cup, b.cup];
  const order =
    one !== null && other !== null
      ? compareCups(rankedOf(a, one), rankedOf(b, other))
      : Number(one === null) - Number(other === null);
  return order || a.key.localeCompare(b.key);
}

/** Which sites are shown, in their order; where sets are asked of, the soonest due first. */
export function chosenCups(
  sites: readonly SiteOfSafety[],
  { drink, due, area }: SafetyAsked,
  today: string,
): readonly SiteOfSafety[] {
  const fits = (site: SiteOfSafety) => {
    const own = drinkOf(site);
    if (area !== undefined && site.area !== area) return false;
    if (due === 'sample' && !isSampleDue(site)) return false;
    if (due === 'set' && !isSetDue(site, today)) return false;
    if (drink !== undefined) return own === drink;
    // What needs her today: also a test that is due where all else says that it is fit.
    return due !== undefined || own === 'no' || own === 'notShown' || isSampleDue(site);
  };
  const chosen = sites.filter(fits);
  return due === 'set' ? chosen.sort((a, b) => (middleOf(a) < middleOf(b) ? -1 : 1)) : chosen;
}

const middleOf = ({ cup }: SiteOfSafety) => cup?.sets[0]?.middle ?? '9999';

/**
 * The sites meant by what was typed, the likeliest first, whatever is said of them; null where nothing was typed.
 *
 * @param finder - of these sites, in this order
 */
export function foundCups(
  sites: readonly SiteOfSafety[],
  finder: Pick<SiteFinder, 'find'>,
  typed: string,
): readonly SiteOfSafety[] | null {
  const found = finder.find(typed);
  return found === null ? null : [...found].map((at) => sites[at]!);
}

/** How many sites there are of each, and at how many something is due. */
export interface SafetyTally {
  readonly all: number;
  readonly drink: Readonly<Record<Drink, number>>;
  readonly due: Readonly<Record<Due, number>>;
}

export function safetyTally(sites: readonly SiteOfSafety[], today: string): SafetyTally {
  const drink = { no: 0, notShown: 0, yes: 0, notJudged: 0 };
  const due = { sample: 0, set: 0 };
  for (const site of sites) {
    drink[drinkOf(site)]++;
    if (isSampleDue(site)) due.sample++;
    if (isSetDue(site, today)) due.set++;
  }
  return { all: sites.length, drink, due };
}

/** One set of cartridges, and where it is. */
export interface DueSet {
  readonly site: SiteOfSafety;
  readonly set: Cup['sets'][number];
}

/** The sets of cartridges of all sites, the soonest first. */
export function dueSets(sites: readonly SiteOfSafety[]): readonly DueSet[] {
  return sites
    .flatMap((site) => (site.cup?.sets ?? []).map((set) => ({ site, set })))
    .sort((a, b) => (a.set.middle < b.set.middle ? -1 : Number(a.set.middle > b.set.middle)));
}

/** Days of a month, on average [day]. */
const month_days = 30.436875;

/** Whole months from a day to another, 0 where it has passed. */
export function monthsTo(day: string, today: string): number {
  const days = (Date.parse(day) - Date.parse(today)) / 86_400_000;
  return Math.max(0, Math.round(days / month_days));
}

/** Today on the clock of this computer, year-month-day. */
export const todayHere = (): string => new Date().toLocaleDateString('sv-SE');
