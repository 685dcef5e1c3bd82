import type { Row } from './draft.ts';

/** How near a building comes to what its gutters carry: meant share of their capacity in the storm [fraction]. */
export type Strain = 'ample' | 'edge' | 'small';

/** Invented: what a run is built for, and what a run that is too small was built for [fraction]. */
const meant: Readonly<Record<Strain, number>> = { ample: 0.72, edge: 0.95, small: 1.45 };

/** Five minutes of rain that gutters are built for [mm/h]: a little more than the demo's storms of 20 years. Invented. */
const builtFor_mm_per_h = 175;
/** No farther does water run along a gutter to an outlet [m]. Ours. */
const farthestRun_m = 10;
/** A long gutter carries less than a short one [fraction]. Ours, for sizing a made building. */
const longGutter_fraction = 0.82;
const gravity_m_per_s2 = 9.81;

/** No tank has more overflow pipes [count]. Ours. */
const mostOverflows = 8;

/** Sections that are sold, smallest first [mm]. Invented, as all of the demo's catalogue. */
const sections: Readonly<Record<string, readonly Section[]>> = {
  halfRound: [125, 150, 200, 250].map((width_mm) => ({ width_mm, depth_mm: width_mm / 2 })),
  cutPipe: [110, 160, 200, 250, 315].map((width_mm) => ({ width_mm, depth_mm: Math.floor(width_mm / 2) })),
  rectangular: [
    { width_mm: 120, depth_mm: 90 },
    { width_mm: 150, depth_mm: 110 },
    { width_mm: 200, depth_mm: 140 },
    { width_mm: 260, depth_mm: 180 },
  ],
  trapezoidal: [
    { width_mm: 140, baseWidth_mm: 100, depth_mm: 80 },
    { width_mm: 180, baseWidth_mm: 130, depth_mm: 110 },
    { width_mm: 240, baseWidth_mm: 175, depth_mm: 150 },
    { width_mm: 300, baseWidth_mm: 220, depth_mm: 190 },
  ],
};
const bores_mm = [75, 90, 110, 125, 160] as const;
const overflowBores_mm = [110, 160, 200] as const;

interface Section {
  readonly width_mm: number;
  readonly baseWidth_mm?: number;
  readonly depth_mm: number;
}

/** A run of gutter before it has a size. */
export interface Run {
  readonly shape: string;
  readonly length_m: number;
  readonly fall_mm_per_m: number;
}

/** What the storm brings to a plan area whose roof slopes so [L/s]. */
export function stormOf(plan_m2: number, pitch_deg: number): number {
  const effective_m2 = plan_m2 * (1 + 0.5 * Math.tan((pitch_deg * Math.PI) / 180));
  return (effective_m2 * builtFor_mm_per_h) / 3600;
}

/**
 * Gives a run its section and its outlets, so that it is as near to its capacity as is meant.
 *
 * @param run - shape, length [m] and fall [mm/m]
 * @param flow_L_per_s - what the storm brings to it
 * @param strain - how near
 * @returns its cells, and the bore of its outlets [mm]
 */
export function sizedRun(run: Run, flow_L_per_s: number, strain: Strain): Row {
  const family = sections[run.shape]!;
  const least = Math.max(1, Math.ceil(run.length_m / farthestRun_m));
  const most = Math.max(least, Math.floor(run.length_m / 2));
  let outlets = least;
  const share = (of: Section) => flow_L_per_s / outlets / carried_L_per_s(run.shape, of);
  while (outlets < most && !family.some((of) => share(of) <= meant.ample)) outlets++;
  const fits = family.find((of) => share(of) <= meant.ample) ?? family.at(-1)!;
  const chosen = strain === 'ample' ? fits : scaled(fits, share(fits) / meant[strain]);
  return { ...run, ...chosen, ...holes(run.length_m, outlets), outlet_mm: outletFor(chosen, flow_L_per_s / outlets) };
}

/** Water goes by the outlets of a run evenly. */
function holes(length_m: number, outlets: number): Row {
  return { outlets, runToOutlet_m: Math.ceil((length_m / outlets) * 10) / 10 };
}

/** A section made by hand: as the other, larger or smaller. What one carries goes with its size to the power of 2.5. */
function scaled(section: Section, share: number): Section {
  const factor = share ** 0.4;
  const size = (value: number) => Math.round(value * factor);
  const { width_mm, baseWidth_mm, depth_mm } = section;
  const sole = baseWidth_mm === undefined ? {} : { baseWidth_mm: size(baseWidth_mm) };
  return { width_mm: size(width_mm), depth_mm: size(depth_mm), ...sole };
}

/** What a run carries, roughly: enough to choose a size for a made building by, and no judgement. */
function carried_L_per_s(shape: string, { width_mm, baseWidth_mm, depth_mm }: Section): number {
  const isRound = shape === 'halfRound' || shape === 'cutPipe';
  const area_mm2 = isRound ? (Math.PI / 8) * width_mm ** 2 : ((width_mm + (baseWidth_mm ?? width_mm)) / 2) * depth_mm;
  return 0.9 * 2.78e-5 * area_mm2 ** 1.25 * longGutter_fraction;
}

/** The smallest hole that lets such a flow out with room to spare, and that the sole has room for. */
function outletFor({ width_mm, baseWidth_mm, depth_mm }: Section, flow_L_per_s: number): number {
  const head_mm = depth_mm / Math.sqrt(3);
  const lets = (bore_mm: number) =>
    head_mm <= bore_mm / 2 ? (bore_mm * head_mm ** 1.5) / 7500 : (bore_mm ** 2 * Math.sqrt(head_mm)) / 15000;
  const widest = (baseWidth_mm ?? width_mm) - 5;
  const fitting = bores_mm.filter((bore_mm) => bore_mm <= widest);
  return fitting.find((bore_mm) => lets(bore_mm) >= flow_L_per_s * 1.6) ?? fitting.at(-1) ?? bores_mm[0];
}

/**
 * Overflow pipes that carry what the gutters bring, screened or not.
 *
 * @param flow_L_per_s - what the storm brings to one tank
 * @param isScreened - a screen holds half of it back
 * @returns bore [mm] and how many
 */
export function overflowFor(flow_L_per_s: number, isScreened: boolean): { bore_mm: number; count: number } {
  const wanted_L_per_s = flow_L_per_s * (isScreened ? 2 : 1) * 1.6;
  for (let count = 1; count <= mostOverflows; count++)
    for (const bore_mm of overflowBores_mm) {
      const full_L_per_s = 0.45 * Math.sqrt(gravity_m_per_s2) * (bore_mm / 1000) ** 2.5 * 1000;
      if (count * full_L_per_s >= wanted_L_per_s && bore_mm <= (count === 1 ? 160 : 200)) return { bore_mm, count };
    }
  return { bore_mm: 200, count: mostOverflows };
}
