import {
  millimetresFromInches,
  mm_per_in,
  squareMetresFromSquareFeet,
} from '../../packages/engine/src/kernel/index.ts';
import {
  fallOverRun_mm,
  type GutterCapacity,
  gutterCapacity,
  gutterSection,
  longGutterFactor,
  pitchFactor,
  type SectionFacts,
  smallestThatHolds,
  stormFlow_L_per_s,
  uniformVelocity_m_per_s,
} from '../../packages/engine/src/water/drainage/index.ts';
import type { PublishedFile } from './published.ts';

const halfRound = (width_mm: number): SectionFacts => ({
  shape: 'halfRound',
  width_mm,
  depth_mm: width_mm / 2,
  baseWidth_mm: null,
});
/** A share of a printed figure, to four digits. */
export const asShare = (share: number, printed: string) => Number((share * Number(printed)).toPrecision(4));

/** A short, level half round as wide as this. */
export const levelGutter = (width_mm: number): GutterCapacity => gutterCapacity(halfRound(width_mm), 1, 0)!;
/** Square feet of roof that bring this flow in an inch of rain an hour, and the flow of so many. */
export const feetAtOneInch = (flow_L_per_s: number) => flow_L_per_s / flowOfFeet(1, 1);
export const flowOfFeet = (area_ft2: number, rain_in_per_h: number) =>
  stormFlow_L_per_s(squareMetresFromSquareFeet(area_ft2), millimetresFromInches(rain_in_per_h));

const nominalBore = 'nominal sizes are labels: the table is met to 0.02 L/s with bores of just so many mm';
const oddGutter = '112 mm carry 1.03 L/s; the printed flow and area are those of a bore of 115 mm (4½ in)';
const gutterTable = [
  { bore_mm: 75, flow: '0.38', area: '18' },
  { bore_mm: 100, flow: '0.78', area: '37' },
  { bore_mm: 112, flow: '1.11', area: '53' },
  { bore_mm: 125, flow: '1.37', area: '65' },
  { bore_mm: 150, flow: '2.16', area: '103' },
];

const gutterSizes: PublishedFile = {
  source: 'adh-2015',
  method: 'gutterCapacity',
  rows: [
    ...gutterTable.flatMap(
      ({ bore_mm, flow, area }) =>
        [
          {
            place: `Table 2: half round of ${bore_mm} mm [L/s]`,
            inputs: { bore_mm },
            printed: flow,
            fromMemory: true,
            got: () => levelGutter(bore_mm).capacity_L_per_s,
            ...(bore_mm === 112
              ? { follows: { value: 1.0325, tolerance: 0.0005, reason: oddGutter } }
              : { tolerance: { value: 0.02, reason: nominalBore } }),
          },
          {
            place: `Table 2: half round of ${bore_mm} mm, roof at 75 mm/h [m²]`,
            inputs: { bore_mm },
            printed: area,
            ...(bore_mm === 100 ? {} : { fromMemory: true as const }),
            got: () => levelGutter(bore_mm).capacity_L_per_s / stormFlow_L_per_s(1, 75),
            ...(bore_mm === 112 ? { follows: { value: 49.56, tolerance: 0.05, reason: oddGutter } } : {}),
          },
        ] as const,
    ),
    ...(
      [
        [30, '1.29'],
        [45, '1.5'],
        [60, '1.87'],
      ] as const
    ).map(([pitch_deg, printed]) => ({
      place: `Table 1: pitch of ${pitch_deg}°, times the plan area`,
      inputs: { pitch_deg },
      printed,
      method: 'pitchFactor',
      got: () => pitchFactor(pitch_deg),
    })),
  ],
};

/** Gutters of the article by the roof they take at 1 in/h, as litres a second. */
const articleGutters = [
  { partId: 'half round 5 in', size_mm: 5 * mm_per_in, feet: 2500 },
  { partId: 'half round 6 in', size_mm: 6 * mm_per_in, feet: 3840 },
  { partId: 'K-style 5 in', size_mm: 5 * mm_per_in, feet: 5520 },
  { partId: 'K-style 6 in', size_mm: 6 * mm_per_in, feet: 7960 },
].map(({ partId, size_mm, feet }) => ({ partId, size_mm, capacity_L_per_s: flowOfFeet(feet, 1) }));

const adjustedArea: PublishedFile = {
  source: 'this-old-house',
  method: 'stormFlow_L_per_s',
  rows: [
    {
      place: 'worked example: 1,000 ft², its own factor of 1.1 for 6 in 12, 6.8 in/h, as area at 1 in/h [ft²]',
      inputs: { area_ft2: 1000, factor: 1.1, rain_in_per_h: 6.8 },
      printed: '7480',
      got: () => feetAtOneInch(flowOfFeet(1000 * 1.1, 6.8)),
    },
    {
      place: 'worked example: the gutter chosen',
      inputs: { area_ft2: 7480 },
      printed: 'K-style 6 in',
      method: 'smallestThatHolds',
      got: () => smallestThatHolds(articleGutters, flowOfFeet(7480, 1))!.partId,
    },
    {
      place: 'pitch of 6 in 12: times the plan area',
      inputs: { pitch: '6 in 12' },
      printed: '1.1',
      method: 'pitchFactor',
      got: () => pitchFactor((Math.atan(6 / 12) * 180) / Math.PI),
      follows: {
        value: 1.25,
        tolerance: 1e-9,
        reason: 'the article allows for less wind: rain that falls 2 down for 1 across makes it 1.25',
      },
    },
  ],
};

const longGuttersOfNote: PublishedFile = {
  source: 'uk-gutter-note',
  method: 'longGutterFactor',
  rows: (
    [
      [50, '1.00'],
      [100, '0.93'],
      [150, '0.86'],
      [200, '0.80'],
    ] as const
  ).map(([depths, printed]) => ({
    place: `note on long gutters: ${depths} times its depth`,
    inputs: { depths },
    printed,
    got: () => longGutterFactor(depths * 0.06, 60)!,
  })),
};

/** A channel's flow: area × Manning's speed [m3/s]. Its section is drawn by the same function as a gutter's. */
function channel_m3_per_s(width_m: number, depth_m: number, fall_mm_per_m: number, roughness: number): number {
  const section = gutterSection({
    shape: 'rectangular',
    width_mm: width_m * 1000,
    depth_mm: depth_m * 1000,
    baseWidth_mm: null,
  })!;
  const area_m2 = section.at(section.depth_mm).area_mm2 / 1e6;
  return area_m2 * uniformVelocity_m_per_s(area_m2 / (section.wetted_mm / 1000), fall_mm_per_m, roughness);
}

const roundedOnTheWay = 'worked by hand with rounded steps: met to 0.05 %';

const openChannels: PublishedFile = {
  source: 'sdsu-cive530',
  method: 'uniformVelocity_m_per_s',
  rows: (
    [
      ['midterm 2 of 2007, problem 1', 5, 0.8, 2.5, '9.548', '2.387'],
      ['midterm 1 of 2008, problem 4', 6, 1.6, 2.5, '32.91', '3.428'],
      ['midterm 2 of 2008, problem 1', 5, 1.5, 3, '26.23', '3.498'],
    ] as const
  ).flatMap(([problem, width_m, depth_m, fall_mm_per_m, flow, speed]) => {
    const inputs = { width_m, depth_m, fall_mm_per_m, roughness: 0.015 };
    const flow_m3_per_s = () => channel_m3_per_s(width_m, depth_m, fall_mm_per_m, 0.015);
    const within = (printed: string) => ({ value: asShare(0.0005, printed), reason: roundedOnTheWay });
    return [
      { place: `${problem} [m³/s]`, inputs, printed: flow, tolerance: within(flow), got: flow_m3_per_s },
      {
        place: `${problem} [m/s]`,
        inputs,
        printed: speed,
        tolerance: within(speed),
        got: () => flow_m3_per_s() / (width_m * depth_m),
      },
    ];
  }),
};

const openChannelSpeed: PublishedFile = {
  source: 'cengel-cimbala-2006',
  method: 'uniformVelocity_m_per_s',
  rows: [
    {
      place: 'open-channel example: hydraulic radius 0.2859 m, slope 0.005236, roughness 0.03 [m/s]',
      inputs: { hydraulicRadius_m: 0.2859, slope: 0.005236, roughness: 0.03 },
      printed: '1.0467781958',
      got: () => uniformVelocity_m_per_s(0.2859, 5.236, 0.03),
    },
  ],
};

const fallOfGutters: PublishedFile = {
  source: 'iisc-wgbis',
  method: 'fallOverRun_mm',
  rows: (
    [
      [3, '90'],
      [5, '150'],
    ] as const
  ).map(([fall_mm_per_m, printed]) => ({
    place: `gutters and downpipes: eave of 30 m, fall of ${fall_mm_per_m / 10} % [mm]`,
    inputs: { run_m: 30, fall_mm_per_m },
    printed,
    got: () => fallOverRun_mm(30, fall_mm_per_m),
  })),
};

/** Gutters and channels. */
export const gutterFiles: readonly PublishedFile[] = [
  adjustedArea,
  fallOfGutters,
  gutterSizes,
  longGuttersOfNote,
  openChannels,
  openChannelSpeed,
];
