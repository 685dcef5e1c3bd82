import {
  type BarPlan,
  type Carrier,
  type CarrierLoads,
  type CostReason,
  type DayIndex,
  isoDay,
  type KitLine,
  type KitsCarried,
  type ProgrammeCost,
  type ProgrammeKit,
  type ProgrammeKitLine,
  type ReadyKit,
  type SiteCost,
  type SiteFacts,
  type SiteKit,
  type Stowed,
} from '@eavewell/engine';
import { type KitReport, kitSchemaVersion, type SiteKitLineReport, type SiteKitReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { type NameOf, programmeCostReport, wholeLifeCostReport } from './kitCostReport.ts';
import { carrierLoadsReport, kitsCarriedReport, loadCountsReport, stowedReport } from './kitLoadsReport.ts';
import { problemReport } from './problemReport.ts';
import { workingReport } from './siteReport.ts';

/** What a report of kits was asked for. */
export interface KitAsked {
  /** Null: all. */
  readonly sites: readonly string[] | null;
  /** The carrier whose loads are told; null: each. */
  readonly carrier: string | null;
}

/** What was found of one site. */
export interface SiteKitGiven {
  readonly site: Pick<SiteFacts, 'siteId' | 'name'>;
  readonly kit: SiteKit;
  /** Loads of each carrier that is asked after. */
  readonly loads: readonly CarrierLoads[];
  readonly cost: SiteCost;
}

/** What was found of all of them. */
export interface KitGiven {
  readonly eavewell: string;
  readonly today: DayIndex;
  readonly neededOn: DayIndex | null;
  readonly asked: KitAsked;
  readonly ready: ReadyKit;
  readonly bought: ProgrammeKit;
  /** Of each site with a kit, how many go into each container, pallet or truck. */
  readonly carried: readonly (readonly KitsCarried[])[];
  readonly trip: {
    readonly stops: readonly string[];
    readonly carriers: readonly { readonly loads: CarrierLoads; readonly stowed: readonly Stowed[] }[];
  } | null;
  readonly cost: ProgrammeCost;
  readonly sites: readonly SiteKitReport[];
}

/** Parts and spendings by their names. */
function namesOf({ parts, facts }: ReadyKit): NameOf {
  const names = new Map<string, string>();
  for (const { costId, what } of facts.kit.costs) names.set(costId, what);
  for (const { partId, name } of parts) names.set(partId, name);
  return (id) => names.get(id) ?? id;
}

/**
 * One site's kit, loads and cost as the report has them.
 *
 * @param given - what was found
 * @param ready - the programme, ready for kits
 * @param full - which parts are told in full: its loads piece by piece, its working
 * @param language - of its sentences
 * @returns the report
 * @definition ours
 */
export function siteKitReport(
  { site, kit, loads, cost }: SiteKitGiven,
  ready: ReadyKit,
  full: { readonly loads: boolean; readonly working: boolean },
  language: Language,
): SiteKitReport {
  const problems = [...kit.problems, ...cost.problems];
  return {
    ...{ siteId: site.siteId, name: site.name, isBuilt: kit.isBuilt },
    lines: kit.lines.map((line) => lineReport(line, language)),
    loadCounts: loads.map(loadCountsReport),
    loads: full.loads ? loadsReport(loads, ready, language) : null,
    cost: cost.cost && wholeLifeCostReport(cost.cost, namesOf(ready), language),
    problems: problems.map((problem) => problemReport(problem, language)),
    working: full.working ? [...kit.working, ...cost.working].map((line) => workingReport(line, language)) : null,
  };
}

function loadsReport(loads: readonly CarrierLoads[], { facts }: ReadyKit, language: Language) {
  const carriers = new Map(facts.kit.carriers.map((one): [string, Carrier] => [one.carrierId, one]));
  return loads.map((found) => carrierLoadsReport(carriers.get(found.carrierId)!, found, language));
}

function lineReport(line: KitLine, language: Language): SiteKitLineReport {
  const { partId, name, kind, countedIn, needed_count, spare_count, total_count, isAtLeast, from } = line;
  return {
    ...{ partId, name, kind, countedIn, needed_count, spare_count, total_count, isAtLeast, from },
    ruleIds: [...line.ruleIds],
    cuts: line.cuts && cutsReport(line.cuts, language),
  };
}

function cutsReport(plan: BarPlan, { say, numbers }: Language): NonNullable<SiteKitLineReport['cuts']> {
  return {
    ...{ bars_count: plan.bars_count, leastBars_count: plan.bound_count, joints_count: plan.joints_count },
    bars: plan.bars.map(({ bars_count, cuts, offcut_m }) => ({
      ...{ bars_count, offcut_m },
      cuts: cuts.map(({ runId, length_m }) => ({ runId, length_m })),
      said: say('kitReport.bar', {
        bars: bars_count,
        cuts: cuts
          .map(({ runId, length_m }) => say('kitReport.cut', { run: runId, length: numbers.quantity(length_m, 'm') }))
          .join(', '),
        ...{ isLeft: offcut_m > 0 ? 'yes' : 'no', offcut: numbers.quantity(offcut_m, 'm') },
      }),
    })),
  };
}

const dayOrNull = (day: DayIndex | null) => (day === null ? null : isoDay(day));

function partReport(line: ProgrammeKitLine, { say }: Language): KitReport['lines'][number] {
  const { bySite, orderBy, price, reason, ...figures } = line;
  return {
    ...figures,
    sites_count: bySite.length,
    orderBy: dayOrNull(orderBy),
    price: price && { amount: price.amount, currency: price.currency },
    // Prices have these reasons alone, whatever the type says.
    noPrice: reason === null ? null : say(`kitReport.reason.${reason as CostReason}`),
  };
}

/**
 * Kits, loads and costs of sites as the report has them.
 *
 * @param given - what was found
 * @param language - of its sentences
 * @returns the report
 * @definition ours
 */
export function kitReport(given: KitGiven, language: Language): KitReport {
  const { ready, bought, asked, trip } = given;
  const { settings, kit } = ready.facts;
  const large = kit.carriers.filter(({ carrierId }) =>
    given.carried.some((all) => all.some((one) => one.carrier.carrierId === carrierId)),
  );
  return {
    ...{ eavewell: given.eavewell, schema: kitSchemaVersion, programme: settings.programme },
    ...{ day: isoDay(given.today), neededOn: dayOrNull(given.neededOn) },
    asked: { sites: asked.sites && [...asked.sites], carrier: asked.carrier },
    ...{ rules_count: kit.rules.length, built_count: bought.built_count },
    lines: bought.lines.map((line) => partReport(line, language)),
    suppliers: bought.suppliers.map(({ supplier, partIds, sums, unpriced, orderBy }) => ({
      ...{ supplier, partIds: [...partIds], sums: sums.map((sum) => ({ ...sum })), unpriced: [...unpriced] },
      orderBy: dayOrNull(orderBy),
    })),
    kitsCarried: kitsCarriedReport(given.carried, large, language),
    trip: trip && {
      stops: [...trip.stops],
      carriers: trip.carriers.map(({ loads, stowed }) => ({
        loads: loadsReport([loads], ready, language)[0]!,
        stowed: stowedReport(stowed, language),
      })),
    },
    sites: [...given.sites],
    cost: programmeCostReport(given.cost, namesOf(ready), language),
    problems: [...ready.problems, ...bought.problems].map((problem) => problemReport(problem, language)),
  };
}
