/** What money of several currencies and days can bring up, with its severity. */
export const moneyProblems = {
  'money.figure_unusable': 'warning',
  'money.rate_missing': 'warning',
  'money.rate_old': 'warning',
  'money.currency_ended': 'warning',
  'money.prices_differ': 'warning',
  'money.rates_differ': 'warning',
} as const;
