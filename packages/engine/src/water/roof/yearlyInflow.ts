import { explain, type JudgedRain, type WorkingLine, workingInput } from '../../kernel/index.ts';
import type { RoofCatch } from './siteRoofs.ts';

/**
 * How much water reaches the tank in a mean judged year? The litres of the judged years, divided by their number.
 *
 * @param inflow_L - litres by day [L], as long as the judged record
 * @param rain - the judged rain, with at least one judged year
 * @param roofs - the roofs the litres came from
 * @param working - lines already written; the yearly inflow is added
 * @returns litres in a mean judged year [L/year], 0 or more
 * @definition ours
 */
export function yearlyInflow_L(
  inflow_L: Float64Array,
  rain: Pick<JudgedRain, 'years'>,
  roofs: readonly RoofCatch[],
  working: WorkingLine[],
): number {
  let total_L = 0;
  let judgedYears = 0;
  for (const year of rain.years) {
    if (!year.judged) continue;
    judgedYears++;
    for (let day = year.from; day < year.to; day++) total_L += inflow_L[day]!;
  }
  if (judgedYears === 0) throw new RangeError('yearlyInflow_L: needs a judged year');
  const drainedArea_m2 = roofs.reduce((sum, roof) => sum + roof.roofPlanArea_m2 * roof.gutteredFraction, 0);
  const inputs = [workingInput('drainedArea', drainedArea_m2, 'm2'), workingInput('judgedYears', judgedYears, 'year')];
  const value = total_L / judgedYears;
  return explain(working, { code: 'roof.inflow', value, unit: 'L/year', inputs, source: 'definition' });
}
