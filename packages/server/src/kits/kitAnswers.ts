import {
  type Carrier,
  type CarrierLoads,
  type CostsBeside,
  type DayIndex,
  type HeadCost,
  isoDay,
  type KitLine,
  type PartFacts,
  type Problem,
  type WorkingLine,
} from '@eavewell/engine';
import { problemReport, workingReport } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { z } from 'zod';
import type * as schemas from '../http/kitAnswerSchemas.ts';
import type { KitsKept, SiteKitKept, SiteOfKits, WholeCostKept } from './keptKits.ts';

export type ProgrammeKitAnswer = z.infer<typeof schemas.programmeKitAnswer>;
export type SiteKitAnswer = z.infer<typeof schemas.siteKitAnswer>;
type CarriedAnswer = SiteKitAnswer['carried'][number];
type CostAnswer = NonNullable<SiteKitAnswer['cost']>;

export const dayOrNull = (day: DayIndex | null): string | null => (day === null ? null : isoDay(day));
const workingIn = (lines: readonly WorkingLine[], language: Language) =>
  lines.map((line) => workingReport(line, language));
export const problemsIn = (problems: readonly Problem[], language: Language) =>
  problems.map((problem) => problemReport(problem, language));

/** What is told of a carrier beside its loads. */
export const carrierAnswer = ({
  carrierId,
  name,
  mode,
  limit_kg,
  longest_m,
  freeboard_cm,
  freeboardEmpty_cm,
  leastFreeboard_cm,
  limitSetBy,
}: Carrier): SiteKitAnswer['carriers'][number] => ({
  ...{ carrierId, name, mode, limit_kg, longest_m, freeboard_cm, freeboardEmpty_cm, leastFreeboard_cm },
  limitSetBy,
});

type Named = CarriedAnswer['noMass'][number];
const named = ({ partId, name, each_count, count }: Named): Named => ({ partId, name, each_count, count });

/** How a kit goes in one carrier. */
export function carriedAnswer(loads: CarrierLoads, name: string, language: Language): CarriedAnswer {
  return {
    ...{ carrierId: loads.carrierId, name, mode: loads.mode },
    ...{ limit_kg: loads.limits?.load_kg ?? null, longest_m: loads.limits?.longest_m ?? null },
    loads: loads.loads.map(({ carriedBy, mass_kg, bulk_L, longest_m, isFragile, pieces }) => ({
      ...{ carriedBy, mass_kg, bulk_L, longest_m, isFragile },
      pieces: pieces.map(named),
    })),
    ...{ leastLoads_count: loads.leastLoads_count, isLeast: loads.isLeast },
    cannotCarry: loads.cannotCarry.map((one) => ({
      ...named(one),
      ...{ over_kg: one.over_kg, over_L: one.over_L, over_m: one.over_m },
    })),
    ...{ noMass: loads.noMass.map(named), cautions: [...loads.cautions] },
    problems: problemsIn(loads.problems, language),
  };
}

/** A cost a year for each person. */
const perPerson = ({ perYear_amount, served_people }: { perYear_amount: number; served_people: number | null }) => ({
  ...{ perYear_amount, served_people },
  perPersonYear_amount: served_people !== null && served_people > 0 ? perYear_amount / served_people : null,
});

const headAnswer = (head: HeadCost): CostAnswer['heads'][number] => ({ ...head, reasons: [...head.reasons] });

/** Inputs told of those that move a cost: the widest. Ours. */
const mostSwings = 8;

/** A whole-life cost, with what its inputs are called. */
export function costAnswer(cost: WholeCostKept | null, market: KitsKept['market']): CostAnswer | null {
  if (cost === null) return null;
  const { currency, years_count, isAtLeast, perYear_amount, total_amount, presentValue_amount, served_people } = cost;
  const { perYearSpread_amount, perPersonYearSpread_amount, perPersonYear_amount } = cost;
  const { design_people, perDesignPerson_amount } = cost;
  return {
    ...{ currency, day: isoDay(cost.day), years_count, isAtLeast, perYear_amount, total_amount, presentValue_amount },
    ...{ perYearSpread_amount, served_people, perPersonYear_amount, perPersonYearSpread_amount },
    ...{ design_people, perDesignPerson_amount, heads: cost.heads.map(headAnswer) },
    swings: cost.swings.slice(0, mostSwings).map(({ inputId, low, high }) => ({
      ...{ inputId, what: whatOf(inputId, market), low: perPerson(low), high: perPerson(high) },
    })),
  };
}

/** What an input is called: the part, or what is paid for; null where it needs no name. */
function whatOf(inputId: string, { parts, kit }: KitsKept['market']): string | null {
  const [, ...rest] = inputId.split(' ');
  // The life of the set of one unit: its part, and where it is.
  const [id = '', place] = rest.join(' ').split(' @');
  if (id === '') return null;
  const cost = kit.costs.find(({ costId }) => costId === id);
  const name = parts.find(({ partId }) => partId === id)?.name ?? cost?.what ?? id;
  return place === undefined ? name : `${name} (${place})`;
}

/** What is spent without the programme, or would be. */
export function besideAnswer(beside: CostsBeside, language: Language): SiteKitAnswer['beside'] {
  const one = ({ perPersonYear_amount, missing, working }: CostsBeside['boiling']) => ({
    ...{ perPersonYear_amount, missing: [...missing], working: workingIn(working, language) },
  });
  return {
    boughtWater: one(beside.boughtWater),
    boiling: one(beside.boiling),
    pipedScheme: one(beside.pipedScheme),
  };
}

/** A site among all of them. */
export function siteOfKits(site: SiteOfKits): ProgrammeKitAnswer['sites'][number] {
  const { from_bytes: _, length_bytes: __, handOverDay, loads, kitsIn, ...rest } = site;
  return { ...rest, handOver: dayOrNull(handOverDay), loads: [...loads], kitsIn: [...kitsIn] };
}

type PriceOf = (partId: string) => { readonly price: { readonly amount: number; readonly currency: string } | null };

function lineAnswer(line: KitLine, parts: readonly PartFacts[], priceOf: PriceOf, language: Language) {
  const { partId, name, kind, countedIn, needed_count, spare_count, total_count, isAtLeast, from, cuts } = line;
  const price = priceOf(partId).price;
  return {
    ...{ partId, name, kind, countedIn, needed_count, spare_count, total_count, isAtLeast, from },
    ...{ ruleIds: [...line.ruleIds], countedBy: [...new Set(line.counts.map(({ countedBy }) => countedBy))] },
    price: price && { amount: price.amount, currency: price.currency },
    cuts: cuts && {
      bar_m: parts.find((part) => part.partId === partId)?.length_m ?? null,
      ...{ bars_count: cuts.bars_count, bound_count: cuts.bound_count, joints_count: cuts.joints_count },
      bars: cuts.bars.map(({ bars_count, offcut_m, cuts: pieces }) => ({
        ...{ bars_count, offcut_m, cuts: pieces.map(({ runId, length_m }) => ({ runId, length_m })) },
      })),
    },
    working: workingIn(line.working, language),
  };
}

/**
 * All that is said of the kit, the loads and the cost of one site.
 *
 * @param site - the site as it is kept
 * @param kept - what all sites share
 * @param priceOf - what one of a part costs
 * @param language - the language of its sentences
 * @returns plain data of the schema
 */
export function siteKitAnswer(site: SiteKitKept, kept: KitsKept, priceOf: PriceOf, language: Language): SiteKitAnswer {
  const { siteId, name, people, kit, mass_kg, noMass_count, cost } = site;
  const { market } = kept;
  return {
    ...{ version: kept.version, designVersion: kept.designVersion, siteId, name, people, isBuilt: kit.isBuilt },
    ...{ handOver: dayOrNull(site.handOverDay), currency: kept.currency, pricesOn: dayOrNull(kept.pricesOn) },
    lines: kit.lines.map((line) => lineAnswer(line, market.parts, priceOf, language)),
    ...{ mass_kg, noMass_count, carriers: market.kit.carriers.map(carrierAnswer) },
    carried: site.carried.map(({ loads, name: carrier }) => carriedAnswer(loads, carrier, language)),
    kitsIn: site.kitsIn.map(({ carrier, found }) => ({
      ...{ carrierId: carrier.carrierId, name: carrier.name, mode: carrier.mode },
      ...{ kits_count: found?.kits_count ?? null, limitedBy: found?.limitedBy ?? null },
    })),
    problems: problemsIn(kit.problems, language),
    cost: costAnswer(cost.cost, market),
    costWorking: workingIn(cost.working, language),
    costProblems: problemsIn(cost.problems, language),
    beside: besideAnswer(kept.cost.beside, language),
  };
}
