import { groundClasses, tankRoles } from '@eavewell/engine';
import {
  above,
  choice,
  cubicMetres,
  date,
  fraction,
  from,
  id,
  quantity,
  required,
  text,
  whole,
  yesNo,
} from './columns.ts';
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
  usedBy: ['Water', 'Kit'],
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
    inletHeight_m: quantity('m', 'Height of the inlet, where the water of the roofs comes in.', { hard: from(0, 20) }),
    overflowBore_mm: quantity('mm', 'Inside diameter of the overflow pipe.', {
      hard: from(10, 1000),
      usual: from(40, 200),
    }),
    overflows: whole('count', 'Overflow pipes of that bore.', { hard: from(1, 20), emptyMeans: '1' }),
    overflowScreen: choice(['open', 'screened'], 'Does a screen against mosquitoes stand over the overflow?', 'open'),
    cells: whole('count', 'Parts it is divided into by walls that water must pass around.', {
      hard: from(1, 20),
      emptyMeans: '1',
    }),
    emptyMass_kg: quantity('kg', 'Mass of the tank with nothing in it.', {
      hard: above(0, 1e6),
      usual: from(10, 5000),
    }),
    standMass_kg: quantity('kg', 'Mass of the stand.', { hard: from(0, 1e6), usual: from(20, 40000) }),
    groundClass: choice(
      groundClasses,
      'What its feet rest on; softOrMadeGround is peat, fill, organic, swelling or washed-out ground.',
    ),
    pads: whole('count', 'Pads under the feet of the stand.', { hard: from(1, 100), usual: from(1, 12) }),
    padSide_m: quantity('m', 'Side of one square pad.', { hard: from(0.05, 20), usual: from(0.2, 6) }),
    baseWidth_m: quantity('m', 'The least distance between the outer edges of its feet, over which it would tip.', {
      hard: from(0.1, 50),
      usual: from(0.5, 6),
    }),
    fastened: yesNo('Is the tank fastened to its stand, so that wind cannot take it off alone?'),
    signedBy: text(
      'Who has looked at the stand and its ground and signed for it: a licensed engineer, or whom the law names.',
    ),
    signedOn: date('The day they signed.', '1950-01-01', '2150-12-31'),
    built: yesNo('Is it there already, so that none has to be brought?'),
  },
});
