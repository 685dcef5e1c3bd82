import { tankRoles } from '@eavewell/engine';
import { choice, cubicMetres, fraction, from, id, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

export const tanks = defineTable({
  name: 'tanks',
  about: 'The tanks of each site. Heights are above the floor of the tank.',
  key: ['siteId', 'tankId'],
  foreignKeys: [
    { fields: ['siteId'], table: 'sites', tableFields: ['siteId'] },
    { fields: ['partId'], table: 'parts', tableFields: ['partId'] },
    { fields: ['siteId', 'joinedTo'], table: 'tanks', tableFields: ['siteId', 'tankId'] },
  ],
  usedBy: ['Water'],
  columns: {
    siteId: required(id('The site the tank stands on.')),
    tankId: required(id('The id of the tank, within its site.')),
    partId: id('The part of the catalogue it is.'),
    nominal_L: quantity('L', 'Volume written on the tank, in litres; up to 50 is taken for m³.', {
      hard: from(1, 1e7),
      usual: from(200, 200000),
      otherUnit: cubicMetres,
    }),
    outletHeight_m: quantity('m', 'Height of the outlet to the tap.', { hard: from(0, 20) }),
    overflowHeight_m: quantity('m', 'Height of the overflow.', { hard: from(0, 20) }),
    diameter_m: quantity('m', 'Inside diameter of a round tank.', { hard: from(0.2, 50) }),
    joinedTo: id('The tank of the same site it is joined to at the foot, so that both share one level.'),
    role: choice(
      tankRoles,
      'What it is for. Of a settling tank only what lies between its draw-off and its overflow counts.',
      'storage',
    ),
    peopleFraction: fraction(
      "Share of the site's people who draw from it and the tanks joined to it; 0 for a reserve. To be given where tanks are not joined.",
    ),
    height_m: quantity('m', 'Height of the tank outside, from its foot to the top of its wall.', {
      hard: from(0.2, 20),
      usual: from(0.5, 5),
    }),
    standHeight_m: quantity('m', "Height of what it stands on: from the ground to the tank's foot; 0 on the ground.", {
      hard: from(0, 10),
      usual: from(0, 3),
    }),
  },
});
