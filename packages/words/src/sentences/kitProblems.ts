import type { kitProblems } from '@eavewell/engine';
import { isMessage } from '../catalogues.ts';
import type { Told } from '../problems.ts';
import { type Sentences, says, yes } from './telling.ts';

function word(t: Told, name: string): string {
  const key = `choices.${name}`;
  return isMessage(key) ? t.say(key) : name;
}

/** "gutter (G1, G2)": what is counted, and which of it. */
function things(t: Told): string {
  const thing = word(t, t.text('countedBy'));
  return t.list('of').length === 0 ? thing : `${thing} (${t.text('of')})`;
}

const ruled = (t: Told) => ({ rule: t.text('ruleId'), part: t.text('partId'), things: things(t) });
const several = (t: Told) => ({ of: t.both('of'), count: t.list('of').length });

/** What room kit finds, in words. */
export const kitSentences: Sentences<keyof typeof kitProblems> = {
  'kit.part_unknown': (t) =>
    says(t, 'kit.part_unknown', { part: t.text('partId'), by: t.text('by'), of: t.both('of') }),
  'kit.rule_unusable': (t) => says(t, 'kit.rule_unusable', { rule: t.text('ruleId') }),
  'kit.condition_unusable': (t) =>
    says(t, 'kit.condition_unusable', {
      rule: t.text('ruleId'),
      field: word(t, t.text('field')),
      test: word(t, t.text('test')),
      value: t.text('value'),
    }),
  'kit.site_in_doubt': (t) => says(t, 'kit.site_in_doubt', { of: t.both('of'), named: yes(t.list('of').length > 0) }),
  'kit.no_pipes': (t) => says(t, 'kit.no_pipes'),
  'kit.counted_twice': (t) => says(t, 'kit.counted_twice', ruled(t)),
  'kit.set_by_unit': (t) =>
    says(t, 'kit.set_by_unit', { part: t.text('partId'), rule: t.text('ruleId'), of: t.both('of') }),
  'kit.counted_both_ways': (t) => says(t, 'kit.counted_both_ways', { part: t.text('partId'), rules: t.both('rules') }),
  'kit.condition_unknown': (t) =>
    says(t, 'kit.condition_unknown', {
      rules: t.text('rules'),
      count: t.list('rules').length,
      things: things(t),
      fields: t
        .list('fields')
        .map((field) => word(t, field))
        .join(', '),
    }),
  'kit.count_unknown': (t) => says(t, 'kit.count_unknown', { things: things(t) }),
  'kit.length_unknown': (t) => says(t, 'kit.length_unknown', { things: things(t) }),
  'kit.length_assumed': (t) => says(t, 'kit.length_assumed', { things: things(t) }),
  'kit.thing_assumed': (t) => says(t, 'kit.thing_assumed', { things: things(t) }),
  'kit.part_without_length': (t) => says(t, 'kit.part_without_length', { part: t.text('partId') }),
  'kit.bars_not_least': (t) =>
    says(t, 'kit.bars_not_least', { part: t.text('partId'), bars: t.count('bars'), most: t.count('most') }),
  'kit.thing_without_part': (t) => says(t, 'kit.thing_without_part', { things: things(t) }),
  'kit.parts_uncounted': (t) => says(t, 'kit.parts_uncounted', several(t)),
  'kit.rules_idle': (t) => says(t, 'kit.rules_idle', several(t)),
  'kit.order_late': (t) =>
    says(t, 'kit.order_late', { ...several(t), days: t.numbers.quantity(t.count('most_days'), 'day') }),
  'kit.lead_time_unknown': (t) => says(t, 'kit.lead_time_unknown', several(t)),
  'kit.stock_unknown': (t) => says(t, 'kit.stock_unknown', several(t)),
};
