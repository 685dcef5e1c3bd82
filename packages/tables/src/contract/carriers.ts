import { carrierModes } from '@eavewell/engine';
import { above, choice, currency, date, fraction, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

export const carriers = defineTable({
  name: 'carriers',
  about: 'What carries kit: people, boats, trucks, pallets, containers. Limits are yours, never ours.',
  key: ['carrierId'],
  usedBy: ['Kit', 'Rollout'],
  optional: true,
  columns: {
    carrierId: required(id('The id of the carrier.')),
    name: required(text('What it is called.')),
    mode: required(choice(carrierModes, 'What sort of carrier it is.')),
    limit_kg: quantity(
      'kg',
      'The most it may carry beside its crew and what they carry for themselves, as whoever answers for it says.',
      { hard: above(0, 1e6) },
    ),
    limit_L: quantity('L', 'The most room there is in it.', { hard: above(0, 1e7) }),
    longest_m: quantity('m', 'The longest piece it can take.', { hard: above(0, 100), usual: from(0.3, 20) }),
    stowage_fraction: fraction('Share of its room that can be filled.', {
      hard: above(0, 1),
      usual: from(0.5, 1),
      emptyMeans: '1',
    }),
    count: whole('count', 'How many there are.', { hard: from(0, 100000), emptyMeans: '1' }),
    length_m: quantity('m', 'How long it is, from end to end: a boat is drawn to it.', {
      hard: above(0, 200),
      usual: from(2, 40),
    }),
    freeboard_cm: quantity('cm', 'From the water to the edge of a boat at its limit.', { hard: from(0, 500) }),
    freeboardEmpty_cm: quantity('cm', 'From the water to its edge with its crew and nothing else aboard.', {
      hard: from(0, 500),
    }),
    leastFreeboard_cm: quantity('cm', 'It never goes with less.', { hard: from(0, 500), usual: from(20, 100) }),
    limitSetBy: text('Who set the limit.'),
    limitSetOn: date('The day it was set.', '1950-01-01', '2150-12-31'),
    speed_km_per_h: quantity('km/h', 'Its speed, where a way states no hours.', {
      hard: above(0, 200),
      usual: from(1, 80),
    }),
    fuel_L_per_km: quantity('L/km', 'Fuel it takes.', { hard: from(0, 50), usual: from(0, 5) }),
    cost_per_day: quantity('currency/day', 'What a day of it costs, without fuel.', { hard: from(0, 1e9) }),
    currency: currency('The currency.'),
    priceDate: date('The day its cost was stated.', '1950-01-01', '2150-12-31'),
  },
});
