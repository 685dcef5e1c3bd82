import {
  type DesignSettings,
  type GradePoint,
  type HeadSegment,
  kinematicViscosity_m2_per_s,
} from '../../kernel/index.ts';
import { flowWanted_m3_per_s } from './headAtFlow.ts';
import type { HeadWay, PipeOnWay } from './headWay.ts';
import { pipeLoss } from './pipeLoss.ts';

/**
 * What does each pipe take at the flow wanted?
 *
 * @param way - the way to the taps
 * @param settings - flow of a tap [L/min], temperature of the water [C]
 * @returns the pipes and the unit between them, in the order of the water: speed [m/s], losses [m]
 * @source darcy-weisbach, f L/D · V²/2g (from memory)
 */
export function headSegments(way: HeadWay, settings: DesignSettings): readonly HeadSegment[] {
  const flow = flowWanted_m3_per_s(way.taps_count, settings.tapFlow_L_per_min);
  const nu = kinematicViscosity_m2_per_s(settings.waterTemperature_C);
  const segment = ({ pipe, run }: PipeOnWay): HeadSegment => {
    const { velocity_m_per_s, friction_m, minor_m } = pipeLoss(run, flow, nu);
    const { pipeId, leg, bore_mm, length_m } = pipe;
    return { pipeId, leg, bore_mm, length_m, velocity_m_per_s, friction_m, minor_m };
  };
  const unit: HeadSegment = {
    pipeId: null,
    leg: null,
    bore_mm: null,
    length_m: null,
    velocity_m_per_s: null,
    friction_m: 0,
    minor_m: way.unitHead_m,
  };
  return [...way.toUnit.map(segment), unit, ...way.toTap.map(segment)];
}

/**
 * How high would the water rise in a tube beside each point of the way? The tank at its outlet, at the flow wanted, a hand pump adding what is wanting.
 *
 * @param way - the way to the taps: heights [m]
 * @param segments - what each pipe and the unit take [m]
 * @param pumpAdds_m - what the hand pump adds [m]
 * @returns points from the tank to the tap: along, elevation and grade [m]
 * @law falls by the losses alone, and rises at the pump alone
 * @definition level of the water less what was taken up to there
 */
export function gradeLine(way: HeadWay, segments: readonly HeadSegment[], pumpAdds_m: number): readonly GradePoint[] {
  let along_m = 0;
  let grade_m = way.lowLevel_m;
  const points: GradePoint[] = [{ place: 'tank', pipeId: null, along_m, elevation_m: way.lowLevel_m, grade_m }];
  segments.forEach(({ pipeId, leg, length_m, friction_m, minor_m }, index) => {
    along_m += length_m ?? 0;
    grade_m -= friction_m + minor_m;
    if (leg === null) grade_m += pumpAdds_m;
    const isLast = index === segments.length - 1;
    const place =
      leg === null ? 'unitOutlet' : isLast ? 'tap' : segments[index + 1]!.leg === null ? 'unitInlet' : 'pipe';
    const elevation_m = place === 'tap' ? way.tapHeight_m : place === 'pipe' ? null : way.unitHeight_m;
    points.push({ place, pipeId, along_m, elevation_m, grade_m });
  });
  return points;
}
