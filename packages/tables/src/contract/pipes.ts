import { pipeLegs, pipeMaterials } from '@eavewell/engine';
import { choice, from, id, quantity, required, whole, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

const fittings = { hard: from(0, 200), emptyMeans: '0' };

export const pipes = defineTable({
  name: 'pipes',
  about: 'The pipes from the tanks to the treatment unit and from there to the taps, one row for each bore.',
  key: ['siteId', 'pipeId'],
  foreignKeys: [
    { fields: ['siteId'], table: 'sites', tableFields: ['siteId'] },
    { fields: ['siteId', 'tankId'], table: 'tanks', tableFields: ['siteId', 'tankId'] },
  ],
  usedBy: ['Water', 'Kit'],
  optional: true,
  columns: {
    siteId: required(id('The site it lies at.')),
    pipeId: required(id('The id of the pipe, within its site.')),
    leg: required(choice(pipeLegs, 'From a tank to the treatment unit, or from there to the taps.')),
    tankId: id('The tank it comes from; may be empty where all its tanks are joined.'),
    bore_mm: quantity('mm', 'Inside diameter.', { hard: from(4, 500), usual: from(10, 110) }),
    length_m: quantity('m', 'Length along the pipe.', { hard: from(0, 10000), usual: from(0.2, 300) }),
    material: choice(pipeMaterials, 'What it is made of.', 'plastic'),
    elbows: whole('count', 'Right-angled bends in it.', fittings),
    tees: whole('count', 'Tees in it, run through.', fittings),
    valves: whole('count', 'Valves in it, open.', fittings),
    meters: whole('count', 'Water meters in it.', fittings),
    otherLoss_k: quantity('number', 'Loss coefficients of all else in it, added up.', {
      hard: from(0, 1000),
      emptyMeans: '0',
    }),
    built: yesNo('Is it there already, so that none has to be brought?'),
  },
});
