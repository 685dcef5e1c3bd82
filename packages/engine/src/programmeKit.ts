import type {
  Carrier,
  DayIndex,
  DesignSettings,
  PartFacts,
  Problem,
  ProgrammeFacts,
  SiteDesign,
  SiteFacts,
} from './kernel/index.ts';
import { moneyOn, type PriceFound } from './parts/index.ts';
import { designSites, type ReadyProgramme, wearOf } from './plan.ts';
import {
  type CartridgeWear,
  type CostMarket,
  cartridgeSets,
  type ProgrammeCost,
  partPrice,
  programmeCost,
  type SetDates,
  type SiteCost,
  siteCost,
  throwsFor,
} from './programme/cost/index.ts';
import { type KitMarket, kitOfSite, type ProgrammeKit, programmeKit, type SiteKit } from './programme/kit/index.ts';
import {
  type CarrierLoads,
  type KitsFound,
  kitsIn,
  loadsOf,
  type Piece,
  piecesOf,
  type Stowed,
  stowOrder,
} from './programme/loads/index.ts';
import { marketOn } from './remedies/index.ts';
import { headcount } from './water/people/index.ts';

/** What the kits, loads and costs of all sites share. */
export interface ReadyKit extends KitMarket {
  readonly facts: ProgrammeFacts;
  readonly parts: readonly PartFacts[];
  readonly settings: DesignSettings;
  readonly costs: CostMarket;
  /** What one of a part costs, in the programme's currency where a rate allows. */
  readonly priceOf: (partId: string) => PriceFound;
  /** The day prices are of; null where there is no price. */
  readonly pricesOn: DayIndex | null;
  /** What prices and rates brought up, each thing once. */
  readonly problems: readonly Problem[];
}

/**
 * Makes a programme ready for kits, loads and costs: prices in one currency on one day, and a store of throws that all sites share.
 *
 * @param facts - the programme
 * @param today - the day it is asked on [day]; null: not known
 * @param pricesOn - the day whose prices count [day]; null: the latest there is a price of, and without any the latest there is a cost of
 * @returns what every site needs
 * @definition ours
 */
export function readyKit(facts: ProgrammeFacts, today: DayIndex | null, pricesOn: DayIndex | null = null): ReadyKit {
  const { settings, parts, prices, kit } = facts;
  const market = marketOn(parts, prices, pricesOn, { settings, kit });
  // Without a price of a part, money is that of the latest cost: so nothing is moved to a day that nobody priced.
  const day = market.day ?? pricesOn ?? latestDay(kit.costs) ?? today ?? 0;
  const money = moneyOn(settings, kit, day, prices.length > 0 ? prices : kit.costs);
  const priceOf = (partId: string): PriceFound => market.prices.get(partId) ?? { price: null, reason: 'noPrice' };
  const costs: CostMarket = {
    ...{ settings, parts, costs: kit.costs, money, throws: throwsFor(settings) },
    priceOf: (partId) => partPrice(market.prices.get(partId), money.currency),
  };
  return { facts, parts, kit, settings, today, costs, priceOf, pricesOn: market.day, problems: market.problems };
}

const latestDay = (costs: readonly { readonly priceDate: DayIndex }[]): DayIndex | null =>
  costs.length === 0 ? null : Math.max(...costs.map(({ priceDate }) => priceDate));

/**
 * Which parts does a site need that are not there yet?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready for kits
 * @returns a line for each part [count]; none where the site is handed over
 * @definition ours: docs/methods/kit.md
 */
export function kitAtSite(site: SiteFacts, ready: ReadyKit): SiteKit {
  return kitOfSite(site, ready);
}

/**
 * Which parts did, or will, a site take as a whole, whatever stands there already? What a cost is reckoned from.
 *
 * @param site - the site's facts
 * @param ready - the programme, ready for kits
 * @returns a line for each part [count]
 * @definition ours: docs/decisions/0275-what-a-site-costs-is-of-the-whole-site.md
 */
export function wholeKitAtSite(site: SiteFacts, ready: ReadyKit): SiteKit {
  const wanted = <T>(all: readonly T[]): readonly T[] => all.map((one) => ({ ...one, isBuilt: false }));
  const units = site.treatment.units.map((unit) => ({ ...unit, installedOn: null }));
  return kitOfSite(
    {
      ...site,
      handOverDay: null,
      gutters: wanted(site.gutters),
      downpipes: wanted(site.downpipes),
      tanks: wanted(site.tanks),
      pipes: wanted(site.pipes),
      treatment: { ...site.treatment, units },
    },
    ready,
  );
}

/**
 * The pieces of kits, as they are carried.
 *
 * @param kit - lines with how many of each part [count]
 * @param ready - the programme, ready for kits
 * @returns pieces [kg, m, L]
 * @definition ours: docs/methods/loads.md
 */
export function piecesOfKit(kit: Pick<SiteKit, 'lines'>, ready: ReadyKit): readonly Piece[] {
  return piecesOf(kit.lines, ready.parts);
}

/**
 * In which loads does a carrier take the pieces?
 *
 * @param pieces - what is carried [kg, m, L]
 * @param carrier - its limits [kg, m, L]
 * @param ready - the programme, ready for kits
 * @returns loads in the order they go, what cannot be carried, problems
 * @definition ours: docs/methods/loads.md
 */
export function loadsBy(pieces: readonly Piece[], carrier: Carrier, ready: ReadyKit): CarrierLoads {
  return loadsOf(pieces, carrier, ready.facts.kit.keptApart);
}

/**
 * In which order is a carrier loaded for several stops, with what it takes? What is too much for it, and what nobody weighed, stays behind.
 *
 * @param stops - sites in the order they are come to, with the pieces for each [kg]
 * @param loads - how the pieces of all stops together go in the carrier
 * @returns what is put in, the first first; nothing where nobody stated what the carrier holds
 * @law nothing is put in that the carrier cannot take
 * @definition ours: docs/decisions/0249-order-of-loads.md
 */
export function stowedIn(
  stops: readonly { readonly siteId: string; readonly pieces: readonly Piece[] }[],
  { limits, cannotCarry, noMass }: CarrierLoads,
): readonly Stowed[] {
  const keyOf = ({ partId, each_count }: Pick<Piece, 'partId' | 'each_count'>) => `${partId} ${each_count}`;
  const left = new Set([...cannotCarry, ...noMass].map(keyOf));
  return stowOrder(
    stops.map(({ siteId, pieces }) => ({
      stopId: siteId,
      pieces: limits === null ? [] : pieces.filter((piece) => !left.has(keyOf(piece))),
    })),
  );
}

/**
 * In which order is what several stops need put aboard, whatever carries it?
 *
 * @param stops - sites in the order they are come to, with the pieces for each [kg]
 * @returns what is put in, the first first
 * @law every piece is put in once
 * @definition ours: docs/decisions/0249-order-of-loads.md
 */
export function stowedForStops(
  stops: readonly { readonly siteId: string; readonly pieces: readonly Piece[] }[],
): readonly Stowed[] {
  return stowOrder(stops.map(({ siteId, pieces }) => ({ stopId: siteId, pieces })));
}

/** How many whole kits go into a carrier; nothing where that cannot be told, with the problems. */
export interface KitsCarried {
  readonly carrier: Carrier;
  readonly found: KitsFound | null;
  readonly problems: readonly Problem[];
}

/**
 * How many whole kits like this go in each container, on each pallet and truck?
 *
 * @param pieces - one kit [kg, m, L]
 * @param ready - the programme, ready for kits
 * @returns kits [count] for each carrier of those modes
 * @definition ours: docs/decisions/0250-kits-in-a-container.md
 */
export function kitsCarried(pieces: readonly Piece[], ready: ReadyKit): readonly KitsCarried[] {
  const { carriers, keptApart } = ready.facts.kit;
  return carriers
    .filter(({ mode }) => mode === 'shippingContainer' || mode === 'pallet' || mode === 'truck')
    .map((carrier) => {
      const found = kitsIn(pieces, carrier, keptApart);
      return { carrier, found: found.ok ? found.value : null, problems: found.problems };
    });
}

/**
 * How long does each set of cartridges of a site last?
 *
 * @param site - the site's facts: its units, and the cartridges in them
 * @param wear - what was found of its sets, days when they end [day]
 * @param ready - the programme, ready for kits
 * @returns units with the part that is renewed and how long a set lasts [year]; null where there is no date
 * @definition ours: docs/methods/cost.md
 */
export function setsOf(
  site: Pick<SiteFacts, 'treatment'>,
  wear: { readonly finding: readonly SetDates[] | null },
  ready: ReadyKit,
): readonly CartridgeWear[] {
  return cartridgeSets(site.treatment, ready.parts, wear.finding);
}

/**
 * The same site as if its units were new today and nothing had been read of them: how long a set of a unit that is not there yet would
 * last is then asked as that of any other.
 *
 * @param site - the site's facts
 * @param today - the day [day]
 * @returns the site; itself where its units are there
 * @definition ours
 */
export function asInstalled(site: SiteFacts, today: DayIndex): SiteFacts {
  const { units } = site.treatment;
  if (units.every(({ installedOn }) => installedOn !== null)) return site;
  const from = site.handOverDay !== null && site.handOverDay > today ? site.handOverDay : today;
  return {
    ...site,
    treatment: { ...site.treatment, units: units.map((unit) => ({ ...unit, installedOn: unit.installedOn ?? from })) },
  };
}

/**
 * The days between which each set of cartridges of a site lasts, that of a unit which is not there yet as if it were new today: what the
 * cost of a site is reckoned from, whoever asks.
 *
 * @param site - the site's facts
 * @param ready - the programme, ready: rain [mm], settings, the day it is asked on
 * @param known - what is worked out already: the site's design, and when its cartridges are due [day]
 * @returns for each unit the day its set is new and the days it ends on [day]; null where the site has no unit in use
 * @definition ours: docs/decisions/0318-one-cost-of-a-site-that-is-not-built.md
 */
export function setDatesAt(
  site: SiteFacts,
  ready: ReadyProgramme,
  known?: { readonly design: SiteDesign; readonly wear: { readonly finding: readonly SetDates[] | null } },
): readonly SetDates[] | null {
  const { today = null } = ready;
  const installed = today === null ? site : asInstalled(site, today);
  if (installed === site && known !== undefined) return datesOnly(known.wear.finding);
  // What presses the water through counts where a flow was read without its pressure, and is asked of the design then alone.
  const isPressureAsked = site.treatment.flowReadings.some(({ pressure_kPa }) => pressure_kPa === null);
  const [designed] = isPressureAsked && known === undefined ? designSites([site], ready) : [];
  const design = known?.design ?? designed;
  return datesOnly(wearOf(installed, ready, design).finding);
}

const datesOnly = (finding: readonly SetDates[] | null): readonly SetDates[] | null =>
  finding?.map(({ serial, setSince, endsOn }) => ({ serial, setSince, endsOn })) ?? null;

/**
 * What does a site cost over its life?
 *
 * @param site - the site's facts
 * @param sets - its units and how long their sets last [year]
 * @param ready - the programme, ready for kits
 * @returns heads and sums [currency/year], range and swings, problems and working
 * @definition ours: docs/methods/cost.md
 */
export function costAtSite(site: SiteFacts, sets: readonly CartridgeWear[], ready: ReadyKit): SiteCost {
  const { counted_people, design_people, grows } = headcount(site, ready.settings);
  const { lines } = wholeKitAtSite(site, ready);
  const people = { counted_people, design_people, grows };
  return siteCost({ siteId: site.siteId, lines, sets, people, market: ready.costs });
}

/**
 * What do the kits of several sites come to, and what has to be bought?
 *
 * @param kits - each site's, each site once
 * @param ready - the programme, ready for kits
 * @param neededOn - the day all is needed on [day]; null: no day is set
 * @returns a line for each part, orders by supplier, problems
 * @definition ours: docs/methods/kit.md
 */
export function kitsBought(kits: readonly SiteKit[], ready: ReadyKit, neededOn: DayIndex | null): ProgrammeKit {
  return programmeKit(kits, ready, ready.priceOf, neededOn);
}

/**
 * What does the whole programme cost?
 *
 * @param sites - each site's cost
 * @param ready - the programme, ready for kits
 * @returns the sum [currency/year], and what stands beside it
 * @definition ours: docs/methods/cost.md
 */
export function costOfProgramme(sites: Iterable<SiteCost>, ready: ReadyKit): ProgrammeCost {
  return programmeCost(sites, ready.costs);
}
