import { gutterShapes } from '@eavewell/engine';
import { choice, from, id, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

export const gutters = defineTable({
  name: 'gutters',
  about:
    'The gutters of each roof, one row for each run along an eave. Measured inside; what was not measured is left empty.',
  key: ['siteId', 'gutterId'],
  foreignKeys: [{ fields: ['siteId', 'roofId'], table: 'roofs', tableFields: ['siteId', 'roofId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    siteId: required(id('The site the roof stands on.')),
    gutterId: required(id('The id of the gutter, within its site.')),
    roofId: required(id('The roof it hangs on.')),
    shape: choice(gutterShapes, 'Its shape in section; `cutPipe` is a pipe cut in half along its length.'),
    width_mm: quantity('mm', 'Width across its top, inside.', { hard: from(20, 1000), usual: from(60, 400) }),
    depth_mm: quantity('mm', 'Depth, inside.', { hard: from(10, 1000), usual: from(30, 300) }),
    length_m: quantity('m', 'Length of the run.', { hard: from(0.1, 500), usual: from(0.5, 60) }),
    fall_mm_per_m: quantity('mm/m', 'How much it falls toward its outlet on each metre; 0 where it is level.', {
      hard: from(0, 200),
      usual: from(0, 20),
    }),
    outlet_mm: quantity('mm', 'Diameter of the hole its water leaves by.', {
      hard: from(10, 500),
      usual: from(40, 200),
    }),
  },
});
