import type { CarrierLoadsReport, KitReport, PlainSheet, PlainSheetColumn } from '@eavewell/tables';
import type { Language, MessageKey } from '@eavewell/words';

type Cell = string | number | null;
type HeadName = Extract<MessageKey, `kitReport.head.${string}`> extends `kitReport.head.${infer Name}` ? Name : never;
type Heads = readonly (readonly [HeadName, PlainSheetColumn['kind']])[];

/** One sheet: its name, its heads, its rows. */
function sheet(
  name: 'kit' | 'sites' | 'purchases' | 'loads' | 'loadCounts' | 'stowing' | 'cost',
  heads: Heads,
  rows: PlainSheet['rows'],
  { say }: Language,
): PlainSheet {
  const columns = heads.map(([head, kind]) => ({ head: say(`kitReport.head.${head}`), kind }));
  return { name: say(`kitReport.sheet.${name}`), columns, rows };
}

const yesNo = (is: boolean | null, { say }: Language): string | null =>
  is === null ? null : say(is ? 'kitReport.yes' : 'kitReport.no');

/** All parts together, one a row. */
function kitSheet({ lines }: KitReport, language: Language): PlainSheet {
  const heads: Heads = [
    ...([
      ['partId', 'text'],
      ['partName', 'text'],
      ['kind', 'text'],
      ['countedIn', 'text'],
    ] as const),
    ...([
      ['total', 'number'],
      ['spares', 'number'],
      ['atLeast', 'text'],
      ['sites', 'number'],
    ] as const),
    ...([
      ['inStock', 'number'],
      ['short', 'number'],
      ['packSize', 'number'],
      ['packs', 'number'],
    ] as const),
    ...([
      ['bought', 'number'],
      ['supplier', 'text'],
      ['orderBy', 'day'],
      ['late', 'number'],
    ] as const),
    ...([
      ['price', 'number'],
      ['currency', 'text'],
      ['amount', 'number'],
      ['noPrice', 'text'],
    ] as const),
  ];
  const rows = lines.map((line): readonly Cell[] => [
    ...[line.partId, line.name, line.kind, line.countedIn],
    ...[line.total_count, line.spare_count, yesNo(line.isAtLeast, language), line.sites_count],
    ...[line.inStock_count, line.short_count, line.packSize_count, line.packs_count],
    ...[line.bought_count, line.supplier, line.orderBy, line.late_days],
    ...[line.price?.amount ?? null, line.price?.currency ?? null, line.amount, line.noPrice],
  ]);
  return sheet('kit', heads, rows, language);
}

/** Site by site, part by part. */
function sitesSheet({ sites }: KitReport, language: Language): PlainSheet {
  const heads: Heads = [
    ...([
      ['siteId', 'text'],
      ['siteName', 'text'],
      ['partId', 'text'],
      ['partName', 'text'],
    ] as const),
    ...([
      ['countedIn', 'text'],
      ['needed', 'number'],
      ['spares', 'number'],
      ['total', 'number'],
    ] as const),
    ...([
      ['atLeast', 'text'],
      ['rules', 'text'],
      ['cuts', 'text'],
    ] as const),
  ];
  const rows = sites.flatMap(({ siteId, name, lines }) =>
    lines.map((line): readonly Cell[] => [
      ...[siteId, name, line.partId, line.name],
      ...[line.countedIn, line.needed_count, line.spare_count, line.total_count],
      ...[yesNo(line.isAtLeast, language), line.ruleIds.join(', ')],
      line.cuts?.bars.map(({ said }) => said).join('\n') ?? null,
    ]),
  );
  return sheet('sites', heads, rows, language);
}

/** What is bought, supplier by supplier. */
function purchasesSheet({ lines, suppliers }: KitReport, language: Language): PlainSheet {
  const heads: Heads = [
    ...([
      ['supplier', 'text'],
      ['partId', 'text'],
      ['partName', 'text'],
      ['packs', 'number'],
    ] as const),
    ...([
      ['packSize', 'number'],
      ['bought', 'number'],
      ['price', 'number'],
      ['amount', 'number'],
    ] as const),
    ...([
      ['currency', 'text'],
      ['orderBy', 'day'],
      ['noPrice', 'text'],
    ] as const),
  ];
  const byId = new Map(lines.map((line) => [line.partId, line]));
  const rows = suppliers.flatMap(({ supplier, partIds }) =>
    partIds.flatMap((partId): readonly (readonly Cell[])[] => {
      const line = byId.get(partId);
      if (line === undefined) return [];
      return [
        [
          ...[supplier, partId, line.name, line.packs_count],
          ...[line.packSize_count, line.bought_count, line.price?.amount ?? null, line.amount],
          ...[line.price?.currency ?? null, line.orderBy, line.noPrice],
        ],
      ];
    }),
  );
  return sheet('purchases', heads, rows, language);
}

/** A row for each sort of piece of each load, then those that no load takes. */
function rowsOfLoads(siteId: string, found: CarrierLoadsReport, language: Language): readonly (readonly Cell[])[] {
  const { say } = language;
  const inLoads = found.loads.flatMap((load, nth) =>
    load.pieces.map((piece): readonly Cell[] => [
      ...[siteId, found.name, nth + 1, say(`loads.by.${load.carriedBy}`)],
      ...[piece.partId, piece.name, piece.count, piece.each_count],
      ...[load.mass_kg, load.bulk_L, load.longest_m, yesNo(load.isFragile, language), null],
    ]),
  );
  const left = (pieces: CarrierLoadsReport['noMass'], why: string) =>
    pieces.map(({ partId, name, count, each_count }): readonly Cell[] => [
      ...[siteId, found.name, null, null, partId, name, count, each_count, null, null, null, null, why],
    ]);
  return [
    ...inLoads,
    ...left(found.cannotCarry, say('kitReport.tooMuch')),
    ...left(found.noMass, say('kitReport.notWeighed')),
  ];
}

function loadsSheet({ sites, trip }: KitReport, language: Language): PlainSheet {
  const heads: Heads = [
    ...([
      ['siteId', 'text'],
      ['carrier', 'text'],
      ['load', 'number'],
      ['carriedBy', 'text'],
    ] as const),
    ...([
      ['partId', 'text'],
      ['partName', 'text'],
      ['pieces', 'number'],
      ['each', 'number'],
    ] as const),
    ...([
      ['loadMass_kg', 'number'],
      ['loadBulk_L', 'number'],
      ['longest_m', 'number'],
    ] as const),
    ...([
      ['fragile', 'text'],
      ['why', 'text'],
    ] as const),
  ];
  const ofSites = sites.flatMap(({ siteId, loads }) =>
    (loads ?? []).flatMap((found) => rowsOfLoads(siteId, found, language)),
  );
  const ofTrip =
    trip === null ? [] : trip.carriers.flatMap(({ loads }) => rowsOfLoads(trip.stops.join(', '), loads, language));
  return sheet('loads', heads, [...ofTrip, ...ofSites], language);
}

function loadCountsSheet({ sites }: KitReport, carriers: ReadonlyMap<string, string>, language: Language): PlainSheet {
  const heads: Heads = [
    ...([
      ['siteId', 'text'],
      ['siteName', 'text'],
      ['carrier', 'text'],
      ['loads', 'number'],
    ] as const),
    ...([
      ['isLeast', 'text'],
      ['cannot', 'number'],
      ['noMass', 'number'],
    ] as const),
  ];
  const rows = sites.flatMap(({ siteId, name, loadCounts }) =>
    loadCounts.map((one): readonly Cell[] => [
      ...[siteId, name, carriers.get(one.carrierId) ?? one.carrierId, one.loads_count],
      ...[yesNo(one.isLeast, language), one.cannotCarry_count, one.noMass_count],
    ]),
  );
  return sheet('loadCounts', heads, rows, language);
}

function stowingSheet({ trip }: KitReport, language: Language): readonly PlainSheet[] {
  if (trip === null) return [];
  const heads: Heads = [
    ...([
      ['carrier', 'text'],
      ['order', 'number'],
      ['siteId', 'text'],
      ['partId', 'text'],
    ] as const),
    ...([
      ['partName', 'text'],
      ['pieces', 'number'],
      ['each', 'number'],
      ['fragile', 'text'],
    ] as const),
  ];
  const rows = trip.carriers.flatMap(({ loads, stowed }) =>
    stowed.map((one, nth): readonly Cell[] => [
      ...[loads.name, nth + 1, one.siteId, one.partId],
      ...[one.name, one.count, one.each_count, yesNo(one.isFragile, language)],
    ]),
  );
  return [sheet('stowing', heads, rows, language)];
}

function costSheet({ sites }: KitReport, language: Language): PlainSheet {
  const heads: Heads = [
    ...([
      ['siteId', 'text'],
      ['siteName', 'text'],
      ['perYear', 'number'],
      ['p10', 'number'],
    ] as const),
    ...([
      ['p90', 'number'],
      ['currency', 'text'],
      ['atLeast', 'text'],
      ['served', 'number'],
    ] as const),
    ...([
      ['perPersonYear', 'number'],
      ['perDesignPerson', 'number'],
      ['pricesOn', 'day'],
    ] as const),
  ];
  const rows = sites.map(({ siteId, name, cost }): readonly Cell[] => [
    ...[siteId, name, cost?.perYear_amount ?? null, cost?.perYearSpread_amount.p10 ?? null],
    ...[cost?.perYearSpread_amount.p90 ?? null, cost?.currency ?? null],
    ...[yesNo(cost?.isAtLeast ?? null, language), cost?.served_people ?? null],
    ...[cost?.perPersonYear_amount ?? null, cost?.perDesignPerson_amount ?? null, cost?.day ?? null],
  ]);
  return sheet('cost', heads, rows, language);
}

/**
 * A report of kits as sheets that people read: parts, sites, purchases, loads, costs.
 *
 * @param report - the report
 * @param carriers - names of carriers by their ids [text]
 * @param language - of names and heads
 * @returns the sheets: numbers as numbers and days as days; null where something is not known
 * @definition ours: docs/decisions/0281-a-workbook-of-kits.md
 */
export function kitSheets(
  report: KitReport,
  carriers: ReadonlyMap<string, string>,
  language: Language,
): readonly PlainSheet[] {
  return [
    kitSheet(report, language),
    sitesSheet(report, language),
    purchasesSheet(report, language),
    loadCountsSheet(report, carriers, language),
    loadsSheet(report, language),
    ...stowingSheet(report, language),
    costSheet(report, language),
  ];
}
