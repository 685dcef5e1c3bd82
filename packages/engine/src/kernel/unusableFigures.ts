import type { DiverterFacts, GutterFacts, PipeFacts, RoofFacts, TankFacts } from './buildingFacts.ts';
import { engineProblem } from './engineProblems.ts';
import type { SiteFacts } from './facts.ts';
import type { Place, Problem } from './problems.ts';

/** No figure of a site is larger, or nearer to 0 without being 0 [any unit]. Ours: far outside anything that is built. */
const largestFigure = 1e9;
const smallestFigure = 1e-9;

/** Days before and after 1970 that a date can be [day]. Ours: some ten thousand years. */
const farthestDay = 4e6;

/** The farthest year one designs for, and growth a year that no village has [year], [fraction]. Ours. */
const farthestYear = 2500;
const largestGrowth_fraction = 1;

/**
 * Which figures of a site can nobody reckon with: not a number, without end, below 0 where nothing is, or beyond all
 * measure? What is not known is null and is not among them.
 *
 * @param site - the site's facts
 * @returns one problem a figure
 * @problem site.figure_unusable - a figure is no number one can reckon with
 * @definition ours
 */
export function unusableFigures(site: SiteFacts): readonly Problem[] {
  const problems: Problem[] = [];
  const { siteId } = site;
  const found = (file: string, column: string, value: number, of: string) => {
    const place: Place = { file, column, siteId };
    problems.push(engineProblem('site.figure_unusable', place, { value: String(value), of }));
  };
  const look = (file: string, figures: Readonly<Record<string, number | null>>, of: string) => {
    for (const [column, value] of Object.entries(figures))
      if (value !== null && !isUsable(value)) found(file, column, value, of);
  };
  const { ration } = site;
  const { rainFactor, people, households_count: households } = site;
  look('sites.csv', { rainFactor, people, households }, '');
  const { taps_count: taps, tapHeight_m, unitHeight_m, windSpeed_m_per_s } = site;
  look('sites.csv', { taps, windSpeed_m_per_s }, '');
  // Taps and unit may stand lower than the tanks: their heights are told as they are, and only their size is looked at.
  for (const [column, value] of Object.entries({ tapHeight_m, unitHeight_m }))
    if (value !== null && !isUsable(Math.abs(value))) found('sites.csv', column, value, '');
  lookAtPeople(site, found);
  if (ration) {
    const { below_fraction, judged_fraction, other_fraction } = ration;
    const shares = { rationedJudged_fraction: judged_fraction, rationedOther_fraction: other_fraction };
    look('sites.csv', { rationBelow_fraction: below_fraction, ...shares }, '');
  }
  for (const roof of site.roofs) look('roofs.csv', roofFigures(roof), roof.roofId);
  for (const { diverter, roofId } of site.roofs) if (diverter) look('diverters.csv', diverterFigures(diverter), roofId);
  for (const gutter of site.gutters) look('gutters.csv', gutterFigures(gutter), gutter.gutterId);
  for (const { downpipeId, bore_mm, length_m } of site.downpipes)
    look('downpipes.csv', { bore_mm, length_m }, downpipeId);
  for (const pipe of site.pipes) look('pipes.csv', pipeFigures(pipe), pipe.pipeId);
  for (const tank of site.tanks) look('tanks.csv', tankFigures(tank), tank.tankId);
  for (const { presentFraction } of site.presence?.periods ?? []) look('presence.csv', { presentFraction }, '');
  for (const { purpose, litres_per_person_per_day } of site.demand)
    look('demand.csv', { litres_per_person_per_day }, purpose);
  return problems;
}

/** Days, years and growth: figures that may be under 0. */
function lookAtPeople(site: SiteFacts, found: (file: string, column: string, value: number, of: string) => void): void {
  const days = { handOverDay: site.handOverDay, peopleCountedOn: site.peopleCountedOn };
  for (const [column, day] of Object.entries(days))
    if (day !== null && !isDay(day)) found('sites.csv', column, day, '');
  const { designYear, growthFraction_per_year: growth } = site;
  if (designYear !== null && !(Number.isInteger(designYear) && Math.abs(designYear) <= farthestYear))
    found('sites.csv', 'designYear', designYear, '');
  if (growth !== null && !(growth > -1 && growth <= largestGrowth_fraction))
    found('sites.csv', 'growthFraction_per_year', growth, '');
}

function roofFigures(roof: RoofFacts) {
  const { length_m, width_m, roofPlanArea_m2, runoffFraction, gutteredFraction, pitch_deg, eaveHeight_m } = roof;
  const { wallAbove_m2, valleys_count: valleys } = roof;
  const sides = { length_m, width_m, roofPlanArea_m2, wallAbove_m2 };
  return { ...sides, runoffFraction, gutteredFraction, pitch_deg, eaveHeight_m, valleys };
}

function diverterFigures({ firstFlush_mm, chamber_L, chamberBore_mm, drainHole_mm }: DiverterFacts) {
  return { firstFlush_mm, chamber_L, chamberBore_mm, drainHole_mm };
}

/** A gutter may fall the wrong way: that is told of it, and is a figure like another. */
function gutterFigures(gutter: GutterFacts) {
  const { width_mm, depth_mm, length_m, outlet_mm, baseWidth_mm, runToOutlet_m } = gutter;
  const { outlets_count: outlets, bends_count: bends } = gutter;
  const fall_mm_per_m = gutter.fall_mm_per_m === null ? null : Math.abs(gutter.fall_mm_per_m);
  return { width_mm, depth_mm, length_m, fall_mm_per_m, outlet_mm, baseWidth_mm, runToOutlet_m, outlets, bends };
}

function pipeFigures(pipe: PipeFacts) {
  const { bore_mm, length_m, elbows_count: elbows, tees_count: tees } = pipe;
  const { valves_count: valves, meters_count: meters, otherLoss_k } = pipe;
  return { bore_mm, length_m, elbows, tees, valves, meters, otherLoss_k };
}

function tankFigures(tank: TankFacts) {
  const { nominal_L, partVolume_L, outletHeight_m, overflowHeight_m, diameter_m, peopleFraction } = tank;
  const { height_m, standHeight_m } = tank;
  const { inletHeight_m, overflowBore_mm, overflows_count: overflows, cells_count: cells } = tank;
  const { emptyMass_kg, partMass_kg, standMass_kg, pads_count: pads, padSide_m, baseWidth_m } = tank;
  const heights = { outletHeight_m, overflowHeight_m, height_m, standHeight_m, inletHeight_m };
  const stand = { emptyMass_kg, partMass_kg, standMass_kg, pads, padSide_m, baseWidth_m };
  return {
    nominal_L,
    partVolume_L,
    ...heights,
    ...stand,
    overflowBore_mm,
    overflows,
    cells,
    diameter_m,
    peopleFraction,
  };
}

function isUsable(value: number): boolean {
  return value === 0 || (value >= smallestFigure && value <= largestFigure);
}

function isDay(value: number): boolean {
  return Number.isInteger(value) && Math.abs(value) <= farthestDay;
}
