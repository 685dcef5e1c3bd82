import { gutterShapes } from '@eavewell/engine';
import { choice, from, id, quantity, required, whole, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

export const gutters = defineTable({
  name: 'gutters',
  about:
    'The gutters of each roof, one row for each run along an eave. Measured inside; what was not measured is left empty.',
  key: ['siteId', 'gutterId'],
  foreignKeys: [{ fields: ['siteId', 'roofId'], table: 'roofs', tableFields: ['siteId', 'roofId'] }],
  usedBy: ['Water', 'Kit'],
  optional: true,
  columns: {
    siteId: required(id('The site the roof stands on.')),
    gutterId: required(id('The id of the gutter, within its site.')),
    roofId: required(id('The roof it hangs on.')),
    shape: choice(gutterShapes, 'Its shape in section; `cutPipe` is a pipe cut in half along its length.'),
    width_mm: quantity('mm', 'Width across its top, inside.', { hard: from(20, 1000), usual: from(60, 400) }),
    depth_mm: quantity('mm', 'Depth, inside.', { hard: from(10, 1000), usual: from(30, 300) }),
    length_m: quantity('m', 'Length of the run.', { hard: from(0.1, 500), usual: from(0.5, 60) }),
    fall_mm_per_m: quantity(
      'mm/m',
      'How much it falls toward its outlet on each metre; 0 where it is level, under 0 where it falls the other way.',
      {
        hard: from(-200, 200),
        usual: from(0, 20),
      },
    ),
    outlet_mm: quantity('mm', 'Diameter of the hole its water leaves by.', {
      hard: from(10, 500),
      usual: from(40, 200),
    }),
    baseWidth_mm: quantity('mm', 'Width of its sole, inside, where that is not the width of its top.', {
      hard: from(10, 1000),
      usual: from(40, 300),
    }),
    outlets: whole('count', 'Holes its water leaves by.', { hard: from(1, 50), emptyMeans: '1' }),
    runToOutlet_m: quantity('m', 'The farthest way water runs along it to an outlet.', {
      hard: from(0.1, 500),
      usual: from(0.5, 30),
      emptyMeans: 'its length, shared among its outlets',
    }),
    bends: whole('count', 'Corners of more than 10 degrees on that way.', { hard: from(0, 20), emptyMeans: '0' }),
    outletGrate: choice(['open', 'grated'], 'Does a grate stand over the hole?', 'open'),
    built: yesNo('Is it there already, so that none has to be brought?'),
  },
});
