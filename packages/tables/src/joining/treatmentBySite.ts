import type {
  CartridgeFacts,
  FlowReading,
  PressureTest,
  SiteTreatmentFacts,
  TreatmentUnitFacts,
  UnitFigures,
} from '@eavewell/engine';
import type { FolderTableName } from '../contract/allTables.ts';
import type { TablesRead } from './tablesRead.ts';

type Row<Name extends FolderTableName> = NonNullable<TablesRead[Name]>['rows'][number];

/** A row of parts as the figures of a treatment unit; null where it is another kind of part. */
export function unitFiguresOf(values: Row<'parts'>['values']): UnitFigures | null {
  if (values.kind !== 'treatmentUnit') return null;
  return {
    cartridges_count: values.cartridges,
    membraneArea_m2: values.membraneArea_m2,
    permeability_L_per_m2_h_bar: values.permeability_L_per_m2_h_bar,
    ratedFlow_L_per_h: values.ratedFlow_L_per_h,
    ratedPressure_kPa: values.ratedPressure_kPa,
    highestPressure_kPa: values.highestPressure_kPa,
    pore_nm: values.pore_nm,
    ratedLitres_L: values.ratedLitres_L,
    ratedTurbidity_NTU: values.ratedTurbidity_NTU,
    highestTurbidity_NTU: values.highestTurbidity_NTU,
    lifeLimit_years: values.lifeLimit_years,
    lowestFlow_L_per_h: values.lowestFlow_L_per_h,
    backwash_fraction: values.backwash_fraction,
    backwash_min_per_day: values.backwash_min_per_day,
    pistonBore_mm: values.pistonBore_mm,
    pistonStroke_mm: values.pistonStroke_mm,
    lever_ratio: values.leverRatio,
    reductions: reductionsOf(values),
  };
}

/** The columns of log reductions, as facts. */
export function reductionsOf(
  values: Pick<
    Row<'barriers'>['values'],
    'bacteria_log10' | 'viruses_log10' | 'protozoa_log10' | 'evidence' | 'evidenceSource'
  >,
): UnitFigures['reductions'] {
  const { bacteria_log10, viruses_log10, protozoa_log10, evidence, evidenceSource: source } = values;
  return { bacteria_log10, viruses_log10, protozoa_log10, evidence, source };
}

/** Everything about the treatment of sites, by site. */
export class TreatmentBySite {
  private readonly units: readonly Row<'treatmentUnits'>[];
  private readonly bySite: ReadonlyMap<string, SiteTreatmentFacts>;
  private readonly figures: ReadonlyMap<string, UnitFigures | null>;

  constructor(
    private readonly tables: TablesRead,
    private readonly unlinked: ReadonlySet<string>,
  ) {
    this.units = tables.treatmentUnits?.rows ?? [];
    this.figures = new Map((tables.parts?.rows ?? []).map(({ values }) => [values.partId!, unitFiguresOf(values)]));
    this.bySite = this.grouped();
  }

  /** What is told of a site's treatment; undefined where nothing is. */
  of(siteId: string): SiteTreatmentFacts | undefined {
    return this.bySite.get(siteId);
  }

  /** The parts its treatment units name. */
  partsOf(siteId: string): readonly string[] {
    return (this.bySite.get(siteId)?.units ?? []).flatMap(({ partId }) => partId ?? []);
  }

  private grouped(): ReadonlyMap<string, SiteTreatmentFacts> {
    const all = new Map<string, Grouped>();
    const at = (siteId: string) => {
      const known = all.get(siteId) ?? { units: [], cartridges: [], flowReadings: [], pressureTests: [] };
      all.set(siteId, known);
      return known;
    };
    const usable = (name: string, row: { readonly row: number }) => !this.unlinked.has(`${name} ${row.row}`);
    const cell = (name: string, row: number, column: string, value: string | null) =>
      this.unlinked.has(`${name} ${row} ${column}`) ? null : value;
    for (const one of this.units)
      if (usable('treatmentUnits', one)) at(one.values.siteId!).units.push(this.unitOf(one, cell));
    for (const one of this.tables.cartridges?.rows ?? [])
      if (usable('cartridges', one)) at(one.values.siteId!).cartridges.push(cartridgeOf(one, cell));
    for (const one of this.tables.flowReadings?.rows ?? [])
      if (usable('flowReadings', one)) at(one.values.siteId!).flowReadings.push(readingOf(one));
    for (const one of this.tables.pressureTests?.rows ?? [])
      if (usable('pressureTests', one)) at(one.values.siteId!).pressureTests.push(pressureTestOf(one));
    for (const { flowReadings, pressureTests } of all.values()) {
      flowReadings.sort((a, b) => a.readOn - b.readOn);
      pressureTests.sort((a, b) => a.testedOn - b.testedOn);
    }
    return all;
  }

  private unitOf({ row, values }: Row<'treatmentUnits'>, cell: CellOf): TreatmentUnitFacts {
    const partId = cell('treatmentUnits', row, 'partId', values.partId);
    return {
      serial: values.serial!,
      partId,
      figures: partId === null ? null : (this.figures.get(partId) ?? null),
      installedOn: values.installedOn,
      removedOn: values.removedOn,
    };
  }
}

interface Grouped {
  readonly units: TreatmentUnitFacts[];
  readonly cartridges: CartridgeFacts[];
  readonly flowReadings: FlowReading[];
  readonly pressureTests: PressureTest[];
}

type CellOf = (name: string, row: number, column: string, value: string | null) => string | null;

function cartridgeOf({ row, values }: Row<'cartridges'>, cell: CellOf): CartridgeFacts {
  const { batch, installedOn, removedOn, reason } = values;
  return {
    serial: values.serial!,
    unitSerial: cell('cartridges', row, 'unitSerial', values.unitSerial),
    partId: cell('cartridges', row, 'partId', values.partId),
    ...{ batch, installedOn, removedOn, reason },
  };
}

function readingOf({ values }: Row<'flowReadings'>): FlowReading {
  const { unitSerial, pressure_kPa, waterTemperature_C, passed_L } = values;
  return {
    ...{ unitSerial, pressure_kPa, waterTemperature_C, passed_L },
    readOn: values.readOn!,
    flow_L_per_h: values.flow_L_per_h!,
  };
}

function pressureTestOf({ values }: Row<'pressureTests'>): PressureTest {
  const { unitSerial, airVolume_L } = values;
  return {
    ...{ unitSerial, airVolume_L },
    testedOn: values.testedOn!,
    pressure_kPa: values.pressure_kPa!,
    fall_kPa_per_min: values.fall_kPa_per_min!,
  };
}
