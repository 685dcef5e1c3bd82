import { above, fraction, from, id, required, whole } from './columns.ts';
import { defineTable } from './table.ts';

export const targets = defineTable({
  name: 'targets',
  about:
    'What "enough water" means for a class of site, where it is not what settings.json says. A class without a row has the programme’s target.',
  key: ['siteClass'],
  usedBy: ['Water'],
  optional: true,
  columns: {
    siteClass: required(id('The class, as it stands in sites.csv.')),
    daysMet_fraction: fraction('Judged litres are wholly met on at least this share of days.', {
      hard: above(0, 1),
      usual: from(0.8, 1),
      emptyMeans: "the programme's",
    }),
    longestDryRun_days: whole('day', 'No dry run is longer than this, in the wanted share of years.', {
      hard: from(0, 366),
      usual: from(0, 30),
      emptyMeans: "the programme's",
    }),
    goodYears_fraction: fraction('No dry run is longer than that in at least this share of years.', {
      hard: above(0, 1),
      usual: from(0.5, 1),
      emptyMeans: "the programme's",
    }),
  },
});
