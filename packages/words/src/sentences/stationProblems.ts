import type { TableProblemCode } from '@eavewell/tables';
import type { Told } from '../problems.ts';
import { quoted, type Sentences, says, wordFor, yes } from './telling.ts';

type StationCode = Extract<TableProblemCode, `station.${string}`>;

const days = (t: Told) => t.numbers.quantity(t.count('count'), 'day');

/** The first few days by name. */
const named = (t: Told) => {
  const list = t.list('days');
  if (list.length === 0) return '';
  return ` (${list.slice(0, 3).map(t.numbers.date).join(', ')}${t.count('count') > 3 ? ', …' : ''})`;
};
const depth = (t: Told) => {
  const value = t.number('value');
  return value === null ? quoted(t) : t.numbers.given(value, 'mm');
};

/** What each letter of a failed check means. Source: ghcn-daily, readme section III. */
const check = (t: Told) => wordFor(t, 'check', t.text('value'));

/** What is said of station files of GHCN-Daily. */
export const stationProblemSentences: Sentences<StationCode> = {
  'station.file': (t) => says(t, 'station.file', { value: t.text('value') }),
  'station.several': (t) => says(t, 'station.several', { stations: t.text('stations') }),
  'station.others_left': (t) =>
    says(t, 'station.others_left', { value: t.text('value'), stations: t.text('stations'), count: t.count('count') }),
  'station.none': (t) => says(t, 'station.none'),
  'station.line_unreadable': (t) => says(t, 'station.line_unreadable', { value: t.text('value') }),
  'station.failed_check': (t) => {
    return says(t, 'station.failed_check', {
      days: days(t),
      value: t.text('value'),
      hasCheck: yes(check(t)),
      check: check(t) ?? '',
      named: named(t),
    });
  },
  'station.presumed_zero': (t) => says(t, 'station.presumed_zero', { days: days(t), named: named(t) }),
  'station.trace': (t) => says(t, 'station.trace', { days: days(t) }),
  'station.from_synoptic': (t) => says(t, 'station.from_synoptic', { days: days(t) }),
  'station.accumulated': (t) =>
    says(t, 'station.accumulated', {
      depth: depth(t),
      days: t.numbers.quantity(t.number('days') ?? 0, 'day'),
      from: t.numbers.date(t.text('from')),
      to: t.numbers.date(t.text('to')),
    }),
  'station.accumulated_unsaid': (t) =>
    says(t, 'station.accumulated_unsaid', { depth: depth(t), to: t.numbers.date(t.text('to')) }),
  'station.other_elements': (t) =>
    says(t, 'station.other_elements', { value: t.text('value'), count: t.count('count') }),
};
