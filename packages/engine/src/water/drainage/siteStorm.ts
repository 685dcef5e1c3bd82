import {
  type DesignSettings,
  type DesignStorm,
  type EngineProblemCode,
  explain,
  type Range,
  workingInput,
} from '../../kernel/index.ts';
import type { Notes } from './notes.ts';
import { stormFlow_L_per_s } from './stormFlow.ts';

/** The storm as it falls on a site. */
export interface SiteStorm {
  readonly intensity_mm_per_h: number;
  readonly intensity_mm_per_h_range: Range;
  readonly returnPeriod_years: number;
  readonly cappedBy: EngineProblemCode | null;
}

/** What a storm brings to a part, and between which ends. */
export interface StormFlow {
  readonly flow_L_per_s: number;
  readonly flow_L_per_s_range: Range;
}

/**
 * Which storm falls on this site? The gauge's, with its range or, where it has none, the settings' margin. A site that is wetter than its gauge has
 * a harder storm by as much; one that is drier has the gauge's, as a storm is no shower.
 */
export function siteStorm(
  storm: DesignStorm,
  rainFactor: number,
  { stormMargin_fraction }: Pick<DesignSettings, 'stormMargin_fraction'>,
  notes: Notes,
): SiteStorm {
  const factor = Math.max(1, rainFactor);
  const intensity_mm_per_h = storm.intensity_mm_per_h * factor;
  const stated = storm.intensity_range;
  const [low, high] = stated
    ? [stated.low * factor, stated.high * factor]
    : [intensity_mm_per_h * (1 - stormMargin_fraction), intensity_mm_per_h * (1 + stormMargin_fraction)];
  explain(notes.working, {
    code: 'drainage.storm',
    value: intensity_mm_per_h,
    unit: 'mm_per_h',
    inputs: [
      workingInput('gauge', storm.gaugeId, 'text'),
      workingInput('returnPeriod', storm.returnPeriod_years, 'years'),
      workingInput('gaugeStorm', storm.intensity_mm_per_h, 'mm_per_h'),
      workingInput('rainFactor', rainFactor, 'factor'),
      workingInput('stormLow', low, 'mm_per_h'),
      workingInput('stormHigh', high, 'mm_per_h'),
    ],
    source: 'gauge',
  });
  const { returnPeriod_years, cappedBy } = storm;
  return { intensity_mm_per_h, intensity_mm_per_h_range: { low, high }, returnPeriod_years, cappedBy };
}

/** What the storm brings off so much roof. */
export function flowOff(area_m2: number, storm: SiteStorm): StormFlow {
  const { low, high } = storm.intensity_mm_per_h_range;
  return {
    flow_L_per_s: stormFlow_L_per_s(area_m2, storm.intensity_mm_per_h),
    flow_L_per_s_range: { low: stormFlow_L_per_s(area_m2, low), high: stormFlow_L_per_s(area_m2, high) },
  };
}

/** A share of a flow; null where either is not known. */
export function shareOf(flow: StormFlow | null, share: number | null): StormFlow | null {
  if (flow === null || share === null) return null;
  const { low, high } = flow.flow_L_per_s_range;
  return {
    flow_L_per_s: flow.flow_L_per_s * share,
    flow_L_per_s_range: { low: low * share, high: high * share },
  };
}
