import { above, date, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

export const sites = defineTable({
  name: 'sites',
  about: 'The places that are to drink from their own roofs.',
  key: ['siteId'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Sites', 'Water'],
  columns: {
    siteId: required(id('The id of the site.')),
    name: required(text('What the site is called.')),
    latitude_deg: quantity('deg', 'Latitude, north positive, WGS 84.', { hard: from(-90, 90) }),
    longitude_deg: quantity('deg', 'Longitude, east positive, WGS 84.', { hard: from(-180, 180) }),
    people: whole('person', 'People who drink there in the design year.', {
      hard: from(1, 100000),
      usual: from(10, 3000),
    }),
    gaugeId: id('The gauge whose rain falls on the site.', 'the gauges within reach of its position'),
    rainFactor: quantity('ratio', "What the gauge's rain is multiplied by for the site.", {
      hard: above(0, 5),
      usual: from(0.5, 2),
      emptyMeans: '1',
    }),
    handOverDay: date('The day the site is handed over with an empty tank.', '1950-01-01', '2150-12-31'),
  },
});
