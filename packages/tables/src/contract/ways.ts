import { wayModes } from '@eavewell/engine';
import { above, choice, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

/** The file that keeps the lines of ways: GeoJSON, a feature for each, its id the wayId. */
export const wayLinesFile = 'ways.geojson';

const hours = { hard: above(0, 2000), usual: from(0.05, 72) };

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
    there_h: quantity('h', 'Hours from its start to its end.', {
      ...hours,
      emptyMeans: "by its length and the carrier's speed",
    }),
    back_h: quantity('h', 'Hours back, as against the stream.', { ...hours, emptyMeans: 'as there' }),
    limit_kg: quantity('kg', 'The most that passes in one go.', { hard: above(0, 1e6), emptyMeans: 'as the carrier' }),
    limit_L: quantity('L', 'The most room that passes in one go.', {
      hard: above(0, 1e7),
      emptyMeans: 'as the carrier',
    }),
    longest_m: quantity('m', 'The longest piece that passes.', {
      hard: above(0, 100),
      usual: from(0.3, 20),
      emptyMeans: 'as the carrier',
    }),
    porters: whole('count', 'Porters it takes at the least, as at a fall that is carried round.', {
      hard: from(0, 1000),
      usual: from(0, 20),
      emptyMeans: '0',
    }),
    fuel_L_per_km: quantity('L/km', 'Fuel on this way.', {
      hard: from(0, 50),
      usual: from(0, 5),
      emptyMeans: 'as the carrier',
    }),
    weatherArea: id('The area whose weather it has, in your own words; ways and sites of one area share it.', 'none'),
    riverGaugeId: id('The gauge in the river whose level opens and closes it.', 'none'),
  },
});
