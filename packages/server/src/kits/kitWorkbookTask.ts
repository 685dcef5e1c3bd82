import { kitsBought, loadsBy, piecesOfKit, readIsoDay, stowedIn } from '@eavewell/engine';
import { plainWorkbook } from '@eavewell/formats';
import { kitReport, kitSheets, siteKitReport } from '@eavewell/report';
import { loadLanguage } from '@eavewell/words';
import { readKits, readSiteKits, type SiteKitKept, type WholeCostKept } from './keptKits.ts';
import type { KitSumAsked } from './kitSumTask.ts';
import { marketOf } from './kitSumTask.ts';

/** What is asked of a workbook: what is asked of the sum, and which program writes it. */
export interface KitWorkbookAsked extends KitSumAsked {
  readonly eavewell: string;
}

/** Writes the kit of a programme or a trip as a workbook. */
export async function kitWorkbookTask(asked: KitWorkbookAsked): Promise<Uint8Array> {
  const kept = await readKits(asked.folder);
  const bySite = new Map((kept?.sites ?? []).map((site) => [site.siteId, site]));
  const places = asked.sites === null ? (kept?.sites ?? []) : asked.sites.flatMap((id) => bySite.get(id) ?? []);
  const found = await readSiteKits(asked.folder, places);
  if (kept === null || found === null) throw new Error('the kits that are kept cannot be read');
  const language = await loadLanguage(asked.language);
  const ready = marketOf(kept);
  const { carriers } = kept.market.kit;
  const neededOn = asked.neededOn === null ? null : readIsoDay(asked.neededOn);
  const full = { loads: true, working: false };
  const kits = found.map(({ kit }) => kit);
  const report = kitReport(
    {
      ...{ eavewell: asked.eavewell, today: kept.today, neededOn, ready, bought: kitsBought(kits, ready, neededOn) },
      asked: { sites: asked.sites === null ? null : places.map(({ siteId }) => siteId), carrier: null },
      carried: found.flatMap(({ kitsIn }) => (kitsIn.length === 0 ? [] : [kitsIn])),
      trip: asked.sites === null || found.length < 2 ? null : tripOf(found, ready),
      cost: {
        ...kept.cost,
        cost: withThrows(kept.cost.cost),
        ofServed: withThrows(kept.cost.ofServed),
      },
      sites: found.map(({ siteId, name, kit, carried, cost }) =>
        siteKitReport(
          {
            ...{ site: { siteId, name }, kit, loads: carried.map(({ loads }) => loads) },
            cost: { ...cost, cost: withThrows(cost.cost) },
          },
          ready,
          full,
          language,
        ),
      ),
    },
    language,
  );
  const names = new Map(carriers.map(({ carrierId, name }) => [carrierId, name]));
  return plainWorkbook(kitSheets(report, names, language));
}

function tripOf(sites: readonly SiteKitKept[], ready: ReturnType<typeof marketOf>) {
  const stops = sites.map(({ siteId, kit }) => ({ siteId, pieces: piecesOfKit(kit, ready) }));
  const pieces = stops.flatMap((stop) => stop.pieces);
  const taking = ready.facts.kit.carriers.filter(({ mode }) => mode === 'boat' || mode === 'truck');
  return {
    stops: stops.map(({ siteId }) => siteId),
    carriers: taking.map((carrier) => {
      const loads = loadsBy(pieces, carrier, ready);
      return { loads, stowed: stowedIn(stops, loads) };
    }),
  };
}

/** A report tells the sums of throws, and none of the throws, which are not kept. */
function withThrows(cost: WholeCostKept | null) {
  return cost && { ...cost, throws: { perYear_amount: new Float64Array(), served_people: null } };
}
