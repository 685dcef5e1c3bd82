import { from, id, quantity, required, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

export const downpipes = defineTable({
  name: 'downpipes',
  about: 'The pipes that take the water of each roof down from its gutters. What was not measured is left empty.',
  key: ['siteId', 'downpipeId'],
  foreignKeys: [{ fields: ['siteId', 'roofId'], table: 'roofs', tableFields: ['siteId', 'roofId'] }],
  usedBy: ['Water', 'Kit'],
  optional: true,
  columns: {
    siteId: required(id('The site the roof stands on.')),
    downpipeId: required(id('The id of the downpipe, within its site.')),
    roofId: required(id('The roof whose water it takes.')),
    bore_mm: quantity('mm', 'Inside diameter.', { hard: from(10, 500), usual: from(40, 200) }),
    length_m: quantity('m', 'Length along the pipe.', { hard: from(0.1, 100), usual: from(0.3, 15) }),
    built: yesNo('Is it there already, so that none has to be brought?'),
  },
});
