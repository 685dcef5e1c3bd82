import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';

/** How the buildings of a site are measured: cells for rows that stand, and rows of gutters and downpipes. */
export interface Measures {
  /** By the id of the roof. */
  readonly roofs: ReadonlyMap<string, Row>;
  readonly diverters: ReadonlyMap<string, Row>;
  /** By the id of the tank. */
  readonly tanks: ReadonlyMap<string, Row>;
  readonly gutters: readonly Row[];
  readonly downpipes: readonly Row[];
}

/** The rows of one site that are measured. */
interface SiteRows {
  readonly siteId: string;
  readonly roofs: readonly Row[];
  readonly diverters: readonly Row[];
  readonly tanks: readonly Row[];
}

/** From here on a wall stands above the overflow [m]. Ours. */
const rim_m = [0.12, 0.24] as const;
/** Room between the top of the highest tank and the line of the gutter [m], and the lowest eave of a hall [m]. Ours. */
const belowEave_m = [0.25, 0.95] as const;
const lowestEave_m = 2.6;
/** Of a roof measured by its area alone: its length over its width [ratio]. Ours. */
const usualRatio = 2.2;
/** So long a run is drained at both ends [m]. Ours. */
const longRun_m = 18;

/** Bores of pipe that are sold [mm]. Invented, as all of the demo's catalogue. */
const chamberBores_mm = [110, 160, 200, 250, 315, 400] as const;
/** A chamber is no longer than this, so that it hangs on a wall [m]. Ours. */
const longestChamber_m = 3.2;

const profiles = [
  { shape: 'halfRound', width_mm: 125, depth_mm: 62, outlet_mm: 75 },
  { shape: 'halfRound', width_mm: 150, depth_mm: 75, outlet_mm: 90 },
  { shape: 'rectangular', width_mm: 120, depth_mm: 90, outlet_mm: 90 },
  { shape: 'trapezoidal', width_mm: 140, depth_mm: 80, outlet_mm: 90 },
  { shape: 'cutPipe', width_mm: 160, depth_mm: 80, outlet_mm: 90 },
] as const;

const numberIn = (row: Row | undefined, column: string): number | null => {
  const value = row?.[column];
  return typeof value === 'number' ? value : null;
};

/**
 * Measures the buildings of a site: from a stream of chance of their own, so that no other figure of the demo hangs on them. A roof
 * with little gutter has it along one eave; a tank stands below the eave it is filled from.
 */
export function measuresOf(seed: number, site: SiteRows): Measures {
  const chance = chanceFor(seed, `measures ${site.siteId}`);
  const tanks = tankMeasures(chance, site.tanks);
  const tallest_m = Math.max(...site.tanks.map((tank) => topOf(tank, tanks)));
  const roofs = new Map<string, Row>();
  const diverters = new Map<string, Row>();
  const gutters: Row[] = [];
  const downpipes: Row[] = [];
  for (const roof of site.roofs) {
    const roofId = String(roof['roofId']);
    const cells = roofMeasures(chance, roof, tallest_m);
    roofs.set(roofId, cells);
    const runs = guttersOf(chance, roof, cells['form'] === 'oneSlope');
    for (const run of runs) gutters.push({ siteId: site.siteId, gutterId: `G${gutters.length + 1}`, roofId, ...run });
    const down_m = Number(cells['eaveHeight_m']);
    for (const pipe of downpipesOf(chance, runs, down_m))
      downpipes.push({ siteId: site.siteId, downpipeId: `D${downpipes.length + 1}`, roofId, ...pipe });
    const diverter = site.diverters.find((row) => row['roofId'] === roof['roofId']);
    if (diverter) diverters.set(roofId, diverterMeasures(chance, roof, diverter));
  }
  return { roofs, diverters, tanks, gutters, downpipes };
}

/** Tanks of a site stand on one slab: joined tanks share one level. */
function tankMeasures(chance: Chance, tanks: readonly Row[]): ReadonlyMap<string, Row> {
  const standHeight_m = chance.pick([0, 0.2, 0.3, 0.3, 0.45, 0.45, 0.6, 0.9]);
  const above_m = chance.between(...rim_m);
  return new Map(
    tanks.map((tank) => {
      const overflowHeight_m = numberIn(tank, 'overflowHeight_m') ?? 0;
      return [String(tank['tankId']), { height_m: hundredths(overflowHeight_m + above_m), standHeight_m }];
    }),
  );
}

function topOf(tank: Row, measures: ReadonlyMap<string, Row>): number {
  const of = measures.get(String(tank['tankId']));
  return (numberIn(of, 'height_m') ?? 0) + (numberIn(of, 'standHeight_m') ?? 0);
}

function roofMeasures(chance: Chance, roof: Row, tallest_m: number): Row {
  const isLow = roof['material'] === 'concrete';
  const form = isLow ? 'oneSlope' : chance.pick(['gable', 'gable', 'gable', 'gable', 'hip', 'oneSlope']);
  const steep: readonly [number, number] = roof['material'] === 'tile' ? [24, 34] : [12, 28];
  const pitch_deg = Math.round(chance.between(...(form === 'oneSlope' ? ([4, 11] as const) : steep)));
  const eave_m = Math.max(lowestEave_m, tallest_m) + chance.between(...belowEave_m);
  return { form, pitch_deg, eaveHeight_m: tenths(eave_m) };
}

/** Runs along the eaves: as long as the share of the roof that they drain asks for. */
function guttersOf(chance: Chance, roof: Row, isOneSided: boolean): Row[] {
  const plan_m2 = numberIn(roof, 'roofPlanArea_m2');
  const eave_m = numberIn(roof, 'length_m') ?? (plan_m2 === null ? 0 : Math.sqrt(plan_m2 * usualRatio));
  const share = numberIn(roof, 'gutteredFraction') ?? 1;
  const eaves = isOneSided ? [share] : [Math.min(1, share * 2), share * 2 - 1];
  const profile = chance.pick(profiles);
  const fall_mm_per_m = chance.pick([3, 4, 5, 5, 5, 7, 8, 10]);
  return eaves.flatMap((part) => {
    const length_m = tenths(eave_m * part);
    return length_m < 0.5 ? [] : [{ ...profile, length_m, fall_mm_per_m }];
  });
}

function downpipesOf(chance: Chance, runs: readonly Row[], eave_m: number): Row[] {
  return runs.flatMap((run) => {
    const count = Number(run['length_m']) > longRun_m ? 2 : 1;
    const length_m = tenths(Math.max(0.5, eave_m - chance.between(0.3, 1.2)));
    return Array.from({ length: count }, () => ({ bore_mm: Number(run['outlet_mm']), length_m }));
  });
}

/** The narrowest pipe whose chamber still hangs on a wall. */
function diverterMeasures(chance: Chance, roof: Row, diverter: Row): Row {
  const plan_m2 =
    numberIn(roof, 'roofPlanArea_m2') ?? (numberIn(roof, 'length_m') ?? 0) * (numberIn(roof, 'width_m') ?? 0);
  const depth_mm = numberIn(diverter, 'firstFlush_mm') ?? 0;
  const chamber_L = numberIn(diverter, 'chamber_L') ?? depth_mm * plan_m2 * (numberIn(roof, 'gutteredFraction') ?? 1);
  const length_m = (bore_mm: number) => chamber_L / 1000 / ((Math.PI / 4) * (bore_mm / 1000) ** 2);
  const chamberBore_mm = chamberBores_mm.find((bore_mm) => length_m(bore_mm) <= longestChamber_m);
  return { chamberBore_mm: chamberBore_mm ?? chamberBores_mm.at(-1)!, drainHole_mm: chance.pick([3, 4, 4, 5, 6]) };
}

/** How often a survey leaves out what a building measures [fraction]. Ours. */
const leaving = { site_fraction: 0.12, form_fraction: 0.06, gutters_fraction: 0.1, stand_fraction: 0.1 } as const;

/** Leaves out what a true survey does: all of some sites, and single measures of others. */
export function wornMeasures(seed: number, siteId: string, measures: Measures): Measures {
  const chance = chanceFor(seed, `measures left out ${siteId}`);
  const isNone = chance.share() < leaving.site_fraction;
  const [noForm, noGutters, noStand] = [leaving.form_fraction, leaving.gutters_fraction, leaving.stand_fraction].map(
    (fraction) => chance.share() < fraction,
  );
  const without = (rows: ReadonlyMap<string, Row>, columns: readonly string[]) =>
    new Map([...rows].map(([id, row]) => [id, { ...row, ...Object.fromEntries(columns.map((name) => [name, null])) }]));
  const { roofs, diverters, tanks, gutters, downpipes } = measures;
  const all = isNone ? { roofs: ['form', 'pitch_deg', 'eaveHeight_m'], tanks: ['height_m', 'standHeight_m'] } : null;
  return {
    roofs: without(roofs, all?.roofs ?? (noForm ? ['form', 'pitch_deg'] : [])),
    diverters: isNone ? without(diverters, ['chamberBore_mm', 'drainHole_mm']) : diverters,
    tanks: without(tanks, all?.tanks ?? (noStand ? ['standHeight_m'] : [])),
    gutters: isNone || noGutters ? [] : gutters,
    downpipes: isNone || noGutters ? [] : downpipes,
  };
}

const tenths = (value: number) => Math.round(value * 10) / 10;
const hundredths = (value: number) => Math.round(value * 100) / 100;
