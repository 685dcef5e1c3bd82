import {
  type DesignStorm,
  type DownpipeFacts,
  defaultSettings,
  type GutterFacts,
  type PartFacts,
  type RoofFacts,
  type SiteFacts,
  type TankFacts,
  unmeasuredGutter,
  unmeasuredPart,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from '../../kernel/index.ts';
import { type DrainageGiven, drainageFinding } from './drainageFinding.ts';

/** A roof of 60 m² at 45°: 90 m² to the rain, so that 100 mm/h bring 2.5 L/s. */
export const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  roofPlanArea_m2: 60,
  gutteredFraction: 1,
  pitch_deg: 45,
  eaveHeight_m: 3,
};
/** Half round of 200 mm: 4.400 L/s while short. */
export const gutter: GutterFacts = {
  ...unmeasuredGutter,
  gutterId: 'G1',
  roofId: 'R1',
  shape: 'halfRound',
  width_mm: 200,
  depth_mm: 100,
  length_m: 5,
  fall_mm_per_m: 5,
  outlet_mm: 100,
};
export const downpipe: DownpipeFacts = { downpipeId: 'D1', roofId: 'R1', bore_mm: 100, length_m: 3 };
export const tank: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  height_m: 2,
  overflowHeight_m: 1.85,
  standHeight_m: 0.3,
  overflowBore_mm: 100,
};
export const storm: DesignStorm = {
  gaugeId: 'A',
  returnPeriod_years: 20,
  intensity_mm_per_h: 100,
  intensity_range: null,
  from: 'stated',
  source: 'An invented weather service',
  years_count: null,
  cappedBy: null,
};
const part = (partId: string, kind: string, size: Partial<PartFacts>): PartFacts => ({
  ...unmeasuredPart,
  partId,
  kind,
  name: partId,
  ...size,
});
const halfRound = (partId: string, width: number) =>
  part(partId, 'gutter', { shape: 'halfRound', topWidth_mm: width, depth_mm: width / 2 });
const catalogue: readonly PartFacts[] = [
  halfRound('gutter-250', 250),
  halfRound('gutter-150', 150),
  halfRound('gutter-200', 200),
  part('outlet-110', 'outlet', { bore_mm: 110 }),
  part('outlet-75', 'outlet', { bore_mm: 75 }),
  part('pipe-75', 'downpipe', { bore_mm: 75 }),
  part('over-160', 'overflow', { bore_mm: 160 }),
];

export const site = (change: Partial<SiteFacts> = {}): SiteFacts => ({
  ...unmeasuredSite,
  ...{ siteId: 'S1', name: 'Hall', latitude_deg: null, longitude_deg: null, siteClass: null, target: null },
  ...{ people: 30, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
  ...{ presence: null, secondSource: null, nearSecondSource: null, ration: null, gaugeId: 'A', rainFactor: 1 },
  ...{ handOverDay: null, demand: [], doubts: [] },
  roofs: [roof],
  gutters: [gutter],
  downpipes: [downpipe],
  tanks: [tank],
  ...change,
});
export const found = (change: Partial<SiteFacts> = {}, given: Partial<DrainageGiven> = {}) =>
  drainageFinding({ site: site(change), storm, parts: catalogue, settings: defaultSettings, ...given });
export const verdicts = (change: Partial<SiteFacts> = {}, given: Partial<DrainageGiven> = {}) => {
  const { finding, problems } = found(change, given);
  return {
    station: finding?.verdict ?? null,
    parts: Object.fromEntries((finding?.parts ?? []).map((one) => [`${one.part} ${one.id}`, one.verdict])),
    codes: problems.map(({ code }) => code),
    cappedBy: finding?.cappedBy ?? null,
  };
};
