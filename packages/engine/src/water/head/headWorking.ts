import {
  cautiousPersonPower_W,
  type DesignSettings,
  explain,
  type HeadFinding,
  mm_per_m,
  personPower_W,
  pumpEfficiency_fraction,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { mostSuction_m } from './constants.ts';
import type { HeadWay, PipeOnWay } from './headWay.ts';

/**
 * Writes down how each figure of a finding of the way to the taps was reached. It computes nothing: every value is taken from the finding.
 *
 * @param f - the finding
 * @param way - the way it is of
 * @param settings - the settings it was judged by
 * @returns working lines in the order of the steps
 * @definition ours
 */
// long: one line after another, nothing else
export function headWorking(f: HeadFinding, way: HeadWay, settings: DesignSettings): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const line = (
    code: WorkingCode,
    value: number | string | null,
    unit: string,
    inputs: readonly WorkingInput[],
    source = 'definition',
  ) => explain(lines, { code, value, unit, inputs, source });
  const known = (name: string, value: number | null, unit: string) => workingInput(name, value ?? 'unknown', unit);
  const tanks = workingInput('tanks', f.tankIds.join(', '), 'text');
  const flow = known('flowWanted', f.flowWanted_L_per_min, 'L/min');
  const low = known('lowLevel', f.lowLevel_m, 'm');
  const full = known('fullLevel', f.fullLevel_m, 'm');
  const water = workingInput('waterTemperature', settings.waterTemperature_C, 'C');
  const residual = workingInput('residualHead', settings.residualHead_m, 'm');
  const losses = [
    known('lossToUnit', f.lossToUnit_m, 'm'),
    known('lossInUnit', f.lossInUnit_m, 'm'),
    known('lossToTap', f.lossToTap_m, 'm'),
  ];
  line(
    'head.flowWanted',
    f.flowWanted_L_per_min,
    'L/min',
    [workingInput('taps', way.taps_count, 'count'), workingInput('tapFlow', settings.tapFlow_L_per_min, 'L/min')],
    'survey',
  );
  line('head.lowLevel', f.lowLevel_m, 'm', [tanks], 'survey');
  if (f.fullLevel_m !== null) line('head.fullLevel', f.fullLevel_m, 'm', [tanks], 'survey');
  line('head.fallToUnit', f.fallToUnit_m, 'm', [low, workingInput('unitHeight', way.unitHeight_m, 'm')], 'survey');
  line('head.fallToTap', f.fallToTap_m, 'm', [low, workingInput('tapHeight', way.tapHeight_m, 'm')], 'survey');
  f.segments.forEach((segment) => {
    const own = [...way.toUnit, ...way.toTap].find(({ pipe }) => pipe.pipeId === segment.pipeId);
    if (own === undefined) return;
    line(
      'head.pipe',
      segment.friction_m + segment.minor_m,
      'm',
      [...pipeInputs(own), flow, water],
      'colebrook-1939, law of the transition; salvato, table 6-4',
    );
  });
  line('head.lossToUnit', f.lossToUnit_m, 'm', [flow]);
  line('head.lossInUnit', f.lossInUnit_m, 'm', [flow], 'settings');
  line('head.lossToTap', f.lossToTap_m, 'm', [flow]);
  line('head.headLeft', f.headLeft_m, 'm', [known('fallToTap', f.fallToTap_m, 'm'), ...losses]);
  if (f.headLeftFull_m !== null)
    line('head.headLeftFull', f.headLeftFull_m, 'm', [known('headLeft', f.headLeft_m, 'm'), low, full]);
  line('head.flowLow', f.flowLow_L_per_min, 'L/min', [low, residual, water]);
  if (f.flowFull_L_per_min !== null) line('head.flowFull', f.flowFull_L_per_min, 'L/min', [full, residual, water]);
  const headLeft = known('headLeft', f.headLeft_m, 'm');
  if (f.hasHandPump) {
    line('head.pumpAdds', f.pumpAdds_m, 'm', [residual, headLeft]);
    line(
      'head.pumpPower',
      f.pumpPower_W,
      'W',
      [known('pumpAdds', f.pumpAdds_m, 'm'), flow, workingInput('efficiency', pumpEfficiency_fraction, 'fraction')],
      'hydraulic-power, ρ g H Q ÷ η',
    );
    if (f.onePerson_L_per_min !== null)
      line(
        'head.onePerson',
        f.onePerson_L_per_min,
        'L/min',
        [workingInput('personPower', personPower_W, 'W'), known('pumpAdds', f.pumpAdds_m, 'm')],
        'lambert-faulkner-1991, abstract',
      );
    line('head.suction', f.suction_m, 'm', [
      known('fallToUnit', f.fallToUnit_m, 'm'),
      known('lossToUnit', f.lossToUnit_m, 'm'),
      workingInput('mostSuction', mostSuction_m, 'm'),
    ]);
  }
  line('head.leastBore', f.leastBore_mm, 'mm', [
    flow,
    residual,
    workingInput('headMargin', settings.headMargin_m, 'm'),
  ]);
  const power = [
    workingInput('personPower', personPower_W, 'W'),
    workingInput('cautiousPower', cautiousPersonPower_W, 'W'),
    known('pumpPower', f.pumpPower_W, 'W'),
  ];
  line('head.verdict', f.verdict, '', [
    headLeft,
    residual,
    workingInput('headMargin', settings.headMargin_m, 'm'),
    ...(f.hasHandPump ? power : []),
  ]);
  return lines;
}

/** A pipe as it was reckoned with; where a leg begins or ends in it, that loss is among its fittings. */
function pipeInputs({ pipe, run }: PipeOnWay): readonly WorkingInput[] {
  const fittings: [string, number | null][] = [
    ['elbows', pipe.elbows_count],
    ['tees', pipe.tees_count],
    ['valves', pipe.valves_count],
    ['meters', pipe.meters_count],
  ];
  return [
    workingInput('pipe', pipe.pipeId, 'text'),
    workingInput('bore', pipe.bore_mm!, 'mm'),
    workingInput('length', run.length_m, 'm'),
    workingInput('wallRoughness', run.roughness_m * mm_per_m, 'mm'),
    ...fittings.flatMap(([name, count]) => (count ? [workingInput(name, count, 'count')] : [])),
    workingInput('velocityHeads', run.fittings_factor, 'number'),
  ];
}
