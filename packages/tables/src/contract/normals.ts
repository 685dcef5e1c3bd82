import { from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

export const normals = defineTable({
  name: 'normals',
  about:
    'What each month usually brings at a gauge, as a weather service prints it. Where a gauge has no record, rain is made up from its twelve months; every month then needs rain and wet days.',
  key: ['gaugeId', 'month'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    gaugeId: required(id('The gauge whose normals they are.')),
    month: required(whole('month', 'The month, January is 1.', { hard: from(1, 12) })),
    rain_mm: quantity('mm', 'Rain of a usual month.', { hard: from(0, 5000), usual: from(0, 1500) }),
    wetDays: quantity('day', 'Days with 1 mm of rain or more in a usual month; parts of a day may be given.', {
      hard: from(0, 31),
    }),
    source: text('Who says so, and where.'),
    yearFrom: whole('year', 'The first of the years it is the mean of.', { hard: from(1800, 2200) }),
    yearTo: whole('year', 'The last of them.', { hard: from(1800, 2200) }),
  },
});
