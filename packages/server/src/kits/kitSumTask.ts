import {
  type Carrier,
  isoDay,
  kitsBought,
  loadsBy,
  noRollout,
  type Piece,
  type ProgrammeFacts,
  piecesOfKit,
  type ReadyKit,
  readIsoDay,
  readyKit,
  stowedIn,
} from '@eavewell/engine';
import { type Language, loadLanguage } from '@eavewell/words';
import { type KitsKept, readKits, readSiteKits, type SiteKitKept } from './keptKits.ts';
import {
  besideAnswer,
  carriedAnswer,
  carrierAnswer,
  costAnswer,
  dayOrNull,
  type ProgrammeKitAnswer,
  problemsIn,
  siteOfKits,
} from './kitAnswers.ts';

/** What is asked of the kits of a programme. */
export interface KitSumAsked {
  /** Where they are kept. */
  readonly folder: string;
  readonly language: string;
  /** The sites of a trip, in the order they are come to; null: all. */
  readonly sites: readonly string[] | null;
  /** The day all is needed on, year-month-day; null: none is set. */
  readonly neededOn: string | null;
}

/** Sums the kits of a programme or a trip, and says what is to be bought: the answer as JSON. */
export async function kitSumTask({ folder, language: tag, sites, neededOn }: KitSumAsked): Promise<string> {
  const kept = await readKits(folder);
  const bySite = new Map((kept?.sites ?? []).map((site) => [site.siteId, site]));
  const places = sites === null ? (kept?.sites ?? []) : sites.flatMap((siteId) => bySite.get(siteId) ?? []);
  const found = await readSiteKits(folder, places);
  if (kept === null || found === null) throw new Error('the kits that are kept cannot be read');
  const language = await loadLanguage(tag);
  const ready = marketOf(kept);
  const needed_day = neededOn === null ? null : readIsoDay(neededOn);
  const bought = kitsBought(
    found.map(({ kit }) => kit),
    ready,
    needed_day,
  );
  const { kit } = kept.market;
  const answer: ProgrammeKitAnswer = {
    ...{ version: kept.version, designVersion: kept.designVersion, currency: kept.currency },
    ...{ pricesOn: dayOrNull(kept.pricesOn), today: isoDay(kept.today), neededOn: dayOrNull(needed_day) },
    carriers: kit.carriers.map(carrierAnswer),
    sites: kept.sites.map(siteOfKits),
    chosen: sites === null ? null : places.map(({ siteId }) => siteId),
    unknownSites: (sites ?? []).filter((siteId) => !bySite.has(siteId)),
    ...{ sites_count: bought.sites_count, built_count: bought.built_count, ...linesOf(bought) },
    problems: problemsIn([...kept.problems, ...bought.problems], language),
    cost: costAnswer(kept.cost.cost, kept.market),
    costServed: costAnswer(kept.cost.ofServed, kept.market),
    costServed_count: kept.cost.ofServed_count,
    ...{ costSites_count: kept.cost.sites_count, costUnknown_count: kept.cost.unknown_count },
    beside: besideAnswer(kept.cost.beside, language),
    trip: sites === null ? null : tripOf(found, ready, kit.carriers, language),
  };
  return JSON.stringify(answer);
}

/** The market of kits that are kept, without its sites. */
export function marketOf({ market, today }: KitsKept): ReadyKit {
  const facts: ProgrammeFacts = { ...market, sites: [], gauges: [], rollout: noRollout };
  return readyKit(facts, today);
}

function linesOf({ lines, suppliers }: ReturnType<typeof kitsBought>): Pick<ProgrammeKitAnswer, 'lines' | 'suppliers'> {
  return {
    lines: lines.map(({ bySite: _, orderBy, price, ...line }) => ({
      ...line,
      orderBy: dayOrNull(orderBy),
      price: price && { amount: price.amount, currency: price.currency },
    })),
    suppliers: suppliers.map(({ orderBy, partIds, sums, unpriced, supplier }) => ({
      ...{ supplier, partIds: [...partIds], sums: [...sums], unpriced: [...unpriced], orderBy: dayOrNull(orderBy) },
    })),
  };
}

const massOf = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, { mass_kg, count }) => sum + (mass_kg ?? 0) * count, 0);

function tripOf(
  sites: readonly SiteKitKept[],
  ready: ReadyKit,
  carriers: readonly Carrier[],
  language: Language,
): NonNullable<ProgrammeKitAnswer['trip']> {
  const stops = sites.map(({ siteId, kit }) => ({ siteId, pieces: piecesOfKit(kit, ready) }));
  const all = stops.flatMap(({ pieces }) => pieces);
  const massById = new Map(all.map((piece) => [`${piece.partId} ${piece.each_count}`, piece.mass_kg]));
  const taking = carriers.filter(({ mode }) => mode === 'boat' || mode === 'truck');
  return {
    mass_kg: massOf(all),
    noMass_count: all.reduce((sum, { mass_kg, count }) => sum + (mass_kg === null ? count : 0), 0),
    carried: taking.map((carrier) => {
      const loads = loadsBy(all, carrier, ready);
      const stowed = stowedIn(stops, loads).map(({ stopId, partId, name, each_count, count, isFragile, rules }) => ({
        ...{ siteId: stopId, partId, name, each_count, count, isFragile, rules: [...rules] },
        mass_kg: massById.get(`${partId} ${each_count}`) ?? null,
      }));
      return { ...carriedAnswer(loads, carrier.name, language), stowed };
    }),
  };
}
