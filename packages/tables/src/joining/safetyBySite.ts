import type {
  BarrierFacts,
  ChlorinationFacts,
  InspectionFacts,
  RawWater,
  SiteSafetyFacts,
  TestPortion,
  UnusableTest,
  WaterTest,
} from '@eavewell/engine';
import type { FolderTableName } from '../contract/allTables.ts';
import type { TablesRead } from './tablesRead.ts';
import { reductionsOf } from './treatmentBySite.ts';

type Row<Name extends FolderTableName> = NonNullable<TablesRead[Name]>['rows'][number];

/** Rows that are the whole programme's stand under this name. */
const ofAll = '';

/** Everything about how safe the water of sites is, by site. */
export class SafetyBySite {
  private readonly rawWater: ReadonlyMap<string, readonly RawWater[]>;
  private readonly barriers: ReadonlyMap<string, readonly BarrierFacts[]>;
  private readonly tests: ReadonlyMap<string, readonly WaterTest[]>;
  private readonly unusable: ReadonlyMap<string, readonly UnusableTest[]>;
  private readonly inspections: ReadonlyMap<string, readonly InspectionFacts[]>;
  private readonly chlorination: ReadonlyMap<string, readonly ChlorinationFacts[]>;

  constructor(
    private readonly tables: TablesRead,
    private readonly unlinked: ReadonlySet<string>,
  ) {
    this.rawWater = this.grouped('rawWater', rawWaterOf);
    this.barriers = this.grouped('barriers', barrierOf);
    const portions = this.portions();
    this.tests = this.grouped('waterTests', (row) => testOf(row, portions));
    this.unusable = unusableTests(this.tables, portions);
    this.inspections = this.grouped('inspections', inspectionOf);
    this.chlorination = this.grouped('chlorination', chlorinationOf);
  }

  /** What is told of a site's water beside its own row. A row of the site takes the place of the programme's for the same germ and source, or barrier. */
  of(siteId: string): Omit<SiteSafetyFacts, 'skipping_fraction' | 'daysOff_per_year' | 'altitude_m'> {
    const tests = [...(this.tests.get(siteId) ?? [])].sort((a, b) => a.takenOn - b.takenOn);
    const inspections = [...(this.inspections.get(siteId) ?? [])].sort((a, b) => a.inspectedOn - b.inspectedOn);
    return {
      rawWater: withOwn(this.rawWater, siteId, (one) => `${one.secondSourceId ?? ''} ${one.pathogen}`),
      barriers: withOwn(this.barriers, siteId, (one) => one.barrierId),
      ...{ tests, inspections },
      unusableTests: this.unusable.get(siteId) ?? [],
      chlorination: this.chlorination.get(siteId)?.[0] ?? null,
    };
  }

  private grouped<Name extends FolderTableName, F>(
    name: Name,
    make: (row: Row<Name>['values']) => F,
  ): ReadonlyMap<string, readonly F[]> {
    const all = new Map<string, F[]>();
    const rows = (this.tables[name]?.rows ?? []) as readonly Row<Name>[];
    for (const { row, values } of rows) {
      if (this.unlinked.has(`${name} ${row}`)) continue;
      const siteId = (values as { readonly siteId: string | null }).siteId ?? ofAll;
      const group = all.get(siteId);
      if (group) group.push(make(values));
      else all.set(siteId, [make(values)]);
    }
    return all;
  }

  private portions(): ReadonlyMap<string, readonly TestPortion[]> {
    const all = new Map<string, TestPortion[]>();
    for (const { row, values } of this.tables.testPortions?.rows ?? []) {
      if (this.unlinked.has(`testPortions ${row}`)) continue;
      const key = `${values.siteId} ${values.testId}`;
      all.set(key, [...(all.get(key) ?? []), portionOf(values)]);
    }
    return all;
  }
}

function withOwn<F>(all: ReadonlyMap<string, readonly F[]>, siteId: string, keyOf: (one: F) => string): readonly F[] {
  const own = all.get(siteId) ?? [];
  const keys = new Set(own.map(keyOf));
  return [...own, ...(all.get(ofAll) ?? []).filter((one) => !keys.has(keyOf(one)))];
}

function rawWaterOf(values: Row<'rawWater'>['values']): RawWater {
  const { secondSourceId, low_per_L, high_per_L, source } = values;
  return {
    ...{ secondSourceId, low_per_L, high_per_L, source },
    pathogen: values.pathogen!,
    typical_per_L: values.typical_per_L!,
  };
}

function barrierOf(values: Row<'barriers'>['values']): BarrierFacts {
  const { used_fraction } = values;
  return { barrierId: values.barrierId!, kind: values.kind!, reductions: reductionsOf(values), used_fraction };
}

function portionOf(values: Row<'testPortions'>['values']): TestPortion {
  return {
    kind: values.kind!,
    volume_mL: values.volume_mL!,
    portions_count: values.portions!,
    positive_count: values.positive,
    colonies_count: values.colonies,
    uncountable_count: values.uncountable ?? 0,
    uncountableFrom_count: values.uncountableFrom,
  };
}

function testOf(values: Row<'waterTests'>['values'], portions: ReadonlyMap<string, readonly TestPortion[]>): WaterTest {
  const { turbidity_NTU, freeChlorine_mg_per_L, pH, waterTemperature_C, laboratory } = values;
  return {
    testId: values.testId!,
    takenOn: values.takenOn!,
    point: values.point!,
    portions: portions.get(`${values.siteId} ${values.testId}`) ?? [],
    ...{ turbidity_NTU, freeChlorine_mg_per_L, pH, waterTemperature_C, laboratory },
  };
}

/** Samples whose own row, or a row of whose portions, could not be used, by site: each once. */
function unusableTests(
  { waterTests, testPortions }: TablesRead,
  portions: ReadonlyMap<string, readonly TestPortion[]>,
): ReadonlyMap<string, readonly UnusableTest[]> {
  const all = new Map<string, UnusableTest[]>();
  for (const [read, because] of [[waterTests, 'unread'] as const, [testPortions, 'portions'] as const])
    for (const { row, keys } of read?.lost ?? []) {
      const { siteId, testId } = keys;
      if (siteId === undefined || testId === undefined) continue;
      const own = all.get(siteId) ?? [];
      if (own.some((one) => one.testId === testId)) continue;
      const at = { file: read!.file, row, siteId };
      own.push({ testId, because, at, point: null, portions: portions.get(`${siteId} ${testId}`) ?? [] });
      all.set(siteId, own);
    }
  return all;
}

function inspectionOf(values: Row<'inspections'>['values']): InspectionFacts {
  return {
    inspectedOn: values.inspectedOn!,
    risks_count: values.risks!,
    questions_count: values.questions!,
    by: values.by,
  };
}

function chlorinationOf(values: Row<'chlorination'>['values']): ChlorinationFacts {
  const { product, active_fraction, stock_g_per_L, dose_mg_per_L, residual_mg_per_L } = values;
  const { contact_min, baffling_fraction, pH, waterTemperature_C, batch_L } = values;
  return {
    ...{ product, active_fraction, stock_g_per_L, dose_mg_per_L, residual_mg_per_L },
    ...{ contact_min, baffling_fraction, pH, waterTemperature_C, batch_L },
  };
}
