import type { costProblems, moneyProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { type Sentences, says } from './telling.ts';

const day = (t: Told) => ({ day: t.numbers.date(t.text('day')) });
const currency = (t: Told) => ({ currency: t.text('currency') });
const values = (t: Told) => ({ values: t.text('values') });

/** What money of several currencies and days brings up, in words. */
export const moneySentences: Sentences<keyof typeof moneyProblems> = {
  'money.figure_unusable': (t) => says(t, 'money.figure_unusable', { what: t.text('what'), value: t.text('value') }),
  'money.rate_missing': (t) => says(t, 'money.rate_missing', { ...currency(t), ...day(t) }),
  'money.rate_old': (t) =>
    says(t, 'money.rate_old', { ...currency(t), ...day(t), days: t.numbers.days(t.count('days')) }),
  'money.currency_ended': (t) =>
    says(t, 'money.currency_ended', { ...currency(t), ...day(t), newCurrency: t.text('newCurrency') }),
  'money.prices_differ': (t) => says(t, 'money.prices_differ', { part: t.text('part'), ...day(t), ...values(t) }),
  'money.rates_differ': (t) => says(t, 'money.rates_differ', { ...currency(t), ...day(t), ...values(t) }),
};

/** What room cost finds, in words. */
export const costSentences: Sentences<keyof typeof costProblems> = {
  'cost.figure_unusable': (t) => says(t, 'cost.figure_unusable', { what: t.text('what'), value: t.text('value') }),
  'cost.range_turned': (t) => says(t, 'cost.range_turned', { what: t.text('what') }),
  'cost.service_turned': (t) => says(t, 'cost.service_turned'),
  'cost.capital_stated': (t) => says(t, 'cost.capital_stated'),
};
