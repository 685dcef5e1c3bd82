import {
  barrierKinds,
  chlorineProducts,
  pathogens,
  portionKinds,
  reductionEvidences,
  samplePoints,
} from '@eavewell/engine';
import { above, choice, date, fraction, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

const ofSite = { fields: ['siteId'], table: 'sites', tableFields: ['siteId'] } as const;
const day = (about: string) => date(about, '1950-01-01', '2150-12-31');

/** Log reductions as stated, and what says so. */
export const reductionColumns = {
  bacteria_log10: quantity('log10', 'Steps of ten by which it lessens bacteria.', {
    hard: from(0, 12),
    usual: from(0, 8),
  }),
  viruses_log10: quantity('log10', 'Steps of ten by which it lessens viruses.', {
    hard: from(0, 12),
    usual: from(0, 8),
  }),
  protozoa_log10: quantity('log10', 'Steps of ten by which it lessens protozoa.', {
    hard: from(0, 12),
    usual: from(0, 8),
  }),
  evidence: choice(
    reductionEvidences,
    'What says so: a challenge test of this very product, a credit of a health authority, or nothing.',
  ),
  evidenceSource: text('Who says so, where and when.'),
};

const perLitre = { hard: from(0, 1e12), usual: from(0, 1e6) };

export const rawWater = defineTable({
  name: 'rawWater',
  about:
    'Germs in a litre of water before any treatment, as measured or stated. Rows without a siteId are the whole programme’s; rows without a secondSourceId are of water from roofs.',
  key: ['siteId', 'secondSourceId', 'pathogen'],
  foreignKeys: [ofSite, { fields: ['secondSourceId'], table: 'secondSources', tableFields: ['secondSourceId'] }],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: id('The site.', 'the whole programme'),
    secondSourceId: id('The second source whose water it is.', 'water from roofs'),
    pathogen: required(choice(pathogens, 'The germ.')),
    typical_per_L: required(quantity('1/L', 'How many are usual.', perLitre)),
    low_per_L: quantity('1/L', 'The low end of what is likely.', perLitre),
    high_per_L: quantity('1/L', 'The high end of what is likely: nineteen in twenty samples lie below.', perLitre),
    source: text('Who says so, where and when.'),
  },
});

export const barriers = defineTable({
  name: 'barriers',
  about:
    'What lessens germs beside the treatment unit and chlorine, from roof to cup. Rows without a siteId are at every site. What has no evidence is not credited.',
  key: ['siteId', 'barrierId'],
  foreignKeys: [ofSite],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: id('The site.', 'every site'),
    barrierId: required(id('The id of the barrier.')),
    kind: required(choice(barrierKinds, 'What it is.')),
    ...reductionColumns,
    used_fraction: fraction('Share of the people whose water passes it.'),
  },
});

export const waterTests = defineTable({
  name: 'waterTests',
  about: 'Samples of water, one row each; what E. coli was found in stands in testPortions.',
  key: ['siteId', 'testId'],
  foreignKeys: [ofSite],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site.')),
    testId: required(id('The id of the sample, within its site.')),
    takenOn: required(day('The day it was taken.')),
    point: required(choice(samplePoints, 'Where it was taken.')),
    turbidity_NTU: quantity('NTU', 'Turbidity.', { hard: from(0, 10000), usual: from(0, 500) }),
    freeChlorine_mg_per_L: quantity('mg/L', 'Free chlorine.', { hard: from(0, 50), usual: from(0, 5) }),
    pH: quantity('number', 'The pH.', { hard: from(0, 14), usual: from(5, 9.5) }),
    waterTemperature_C: quantity('C', 'Temperature of the water.', { hard: from(0, 40), usual: from(5, 35) }),
    laboratory: text('Who read it.'),
  },
});

export const testPortions = defineTable({
  name: 'testPortions',
  about: 'The portions of a sample in which E. coli was looked for, one row for each volume and way of reading.',
  key: ['siteId', 'testId', 'kind', 'volume_mL'],
  foreignKeys: [{ fields: ['siteId', 'testId'], table: 'waterTests', tableFields: ['siteId', 'testId'] }],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site.')),
    testId: required(id('The sample.')),
    kind: required(
      choice(portionKinds, 'Tubes, wells, bags or bottles that turn or do not; or plates whose colonies are counted.'),
    ),
    volume_mL: required(quantity('mL', 'Water in each.', { hard: above(0, 100000), usual: from(0.001, 1000) })),
    portions: required(
      whole('count', 'How many tubes, or plates that could be counted.', { hard: from(0, 10000), usual: from(0, 100) }),
    ),
    positive: whole('count', 'Of tubes: how many turned.', { hard: from(0, 10000) }),
    colonies: whole('count', 'Of plates: colonies on all of them.', { hard: from(0, 1e6) }),
    uncountable: whole('count', 'Of plates: how many more had too many to count.', {
      hard: from(0, 1000),
      emptyMeans: '0',
    }),
    uncountableFrom: whole('count', 'From how many colonies on a plate counts as uncountable.', {
      hard: from(1, 10000),
    }),
  },
});

export const inspections = defineTable({
  name: 'inspections',
  about: 'Walks over a site with a list of questions, one row each: how many risks were found.',
  key: ['siteId', 'inspectedOn'],
  foreignKeys: [ofSite],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site.')),
    inspectedOn: required(day('The day of the walk.')),
    risks: required(whole('count', 'How many risks were found.', { hard: from(0, 100) })),
    questions: required(whole('count', 'How many were asked about.', { hard: from(1, 100) })),
    by: text('Who walked.'),
  },
});

export const chlorination = defineTable({
  name: 'chlorination',
  about: 'How water is chlorinated, one row a site that does.',
  key: ['siteId'],
  foreignKeys: [ofSite],
  usedBy: ['Safety'],
  optional: true,
  columns: {
    siteId: required(id('The site.')),
    product: choice(chlorineProducts, 'What the chlorine is made of.'),
    active_fraction: fraction('Share of it that is active chlorine.', { hard: above(0, 1) }),
    stock_g_per_L: quantity('g/L', 'Chlorine in the stock solution; one per cent is 10.', {
      hard: above(0, 300),
      usual: from(0.5, 150),
    }),
    dose_mg_per_L: quantity('mg/L', 'Chlorine given to the water.', { hard: above(0, 100), usual: from(0.5, 8) }),
    residual_mg_per_L: quantity('mg/L', 'Free chlorine left after the contact time.', {
      hard: from(0, 50),
      usual: from(0, 5),
    }),
    contact_min: quantity('min', 'How long it works before people draw.', {
      hard: from(0, 10000),
      usual: from(10, 1440),
    }),
    baffling_fraction: fraction('Share of that time which the quickest water has.', {
      hard: above(0, 1),
      emptyMeans: '0.1: a tank without walls in it',
    }),
    pH: quantity('number', 'The pH of the water.', { hard: from(0, 14), usual: from(5, 9.5) }),
    waterTemperature_C: quantity('C', 'Its temperature.', {
      hard: from(0, 40),
      usual: from(5, 35),
      emptyMeans: 'as settings.json says',
    }),
    batch_L: quantity('L', 'Water that is dosed at once.', { hard: above(0, 1e6) }),
  },
});
