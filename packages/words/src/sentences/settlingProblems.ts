import type { settlingProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says } from './telling.ts';

const tank = (t: Told) => ({ tank: t.text('tank') });
/** Heights as they were measured, not rounded. */
const height = (t: Told, name: string) => t.numbers.given(t.number(name) ?? 0, 'm');

/** What room settling finds, in words. */
export const settlingSentences: Sentences<keyof typeof settlingProblems> = {
  'settling.none': (t) => says(t, 'settling.none'),
  'settling.diameter_unknown': (t) => says(t, 'settling.diameter_unknown', tank(t)),
  'settling.draw_off_unknown': (t) => says(t, 'settling.draw_off_unknown', tank(t)),
  'settling.draw_off_low': (t) =>
    says(t, 'settling.draw_off_low', { ...tank(t), outlet: height(t, 'outlet_m'), least: height(t, 'least_m') }),
  'settling.inlet_unknown': (t) => says(t, 'settling.inlet_unknown', tank(t)),
  'settling.inlet_low': (t) =>
    says(t, 'settling.inlet_low', {
      ...tank(t),
      inlet: height(t, 'inlet_m'),
      outlet: height(t, 'outlet_m'),
      apart: height(t, 'apart_m'),
    }),
  'settling.no_roof': (t) => says(t, 'settling.no_roof', tank(t)),
  'settling.storm_unknown': (t) => says(t, 'settling.storm_unknown', tank(t)),
  'settling.temperature': (t) => says(t, 'settling.temperature', { value: amount(t, ['value'], 'C') }),
  'settling.solids_unknown': (t) => says(t, 'settling.solids_unknown'),
};
