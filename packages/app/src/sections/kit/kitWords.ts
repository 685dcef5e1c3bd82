import type { AppLanguage } from '@eavewell/words/app';
import type { Carried, Cost, ProgrammeKitAnswer, SiteKitAnswer, SiteOfKits } from './kitQuery.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** A count of a part, in what it is counted in. */
export function countWords(
  count: number | null,
  { countedIn, isAtLeast = false }: { readonly countedIn: string; readonly isAtLeast?: boolean },
  { say, numbers }: Words,
): string {
  if (count === null) return say('kit.not_known');
  const amount = countedIn === 'piece' ? numbers.fixed(count, 0) : numbers.quantity(count, countedIn);
  return isAtLeast ? say('kit.at_least', { amount }) : amount;
}

/** How heavy it is; what nobody weighed makes it at least so much. */
export function massWords(mass_kg: number, noMass_count: number, { say, numbers }: Words): string {
  const amount = numbers.quantity(Math.round(mass_kg), 'kg');
  return noMass_count > 0 ? say('kit.at_least', { amount }) : amount;
}

/** A cost for each person and year, with its range; null where it is not known. */
export function personYearWords(
  cost: SiteOfKits['cost'],
  currency: string | null,
  { say, numbers }: Words,
): { readonly amount: string; readonly range: string } | null {
  if (cost === null || cost.perPersonYear_amount === null || currency === null) return null;
  const amount = numbers.money(cost.perPersonYear_amount, currency);
  const range =
    cost.spread_amount === null ? '' : numbers.range({ low: cost.spread_amount.p10, high: cost.spread_amount.p90 });
  return { amount: cost.isAtLeast ? say('kit.at_least', { amount }) : amount, range };
}

/** What a whole-life cost comes to, in a sentence. */
export function costSentence(cost: Cost, { say, numbers }: Words): string {
  const perYear = numbers.quantity(cost.perYear_amount, `${cost.currency}_per_year`);
  const spread = cost.perPersonYearSpread_amount ?? cost.perYearSpread_amount;
  const range = numbers.likely({ low: spread.p10, high: spread.p90 });
  const years = numbers.years(cost.years_count);
  const day = numbers.date(cost.day);
  if (cost.perPersonYear_amount === null)
    return say(cost.isAtLeast ? 'kit.cost_year_least' : 'kit.cost_year', { perYear, range, years, day });
  const each = numbers.quantity(cost.perPersonYear_amount, `${cost.currency}_per_person_per_year`);
  const values = { each, perYear, range, years, day, people: Math.round(cost.served_people ?? 0) };
  return say(cost.isAtLeast ? 'kit.cost_person_least' : 'kit.cost_person', values);
}

/** What an input that moves a cost is called. */
export function inputWords({ inputId, what }: Cost['swings'][number], { say }: Words): string {
  const [kind = ''] = inputId.split(' ');
  if (kind === 'price') return say('kit.input_price', { what: what ?? '' });
  if (kind === 'life') return say('kit.input_life', { what: what ?? '' });
  if (inputId === 'interest') return say('kit.input_interest');
  if (inputId === 'workingService') return say('kit.input_service');
  return what ?? inputId;
}

const reasons = [
  'noPart',
  'noPrice',
  'onlyLaterPrices',
  'rateMissing',
  'amountUnknown',
  'lifeUnknown',
  'countUnknown',
  'peopleUnknown',
  'interestUnknown',
  'notStated',
] as const;

/** Why something of a cost is not known. */
export function reasonsWords(of: readonly string[], { say }: Words): string {
  return reasons
    .filter((reason) => of.includes(reason))
    .map((reason) => say(`kit.reason_${reason}`))
    .join(', ');
}

/** How the pieces go in one carrier, in a few words. */
export function carriedWords(carried: Carried, { say }: Words): string {
  if (carried.limit_kg === null) return say('kit.no_limit', { carrier: carried.name });
  const left = [...carried.cannotCarry, ...carried.noMass].reduce((sum, { count }) => sum + count, 0);
  const loads = say('kit.loads_of', { carrier: carried.name, count: carried.loads.length });
  return left === 0 ? loads : `${loads} ${say('kit.left', { count: left })}`;
}

/** Pieces, with how many are in one where that is more than one. */
export function pieceWords({ name, each_count, count }: Carried['noMass'][number], { say }: Words): string {
  if (each_count === 1) return say('kit.pieces', { count, name });
  return each_count < 1
    ? say('kit.parts_of_one', { count, name, each: Math.round(1 / each_count) })
    : say('kit.packs', { count, name, each: each_count });
}

/** By how much a piece is over a limit. */
export function overWords(
  { over_kg, over_L, over_m }: Carried['cannotCarry'][number],
  { say, numbers }: Words,
): string {
  return [
    ...(over_kg === null ? [] : [say('kit.too_heavy', { by: numbers.quantity(over_kg, 'kg') })]),
    ...(over_m === null ? [] : [say('kit.too_long', { by: numbers.quantity(over_m, 'm') })]),
    ...(over_L === null ? [] : [say('kit.too_large', { by: numbers.litres(over_L) })]),
  ].join(', ');
}

/** The first sentence of the section: what is to be fitted, what is short, what to order by when, what goes in a container. */
export function leadWords(
  kit: ProgrammeKitAnswer,
  { say, numbers }: Words,
): { readonly first: string; readonly rest: string } {
  const toFit = kit.sites_count - kit.built_count;
  const short = kit.lines.filter(({ short_count }) => (short_count ?? 0) > 0).length;
  const order = firstOrder(kit);
  const parts = [
    ...(short > 0 ? [say('kit.parts_short', { count: short })] : []),
    ...(order === null
      ? []
      : [
          say(order.day < kit.today ? 'kit.order_was' : 'kit.order_by', {
            supplier: order.supplier ?? say('kit.no_supplier'),
            day: numbers.date(order.day),
          }),
        ]),
    ...kitsPerCarrier(kit).map(({ least, most, name }) =>
      say('kit.kits_in', {
        count: most,
        range: least === most ? String(most) : numbers.range({ low: least, high: most }),
        carrier: name,
      }),
    ),
  ];
  const first =
    kit.chosen === null ? say('kit.to_fit', { count: toFit }) : say('kit.trip_lead', { count: kit.chosen.length });
  return { first, rest: parts.length === 0 ? '' : `${parts.join(' ')}` };
}

/** The order that comes first; null where no day is known. */
export function firstOrder({
  suppliers,
}: ProgrammeKitAnswer): { readonly supplier: string | null; readonly day: string } | null {
  const dated = suppliers.flatMap(({ supplier, orderBy }) => (orderBy === null ? [] : [{ supplier, day: orderBy }]));
  return dated.sort((a, b) => a.day.localeCompare(b.day))[0] ?? null;
}

/** How many of the kits go in a container, fewest and most over the sites; where a piece of every kit is too long for it, nothing. */
function kitsPerCarrier(kit: ProgrammeKitAnswer) {
  return kit.carriers
    .filter(({ mode }) => mode === 'shippingContainer')
    .flatMap(({ carrierId, name }) => {
      const counts = kit.sites.flatMap(({ kitsIn }) =>
        kitsIn.flatMap((one) => (one.carrierId === carrierId && one.kits_count !== null ? [one.kits_count] : [])),
      );
      if (counts.length === 0 || Math.max(...counts) === 0) return [];
      return [{ name, least: Math.min(...counts), most: Math.max(...counts) }];
    });
}

/** The parts of the kit of a site, in a sentence. */
export function siteSentence(site: SiteKitAnswer, words: Words): string {
  const { say } = words;
  if (site.isBuilt)
    return site.handOver === null ? say('kit.built') : say('kit.built_on', { day: words.numbers.date(site.handOver) });
  return say('kit.site_lead', { count: site.lines.length, mass: massWords(site.mass_kg, site.noMass_count, words) });
}

/** What all that is short comes to, by currency; at least so much where a part has no price or no count. */
export function allWords(
  suppliers: ProgrammeKitAnswer['suppliers'],
  { say, numbers }: Pick<Words, 'say' | 'numbers'>,
): string {
  const sums = new Map<string, number>();
  for (const { currency, amount } of suppliers.flatMap((one) => one.sums))
    sums.set(currency, (sums.get(currency) ?? 0) + amount);
  const amount = [...sums].map(([currency, sum]) => numbers.money(sum, currency)).join(' + ');
  const isAtLeast = suppliers.some(({ unpriced }) => unpriced.length > 0);
  if (amount === '') return say('kit.all_unknown');
  return say('kit.all_short', { amount: isAtLeast ? say('kit.at_least', { amount }) : amount });
}
