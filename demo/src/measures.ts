import { catalogueTanks } from './catalogue.ts';
import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import { overflowFor, type Run, type Strain, sizedRun, stormOf } from './drains.ts';
import { groundOf, type SiteGround, standOf } from './stands.ts';
import { pipesOf } from './taps.ts';

/** How the buildings of a site are measured: cells for rows that stand, and rows of gutters and downpipes. */
export interface Measures {
  /** By the id of the roof. */
  readonly roofs: ReadonlyMap<string, Row>;
  readonly diverters: ReadonlyMap<string, Row>;
  /** By the id of the tank. */
  readonly tanks: ReadonlyMap<string, Row>;
  readonly gutters: readonly Row[];
  readonly downpipes: readonly Row[];
  readonly pipes: readonly Row[];
}

/** The rows of one site that are measured. */
interface SiteRows {
  readonly siteId: string;
  readonly roofs: readonly Row[];
  readonly diverters: readonly Row[];
  readonly tanks: readonly Row[];
}

/** So far a wall stands above the overflow [m]. Ours. */
const rim_m = [0.12, 0.24] as const;
/** Room between the top of the highest tank and the line of the gutter [m], and the lowest eave of a hall [m]. Ours. */
const belowEave_m = [0.25, 0.95] as const;
const lowestEave_m = 2.6;
/** Of a roof measured by its area alone: its length over its width [ratio]. Ours. */
const usualRatio = 2.2;

/** Bores of pipe that are sold [mm]. Invented, as all of the demo's catalogue. */
const chamberBores_mm = [110, 160, 200, 250, 315, 400] as const;
/** A hole of 1 mm lets out what light rain brings to so much roof [m2]: a larger one loses good water. Ours. */
const hole_m2_per_mm2 = 7;
/** A chamber is no longer than this, so that it hangs on a wall [m]. Ours. */
const longestChamber_m = 3.2;

const shapes = ['halfRound', 'halfRound', 'rectangular', 'trapezoidal', 'cutPipe'] as const;

/** How often a site's gutters come near to what they carry, and how often they are too small [fraction]. Invented. */
const [edge_fraction, small_fraction] = [0.05, 0.07] as const;
/** How often a screen stands over the overflow [fraction], and the steepest usual pitch, before one is drawn [deg]. Invented. */
const [screened_fraction, steep_deg] = [0.5, 30] as const;

const numberIn = (row: Row | undefined, column: string): number | null => {
  const value = row?.[column];
  return typeof value === 'number' ? value : null;
};

/**
 * Measures the buildings of a site: from a stream of chance of their own, so that no other figure of the demo hangs on them. A roof
 * with little gutter has it along one eave; a tank stands below the eave it is filled from.
 */
// long: one building, part after part
export function measuresOf(seed: number, site: SiteRows, clean: boolean): Measures {
  const chance = chanceFor(seed, `measures ${site.siteId}`);
  const strain = clean ? 'ample' : strainOf(seed, site.siteId);
  const tanks = tankMeasures(chance, seed, site, groundOf(seed, site.siteId, clean));
  const tallest_m = Math.max(...site.tanks.map((tank) => topOf(tank, tanks)));
  const roofs = new Map<string, Row>();
  const diverters = new Map<string, Row>();
  const gutters: Row[] = [];
  const downpipes: Row[] = [];
  for (const roof of site.roofs) {
    const roofId = String(roof['roofId']);
    const cells = roofMeasures(chance, roof, tallest_m);
    roofs.set(roofId, cells);
    const runs = guttersOf(chance, roof, cells, strain);
    for (const run of runs) gutters.push({ siteId: site.siteId, gutterId: `G${gutters.length + 1}`, roofId, ...run });
    const down_m = Number(cells['eaveHeight_m']);
    for (const pipe of downpipesOf(chance, runs, down_m))
      downpipes.push({ siteId: site.siteId, downpipeId: `D${downpipes.length + 1}`, roofId, ...pipe });
    const diverter = site.diverters.find((row) => row['roofId'] === roof['roofId']);
    if (diverter) diverters.set(roofId, diverterMeasures(chance, roof, diverter));
  }
  return { roofs, diverters, tanks, gutters, downpipes, pipes: pipesOf(seed, site.siteId, bodiesOf(site.tanks)) };
}

function strainOf(seed: number, siteId: string): Strain {
  const share = chanceFor(seed, `gutters of ${siteId}`).share();
  return share < small_fraction ? 'small' : share < small_fraction + edge_fraction ? 'edge' : 'ample';
}

/** The first tank of each body of water that people draw from; one of null where there is but one. */
function bodiesOf(tanks: readonly Row[]): readonly (string | null)[] {
  const firsts = tanks.filter(({ joinedTo, role }) => (joinedTo ?? null) === null && role !== 'settling');
  return firsts.length > 1 ? firsts.map(({ tankId }) => String(tankId)) : [null];
}

/** Plan area that drains to a tank, shared among those that are joined [m2]. */
function gutteredPlan_m2({ roofs, tanks }: SiteRows, tank: Row): number {
  const isApart = bodiesOf(tanks).length > 1;
  const led = roofs.filter(({ tankId }) => !isApart || tankId === tank['tankId']);
  const all_m2 = led.reduce((sum, roof) => sum + planOf(roof) * (numberIn(roof, 'gutteredFraction') ?? 1), 0);
  return isApart ? all_m2 : all_m2 / tanks.length;
}

const planOf = (roof: Row): number =>
  numberIn(roof, 'roofPlanArea_m2') ?? (numberIn(roof, 'length_m') ?? 0) * (numberIn(roof, 'width_m') ?? 0);

/** Tanks of a site stand on one slab: joined tanks share one level. The wall is as high as the overflow pipe needs. */
function tankMeasures(chance: Chance, seed: number, site: SiteRows, ground: SiteGround): ReadonlyMap<string, Row> {
  const standHeight_m = chance.pick([0, 0.2, 0.3, 0.3, 0.45, 0.45, 0.6, 0.9]);
  const above_m = chance.between(...rim_m);
  const isScreened = chanceFor(seed, `screens of ${site.siteId}`).share() < screened_fraction;
  return new Map(
    site.tanks.map((tank) => {
      const overflowHeight_m = numberIn(tank, 'overflowHeight_m') ?? 0;
      const overflow = overflowFor(stormOf(gutteredPlan_m2(site, tank), steep_deg), isScreened);
      const height_m = hundredths(overflowHeight_m + Math.max(above_m, (overflow.bore_mm / 1000) * 1.2 + 0.04));
      const isSettling = tank['role'] === 'settling';
      const cells = {
        ...{ height_m, standHeight_m, overflowBore_mm: overflow.bore_mm, overflows: overflow.count },
        overflowScreen: isScreened ? 'screened' : 'open',
        inletHeight_m: hundredths(isSettling ? overflowHeight_m * 0.7 : overflowHeight_m + 0.05),
        cells: isSettling ? 2 : null,
      };
      const diameter_m = numberIn(tank, 'diameter_m') ?? 0;
      const mass_kg = catalogueTanks.find(({ partId }) => partId === tank['partId'])?.mass_kg ?? 0;
      const stand = standOf({ diameter_m, height_m, mass_kg }, standHeight_m, ground);
      return [String(tank['tankId']), { ...cells, ...stand }];
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
function guttersOf(chance: Chance, roof: Row, cells: Row, strain: Strain): Row[] {
  const plan_m2 = numberIn(roof, 'roofPlanArea_m2');
  const isOneSided = cells['form'] === 'oneSlope';
  const eave_m = numberIn(roof, 'length_m') ?? (plan_m2 === null ? 0 : Math.sqrt(plan_m2 * usualRatio));
  const share = numberIn(roof, 'gutteredFraction') ?? 1;
  const eaves = isOneSided ? [share] : [Math.min(1, share * 2), share * 2 - 1];
  const shape = chance.pick(shapes);
  const fall_mm_per_m = chance.pick([3, 4, 5, 5, 5, 7, 8, 10]);
  const runs = eaves.flatMap((part): Run[] => {
    const length_m = tenths(eave_m * part);
    return length_m < 0.5 ? [] : [{ shape, length_m, fall_mm_per_m }];
  });
  const flow_L_per_s = stormOf(planOf(roof) * share, Number(cells['pitch_deg']));
  const all_m = runs.reduce((sum, { length_m }) => sum + length_m, 0);
  return runs.map((run) => sizedRun(run, (flow_L_per_s * run.length_m) / all_m, strain));
}

function downpipesOf(chance: Chance, runs: readonly Row[], eave_m: number): Row[] {
  return runs.flatMap((run) => {
    const count = Number(run['outlets']);
    const length_m = tenths(Math.max(0.5, eave_m - chance.between(0.3, 1.2)));
    return Array.from({ length: count }, () => ({ bore_mm: Number(run['outlet_mm']), length_m }));
  });
}

/** The narrowest pipe whose chamber still hangs on a wall. */
function diverterMeasures(chance: Chance, roof: Row, diverter: Row): Row {
  const plan_m2 = planOf(roof);
  const depth_mm = numberIn(diverter, 'firstFlush_mm') ?? 0;
  const chamber_L = numberIn(diverter, 'chamber_L') ?? depth_mm * plan_m2 * (numberIn(roof, 'gutteredFraction') ?? 1);
  const length_m = (bore_mm: number) => chamber_L / 1000 / ((Math.PI / 4) * (bore_mm / 1000) ** 2);
  const chamberBore_mm = chamberBores_mm.find((bore_mm) => length_m(bore_mm) <= longestChamber_m);
  const drained_m2 = plan_m2 * (numberIn(roof, 'gutteredFraction') ?? 1);
  const widest_mm = Math.max(2.5, Math.floor(2 * Math.sqrt(drained_m2 / hole_m2_per_mm2)) / 2);
  const drainHole_mm = Math.min(widest_mm, chance.pick([3, 4, 4, 5, 6]));
  return { chamberBore_mm: chamberBore_mm ?? chamberBores_mm.at(-1)!, drainHole_mm };
}

/** How often a survey leaves out what a building measures [fraction]. Ours. */
const leaving = { site_fraction: 0.12, form_fraction: 0.06, gutters_fraction: 0.1, stand_fraction: 0.1 } as const;

/** What is measured at a tank, and at what it stands on. */
const ofTank = ['height_m', 'inletHeight_m', 'overflowBore_mm', 'overflows', 'overflowScreen', 'cells'];
export const ofStand = [
  ...['standHeight_m', 'standMass_kg', 'groundClass', 'pads', 'padSide_m', 'baseWidth_m', 'fastened'],
  ...['signedBy', 'signedOn'],
];

/** Leaves out what a true survey does: all of some sites, and single measures of others. */
export function wornMeasures(seed: number, siteId: string, measures: Measures): Measures {
  const chance = chanceFor(seed, `measures left out ${siteId}`);
  const isNone = chance.share() < leaving.site_fraction;
  const [noForm, noGutters, noStand] = [leaving.form_fraction, leaving.gutters_fraction, leaving.stand_fraction].map(
    (fraction) => chance.share() < fraction,
  );
  const without = (rows: ReadonlyMap<string, Row>, columns: readonly string[]) =>
    new Map([...rows].map(([id, row]) => [id, { ...row, ...Object.fromEntries(columns.map((name) => [name, null])) }]));
  const { roofs, diverters, tanks, gutters, downpipes, pipes } = measures;
  const all = isNone ? { roofs: ['form', 'pitch_deg', 'eaveHeight_m'], tanks: [...ofTank, ...ofStand] } : null;
  return {
    roofs: without(roofs, all?.roofs ?? (noForm ? ['form', 'pitch_deg'] : [])),
    diverters: isNone ? without(diverters, ['chamberBore_mm', 'drainHole_mm']) : diverters,
    tanks: without(tanks, all?.tanks ?? (noStand ? ofStand : [])),
    gutters: isNone || noGutters ? [] : gutters,
    downpipes: isNone || noGutters ? [] : downpipes,
    // Without the height of the stand nothing is known of what comes to the taps.
    pipes: isNone || noStand ? [] : pipes,
  };
}

const tenths = (value: number) => Math.round(value * 10) / 10;
const hundredths = (value: number) => Math.round(value * 100) / 100;
