import { above, choice, id, quantity, required, text, whole } from './columns.ts';
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
        ['tank', 'gutter', 'downpipe', 'diverter', 'treatmentUnit', 'cartridge', 'site', 'other'],
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
  },
});
