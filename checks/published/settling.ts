import {
  fergusonChurchVelocity_m_per_s,
  firstTenth_fraction,
  grainInWater,
  stokesVelocity_m_per_s,
} from '../../packages/engine/src/water/settling/index.ts';
import type { PublishedFile } from './published.ts';

const mm_per_m = 1000;
const m_per_ft = 0.3048;
const kg_per_lb = 0.45359237;

const sphere = { grain_m: 70e-6, grainDensity_kg_per_m3: 2600, waterDensity_kg_per_m3: 1000, viscosity_Pas: 0.001 };

export const settlingSphere: PublishedFile = {
  source: 'perry-2008',
  method: 'stokesVelocity_m_per_s',
  rows: [
    {
      place: 'terminal velocity of a sphere of 70 µm, full drag [mm/s], by Stokes',
      inputs: sphere,
      printed: '4.142497',
      got: () => stokesVelocity_m_per_s(sphere) * mm_per_m,
      tolerance: {
        value: 0.13,
        reason: 'the law leaves out inertia: 4.2713, 3.1 % above full drag at a Reynolds number of 0.3',
      },
    },
    {
      place: 'terminal velocity of a sphere of 70 µm, full drag [mm/s], by Ferguson and Church',
      inputs: sphere,
      printed: '4.142497',
      got: () => fergusonChurchVelocity_m_per_s(sphere, 'sphere') * mm_per_m,
      tolerance: {
        value: 0.17,
        reason: 'one curve for all sizes, not the drag law of the example: 3.7 % under it here',
      },
      method: 'fergusonChurchVelocity_m_per_s',
    },
  ],
};

const perCubicFoot = kg_per_lb / m_per_ft ** 3;
const drop = {
  grain_m: 150e-6,
  grainDensity_kg_per_m3: 31.2 * perCubicFoot,
  waterDensity_kg_per_m3: 2.07 * perCubicFoot,
  viscosity_Pas: 1.2e-5,
};

export const settlingDrop: PublishedFile = {
  source: 'gpsa-2012',
  method: 'fergusonChurchVelocity_m_per_s',
  rows: [
    {
      place: 'example 7-1, drop of 150 µm in a gas [ft/s]',
      inputs: { diameter_um: 150, drop_lb_per_ft3: 31.2, gas_lb_per_ft3: 2.07, viscosity_Pas: 1.2e-5 },
      printed: '0.46',
      got: () => fergusonChurchVelocity_m_per_s(drop, 'sphere') / m_per_ft,
      tolerance: {
        value: 0.1,
        reason:
          'read from a chart, 0.449 by full drag; at a Reynolds number near 60, which no grain of a settling tank has, the curve for spheres is a fifth high',
      },
    },
  ],
};

/** Hazen's table at 10 °C, much copied, beside Ferguson and Church for quartz there: size [mm], printed, worked out elsewhere [mm/s]. */
const hazenTable = [
  [1, '100', 121.1],
  [0.5, '53', 64.79],
  [0.2, '21', 19.41],
  [0.1, '8', 5.996],
  [0.05, '2.9', 1.636],
  [0.02, '0.62', 0.2718],
  [0.01, '0.154', 0.06853],
  [0.001, '0.00154', 0.0006884],
] as const;

export const hazenVelocities: PublishedFile = {
  source: 'hazen-1904',
  method: 'fergusonChurchVelocity_m_per_s',
  rows: hazenTable.map(([size_mm, printed, value]) => ({
    place: `settling velocity at 10 °C, ${size_mm} mm [mm/s]`,
    inputs: { size_mm, temperature_C: 10 },
    printed,
    got: () => fergusonChurchVelocity_m_per_s(grainInWater(size_mm * 1000, 2650, 10)) * mm_per_m,
    follows: {
      value,
      tolerance: value * 1e-3,
      reason: 'below 0.05 mm the table is 2.24 times Stokes’ law for quartz at 10 °C: it would flatter a tank',
    },
    fromMemory: true,
  })),
};

export const baffling: PublishedFile = {
  source: 'epa-816-r-03-004',
  method: 'firstTenth_fraction',
  rows: (
    [
      ['unbaffled', 1, '0.1'],
      ['poor', 2, '0.3'],
      ['average', 6, '0.5'],
      ['superior', 17, '0.7'],
      ['perfect, plug flow', Infinity, '1.0'],
    ] as const
  ).map(([condition, cells, printed]) => ({
    place: `baffling factor T10/T, ${condition}, as ${cells === Infinity ? 'endless' : cells} mixed cells`,
    inputs: { cells_count: cells === Infinity ? 'endless' : cells },
    printed,
    got: () => firstTenth_fraction(cells),
    fromMemory: true,
  })),
};
