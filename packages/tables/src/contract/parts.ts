import { gutterShapes } from '@eavewell/engine';
import { above, choice, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

const size = { hard: above(0, 100) };

export const parts = defineTable({
  name: 'parts',
  about: 'The catalogue: what can be bought and carried.',
  key: ['partId'],
  usedBy: ['Water', 'Kit'],
  optional: true,
  columns: {
    partId: required(id('The id of the part.')),
    kind: required(
      choice(
        [
          'tank',
          'gutter',
          'outlet',
          'downpipe',
          'overflow',
          'diverter',
          'screen',
          'pipe',
          'valve',
          'meter',
          'tap',
          'pump',
          'stand',
          'treatmentUnit',
          'cartridge',
          'site',
          'other',
        ],
        'What sort of part it is; `site` is the kit of a whole site.',
      ),
    ),
    name: required(text('What the part is called.')),
    volume_L: quantity('L', 'Usable volume in litres, for a tank; up to 50 is taken for m³.', { hard: above(0, 1e7) }),
    mass_kg: quantity('kg', 'Mass of one.', { hard: above(0, 100000) }),
    length_m: quantity('m', 'Longest side, packed.', size),
    width_m: quantity('m', 'Second side, packed.', size),
    height_m: quantity('m', 'Third side, packed.', size),
    packSize: whole('piece', 'How many are sold together.', { hard: above(0, 100000) }),
    supplier: text('Who sells it.'),
    leadTime_days: whole('day', 'Days from order to arrival.', { hard: { low: 0, high: 3650 } }),
    shape: choice(gutterShapes, 'The shape of a gutter in section.'),
    topWidth_mm: quantity('mm', 'Width of a gutter across its top, inside.', {
      hard: from(20, 1000),
      usual: from(60, 400),
    }),
    baseWidth_mm: quantity('mm', 'Width of its sole, inside, where that is not the width of its top.', {
      hard: from(10, 1000),
      usual: from(40, 300),
    }),
    depth_mm: quantity('mm', 'Depth of a gutter, inside.', { hard: from(10, 1000), usual: from(30, 300) }),
    bore_mm: quantity('mm', 'Inside diameter of a pipe, a downpipe, an outlet or an overflow.', {
      hard: from(4, 1000),
      usual: from(10, 250),
    }),
  },
});
