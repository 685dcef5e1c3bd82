import { date, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

export const rain = defineTable({
  name: 'rain',
  file: 'rain/<gaugeId>.csv',
  about: 'The daily readings of one gauge, one file for each. A day that was not read is left empty or left out.',
  key: ['date'],
  usedBy: ['Water'],
  columns: {
    date: required(date('The day of the reading, as the observer wrote it.', '1850-01-01', '2100-12-31')),
    rain_mm: quantity('mm', 'Rain read that day; 0 is a dry day.', { emptyMeans: 'not read' }),
  },
});
