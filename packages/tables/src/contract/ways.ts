import { wayModes } from '@eavewell/engine';
import { above, choice, id, quantity, required, text } from './columns.ts';
import { defineTable } from './table.ts';

/** The file that keeps the lines of ways: GeoJSON, a feature for each, its id the wayId. */
export const wayLinesFile = 'ways.geojson';

export const ways = defineTable({
  name: 'ways',
  about: 'Stretches of road, river or footpath, each gone one way throughout. Their lines may stand in ways.geojson.',
  key: ['wayId'],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    wayId: required(id('The id of the way; the id of its line in ways.geojson.')),
    name: text('What the way is called.'),
    from: id('The site or place where it starts.'),
    to: id('The site or place where it ends.'),
    mode: choice(wayModes, 'How it is gone.'),
    length_km: quantity('km', 'Length along the way, measured or from its line.', {
      hard: above(0, 5000),
      emptyMeans: 'the length of its line, where there is one',
    }),
  },
});
