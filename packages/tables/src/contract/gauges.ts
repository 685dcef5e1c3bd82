import { from, id, quantity, required, text, time } from './columns.ts';
import { defineTable } from './table.ts';

export const gauges = defineTable({
  name: 'gauges',
  about: 'Where rain is measured. The readings of each stand in rain/<gaugeId>.csv.',
  key: ['gaugeId'],
  usedBy: ['Water'],
  columns: {
    gaugeId: required(id('The id of the gauge; it names the file of its readings.')),
    name: required(text('What the gauge is called.')),
    latitude_deg: quantity('deg', 'Latitude, north positive, WGS 84.', { hard: from(-90, 90) }),
    longitude_deg: quantity('deg', 'Longitude, east positive, WGS 84.', { hard: from(-180, 180) }),
    readingTime: time('Local time of reading; a reading before noon is the rain of the day before.', 'not said'),
  },
});
