import { handPumped_m3_per_s, personPower_W } from '../../packages/engine/src/kernel/index.ts';
import { labourerPower_W } from '../../packages/engine/src/water/head/index.ts';
import type { PublishedFile } from './published.ts';

const horsepower_W = 745.69987;

export const labourer: PublishedFile = {
  source: 'belonio',
  method: 'labourerPower_W',
  rows: [
    [12, '0.25'],
    [240, '0.13'],
  ].map(([minutes, printed]) => ({
    place: `labourer of 35, ${minutes} min [hp]`,
    inputs: { duration_min: Number(minutes) },
    printed: String(printed),
    got: () => labourerPower_W(Number(minutes)) / horsepower_W,
  })),
};

/** Power kept up at 35 years of age: minutes, and watts as printed. */
const faoRow = [
  [5, '210'],
  [10, '200'],
  [15, '180'],
  [30, '160'],
  [60, '135'],
] as const;

export const faoPower: PublishedFile = {
  source: 'fao-idp-43',
  method: 'labourerPower_W',
  rows: [
    ...faoRow.map(([duration_min, printed]) => ({
      place: `human power at 35 years, ${duration_min} min [W]`,
      inputs: { duration_min },
      printed,
      got: () => labourerPower_W(duration_min),
      tolerance: {
        value: 8,
        reason: 'another measurement of other people, rounded to 5 W: the rule follows it within 4 %',
      },
      fromMemory: true as const,
    })),
    {
      place: 'human power at 35 years, 180 min [W]',
      inputs: { duration_min: 180 },
      printed: '75',
      got: () => labourerPower_W(180),
      follows: {
        value: 106.3,
        tolerance: 0.05,
        reason: 'the rule of the labourer is far above the table over hours: neither is designed by, 40 W is',
      },
      fromMemory: true as const,
    },
  ],
};

export const sustained: PublishedFile = {
  source: 'lambert-faulkner-1991',
  method: 'personPower_W',
  rows: [
    {
      place: 'abstract: sustainable output at four pumps, just over [W]',
      inputs: {},
      printed: '40',
      got: () => personPower_W,
    },
  ],
};

export const shiftPower: PublishedFile = {
  source: 'emergency-wash',
  method: 'labourerPower_W',
  rows: [
    {
      place: 'S.8: an adult over 8 h, about [W]',
      inputs: { duration_min: 480 },
      printed: '70',
      got: () => labourerPower_W(480),
      tolerance: { value: 7.5, reason: 'guidance: texts give 70 W and 75 W for a shift, the rule 76.9 W' },
    },
  ],
};

const density_kg_per_m3 = 998.2;
const L_per_m3_min = 60_000;
/** What a person can keep up at a pump of efficiency 0.6: the efficiency the brief's own figures were looked at with. */
const keptUp_L_per_min = (head_m: number) =>
  handPumped_m3_per_s(personPower_W, head_m, density_kg_per_m3, 0.6) * L_per_m3_min;

export const claimedOutputs: PublishedFile = {
  source: 'practical-action-pumps',
  method: 'handPumped_m3_per_s',
  rows: [
    { what: 'foot-operated suction pump', printed: '100', user_W: 108.8 },
    { what: 'inclined hand piston pump', printed: '90', user_W: 97.89 },
  ].map(({ what, printed, user_W }) => ({
    place: `page 8, ${what}, 4 m [L/min]`,
    inputs: { head_m: 4, power_W: 40, efficiency: 0.6 },
    printed,
    got: () => keptUp_L_per_min(4),
    follows: {
      value: 36.77,
      tolerance: 0.01,
      reason: `what 40 W lift at an efficiency of 0.6; the printed flow needs ${user_W} W of the person: a burst, not kept up`,
    },
  })),
};
