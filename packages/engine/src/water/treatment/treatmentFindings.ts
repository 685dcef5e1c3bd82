import {
  type EngineProblemCode,
  engineProblem,
  isWaterTemperature,
  type Judged,
  type Problem,
  type TreatmentFinding,
  type TreatmentUnitFacts,
  usableFigure,
  usableFigureOrNone,
} from '../../kernel/index.ts';
import { judgedUnit } from './judgedUnit.ts';
import { type TreatmentGiven, unknownUnit } from './treatmentGiven.ts';
import { unitsInUse } from './unitsInUse.ts';

/**
 * Do the treatment units of a site pass what its people ask, in the hours they pump, without a line that is too long? The set as it is now; and at the unfavourable end one that is due to
 * be changed, more asked and a person nobody chose at the pump.
 *
 * @param given - the site's facts, what is asked [L/day], the head there is [m] and the settings
 * @returns a finding for each unit in use; null where treatment is not judged
 * @problem treatment.none - treatment is to be judged everywhere, and there is no unit
 * @problem treatment.part_unknown - the part of the catalogue a unit is, is not known or is no treatment unit
 * @problem treatment.flow_unknown - neither a rated flow with its pressure nor area and permeability are known
 * @problem treatment.rating_differs - the two ways to the clean flow differ
 * @problem treatment.pressure_unknown - it is not known what drives the water: judged at the rated pressure
 * @problem treatment.pressure_high - the membranes would have more pressure across them than they may
 * @problem treatment.lowest_flow_unknown - it is not known at which flow a set is changed
 * @problem treatment.lowest_flow_high - that flow is no less than the clean flow
 * @problem treatment.demand_unknown - it is not known what is asked
 * @problem treatment.taps_unknown - nobody counted the taps
 * @problem treatment.temperature - the settings' temperature is not that of water
 * @problem treatment.pump_unknown - there is a hand pump, and its piston is not known
 * @problem treatment.backwash_unknown - it is not known what backwash takes
 * @problem treatment.units_several - several units share litres and taps
 * @problem treatment.reading_not_used - a reading of the flow that cannot be used
 * @problem treatment.reading_early - the last reading is of an earlier set
 * @problem treatment.test_not_used - the last test with air is of an earlier set
 * @problem treatment.test_sees_little - the pressure of that test is too low for small holes
 * @problem treatment.test_volume_unknown - it is not known how much air was in it
 * @problem treatment.test_unit_unknown - a test with air that names no unit, where there have been several
 * @problem treatment.test_no_fall - no fall was read
 * @problem treatment.test_fails - the pressure falls faster than what is claimed of the unit supports
 * @law more asked, or a more worn set, never makes a verdict better
 * @definition ours: docs/decisions/0206-when-a-unit-keeps-up.md
 */
export function treatmentFindings(given: TreatmentGiven): Judged<readonly TreatmentFinding[]> {
  const { site, settings } = given;
  const units = unitsInUse(site);
  const isJudged =
    settings.judgeTreatment === 'always' || (settings.judgeTreatment === 'whereMeasured' && units.length > 0);
  if (!isJudged) return { finding: null, problems: [], working: [] };
  if (units.length === 0) {
    const problem = engineProblem('treatment.none', { file: 'treatmentUnits.csv', siteId: site.siteId });
    return { finding: [unknownUnit(null, settings)], problems: [problem], working: [] };
  }
  const judged = units.map((unit) => judgedUnit(unit, units.length, given));
  return {
    finding: judged.map(({ finding }) => finding),
    problems: [...ofSite(given, units), ...judged.flatMap(({ problems }) => problems)],
    working: judged.flatMap(({ working }) => working),
  };
}

/** What is told once for a site, however many units it has. */
function ofSite(
  { site, settings, ...given }: TreatmentGiven,
  units: readonly TreatmentUnitFacts[],
): readonly Problem[] {
  const { siteId, taps_count } = site;
  const { waterTemperature_C: value } = settings;
  const atSite = (column: string) => ({ file: 'sites.csv', siteId, column });
  const told: readonly (readonly [boolean, EngineProblemCode, string, Readonly<Record<string, number>>])[] = [
    [units.length > 1, 'treatment.units_several', 'treatmentUnits.csv', { count: units.length }],
    [usableFigureOrNone(given.demandHighest_L_per_day) === null, 'treatment.demand_unknown', 'demand.csv', {}],
  ];
  const problems = told.flatMap(([isSo, code, file, facts]) =>
    isSo ? [engineProblem(code, { file, siteId }, facts)] : [],
  );
  if (usableFigure(taps_count) === null) problems.push(engineProblem('treatment.taps_unknown', atSite('taps')));
  if (!isWaterTemperature(value)) {
    const place = { file: 'settings.json', siteId, column: 'waterTemperature_C' };
    problems.push(engineProblem('treatment.temperature', place, { value: String(value) }));
  }
  return problems;
}
