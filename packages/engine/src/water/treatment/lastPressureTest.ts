import {
  engineProblem,
  isoDay,
  type PressureTest,
  type PressureTestFinding,
  type Problem,
  type SiteFacts,
  type TreatmentUnitFacts,
} from '../../kernel/index.ts';
import { type AirTest, airToWaterSmooth_ratio, airToWaterStirred_ratio } from './airThroughDefects.ts';
import { leastTestPressure_kPa, roundAndWetted, smallestDefect_um } from './bubblePoint.ts';
import { usable, usableOrNone } from './cleanUnit.ts';
import { atmosphere_kPa, leastExpansion_factor, resolution_um } from './constants.ts';
import type { DrivenFlow } from './drivenFlow.ts';
import { type DecayTest, decayLimit_kPa_per_min, decayReduction_log10 } from './pressureDecay.ts';
import { isOfUnit, newSince } from './unitsInUse.ts';

/** What the last test with air says, with what is to be told of it. */
export interface LastPressureTest {
  readonly finding: PressureTestFinding | null;
  /** Air to water in it, the lesser of long and short holes; null where that is not known. */
  readonly airToWater_ratio: number | null;
  /** As it was told. */
  readonly test: PressureTest | null;
  readonly problems: readonly Problem[];
}

/** What the last test of this set with air sees, what its fall supports, and whether that is less than what is claimed. */
export function lastPressureTest(
  { siteId, treatment }: SiteFacts,
  unit: TreatmentUnitFacts,
  flow: DrivenFlow | null,
  temperature_C: number,
): LastPressureTest {
  const test = treatment.pressureTests.findLast(
    (one) =>
      isOfUnit(treatment, unit, one.unitSerial) &&
      usable(one.pressure_kPa) !== null &&
      usableOrNone(one.fall_kPa_per_min) !== null,
  );
  if (test === undefined) return { finding: null, airToWater_ratio: null, test: null, problems: [] };
  const place = { file: 'pressureTests.csv', siteId };
  const facts = { unit: unit.serial, day: isoDay(test.testedOn) };
  const since = newSince(treatment, unit);
  if (since !== null && test.testedOn < since) {
    const problem = engineProblem('treatment.test_not_used', place, { ...facts, since: isoDay(since) });
    return { finding: null, airToWater_ratio: null, test: null, problems: [problem] };
  }
  const { pressure_kPa, fall_kPa_per_min } = test;
  const problems: Problem[] = [];
  const tell = (
    code: 'treatment.test_sees_little' | 'treatment.test_volume_unknown' | 'treatment.test_no_fall',
    more: object,
  ) => problems.push(engineProblem(code, place, { ...facts, ...more }));
  const smallestSeen_um = smallestDefect_um(pressure_kPa, temperature_C, roundAndWetted, 0);
  if (smallestSeen_um > resolution_um) {
    const least_kPa = leastTestPressure_kPa(resolution_um, temperature_C, roundAndWetted, 0);
    tell('treatment.test_sees_little', { sees_um: smallestSeen_um, wanted_um: resolution_um, pressure_kPa, least_kPa });
  }
  const held_L = usable(test.airVolume_L);
  if (held_L === null) tell('treatment.test_volume_unknown', {});
  if (fall_kPa_per_min <= 0) tell('treatment.test_no_fall', {});
  const base = { testedOn: test.testedOn, pressure_kPa, smallestSeen_um };
  if (held_L === null || flow === null || flow.flow_L_per_min <= 0)
    return {
      finding: { ...base, supports_log10: null, fallLimit_kPa_per_min: null },
      airToWater_ratio: null,
      test,
      problems,
    };
  const airToWater_ratio = leastAirToWater_ratio(pressure_kPa, flow.pressure_kPa, temperature_C);
  const decay: DecayTest = {
    ...{ flow_L_per_min: flow.flow_L_per_min, airToWater_ratio, atmosphere_kPa, held_L },
    concentration_factor: 1,
  };
  const claimed = usableOrNone(unit.figures?.reductions.protozoa_log10);
  const fallLimit_kPa_per_min = claimed === null ? null : decayLimit_kPa_per_min(decay, claimed);
  if (fallLimit_kPa_per_min !== null && fall_kPa_per_min > fallLimit_kPa_per_min)
    problems.push(
      engineProblem(
        'treatment.test_fails',
        { ...place, column: 'fall_kPa_per_min' },
        { ...facts, fall_kPa_per_min, limit_kPa_per_min: fallLimit_kPa_per_min, claimed_log10: claimed! },
      ),
    );
  const supports_log10 = fall_kPa_per_min <= 0 ? null : decayReduction_log10(decay, fall_kPa_per_min);
  return { finding: { ...base, supports_log10, fallLimit_kPa_per_min }, airToWater_ratio, test, problems };
}

/** The lesser ratio of long narrow and of short wide holes, so that a fall supports no more than either would. */
function leastAirToWater_ratio(test_kPa: number, across_kPa: number, temperature_C: number): number {
  const test: AirTest = { test_kPa, back_kPa: 0, across_kPa, temperature_C, atmosphere_kPa };
  return Math.min(airToWaterSmooth_ratio(test), airToWaterStirred_ratio(test, leastExpansion_factor));
}
