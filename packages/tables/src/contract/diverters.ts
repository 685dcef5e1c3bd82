import { choice, from, id, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

export const diverters = defineTable({
  name: 'diverters',
  about:
    'First-flush diverters: the first dirty water of a spell is kept out of the tank. Give its depth or its chamber.',
  key: ['siteId', 'roofId'],
  foreignKeys: [{ fields: ['siteId', 'roofId'], table: 'roofs', tableFields: ['siteId', 'roofId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    siteId: required(id('The site the roof stands on.')),
    roofId: required(id('The roof it serves.')),
    firstFlush_mm: quantity('mm', 'Depth of water on the plan roof that is let go.', { hard: from(0, 10) }),
    chamber_L: quantity('L', 'Volume of its chamber.', { hard: from(0, 5000) }),
    drainHole: choice(['open', 'blocked'], 'Does its drain hole run, so that it empties between spells?', 'open'),
    chamberBore_mm: quantity('mm', 'Inside diameter of the pipe its chamber is made of.', {
      hard: from(20, 2000),
      usual: from(75, 400),
    }),
    drainHole_mm: quantity('mm', 'Diameter of its drain hole.', { hard: from(0.5, 100), usual: from(2, 15) }),
  },
});
