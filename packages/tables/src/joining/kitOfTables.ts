import type {
  Carrier,
  CostFacts,
  CurrencyRate,
  KitCondition,
  KitFacts,
  KitFigures,
  KitRule,
  PartsApart,
  Redenomination,
} from '@eavewell/engine';
import type { FolderTableName } from '../contract/allTables.ts';
import type { TablesRead } from './tablesRead.ts';

type Cells<Name extends FolderTableName> = NonNullable<TablesRead[Name]>['rows'][number]['values'];

/** How a part is bought, kept and carried, of its row. */
export function kitFiguresOf(values: Cells<'parts'>): KitFigures {
  return {
    countedIn: values.countedIn ?? 'piece',
    width_m: values.width_m,
    height_m: values.height_m,
    bulk_L: values.bulk_L,
    packSize_count: values.packSize,
    pieces_count: values.pieces_count,
    supplier: values.supplier,
    leadTime_days: values.leadTime_days,
    isFragile: values.fragile,
    danger: values.danger,
    stock_count: values.stock_count,
    stockCountedOn: values.stockCountedOn,
    life_years: values.life_years,
    picture: values.picture,
  };
}

/**
 * What does a programme say of kits, carrying and money? A rule one of whose conditions could not be read is left out: nobody can tell where it holds.
 *
 * @param tables - the tables as they were read
 * @param unlinked - `table row` of rows not used
 * @returns rules, carriers, parts kept apart, rates, redenominations and costs [currency], in the order of their tables
 * @definition ours
 */
export function kitFacts(tables: TablesRead, unlinked: ReadonlySet<string>): KitFacts {
  const rowsOf = <Name extends FolderTableName>(name: Name): readonly Cells<Name>[] => {
    const rows = (tables[name]?.rows ?? []) as readonly { readonly row: number; readonly values: Cells<Name> }[];
    return rows.filter(({ row }) => !unlinked.has(`${name} ${row}`)).map(({ values }) => values);
  };
  return {
    rules: rulesOf(rowsOf('kitRules'), rowsOf('kitConditions'), rulesInDoubt(tables, unlinked)),
    carriers: rowsOf('carriers').map(carrierOf),
    keptApart: rowsOf('keptApart').map(
      (values): PartsApart => ({ partId: values.partId!, otherPartId: values.otherPartId! }),
    ),
    rates: rowsOf('rates').map(rateOf),
    redenominations: rowsOf('redenominations').map(redenominationOf),
    costs: rowsOf('costs').map(costOf),
  };
}

/** Rules with a condition that cannot be used. */
function rulesInDoubt({ kitConditions }: TablesRead, unlinked: ReadonlySet<string>): ReadonlySet<string> {
  const lost = (kitConditions?.lost ?? []).map(({ keys }) => keys['ruleId']);
  const wrong = (kitConditions?.rows ?? [])
    .filter(({ row }) => unlinked.has(`kitConditions ${row}`))
    .map(({ values }) => values.ruleId);
  return new Set([...lost, ...wrong].filter((ruleId): ruleId is string => typeof ruleId === 'string'));
}

function rulesOf(
  rules: readonly Cells<'kitRules'>[],
  conditions: readonly Cells<'kitConditions'>[],
  inDoubt: ReadonlySet<string>,
): readonly KitRule[] {
  const ofRule = (ruleId: string): readonly KitCondition[] =>
    conditions
      .filter((values) => values.ruleId === ruleId)
      .map(({ field, test, value }) => ({ field: field!, test: test!, value: value! }));
  return rules
    .filter(({ ruleId }) => !inDoubt.has(ruleId!))
    .map((values) => ({
      ruleId: values.ruleId!,
      partId: values.partId!,
      countedBy: values.countedBy!,
      each_count: values.each_count!,
      rounding: values.rounding ?? 'up',
      spare_fraction: values.spare_fraction ?? 0,
      leastSpare_count: values.leastSpare_count ?? 0,
      conditions: ofRule(values.ruleId!),
    }));
}

function carrierOf(values: Cells<'carriers'>): Carrier {
  return {
    carrierId: values.carrierId!,
    name: values.name!,
    mode: values.mode!,
    limit_kg: values.limit_kg,
    limit_L: values.limit_L,
    longest_m: values.longest_m,
    stowage_fraction: values.stowage_fraction ?? 1,
    carriers_count: values.count ?? 1,
    freeboard_cm: values.freeboard_cm,
    length_m: values.length_m,
    freeboardEmpty_cm: values.freeboardEmpty_cm,
    leastFreeboard_cm: values.leastFreeboard_cm,
    limitSetBy: values.limitSetBy,
    limitSetOn: values.limitSetOn,
  };
}

function rateOf(values: Cells<'rates'>): CurrencyRate {
  return { currency: values.currency!, day: values.day!, perUnit: values.perUnit!, source: values.source };
}

function redenominationOf(values: Cells<'redenominations'>): Redenomination {
  const { source } = values;
  return {
    currency: values.currency!,
    newCurrency: values.newCurrency!,
    day: values.day!,
    factor: values.factor!,
    source,
  };
}

function costOf(values: Cells<'costs'>): CostFacts {
  return {
    costId: values.costId!,
    siteId: values.siteId,
    head: values.head!,
    what: values.what!,
    amount: values.amount!,
    low: values.low,
    high: values.high,
    currency: values.currency!,
    priceDate: values.priceDate!,
    per: values.per!,
    life_years: values.life_years,
    source: values.source,
  };
}
