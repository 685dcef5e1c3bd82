import { date, from, id, quantity, required, time, whole } from './columns.ts';
import { defineTable } from './table.ts';

export const shortRain = defineTable({
  name: 'shortRain',
  about:
    'Rain of short intervals, such as five minutes, from a gauge that writes them down. Intervals without rain need no row.',
  key: ['gaugeId', 'date', 'time'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    gaugeId: required(id('The gauge.')),
    date: required(date('The day the interval ends on.', '1800-01-01', '2150-12-31')),
    time: required(time('Local time at its end.')),
    interval_min: required(whole('min', 'How long it is.', { hard: from(1, 1440), usual: from(1, 60) })),
    rain_mm: required(quantity('mm', 'Rain that fell in it.', { hard: from(0, 500), usual: from(0, 60) })),
  },
});
