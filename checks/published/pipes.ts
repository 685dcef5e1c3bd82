import { boreArea_m2, emptyingTime_s } from '../../packages/engine/src/kernel/index.ts';
import { colebrookFactor, swameeJainFactor } from '../../packages/engine/src/water/head/index.ts';
import type { PublishedFile } from './published.ts';

const stirred = { reynolds: 100_000, roughness: 0.0001 };

export const frictionFactors: PublishedFile = {
  source: 'fluids-1-3-1',
  method: 'colebrookFactor',
  rows: [
    {
      place: 'Colebrook, Re 100,000, roughness 0.0001',
      inputs: stirred,
      printed: '0.018513866077471648',
      got: () => colebrookFactor(stirred.reynolds, stirred.roughness),
      tolerance: { value: 1e-12, reason: 'printed to every digit of a double; solved in steps by both' },
    },
    {
      place: 'Swamee_Jain_1976, Re 100,000, roughness 0.0001',
      inputs: stirred,
      printed: '0.018452424431901808',
      got: () => swameeJainFactor(stirred.reynolds, stirred.roughness),
      tolerance: {
        value: 2e-6,
        reason: 'the library writes the formula with 6.97 in place of 5.74 ÷ Re^0.9: 0.0184524453 by the textbook form',
      },
      method: 'swameeJainFactor',
    },
    {
      place: 'Blasius, smooth pipe, Re 10,000',
      inputs: { reynolds: 10_000 },
      printed: '0.03164',
      got: () => colebrookFactor(10_000, 0),
      tolerance: {
        value: 0.0008,
        reason: 'another fit to the same measurements of smooth pipes, 0.3164 ÷ Re^0.25: 2.4 % above Colebrook here',
      },
    },
  ],
};

const m_per_ft = 0.3048;
const m_per_in = 0.0254;
const drained = { diameter_ft: 4, hole_in2: 5, from_ft: 6, to_ft: 2, coefficient: 1 };

export const drainingTank: PublishedFile = {
  source: 'engineeringprep-435',
  method: 'emptyingTime_s',
  rows: [
    {
      place: 'problem 435, tank of 4 ft from 6 ft to 2 ft through 5 in² [s]',
      inputs: drained,
      printed: '94',
      got: () =>
        emptyingTime_s(
          boreArea_m2(drained.diameter_ft * m_per_ft),
          drained.hole_in2 * m_per_in ** 2,
          drained.from_ft * m_per_ft,
          drained.to_ft * m_per_ft,
          drained.coefficient,
        ),
      follows: {
        value: 93.378,
        tolerance: 0.05,
        reason: '√6 − √2 was rounded to 1.04 first; the tolerance is that of its 32.2 ft/s² against ours',
      },
    },
  ],
};
