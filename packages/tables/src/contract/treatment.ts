import { above, date, from, id, quantity, required, text } from './columns.ts';
import { defineTable } from './table.ts';

const ofSite = { fields: ['siteId'], table: 'sites', tableFields: ['siteId'] } as const;
const ofPart = { fields: ['partId'], table: 'parts', tableFields: ['partId'] } as const;
const ofUnit = {
  fields: ['siteId', 'unitSerial'],
  table: 'treatmentUnits',
  tableFields: ['siteId', 'serial'],
} as const;
const day = (about: string) => date(about, '1950-01-01', '2150-12-31');
const unitSerial = id('The treatment unit; may be empty where the site has one alone.');

export const treatmentUnits = defineTable({
  name: 'treatmentUnits',
  about: 'The treatment units at the sites, one row each.',
  key: ['siteId', 'serial'],
  foreignKeys: [ofSite, ofPart],
  usedBy: ['Water', 'Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site it stands at.')),
    serial: required(id('What is written on it, or a name of yours.')),
    partId: id('The part of the catalogue it is.'),
    installedOn: day('The day it was installed.'),
    removedOn: day('The day it was taken away.'),
    reason: text('Why it was taken away.'),
  },
});

export const cartridges = defineTable({
  name: 'cartridges',
  about: 'The cartridges in the treatment units, one row each; a set is as old as its newest change.',
  key: ['siteId', 'serial'],
  foreignKeys: [ofSite, ofUnit, ofPart],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site it is at.')),
    serial: required(id('What is written on it, or a name of yours.')),
    unitSerial,
    partId: id('The part of the catalogue it is.'),
    batch: text('The batch it was made in.'),
    installedOn: day('The day it was put in.'),
    removedOn: day('The day it was taken out.'),
    reason: text('Why it was taken out.'),
  },
});

export const flowReadings = defineTable({
  name: 'flowReadings',
  about: 'The flow through a treatment unit as somebody measured it, after backwash.',
  key: ['siteId', 'unitSerial', 'readOn'],
  foreignKeys: [ofSite, ofUnit],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site.')),
    unitSerial,
    readOn: required(day('The day it was measured.')),
    flow_L_per_h: required(quantity('L/h', 'The flow.', { hard: above(0, 100000), usual: from(20, 5000) })),
    pressure_kPa: quantity('kPa', 'The pressure across the membranes then.', {
      hard: above(0, 2000),
      usual: from(2, 300),
    }),
    waterTemperature_C: quantity('C', 'Temperature of the water then.', { hard: from(0, 40), usual: from(5, 35) }),
    passed_L: quantity('L', 'Litres passed since the set was new, by a meter.', { hard: from(0, 1e9) }),
  },
});

export const pressureTests = defineTable({
  name: 'pressureTests',
  about: 'Tests of a treatment unit with air under pressure: how fast it falls.',
  key: ['siteId', 'unitSerial', 'testedOn'],
  foreignKeys: [ofSite, ofUnit],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site.')),
    unitSerial,
    testedOn: required(day('The day of the test.')),
    pressure_kPa: required(
      quantity('kPa', 'The pressure it began with.', { hard: above(0, 2000), usual: from(10, 300) }),
    ),
    fall_kPa_per_min: required(quantity('kPa/min', 'How fast it fell.', { hard: from(0, 2000), usual: from(0, 50) })),
    airVolume_L: quantity('L', 'Air under pressure in the unit then.', {
      hard: above(0, 10000),
      usual: from(0.05, 50),
    }),
  },
});
