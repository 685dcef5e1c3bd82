import type { DiverterFacts, DownpipeFacts, GutterFacts, PipeFacts, RoofFacts, TankFacts } from '@eavewell/engine';
import type { FolderTableName } from '../contract/allTables.ts';
import type { TablesRead } from './tablesRead.ts';

/** The cells of a row of a table. */
type Cells<Name extends FolderTableName> = NonNullable<TablesRead[Name]>['rows'][number]['values'];

/** What is there already says so; of all else nothing is said. */
const there = (built: boolean | null): { readonly isBuilt?: boolean } => (built === true ? { isBuilt: true } : {});

/** A row of roofs as facts. */
export function roofOf(values: Cells<'roofs'>, tankId: string | null, diverter: DiverterFacts | null): RoofFacts {
  return {
    roofId: values.roofId!,
    length_m: values.length_m,
    width_m: values.width_m,
    roofPlanArea_m2: values.roofPlanArea_m2,
    material: values.material,
    runoffFraction: values.runoffFraction,
    gutteredFraction: values.gutteredFraction,
    tankId,
    diverter,
    form: values.form,
    pitch_deg: values.pitch_deg,
    eaveHeight_m: values.eaveHeight_m,
    wallAbove_m2: values.wallAbove_m2,
    valleys_count: values.valleys,
    isFragile: values.fragile,
    coating: values.coating,
    hasLead: values.lead,
    hasAsbestos: values.asbestos,
    isUnderTrees: values.underTrees,
  };
}

/** A row of gutters as facts. */
export function gutterOf(values: Cells<'gutters'>): GutterFacts {
  return {
    gutterId: values.gutterId!,
    roofId: values.roofId!,
    shape: values.shape,
    width_mm: values.width_mm,
    depth_mm: values.depth_mm,
    length_m: values.length_m,
    fall_mm_per_m: values.fall_mm_per_m,
    outlet_mm: values.outlet_mm,
    baseWidth_mm: values.baseWidth_mm,
    outlets_count: values.outlets,
    runToOutlet_m: values.runToOutlet_m,
    bends_count: values.bends,
    outletGrate: values.outletGrate ?? 'open',
    ...there(values.built),
  };
}

/** A row of downpipes as facts. */
export function downpipeOf(values: Cells<'downpipes'>): DownpipeFacts {
  return {
    downpipeId: values.downpipeId!,
    roofId: values.roofId!,
    bore_mm: values.bore_mm,
    length_m: values.length_m,
    ...there(values.built),
  };
}

/** A row of tanks as facts, with what the catalogue says of the part that it is. */
export function tankOf(
  values: Cells<'tanks'>,
  joinedTo: string | null,
  part: Pick<TankFacts, 'partId' | 'partVolume_L' | 'partMass_kg'>,
): TankFacts {
  return {
    tankId: values.tankId!,
    nominal_L: values.nominal_L,
    outletHeight_m: values.outletHeight_m,
    overflowHeight_m: values.overflowHeight_m,
    diameter_m: values.diameter_m,
    joinedTo,
    role: values.role ?? 'storage',
    peopleFraction: values.peopleFraction,
    height_m: values.height_m,
    standHeight_m: values.standHeight_m,
    ...part,
    inletHeight_m: values.inletHeight_m,
    overflowBore_mm: values.overflowBore_mm,
    overflows_count: values.overflows,
    overflowScreen: values.overflowScreen ?? 'open',
    cells_count: values.cells,
    emptyMass_kg: values.emptyMass_kg,
    standMass_kg: values.standMass_kg,
    groundClass: values.groundClass,
    pads_count: values.pads,
    padSide_m: values.padSide_m,
    baseWidth_m: values.baseWidth_m,
    isFastened: values.fastened,
    signedBy: values.signedBy,
    signedOn: values.signedOn,
    ...there(values.built),
  };
}

/** A row of pipes as facts. */
export function pipeOf(values: Cells<'pipes'>, tankId: string | null): PipeFacts {
  return {
    pipeId: values.pipeId!,
    tankId,
    leg: values.leg!,
    bore_mm: values.bore_mm,
    length_m: values.length_m,
    material: values.material,
    elbows_count: values.elbows,
    tees_count: values.tees,
    valves_count: values.valves,
    meters_count: values.meters,
    otherLoss_k: values.otherLoss_k,
    ...there(values.built),
  };
}
