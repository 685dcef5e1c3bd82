import {
  type DesignSettings,
  explain,
  type StandFinding,
  type TankFacts,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import {
  friction_factor,
  gust_factor,
  leastSafety_factor,
  levelGround_factor,
  roundTank_factor,
  roundTankForce_factor,
} from './constants.ts';
import type { StandChecks } from './standChecks.ts';

/**
 * Writes down how each figure of a stand was reached. It computes nothing: every value is taken from the sums. A figure that is not known has
 * no line; the problems say what it wants.
 *
 * @param tank - the tank as surveyed
 * @param checks - its sums
 * @param finding - what they came to
 * @param settings - the settings it was judged by
 * @returns working lines in the order of the steps
 * @definition ours
 */
// long: one line after another, nothing else
export function standWorking(
  tank: TankFacts,
  checks: StandChecks,
  finding: StandFinding,
  settings: DesignSettings,
): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const { measures, empty, full, loose } = checks;
  const named = workingInput('tank', tank.tankId, 'text');
  const line = (
    code: WorkingCode,
    value: number | string | null,
    unit: string,
    inputs: readonly (WorkingInput | null)[],
    source = 'definition',
  ) => {
    if (value === null) return;
    explain(lines, { code, value, unit, inputs: [named, ...inputs.filter((one) => one !== null)], source });
  };
  const known = (name: string, value: number | string | null, unit: string) =>
    value === null ? null : workingInput(name, value, unit);
  const push = known('windForce', checks.windForce_N, 'N');
  const least = workingInput('leastSafety', leastSafety_factor, 'number');
  line(
    'stand.massFull',
    checks.massFull_kg,
    'kg',
    [
      known('mostHeld', finding.mostHeld_L, 'L'),
      known('heldTo', measures.held?.from ?? null, 'text'),
      known('tankMass', measures.tank_kg, 'kg'),
      known('standMass', measures.stand_kg, 'kg'),
    ],
    'kell-1975, density at 20 °C',
  );
  line('stand.bearing', checks.bearing_kPa, 'kPa', [
    known('massFull', checks.massFull_kg, 'kg'),
    known('restingArea', measures.area_m2, 'm2'),
  ]);
  line(
    'stand.bearingAllowed',
    checks.bearingAllowed_kPa,
    'kPa',
    [known('groundClass', tank.groundClass, 'text')],
    checks.bearingSource ?? 'definition',
  );
  line(
    'stand.wind',
    checks.windForce_N,
    'N',
    [
      known('windSpeed', checks.windSpeed_m_per_s, 'm/s'),
      known('exposureFactor', checks.exposure_factor, 'number'),
      workingInput('topographyFactor', levelGround_factor, 'number'),
      workingInput('directionFactor', roundTank_factor, 'number'),
      known('windPressure', checks.windPressure_Pa, 'Pa'),
      workingInput('gustFactor', gust_factor, 'number'),
      workingInput('forceCoefficient', roundTankForce_factor, 'number'),
      known('diameter', measures.diameter_m, 'm'),
      known('height', measures.height_m, 'm'),
    ],
    'asce-7, equations 29.3-1 and 29.5-1',
  );
  const turning = [
    push,
    known('pushHeight', checks.pushHeight_m, 'm'),
    known('baseWidth', measures.baseWidth_m, 'm'),
    least,
  ];
  const massEmpty = known('massEmpty', checks.massEmpty_kg, 'kg');
  const massFull = known('massFull', checks.massFull_kg, 'kg');
  line('stand.overturningEmpty', empty.overturning_factor, 'number', [massEmpty, ...turning]);
  line('stand.overturningFull', full.overturning_factor, 'number', [massFull, ...turning]);
  const rubbing = [push, workingInput('friction', friction_factor, 'number'), least];
  line('stand.slidingEmpty', empty.sliding_factor, 'number', [massEmpty, ...rubbing]);
  line('stand.slidingFull', full.sliding_factor, 'number', [massFull, ...rubbing]);
  const tankMass = known('tankMass', measures.tank_kg, 'kg');
  const foot = known('diameter', measures.diameter_m, 'm');
  line('stand.looseOverturning', loose?.overturning_factor ?? null, 'number', [tankMass, push, foot, least]);
  line('stand.looseSliding', loose?.sliding_factor ?? null, 'number', [tankMass, ...rubbing]);
  line('stand.leastHeld', finding.leastHeld_L, 'L', [massEmpty, tank.isFastened === false ? tankMass : null, least]);
  line('stand.verdict', finding.verdict, '', [
    known('bearingUse', finding.bearingUse_factor, 'number'),
    least,
    workingInput('standMargin', settings.standMargin_fraction, 'fraction'),
    known('fastened', tank.isFastened === null ? null : tank.isFastened ? 'yes' : 'no', 'text'),
  ]);
  return lines;
}
