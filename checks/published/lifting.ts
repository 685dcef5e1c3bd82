import { liftingLimit_kg, limitOfFactors_kg } from '../../packages/engine/src/parts/index.ts';
import type { PublishedFile } from './published.ts';

/** A lift straight ahead, now and then. */
const straight = { turn_deg: 0, frequency_factor: 1 } as const;

export const liftingVertical: PublishedFile = {
  source: 'ccohs-niosh',
  method: 'limitOfFactors_kg',
  rows: [
    {
      place: 'vertical.html, worked task, recommended weight limit of its own multipliers [kg]',
      inputs: { HM: 0.8, VM: 0.8, DM: 0.86, AM: 1, FM: 1, CM: 0.9 },
      printed: '11.4',
      got: () =>
        limitOfFactors_kg({
          reach_factor: 0.8,
          handHeight_factor: 0.8,
          travel_factor: 0.86,
          turn_factor: 1,
          frequency_factor: 1,
          grip_factor: 0.9,
        }),
    },
    {
      place: 'vertical.html, the same task by the equation [kg]',
      inputs: { H_cm: 30, V_cm: 0, D_cm: 115, CM: 0.9 },
      printed: '11.4',
      follows: {
        value: 11.486,
        tolerance: 0.0005,
        reason:
          'HM 0.80 and VM 0.80 are printed for 0.833 and 0.775: the equation gives 11.49, the errors nearly cancel',
      },
      got: () => liftingLimit_kg({ ...straight, reach_cm: 30, handHeight_cm: 0, travel_cm: 115, grip_factor: 0.9 })!,
      method: 'liftingLimit_kg',
    },
  ],
};

export const liftingPage: PublishedFile = {
  source: 'ccohs-niosh',
  method: 'liftingLimit_kg',
  rows: [
    {
      place: 'horizontal.html, task over a barrier [kg]',
      inputs: { H_cm: 50, V_cm: 75, D_cm: 40, CM: 1 },
      printed: '10.9',
      follows: {
        value: 10.724,
        tolerance: 0.0005,
        reason: 'DM 0.95 is printed for D = 40 cm; the equation, and the list of factors beside it, give 0.93',
      },
      got: () => liftingLimit_kg({ ...straight, reach_cm: 50, handHeight_cm: 75, travel_cm: 40, grip_factor: 1 })!,
    },
  ],
};
