import {
  engineProblem,
  isOfUnit,
  isoDay,
  type PressureTest,
  type PressureTestFinding,
  type Problem,
  type SiteFacts,
  setNewOn,
  type TreatmentUnitFacts,
  usableFigure,
  usableFigureOrNone,
} from '../../kernel/index.ts';
import { type AirTest, airToWaterSmooth_ratio, airToWaterStirred_ratio } from './airThroughDefects.ts';
import { leastTestPressure_kPa, roundAndWetted, smallestDefect_um } from './bubblePoint.ts';
import { atmosphere_kPa, leastExpansion_factor, resolution_um } from './constants.ts';
import type { DrivenFlow } from './drivenFlow.ts';
import { type DecayTest, decayLimit_kPa_per_min, decayReduction_log10 } from './pressureDecay.ts';

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
  site: SiteFacts,
  unit: TreatmentUnitFacts,
  flow: DrivenFlow | null,
  temperature_C: number,
): LastPressureTest {
  const { siteId, treatment } = site;
  const { test, isOfAny } = testOf(site, unit);
  const nothing = { finding: null, airToWater_ratio: null, test: null };
  if (test === undefined) return { ...nothing, problems: [] };
  const since = setNewOn(treatment, unit, site.handOverDay);
  if (since !== null && test.testedOn < since) {
    const facts = { unit: unit.serial, day: isoDay(test.testedOn), since: isoDay(since) };
    return { ...nothing, problems: [engineProblem('treatment.test_not_used', { file, siteId }, facts)] };
  }
  const smallestSeen_um = smallestDefect_um(test.pressure_kPa, temperature_C, roundAndWetted, 0);
  const ofAny = isOfAny
    ? [
        engineProblem(
          'treatment.test_unit_unknown',
          { file, siteId },
          { unit: unit.serial, day: isoDay(test.testedOn) },
        ),
      ]
    : [];
  const fall = fallSaid(test, unit, flow, temperature_C);
  const { supports_log10, fallLimit_kPa_per_min, airToWater_ratio } = fall;
  const { testedOn, pressure_kPa } = test;
  return {
    finding: { testedOn, pressure_kPa, smallestSeen_um, supports_log10, fallLimit_kPa_per_min },
    airToWater_ratio,
    test,
    problems: [
      ...ofAny,
      ...ofTest(siteId, unit, test, smallestSeen_um, temperature_C),
      ...tooFast(siteId, unit, test, fallLimit_kPa_per_min),
    ],
  };
}

/**
 * The last test of a unit. One that names none, where there have been several, may be of each that was there that day: it counts where it fell faster than the unit's own, so that it can take from what is stated and never add.
 */
function testOf({ treatment, handOverDay }: SiteFacts, unit: TreatmentUnitFacts) {
  const readable = treatment.pressureTests.filter(
    (one) => usableFigure(one.pressure_kPa) !== null && usableFigureOrNone(one.fall_kPa_per_min) !== null,
  );
  const own = readable.findLast((one) => isOfUnit(treatment, unit, one.unitSerial));
  const since = setNewOn(treatment, unit, handOverDay) ?? -Infinity;
  const of = readable.findLast(
    ({ unitSerial, testedOn }) => unitSerial === null && treatment.units.length > 1 && testedOn >= since,
  );
  const isWorse =
    of !== undefined &&
    (own === undefined || own.testedOn < since || (of.testedOn >= own.testedOn && isFaster(of, own)));
  return { test: isWorse ? of : own, isOfAny: isWorse };
}

/** Does more air go in a minute? Where of one it is not known how much there was, the fall alone tells. */
function isFaster(one: PressureTest, other: PressureTest): boolean {
  const [own_L, others_L] = [usableFigure(one.airVolume_L), usableFigure(other.airVolume_L)];
  if (own_L === null || others_L === null) return one.fall_kPa_per_min > other.fall_kPa_per_min;
  return one.fall_kPa_per_min * own_L > other.fall_kPa_per_min * others_L;
}

const file = 'pressureTests.csv';

/** What the fall of its pressure supports, and the most it may be for what is claimed; null where volume or flow is not known. */
function fallSaid(test: PressureTest, unit: TreatmentUnitFacts, flow: DrivenFlow | null, temperature_C: number) {
  const held_L = usableFigure(test.airVolume_L);
  if (held_L === null || flow === null || flow.flow_L_per_min <= 0)
    return { supports_log10: null, fallLimit_kPa_per_min: null, airToWater_ratio: null };
  const airToWater_ratio = leastAirToWater_ratio(test.pressure_kPa, flow.pressure_kPa, temperature_C);
  const decay: DecayTest = {
    ...{ flow_L_per_min: flow.flow_L_per_min, airToWater_ratio, atmosphere_kPa, held_L },
    concentration_factor: 1,
  };
  const { fall_kPa_per_min } = test;
  const claimed = usableFigureOrNone(unit.figures?.reductions.protozoa_log10);
  return {
    supports_log10: fall_kPa_per_min <= 0 ? null : decayReduction_log10(decay, fall_kPa_per_min),
    fallLimit_kPa_per_min: claimed === null ? null : decayLimit_kPa_per_min(decay, claimed),
    airToWater_ratio,
  };
}

/** What a test cannot say. */
function ofTest(
  siteId: string,
  unit: TreatmentUnitFacts,
  { testedOn, pressure_kPa, fall_kPa_per_min, airVolume_L }: PressureTest,
  sees_um: number,
  temperature_C: number,
): readonly Problem[] {
  const facts = { unit: unit.serial, day: isoDay(testedOn) };
  const place = { file, siteId };
  const problems: Problem[] = [];
  if (sees_um > resolution_um) {
    const least_kPa = leastTestPressure_kPa(resolution_um, temperature_C, roundAndWetted, 0);
    const seen = { sees_um, wanted_um: resolution_um, pressure_kPa, least_kPa };
    problems.push(engineProblem('treatment.test_sees_little', place, { ...facts, ...seen }));
  }
  if (usableFigure(airVolume_L) === null) problems.push(engineProblem('treatment.test_volume_unknown', place, facts));
  if (fall_kPa_per_min <= 0) problems.push(engineProblem('treatment.test_no_fall', place, facts));
  return problems;
}

/** The pressure fell faster than what is claimed of the unit allows. */
function tooFast(
  siteId: string,
  unit: TreatmentUnitFacts,
  { testedOn, fall_kPa_per_min }: PressureTest,
  limit_kPa_per_min: number | null,
): readonly Problem[] {
  if (limit_kPa_per_min === null || fall_kPa_per_min <= limit_kPa_per_min) return [];
  const claimed_log10 = unit.figures!.reductions.protozoa_log10!;
  const facts = { unit: unit.serial, day: isoDay(testedOn), fall_kPa_per_min, limit_kPa_per_min, claimed_log10 };
  return [engineProblem('treatment.test_fails', { file, siteId, column: 'fall_kPa_per_min' }, facts)];
}

/** The lesser ratio of long narrow and of short wide holes, so that a fall supports no more than either would. */
function leastAirToWater_ratio(test_kPa: number, across_kPa: number, temperature_C: number): number {
  const test: AirTest = { test_kPa, back_kPa: 0, across_kPa, temperature_C, atmosphere_kPa };
  return Math.min(airToWaterSmooth_ratio(test), airToWaterStirred_ratio(test, leastExpansion_factor));
}
