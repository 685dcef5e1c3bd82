import { type AllSizes, allSizes, type Balance } from '@eavewell/engine';
import type { PublishedFile } from './published.ts';

/**
 * The sequent peak asks how large a store must be to meet every demand: K ← max(0, R − Q + K), the need is the greatest K.
 * Water of a step serves that step, which is our `ybs`; so the need is the greatest critical volume, and two cycles are two
 * passes. One cycle of the book starts with a full store (K₀ = 0).
 */
function need(balance: Balance, rules: { readonly passes: 1 | 2; readonly start: 'empty' | 'full' }): number {
  const sizes: AllSizes = allSizes(balance, { order: 'ybs', ...rules });
  return Math.max(...sizes.critical_L);
}

function balanceOf(inflow: readonly number[], demand: readonly number[]): Balance {
  return {
    inflow_L: Float64Array.from(inflow, (step) => Math.max(0, step)),
    // An inflow that is negative (evaporation over the lake is more than what comes in) is asked of the store.
    judged_L: Float64Array.from(demand, (asked, i) => asked + Math.max(0, -inflow[i]!)),
    other_L: new Float64Array(inflow.length),
  };
}

export const loucksVanBeek: PublishedFile = {
  source: 'loucks-van-beek-2005',
  method: 'allSizes',
  rows: [
    {
      place: 'Table 11.2, sequent peak over two cycles, nine periods, release 3.5',
      inputs: { inflow: [1, 3, 3, 5, 8, 6, 7, 2, 1], release: 3.5 },
      printed: '7.5',
      got: () => need(balanceOf([1, 3, 3, 5, 8, 6, 7, 2, 1], new Array(9).fill(3.5)), { passes: 2, start: 'empty' }),
    },
  ],
};

const riverInflow = [8.6, 2.2, 1.8, 0, 0, 13.5, 280.6, 510.2, 136, 52.5, 20.6, 12.3];
const pan = [2.2, 2.3, 3.1, 8.6, 12.8, 15.6, 12.3, 10.6, 10, 8.2, 5.8, 3];
const lakeRain = [0.8, 1.2, 0, 0, 0, 4.8, 12.2, 18.6, 8.6, 1.5, 0, 0];
const cityDemand = [14.5, 15.8, 16.2, 16.8, 17.5, 18, 18, 17, 16.5, 16, 15.8, 15];
/** What is left of the river after the users below (10), less lake evaporation (3.6 × pan), plus rain on the lake (3.5 × rain). */
const adjusted = riverInflow.map((flow, i) => flow - Math.min(flow, 10) - 3.6 * pan[i]! + 3.5 * lakeRain[i]!);

const demand = [50, 75, 80, 85, 130, 120, 25, 25, 40, 45, 50, 60];
const evaporation = [6, 8, 13, 17, 22, 22, 14, 11, 13, 12, 7, 5];
const rain = [1, 0, 0, 0, 0, 19, 43, 39, 22, 6, 2, 1];
const inflow = [50, 40, 30, 25, 20, 30, 200, 225, 150, 90, 70, 60];
/** Demand less what rain gives and evaporation takes on 30 km² of lake, 0.4 of the rain having run off before (1 cm on 1 km² is 0.01). */
const netDemand = demand.map((asked, i) => asked - (0.4 * rain[i]! - evaporation[i]!) * 0.01 * 30);

export const punmia: PublishedFile = {
  source: 'punmia-pande-lal',
  method: 'allSizes',
  rows: [
    {
      place:
        'Example 6.2, p. 331: storage from monthly needs [ha·m]; the months in need adjoin, so their sum is the sequent peak over two cycles',
      inputs: { inflow: riverInflow, pan, rain: lakeRain, demand: cityDemand },
      printed: '281.64',
      got: () => need(balanceOf(adjusted, cityDemand), { passes: 2, start: 'empty' }),
    },
    {
      place: 'Example 6.9, p. 343: greatest cumulative demand less inflow, one year from a full store',
      inputs: { inflow, demand, rain, evaporation },
      printed: '369.30',
      follows: {
        value: 369.0,
        tolerance: 0.005,
        reason:
          'the printed output cut 0.4 × 19 = 7.6 to 7, as its list held whole numbers; exact arithmetic gives 369.00',
      },
      got: () => need(balanceOf(inflow, netDemand), { passes: 1, start: 'full' }),
    },
  ],
};
