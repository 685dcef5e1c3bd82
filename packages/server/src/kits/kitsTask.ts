import { mkdir } from 'node:fs/promises';
import {
  costAtSite,
  costOfProgramme,
  headcount,
  kitAtSite,
  kitsCarried,
  loadsBy,
  piecesOfKit,
  type ReadyKit,
  readyKit,
  type SiteCost,
  type SiteFacts,
  setsOf,
} from '@eavewell/engine';
import { programmeOfRows, readProgramme, writeProgramme } from '@eavewell/formats';
import { type Facts, foldRecords } from '@eavewell/records';
import { readList } from '../designs/designFiles.ts';
import { type KeptAt, recordsOf } from '../recordsOf.ts';
import { type CostKept, KitsWriter, type SiteKitKept, type SiteOfKits } from './keptKits.ts';

/** What the kits of a programme are made of. */
export interface KitsAsked extends KeptAt {
  /** A folder that is not there yet, to write the tables into; who asks takes it away. */
  readonly passing: string;
  /** Where its design is kept, and by which program. */
  readonly designs: string;
  readonly build: string;
  /** A folder that is not there yet, for the kits. */
  readonly folder: string;
  /** The day it is asked on [day]. */
  readonly today: number;
}

/** Works out the kit, the loads and the cost of every site, and keeps them; gives how many sites there are [count]. */
export async function kitsTask(asked: KitsAsked): Promise<number> {
  const found = await recordsOf(asked);
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join(', '));
  await writeProgramme(asked.passing, programmeOfRows(withoutRain(foldRecords(found.value))));
  const { facts } = await readProgramme(asked.passing);
  await mkdir(asked.folder, { recursive: true });
  const list = await readList(asked.designs, asked.build);
  const listed = new Map((list?.sites ?? []).map((site) => [site.short.siteId, site]));
  const ready = readyKit(facts, asked.today);
  const writer = await KitsWriter.open(asked.folder);
  const sites: SiteOfKits[] = [];
  const costs: SiteCost[] = [];
  for (const site of facts.sites) {
    // A unit of which the kept design says nothing has a life that is not known.
    const sets = setsOf(site, { finding: listed.get(site.siteId)?.sets ?? null }, ready);
    const cost = costAtSite(site, sets, ready);
    const kept = kitKept(site, ready, cost);
    sites.push({ ...briefly(kept), ...(await writer.add(kept)) });
    costs.push(cost);
  }
  const { settings, parts, prices, kit } = facts;
  const together = costOfProgramme(costs, ready);
  await writer.finish({
    ...{ version: asked.version, designVersion: list?.version ?? null, today: asked.today },
    ...{ market: { settings, parts, prices, kit }, pricesOn: ready.pricesOn, currency: ready.costs.money.currency },
    ...{ problems: ready.problems, sites },
    cost: { ...together, cost: withoutThrows(together.cost), ofServed: withoutThrows(together.ofServed) },
  });
  return sites.length;
}

/** Rain decides no kit, and is most of a programme. */
const withoutRain = (facts: Facts) => ({
  rowsAsEntered: (table: string) => (table === 'rain' ? [] : facts.rowsAsEntered(table)),
});

function kitKept(site: SiteFacts, ready: ReadyKit, cost: SiteCost): SiteKitKept {
  const { siteId, name, handOverDay } = site;
  const kit = kitAtSite(site, ready);
  const pieces = piecesOfKit(kit, ready);
  const { counted_people, design_people } = headcount(site, ready.settings);
  return {
    ...{ siteId, name, handOverDay, kit },
    people: counted_people ?? design_people,
    mass_kg: pieces.reduce((sum, { mass_kg, count }) => sum + (mass_kg ?? 0) * count, 0),
    noMass_count: pieces.reduce((sum, { mass_kg, count }) => sum + (mass_kg === null ? count : 0), 0),
    carried: ready.facts.kit.carriers
      .filter(({ mode }) => mode !== 'pallet' && mode !== 'shippingContainer')
      .map((carrier) => ({
        ...{ carrierId: carrier.carrierId, name: carrier.name },
        loads: loadsBy(pieces, carrier, ready),
      })),
    kitsIn: pieces.length === 0 ? [] : kitsCarried(pieces, ready),
    cost: { ...cost, cost: withoutThrows(cost.cost) },
  };
}

function briefly({
  kit,
  carried,
  kitsIn,
  cost,
  ...site
}: SiteKitKept): Omit<SiteOfKits, 'from_bytes' | 'length_bytes'> {
  const { siteId, name, people, handOverDay, mass_kg, noMass_count } = site;
  return {
    ...{ siteId, name, people, handOverDay, mass_kg, noMass_count },
    isBuilt: kit.isBuilt,
    parts_count: kit.lines.length,
    problems_count: kit.problems.filter(({ severity }) => severity !== 'note').length,
    loads: carried.map(({ carrierId, loads }) => ({
      carrierId,
      loads_count: loads.limits === null ? null : loads.loads.length,
      left_count: [...loads.cannotCarry, ...loads.noMass].reduce((sum, { count }) => sum + count, 0),
    })),
    kitsIn: kitsIn.map(({ carrier, found }) => ({
      carrierId: carrier.carrierId,
      kits_count: found?.kits_count ?? null,
    })),
    cost: cost.cost && {
      perPersonYear_amount: cost.cost.perPersonYear_amount,
      spread_amount: cost.cost.perPersonYearSpread_amount && {
        p10: cost.cost.perPersonYearSpread_amount.p10,
        p90: cost.cost.perPersonYearSpread_amount.p90,
      },
      perYear_amount: cost.cost.perYear_amount,
      isAtLeast: cost.cost.isAtLeast,
    },
  };
}

function withoutThrows(cost: SiteCost['cost']): CostKept['cost'] {
  if (cost === null) return null;
  const { throws: _, ...rest } = cost;
  return rest;
}
