import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';

type StationCode = Extract<TableProblemCode, `station.${string}`>;
type Sentences = Readonly<Record<StationCode, (told: Told) => ProblemSentence>>;

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

const days = (t: Told) => numbers.quantity(t.number('count') ?? 0, 'day');
const lines = (t: Told) => `${t.text('count')} ${t.number('count') === 1 ? 'line' : 'lines'}`;
/** The first few days by name. */
const named = (t: Told) => {
  const list = t.list('days');
  if (list.length === 0) return '';
  return ` (${list.slice(0, 3).map(numbers.date).join(', ')}${(t.number('count') ?? 0) > 3 ? ', …' : ''})`;
};
const depth = (t: Told) => {
  const value = t.number('value');
  return value === null ? `"${t.text('value')}"` : numbers.given(value, 'mm');
};

/** What each letter of a failed check means. Source: ghcn-daily, readme section III. */
const checks: Readonly<Record<string, string>> = {
  D: 'duplicate',
  G: 'gap',
  I: 'inner consistency',
  K: 'streak of one value',
  L: 'length of a total over days',
  M: 'consistency over the whole record',
  N: 'naught',
  O: 'outlier for the season',
  R: 'range over neighbouring days',
  S: 'neighbouring stations',
  T: 'days before and after',
  W: 'too warm for snow',
  X: 'bounds',
  Z: 'found by a person',
};

/** What is said of station files of GHCN-Daily. */
export const stationProblemSentences: Sentences = {
  'station.file': (t) =>
    say(
      `The file was read as a station file of GHCN-Daily, station ${t.text('value')}: rain in tenths of mm.`,
      'Nothing to do, if that is the station meant.',
    ),
  'station.several': (t) =>
    say(
      `The file holds several stations (${t.text('stations')}), and none has the id of the gauge; none was used.`,
      'Keep the lines of one station, or give the gauge the id of its station.',
    ),
  'station.others_left': (t) =>
    say(
      `The file holds other stations besides ${t.text('value')}: ${t.text('stations')}.`,
      `Nothing to do: ${lines(t)} about them were left.`,
    ),
  'station.none': () =>
    say('The station file has no line of daily rain (PRCP).', 'Fetch the file of a station that measures rain.'),
  'station.line_unreadable': (t) =>
    say(
      `"${t.text('value')}" is no line of a station file; it was left out.`,
      'Copy the file again from where it came from, or mend the line.',
    ),
  'station.failed_check': (t) => {
    const check = checks[t.text('value')];
    return say(
      `${days(t)} failed a check of the service, flag ${t.text('value')}${check ? ` (${check})` : ''}; they count as not read${named(t)}.`,
      'Nothing to do. A value you can vouch for may be written into a rain table of days.',
    );
  },
  'station.presumed_zero': (t) =>
    say(
      `${days(t)} are missing and only presumed dry, flag P; they count as not read${named(t)}.`,
      'Look for the missing sheets.',
    ),
  'station.trace': (t) =>
    say(`${days(t)} had a trace of rain, too little to measure; they count as 0 mm.`, 'Nothing to do.'),
  'station.from_synoptic': (t) =>
    say(
      `${days(t)} are summed from reports by the hour (source S), which may differ much from what the gauge held.`,
      'They were used. Ask the weather service for the daily readings.',
    ),
  'station.accumulated': (t) =>
    say(
      `${depth(t)} were read at once for ${numbers.quantity(t.number('days') ?? 0, 'day')}, ${numbers.date(t.text('from'))} to ${numbers.date(t.text('to'))}.`,
      'These days count as not read, since nobody knows how the rain was shared among them.',
    ),
  'station.accumulated_unsaid': (t) =>
    say(
      `${depth(t)} were read at once on ${numbers.date(t.text('to'))} for days that are not said.`,
      'That day counts as not read. Check the days before it.',
    ),
  'station.other_elements': (t) =>
    say(`The station file holds other things than rain (${t.text('value')}).`, `Nothing to do: ${lines(t)} were left.`),
};
