import { roofCoatings, roofForms, roofMaterials, usualPlanArea_m2, usualSide_m } from '@eavewell/engine';
import { choice, fraction, from, id, quantity, required, whole, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

const side = { hard: from(0.5, 500), usual: from(usualSide_m.least, usualSide_m.most) };

export const roofs = defineTable({
  name: 'roofs',
  about: 'The roofs of each site. A roof is measured on the plan, eaves to eaves: by its sides, or by its plan area.',
  key: ['siteId', 'roofId'],
  foreignKeys: [
    { fields: ['siteId'], table: 'sites', tableFields: ['siteId'] },
    { fields: ['siteId', 'tankId'], table: 'tanks', tableFields: ['siteId', 'tankId'] },
  ],
  usedBy: ['Water'],
  columns: {
    siteId: required(id('The site the roof stands on.')),
    roofId: required(id('The id of the roof, within its site.')),
    length_m: quantity('m', 'Length on the plan, eaves to eaves.', side),
    width_m: quantity('m', 'Width on the plan, eaves to eaves.', side),
    roofPlanArea_m2: quantity('m2', 'Area on the plan, where it was measured as such.', {
      hard: from(1, 50000),
      usual: from(usualPlanArea_m2.least, usualPlanArea_m2.most),
    }),
    material: choice(roofMaterials, 'What covers the roof.'),
    runoffFraction: fraction('Share of the rain on the roof that runs off it.', { hard: from(0.05, 1) }),
    gutteredFraction: fraction('Share of the plan area that drains to a gutter which leads to the tank.'),
    tankId: id('The tank of the same site its gutter leads to; may be empty where all its tanks are joined.'),
    form: choice(roofForms, 'How it is built: two slopes to a ridge, one slope, four slopes, or flat.'),
    pitch_deg: quantity('deg', 'Slope of the roof against the level.', { hard: from(0, 75), usual: from(3, 50) }),
    eaveHeight_m: quantity('m', 'Height of the eave: from the ground to the line of the gutter.', {
      hard: from(0.5, 30),
      usual: from(2, 6),
    }),
    wallAbove_m2: quantity('m2', 'Wall above the roof that sheds rain on it.', {
      hard: from(0, 5000),
      emptyMeans: '0',
    }),
    valleys: whole('count', 'Valleys, where two slopes meet and gather their water.', {
      hard: from(0, 20),
      emptyMeans: 'none was noted',
    }),
    fragile: yesNo('May it break under a foot? Empty: its material says.'),
    coating: choice(
      roofCoatings,
      'What it is coated with: nothing, a coating made for drinking water, paint nobody knows, or bitumen.',
    ),
    lead: yesNo('Is there lead in its flashing, its nails or old paint?'),
    asbestos: yesNo('Is there asbestos in its sheets?'),
    underTrees: yesNo('Do trees hang over it, or do birds or animals sit on it?'),
  },
});
