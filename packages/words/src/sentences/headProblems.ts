import type { headProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, part, type Sentences, says, wordFor } from './telling.ts';

const tank = (t: Told) => ({ tank: t.text('tank') });
const pipe = (t: Told) => ({ pipe: t.text('pipe') });
const tanks = (t: Told) => part(t, 'tanks', { count: t.list('tanks').length, tanks: t.text('tanks') });
const height = (t: Told, name: string) => amount(t, [name], 'm');

/** What room head finds, in words. */
export const headSentences: Sentences<keyof typeof headProblems> = {
  'head.none': (t) => says(t, 'head.none'),
  'head.pipe_not_measured': (t) => says(t, 'head.pipe_not_measured', pipe(t)),
  'head.pipe_tank_unknown': (t) => says(t, 'head.pipe_tank_unknown', pipe(t)),
  'head.leg_missing': (t) =>
    says(t, 'head.leg_missing', { leg: wordFor(t, 'leg', t.text('leg')) ?? t.text('leg'), tanks: tanks(t) }),
  'head.outlet_unknown': (t) => says(t, 'head.outlet_unknown', tank(t)),
  'head.stand_unknown': (t) => says(t, 'head.stand_unknown', tank(t)),
  'head.overflow_unknown': (t) => says(t, 'head.overflow_unknown', tank(t)),
  'head.taps_unknown': (t) => says(t, 'head.taps_unknown'),
  'head.tap_height_unknown': (t) => says(t, 'head.tap_height_unknown'),
  'head.unit_height_unknown': (t) => says(t, 'head.unit_height_unknown'),
  'head.unit_head_unknown': (t) => says(t, 'head.unit_head_unknown'),
  'head.temperature': (t) => says(t, 'head.temperature', { value: amount(t, ['value'], 'C') }),
  'head.hand_pump_assumed': (t) => says(t, 'head.hand_pump_assumed'),
  'head.tap_above': (t) => says(t, 'head.tap_above', { tap: height(t, 'tap_m'), level: height(t, 'level_m') }),
  'head.unit_above': (t) => says(t, 'head.unit_above', { unit: height(t, 'unit_m'), level: height(t, 'level_m') }),
  'head.suction': (t) => says(t, 'head.suction', { suction: height(t, 'suction_m'), most: height(t, 'most_m') }),
};
