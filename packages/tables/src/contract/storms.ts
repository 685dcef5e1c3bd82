import { above, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

const intensity = { hard: from(1, 2000), usual: from(40, 500) };

export const storms = defineTable({
  name: 'storms',
  about:
    'How hard it rains at a gauge for five minutes, once in so many years, as a weather service or a standard states it.',
  key: ['gaugeId', 'returnPeriod_years'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    gaugeId: required(id('The gauge it is stated for.')),
    returnPeriod_years: required(whole('year', 'Once in so many years.', { hard: from(1, 1000), usual: from(2, 100) })),
    intensity_mm_per_h: required(quantity('mm/h', 'Rain of five minutes, as a rate.', intensity)),
    low_mm_per_h: quantity('mm/h', 'The low end of its range.', { hard: from(1, 2000) }),
    high_mm_per_h: quantity('mm/h', 'The high end of its range.', { hard: from(1, 2000) }),
    source: text('Who says so, and where.'),
  },
});

export const stormCoefficients = defineTable({
  name: 'stormCoefficients',
  about:
    'A coefficient set for a gauge: rain for d hours once in T years falls at lambda × T^kappa ÷ (d + theta)^eta mm an hour.',
  key: ['gaugeId'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    gaugeId: required(id('The gauge it is made for.')),
    lambda: required(quantity('number', 'The factor.', { hard: above(0, 1e6) })),
    kappa: required(quantity('number', 'The power of the return period.', { hard: from(-2, 2) })),
    theta_h: required(quantity('h', 'What is added to the duration.', { hard: from(0, 24) })),
    eta: required(quantity('number', 'The power of the duration.', { hard: above(0, 3) })),
    leastPeriod_years: quantity('year', 'The shortest return period it is made for.', { hard: from(1, 1000) }),
    mostPeriod_years: quantity('year', 'The longest return period it is made for.', { hard: from(1, 10000) }),
    source: text('Who says so, and where.'),
  },
});
