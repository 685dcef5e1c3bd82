import type { drainageProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says, yes } from './telling.ts';

/** Columns by their names, where any are told. */
const missing = (t: Told) => ({ hasMissing: yes(t.list('missing').length > 0), missing: t.both('missing') });

/** By how much a gutter is to fall over its run, where that is known. */
const fall = (t: Told) => ({
  gutter: t.text('gutter'),
  hasFall: yes(t.has('fall_mm')),
  fall: amount(t, ['fall_mm'], 'mm'),
  run: amount(t, ['run_m'], 'm'),
});

const roof = (t: Told) => ({ roof: t.text('roof') });
const gutter = (t: Told) => ({ gutter: t.text('gutter') });
const pitch = (t: Told) => ({ ...roof(t), pitch: amount(t, ['pitch_deg'], 'deg') });

/** What room drainage finds, and what is found of first-flush chambers, in words. */
export const drainageSentences: Sentences<keyof typeof drainageProblems> = {
  'drainage.no_storm': (t) => says(t, 'drainage.no_storm', { years: amount(t, ['returnPeriod_years'], 'year') }),
  'drainage.roof_too_steep': (t) => says(t, 'drainage.roof_too_steep', pitch(t)),
  'drainage.pitch_unknown': (t) => says(t, 'drainage.pitch_unknown', pitch(t)),
  'drainage.valleys': (t) => says(t, 'drainage.valleys', { ...roof(t), count: t.count('count') || 1 }),
  'drainage.gutter_missing': (t) => says(t, 'drainage.gutter_missing', roof(t)),
  'drainage.guttered_share_zero': (t) => says(t, 'drainage.guttered_share_zero', roof(t)),
  'drainage.gutter_not_measured': (t) => says(t, 'drainage.gutter_not_measured', { ...gutter(t), ...missing(t) }),
  'drainage.sole_wider': (t) =>
    says(t, 'drainage.sole_wider', {
      ...gutter(t),
      sole: amount(t, ['baseWidth_mm'], 'mm'),
      width: amount(t, ['width_mm'], 'mm'),
    }),
  'drainage.gutter_level': (t) => says(t, 'drainage.gutter_level', fall(t)),
  'drainage.gutter_backwards': (t) => says(t, 'drainage.gutter_backwards', fall(t)),
  'drainage.fall_unknown': (t) => says(t, 'drainage.fall_unknown', gutter(t)),
  'drainage.run_impossible': (t) =>
    says(t, 'drainage.run_impossible', {
      ...gutter(t),
      run: amount(t, ['run_m'], 'm'),
      length: amount(t, ['length_m'], 'm'),
      outlets: t.count('outlets') || 1,
    }),
  'drainage.run_too_long': (t) =>
    says(t, 'drainage.run_too_long', {
      ...gutter(t),
      run: amount(t, ['run_m'], 'm'),
      depth: amount(t, ['depth_mm'], 'mm'),
    }),
  'drainage.outlet_not_measured': (t) => says(t, 'drainage.outlet_not_measured', gutter(t)),
  'drainage.outlet_wider': (t) =>
    says(t, 'drainage.outlet_wider', {
      ...gutter(t),
      outlet: amount(t, ['outlet_mm'], 'mm'),
      width: amount(t, ['width_mm'], 'mm'),
    }),
  'drainage.downpipe_missing': (t) => says(t, 'drainage.downpipe_missing', roof(t)),
  'drainage.downpipe_not_measured': (t) => says(t, 'drainage.downpipe_not_measured', { downpipe: t.text('downpipe') }),
  'drainage.overflow_not_measured': (t) =>
    says(t, 'drainage.overflow_not_measured', { tanks: t.has('tanks') ? t.both('tanks') : t.text('tanks') }),
  'drainage.overflow_at_rim': (t) =>
    says(t, 'drainage.overflow_at_rim', {
      tank: t.text('tank'),
      overflow: amount(t, ['overflow_m'], 'm'),
      rim: amount(t, ['rim_m'], 'm'),
    }),
  'drainage.overflow_head_assumed': (t) =>
    says(t, 'drainage.overflow_head_assumed', { tank: t.text('tank'), bore: amount(t, ['bore_mm'], 'mm') }),
  'drainage.tank_above_eave': (t) =>
    says(t, 'drainage.tank_above_eave', {
      ...roof(t),
      tank: t.text('tank'),
      top: amount(t, ['top_m'], 'm'),
      eave: amount(t, ['eave_m'], 'm'),
    }),
  'drainage.rain_lost': (t) => says(t, 'drainage.rain_lost', { share: amount(t, ['lost_fraction'], 'fraction') }),
  'drainage.first_flush_small': (t) =>
    says(t, 'drainage.first_flush_small', {
      ...roof(t),
      chamber: amount(t, ['chamber_L'], 'L'),
      wanted: amount(t, ['wanted_L'], 'L'),
    }),
  'drainage.first_flush_slow': (t) =>
    says(t, 'drainage.first_flush_slow', {
      ...roof(t),
      hours: amount(t, ['emptying_h'], 'h'),
      days: amount(t, ['days'], 'day'),
    }),
  'drainage.first_flush_fast': (t) =>
    says(t, 'drainage.first_flush_fast', { ...roof(t), leak: amount(t, ['leak_mm_per_h'], 'mm_per_h') }),
  'drainage.first_flush_not_measured': (t) =>
    says(t, 'drainage.first_flush_not_measured', { ...roof(t), ...missing(t) }),
};
