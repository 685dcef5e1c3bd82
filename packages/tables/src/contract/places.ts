import { placeKinds } from '@eavewell/engine';
import { choice, currency, date, from, id, quantity, required, text, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

export const places = defineTable({
  name: 'places',
  about: 'Where kit and crews start, change over or are kept: stores, ends of roads, landings.',
  key: ['placeId'],
  foreignKeys: [
    { fields: ['filledFrom'], table: 'places', tableFields: ['placeId'] },
    { fields: ['filledBy'], table: 'carriers', tableFields: ['carrierId'] },
  ],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    placeId: required(id('The id of the place; no site has the same.')),
    name: required(text('What the place is called.')),
    kind: choice(placeKinds, 'What the place is.'),
    latitude_deg: quantity('deg', 'Latitude, north positive, WGS 84.', { hard: from(-90, 90) }),
    longitude_deg: quantity('deg', 'Longitude, east positive, WGS 84.', { hard: from(-180, 180) }),
    changeOver_h: quantity('h', 'What changing from one carrier to another takes there.', {
      hard: from(0, 240),
      usual: from(0, 6),
      emptyMeans: 'as settings.json says',
    }),
    maySleep: yesNo('May a crew sleep there?', 'yes'),
    filledFrom: id('The store that fills this one by trips of their own.', 'goods come here themselves'),
    filledBy: id('The carrier that fills it.'),
    setUp_amount: quantity('currency', 'What making a store of it costs, once, where it is none yet.', {
      hard: from(0, 1e12),
    }),
    currency: currency('The currency.'),
    priceDate: date('The day its cost was stated.', '1950-01-01', '2150-12-31'),
  },
});
