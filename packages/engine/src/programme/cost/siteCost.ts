import {
  type CostFacts,
  calendarDay,
  type DesignSettings,
  engineProblem,
  type PartFacts,
  type Problem,
  type WorkingLine,
} from '../../kernel/index.ts';
import { type MoneyOn, partById } from '../../parts/index.ts';
import { type CartridgeWear, type CountedSet, piecesOfSet } from './cartridgeSets.ts';
import type { CostItem } from './costItem.ts';
import { costSum } from './costsTogether.ts';
import { type CostThrows, type CostThrowsGiven, costThrows } from './costThrows.ts';
import { type Doubtful, doubtful } from './doubtful.ts';
import { realInterest } from './interest.ts';
import { cartridgeItem, type PartPrice, partItem, rowItem } from './items.ts';
import { servedPeople } from './peopleServed.ts';
import { boilingCost, boughtWaterCost, type PersonYearCost, pipedSchemeCost } from './spentNow.ts';
import { wholeLife } from './wholeLife.ts';
import type { WholeLifeCost, WholeLifeGiven } from './wholeLifeCost.ts';

/** A line of a site's kit, as far as its cost goes. */
export interface CostedLine {
  readonly partId: string;
  readonly name: string;
  readonly kind: string;
  /** Null: not known. */
  readonly total_count: number | null;
  /** Of them to have over: bought once, and not renewed with what wears out. Left out: none. */
  readonly spare_count?: number | null;
  /** Is there more of it that nobody could count? */
  readonly isAtLeast: boolean;
  /** What counts it: so many things or metres, and so many of the part for them. Left out: it does not matter. */
  readonly counts?: readonly CountedSet[];
}

/** The people of a site, as they were counted and grow. */
export interface CostPeople {
  readonly counted_people: number | null;
  readonly grows: { readonly growthFraction_per_year: number; readonly countYear: number } | null;
  readonly design_people: number | null;
}

/** What all sites of an analysis share. */
export interface CostMarket {
  readonly settings: DesignSettings;
  readonly parts: readonly PartFacts[];
  readonly costs: readonly CostFacts[];
  readonly money: MoneyOn;
  readonly priceOf: (partId: string) => PartPrice;
  /** Made once, so that a price is the same throw at every site. */
  readonly throws: CostThrows;
}

/** All that a site's cost is made of. */
export interface SiteCostGiven {
  readonly siteId: string;
  /** Of the whole site, whatever stands there already. */
  readonly lines: readonly CostedLine[];
  readonly sets: readonly CartridgeWear[];
  readonly people: CostPeople;
  readonly market: CostMarket;
}

/** What is spent without the programme, or would be. */
export interface CostsBeside {
  readonly boughtWater: PersonYearCost;
  readonly boiling: PersonYearCost;
  readonly pipedScheme: PersonYearCost;
}

/** What a site costs, and what stands beside it. */
export interface SiteCost {
  readonly siteId: string;
  /** Null where no currency or no number of years is stated. */
  readonly cost: WholeLifeCost | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** What a programme costs. */
export interface ProgrammeCost {
  /** Null where no site has a cost. */
  readonly cost: WholeLifeCost | null;
  /** Of those sites alone whose people with working service are known, so that a cost a person can be told; null where there is none. */
  readonly ofServed: WholeLifeCost | null;
  readonly ofServed_count: number;
  readonly sites_count: number;
  /** Sites without a cost at all: they are in no sum. */
  readonly unknown_count: number;
  readonly beside: CostsBeside;
}

/**
 * What is the interest in money that keeps its worth? Where no inflation is stated, interest as it is.
 *
 * @param settings - interest and inflation [fraction/year]
 * @returns interest [fraction/year]; null where none is stated
 * @source fisher-1930, (1 + i) ÷ (1 + f) − 1 (from memory)
 */
export function interestOf(
  settings: Pick<DesignSettings, 'interest_fraction_per_year' | 'inflation_fraction_per_year'>,
): Doubtful | null {
  const { interest_fraction_per_year: interest, inflation_fraction_per_year: inflation } = settings;
  if (interest === null) return null;
  return doubtful('interest', inflation === null ? interest : realInterest(interest, inflation), null, null);
}

/**
 * Makes the store of throws that all sites of a programme share.
 *
 * @param settings - throws [count], seed, years [year], interest and inflation [fraction/year]
 * @returns the store
 * @definition ours: docs/decisions/0257-throws-and-swings.md
 */
export function throwsFor(settings: DesignSettings): CostThrows {
  const given: CostThrowsGiven = {
    ...{ draws: settings.draws, seed: settings.seed, years_count: settings.costYears },
    // A stated cost of capital takes the place of interest.
    interest: interestOf(settings),
  };
  return costThrows(given);
}

/**
 * What does one site cost over its whole life, by heads, a year, and for each person and year of working service?
 *
 * @param given - its kit [count], units in use with the life of their sets [year], people [person], and what all sites share: prices [currency], costs, settings
 * @returns heads and sums [currency/year], range and swings; null where nothing states a currency or the years; problems and working
 * @problem cost.service_turned - low, likely and high share of working service do not rise; the likely one stands alone
 * @problem cost.range_turned - the same of an amount
 * @problem money.rate_missing - a cost is in a currency without a rate
 * @law what is not known never counts as 0
 * @definition ours: docs/methods/cost.md
 */
export function siteCost(given: SiteCostGiven): SiteCost {
  const { siteId, lines, sets, people, market } = given;
  const { settings, money } = market;
  const problems: Problem[] = [];
  if (money.currency === null) return { siteId, cost: null, problems, working: [] };
  const start_people = peopleAtStart(people, calendarDay(money.day).year);
  const growth = people.grows?.growthFraction_per_year ?? 0;
  const years_count = settings.costYears;
  const mean_people =
    start_people === null
      ? null
      : servedPeople({ people: start_people, growth_fraction_per_year: growth, years_count }, 1);
  const rows = market.costs
    .filter((row) => row.siteId === null || row.siteId === siteId)
    .map((row) => rowItem(row, money, { start_people, mean_people }));
  problems.push(...rows.flatMap((row) => row.problems));
  const items = [
    ...kitItems(lines, market),
    ...setItems(siteId, setsWorn(sets, lines), lines, market),
    ...rows.map(({ item }) => item),
  ];
  const { interest_fraction_per_year: nominal, inflation_fraction_per_year: inflation } = settings;
  const all: WholeLifeGiven = {
    ...{ items, currency: money.currency, day: money.day, years_count, interest: interestOf(settings) },
    ...(nominal === null || inflation === null
      ? {}
      : { interestFrom: { interest_fraction_per_year: nominal, inflation_fraction_per_year: inflation } }),
    ...{ people: start_people, growth_fraction_per_year: growth, design_people: people.design_people },
    ...{ workingService: serviceOf(settings, problems), draws: settings.draws, seed: settings.seed },
  };
  const { finding, problems: found, working } = wholeLife(all, market.throws);
  return { siteId, cost: finding, problems: [...problems, ...found], working };
}

function peopleAtStart({ counted_people, grows }: CostPeople, year: number): number | null {
  if (counted_people === null || grows === null) return counted_people;
  return counted_people * (1 + grows.growthFraction_per_year) ** Math.max(0, year - grows.countYear);
}

/** The kit: each part once for what is counted of it, once for its spares, which lie unworn, and once more for what is not counted. A set of cartridges is renewed by the wear of its unit. */
function kitItems(lines: readonly CostedLine[], { parts, priceOf }: CostMarket): readonly CostItem[] {
  return lines.flatMap(({ partId, name, kind, total_count, spare_count, isAtLeast }) => {
    const life_years = partById(parts, partId)?.kit.life_years ?? null;
    const part = { partId, name, life_years, isRenewed: kind !== 'cartridge', ...priceOf(partId) };
    if (total_count === null) return [partItem({ ...part, pieces_count: null })];
    const spares = Math.min(total_count, spare_count ?? 0);
    const inUse = total_count - spares;
    return [
      ...(inUse > 0 || spares === 0 ? [partItem({ ...part, pieces_count: inUse })] : []),
      ...(spares > 0 ? [partItem({ ...part, isRenewed: false, pieces_count: spares })] : []),
      ...(isAtLeast ? [partItem({ ...part, pieces_count: null })] : []),
    ];
  });
}

/** A unit or a cartridge in the kit of which no set is told wears out too: nobody knows how long a set lasts. */
function setsWorn(sets: readonly CartridgeWear[], lines: readonly CostedLine[]): readonly CartridgeWear[] {
  const unit = lines.find(({ kind }) => kind === 'treatmentUnit' || kind === 'cartridge');
  return sets.length > 0 || unit === undefined
    ? sets
    : [{ unitSerial: unit.partId, partId: null, life: null, cartridges_count: null }];
}

function setItems(
  siteId: string,
  sets: readonly CartridgeWear[],
  lines: readonly CostedLine[],
  { parts, priceOf }: CostMarket,
): readonly CostItem[] {
  return sets.map((set) => {
    const { unitSerial, partId, life } = set;
    const name = partId === null ? unitSerial : (partById(parts, partId)?.name ?? partId);
    const price: PartPrice = partId === null ? { amount: null, reason: 'noPart' } : priceOf(partId);
    return cartridgeItem({
      unitId: `${siteId} ${unitSerial}`,
      partId: partId ?? unitSerial,
      name,
      pieces_count: piecesOfSet(
        set,
        lines.find((line) => line.partId === partId),
      ),
      life,
      ...price,
    });
  });
}

function serviceOf(settings: DesignSettings, problems: Problem[]): Doubtful | null {
  const {
    workingService_fraction: likely,
    workingServiceLow_fraction: low,
    workingServiceHigh_fraction: high,
  } = settings;
  if (likely === null) return null;
  const ranged = doubtful('workingService', likely, low, high);
  if (ranged === null) problems.push(engineProblem('cost.service_turned', { file: 'settings.json' }));
  return ranged ?? doubtful('workingService', likely, null, null);
}

/**
 * What do people spend on water today, and what would a piped scheme cost? Only of what the programme states.
 *
 * @param settings - water bought and boiled [L/person/day], prices [currency/L, currency/kg], fuel and stove, the piped scheme [currency/person]
 * @param currency - the programme's [text]
 * @returns each cost [currency/person/year]; null with what is missing
 * @definition ours: docs/methods/cost.md
 */
export function costsBeside(settings: DesignSettings, currency: string): CostsBeside {
  const bought = {
    litres_L_per_person_per_day: settings.boughtWater_L_per_person_per_day,
    price_per_L: settings.boughtWater_amount_per_L,
  };
  const boiled = {
    litres_L_per_person_per_day: settings.boiledWater_L_per_person_per_day,
    stove_fraction: settings.stoveEfficiency_fraction,
    fuelHeat_MJ_per_kg: settings.fuelHeat_MJ_per_kg,
    fuelPrice_per_kg: settings.fuel_amount_per_kg,
  };
  const piped = {
    amount_per_person: settings.pipedScheme_amount_per_person,
    life_years: settings.pipedScheme_years,
    yearly_per_person: settings.pipedScheme_amount_per_person_per_year,
  };
  return {
    boughtWater: boughtWaterCost(bought, currency),
    boiling: boilingCost(boiled, currency),
    pipedScheme: pipedSchemeCost(piped, interestOf(settings)?.likely ?? null, currency),
  };
}

/**
 * What does the whole programme cost? The sum of its sites.
 *
 * @param sites - each site's cost [currency/year], one after the other
 * @param market - settings and money that they share
 * @returns the sum [currency/year], range and swings; the same of sites whose people are known; how many sites are in each and in none [count]; what stands beside it [currency/person/year]
 * @law the programme is the sum of its sites
 * @definition ours: docs/methods/cost.md
 */
export function programmeCost(
  sites: Iterable<SiteCost>,
  market: Pick<CostMarket, 'settings' | 'money'>,
): ProgrammeCost {
  const [all, served] = [costSum(), costSum()];
  let [sites_count, unknown_count, ofServed_count] = [0, 0, 0];
  for (const { cost } of sites) {
    sites_count++;
    if (cost === null) unknown_count++;
    else all.add(cost);
    if (cost === null || cost.served_people === null) continue;
    ofServed_count++;
    served.add(cost);
  }
  const beside = costsBeside(market.settings, market.money.currency ?? '');
  return { cost: all.sum(), ofServed: served.sum(), ofServed_count, sites_count, unknown_count, beside };
}
