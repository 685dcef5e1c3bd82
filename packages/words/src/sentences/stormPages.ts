import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What the page of a gauge says of storms. */
// long: the words of one section of a page, a line or two each
export const stormPageIn = ({ say, numbers }: Speech) => ({
  heading: say('commandLine.storm.heading'),
  none: (years: number) => say('commandLine.storm.none', { years: numbers.years(years) }),
  risk: (years: number, atLeastOnce: number, once: number) =>
    say('commandLine.storm.risk', {
      years: numbers.years(years),
      atLeastOnce: numbers.percent(Math.round(atLeastOnce * 100) / 100),
      once: numbers.percent(Math.round(once * 100) / 100),
      more: numbers.percent(Math.round((atLeastOnce - once) * 100) / 100),
    }),
  rare: (years: number, chance: number, period: number) =>
    say('commandLine.storm.rare', {
      years: numbers.years(years),
      chance: numbers.percent(chance),
      period: numbers.years(period),
    }),
  maxima: { day: say('commandLine.storm.maxima.day'), fiveMinutes: say('commandLine.storm.maxima.fiveMinutes') },
  fiveMinutesKey: say('commandLine.storm.fiveMinutesKey'),
  moments: (years: number, mean: string, l2: string, t3: string, t4: string) =>
    say('commandLine.storm.moments', { years: numbers.years(years), mean, l2, t3, t4 }),
  columns: [
    say('commandLine.storm.columns.1'),
    say('commandLine.storm.columns.2'),
    say('commandLine.storm.columns.3'),
    say('commandLine.storm.columns.4'),
    say('commandLine.storm.columns.5'),
    say('commandLine.storm.columns.6'),
    say('commandLine.storm.columns.7'),
    say('commandLine.storm.columns.8'),
  ],
  key: (range: number, isGumbel: boolean) =>
    say('commandLine.storm.key', { range: numbers.percent(range), isGumbel: yes(isGumbel) }),
  few: (years: number, least: number) =>
    say('commandLine.storm.few', { years: numbers.years(years), least: numbers.years(least) }),
  tooFew: say('commandLine.storm.tooFew'),
});
