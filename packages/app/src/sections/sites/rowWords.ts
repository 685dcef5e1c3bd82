import type { AppLanguage } from '@eavewell/words/app';
import { type SiteEntry, type Station, standingOf, stationsInOrder, worstStation } from './overview.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;
type Figures = NonNullable<SiteEntry['figures']>;
type Decides = NonNullable<SiteEntry['decides']>;

/** How many people, in words. */
export const peopleWords = ({ people }: Pick<SiteEntry, 'people'>, { say, numbers }: Words): string =>
  people === null ? say('sites.no_people') : numbers.people(people);

/** Which station is it about, and how does it stand: "tank short:". Nothing where none was judged. Before it, that its water must not be drunk. */
export function leadWords(site: SiteEntry, { say }: Words): string {
  const { isNotToDrink, decides } = site;
  const station = worstStation(site);
  if (station === null) return '';
  const verdict = say(`sites.verdict_${standingOf(site)}`);
  const lead = say('sites.row_lead', { station: say(`sites.station_${station}`), verdict });
  return isNotToDrink === true && decides?.figure !== 'germs' ? `${say('safety.drink_no')}. ${lead}` : lead;
}

/** What was found: the figure that decides, with its likely range and its target; where there is none, the finding itself. */
export function lineWords(site: SiteEntry, isDone: boolean, words: Words): string {
  const { say } = words;
  const { figures, finding, verdict, withheldBy, decides } = site;
  if (verdict === null) return say(isDone ? 'sites.line_not_used' : 'sites.line_not_yet');
  const station = worstStation(site);
  if (decides !== null) return decidesWords(decides, words);
  if (station !== null && station !== 'storage') return withheldBy ?? finding ?? '';
  if (figures === null) return withheldBy ?? finding ?? '';
  const line = figureWords(site, figures, words);
  const because = reasonOf(figures, verdict);
  return because === null ? line : say(because, { line });
}

/** The figure of a station that is not the tank, with its range and what it is held against. */
function decidesWords({ figure, id, value, range, limit, unit }: Decides, { say, numbers }: Words): string {
  const said = (amount: number) =>
    unit === 'fraction'
      ? numbers.percent(amount)
      : unit === 'factor'
        ? numbers.fixed(amount, 1)
        : numbers.given(amount, unit);
  const held = limit === null ? '' : said(limit);
  switch (figure) {
    case 'gutter':
    case 'outlet':
    case 'downpipe':
    case 'overflow': {
      const given = { part: say(`sites.part_${figure}`), id, flow: said(value), limit: held };
      if (range === null) return say('sites.line_flow_plain', given);
      return say('sites.line_flow', { ...given, range: numbers.range(range) });
    }
    case 'headLeft':
      if (value < 0) return say('sites.line_headShort', { id, value: said(-value) });
      return say('sites.line_headLeft', { id, value: said(value) });
    case 'settledByDay':
    case 'settledInStorm':
      return say(`sites.line_${figure}`, { id, value: said(value) });
    default:
      return say(`sites.line_${figure}`, { id, value: said(value), limit: held });
  }
}

/** The half of the target that was missed, or is in doubt: the days where they are missed and the years are not. */
function figureWords({ verdict }: SiteEntry, figures: Figures, { say, numbers }: Words): string {
  const { goodYears, goodYearsNeeded, judgedYears, comingGood_years_range, isDaysMet } = figures;
  if (verdict === 'short' && !isDaysMet && goodYears >= goodYearsNeeded)
    return say('sites.line_days', {
      days: numbers.dryDaysAYear(figures.dryDays_per_year),
      range: numbers.range(figures.dryDays_per_year_range),
      allowed: numbers.quantity(figures.dryDaysAllowed_per_year, 'count'),
    });
  return say('sites.line_years', {
    years: numbers.ofYears(goodYears, judgedYears),
    range: numbers.range(comingGood_years_range),
    needed: numbers.quantity(goodYearsNeeded, 'count'),
  });
}

/** What is said before the figure, because the figure alone would mislead. */
function reasonOf({ cappedBy, lacks }: Figures, verdict: SiteEntry['verdict']) {
  if (verdict === 'short' && lacks === 'water') return 'sites.because_water';
  if (verdict === 'short' && lacks === 'ration') return 'sites.because_ration';
  if (verdict !== 'tight' || cappedBy === null) return null;
  if (cappedBy === 'rain.made_up') return 'sites.because_made_up';
  if (cappedBy === 'site.second_source') return 'sites.because_second_source';
  return 'sites.because_assumed';
}

/** What would mend it: what it costs, or why there is none; and what it is. */
export interface MendWords {
  readonly main: string;
  readonly more: string;
  /** Is `main` a sum of money or another thing that is to stand out? */
  readonly isKnown: boolean;
}

/** A cost in words, also where nothing is to be bought; null where it is not known. */
export function costWords(amount: number | null, currency: string | null, { say, numbers }: Words): string | null {
  if (amount === 0) return say('sites.mend_free');
  return amount === null || currency === null ? null : numbers.money(amount, currency);
}

/** The smallest change that mends a site, in words. */
export function mendWords({ remedy, notMended, verdict }: SiteEntry, { say, numbers }: Words): MendWords {
  if (verdict === null) return { main: '', more: '', isKnown: false };
  if (verdict === 'holds') return { main: '', more: say('sites.mend_not_needed'), isKnown: false };
  if (remedy !== null) {
    const { amount, currency, about } = remedy;
    const isKnown = amount === 0 || (amount !== null && currency !== null);
    const main = costWords(amount, currency, { say, numbers }) ?? say('sites.mend_not_priced');
    return { main, more: [about, ...remedyNotes(remedy, say)].join('; '), isKnown };
  }
  if (verdict === 'unknown')
    return { main: say('sites.mend_facts'), more: say('sites.mend_facts_more'), isKnown: false };
  return { main: say('sites.mend_none'), more: notMended ?? '', isKnown: false };
}

function remedyNotes(remedy: NonNullable<SiteEntry['remedy']>, say: Words['say']): readonly string[] {
  return [
    ...(remedy.verdict === 'tight' ? [say('sites.mend_then_tight')] : []),
    ...(remedy.promiseCut_count > 0 ? [say('sites.mend_cuts')] : []),
  ];
}

/** How each station stands, in words, for those who do not see the marks; those not judged are left out. */
export function stationsWords({ stations }: SiteEntry, { say }: Words): string {
  if (stations === null) return '';
  const told = (station: Station) =>
    say('sites.station_stands', {
      station: say(`sites.station_${station}`),
      verdict: say(`sites.verdict_${stations[station]}`),
    });
  return stationsInOrder
    .filter((station) => stations[station] !== 'notJudged')
    .map(told)
    .join(', ');
}

/** What a row says of its site. */
export interface RowTexts {
  readonly people: string;
  readonly lead: string;
  readonly line: string;
}

const kept = new WeakMap<Words, WeakMap<SiteEntry, RowTexts>>();
const keptBefore = new WeakMap<Words, WeakMap<SiteEntry, RowTexts>>();

/**
 * What a row says of its site, in words. Its name for those who do not see it holds the same, so they are made once.
 *
 * @param isDone - are all verdicts there?
 */
export function rowTexts(site: SiteEntry, isDone: boolean, words: Words): RowTexts {
  const all = isDone ? kept : keptBefore;
  const known = all.get(words) ?? new WeakMap<SiteEntry, RowTexts>();
  all.set(words, known);
  const texts = known.get(site) ?? {
    people: peopleWords(site, words),
    lead: leadWords(site, words),
    line: lineWords(site, isDone, words),
  };
  known.set(site, texts);
  return texts;
}
