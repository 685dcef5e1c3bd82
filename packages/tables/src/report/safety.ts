import {
  barrierKinds,
  cupNotes,
  cupReasons,
  germBands,
  pathogens,
  reductionEvidences,
  residualBands,
  samplePoints,
  testNeeds,
  unusableTestReasons,
} from '@eavewell/engine';
import { z } from 'zod';
import { day, place, range, verdict } from './parts.ts';

const known = z.number().nullable();
const band = z
  .enum(germBands)
  .describe('E. coli in 100 mL: low under 1, intermediate from 1, high over 10, veryHigh over 100.');

/** Tenfold steps by class of germs. */
const reductions = z
  .strictObject({ bacteria_log10: z.number(), viruses_log10: z.number(), protozoa_log10: z.number() })
  .describe('Steps of ten by class of germs.');

const barrier = z.strictObject({
  kind: z.enum([...barrierKinds, 'membrane', 'chlorine']),
  barrierId: z.string().nullable().describe('A serial of a unit, an id of barriers; null for chlorine.'),
  evidence: z.enum(reductionEvidences).describe('Without any it is credited nothing.'),
  credited: reductions,
  leaking: reductions.nullable().describe('With one cartridge leaking; null for what has no cartridges.'),
});

const waterOfYear = z
  .strictObject({
    secondSourceId: z.string().nullable().describe('Null: the water of roofs.'),
    days_per_year: z.number().describe('Days of the year on which it is drunk, of 365, as a mean.'),
    raw_per_L: z.number().describe('Before any treatment.'),
    rawHigh_per_L: known,
    drinking_per_L: z.number().describe('In treated water, on a day on which it is treated.'),
  })
  .describe('One water people drink in a year.');

const sourceDays = z
  .strictObject({
    secondSourceId: z.string(),
    name: z.string(),
    finding: z.string().describe('In a sentence.'),
    days_per_year: known.describe(
      'As a mean over people; null where the balance of the tanks is not known: each water is then taken as drunk every day.',
    ),
    days_per_year_range: range.nullable().describe('The fewest and the most of a year of the record.'),
  })
  .describe('How often the water of the second source is drunk, by the balance of the tanks.');

const risk = z
  .strictObject({
    pathogen: z.enum(pathogens),
    waters: z
      .array(waterOfYear)
      .describe(
        'The waters of the year in which the germ is known, that of roofs first; one alone where it is drunk, or taken as drunk, every day.',
      ),
    infection_per_year: z.number().describe('A mean over people and days, those who skip among them.'),
    illness_per_year: z.number(),
    DALY_per_person_per_year: z.number().describe('Healthy years of life lost.'),
    DALYHigh_per_person_per_year: z.number().describe('The high end of its range: it is judged.'),
    fromSkipping_fraction: z.number().describe('What those who drink untreated water bear of it.'),
    needed_log10: z.number().describe('Log reduction wanted for the target, at the typical water.'),
  })
  .describe('A planning figure. The health authority decides.');

const waterTest = z.strictObject({
  testId: z.string(),
  takenOn: day,
  point: z.enum(samplePoints),
  sign: z.enum(['less', 'equal', 'more']).nullable().describe('Null where E. coli was not looked for.'),
  count_per_100mL: known,
  low_per_100mL: known.describe('The likely range of the count, 95 %.'),
  high_per_100mL: known,
  rarity: known.describe('How likely such a set of portions is beside the likeliest; under 0.05: test again.'),
  band: band.nullable(),
  isBeforeHandOver: z.boolean().describe('It says nothing of the water handed over.'),
});

/** A sample that cannot be used. */
export const unusableTest = z.strictObject({
  testId: z.string(),
  because: z
    .enum(unusableTestReasons)
    .describe('Its row could not be read; its day is still to come; what was found in it cannot be reckoned with.'),
  at: place.describe('The row that is to be mended.'),
  hasGerms: z.boolean().describe('Does what can be read of it say that E. coli were found?'),
});

/** Why it may be said, the first told first; what is told beside it; and why a sample is to be taken. */
export const cupSaid = {
  reasons: z.array(z.enum(cupReasons)).describe('Why it may be said, the first told first.'),
  notes: z
    .array(z.enum(cupNotes))
    .describe('What makes no verdict and is told beside it: many risks found by the last walk, a set past its day.'),
  needsTest: z
    .array(z.enum(testNeeds))
    .describe(
      'Why a sample is to be taken: the last one failed, a unit failed its test with air, one cannot be used, none since hand-over was clean, the last clean one is too old, a set of cartridges is overdue.',
    ),
  failedUnits: z.array(z.string()).describe('Units whose last test with air failed.'),
  withheldBy: z.array(place).describe('Rows that could not be used and keep more from being said.'),
};

const waterTests = z.strictObject({
  finding: z.string().describe('In a few sentences.'),
  tests: z.array(waterTest).describe('In the order of their days.'),
  unusable: z.array(unusableTest).describe('Samples that cannot be used as they were written down.'),
  isUnusableOpen: z.boolean().describe('May one of them be the one that says no?'),
  last: waterTest
    .nullable()
    .describe(
      'The last of tap or container since hand-over in which E. coli was looked for; one of shortly before that held them, while none since was clean.',
    ),
  clean_count: z.int().describe('Clean ones in a row since hand-over, at tap and container.'),
  lastCleanOn: day.nullable().describe('The newest of them.'),
  cleanBelow_per_100mL: known.describe('The mean that is then below with 95 % sureness.'),
  cleanWanted_count: z.int().describe('Clean ones in a row wanted to say that fewer than one in twenty is not.'),
  inspection: z.strictObject({ inspectedOn: day, score: z.number(), band }).nullable(),
  priority: band.nullable().describe('The worse of the last sample and the last inspection.'),
});

const chlorine = z.strictObject({
  finding: z.string().describe('In a few sentences.'),
  ct_mg_min_per_L: known.describe('Residual times contact time times the share of it that counts.'),
  ctForGiardia_mg_min_per_L: known.describe('For three steps of ten, by the table; null outside it.'),
  ctForGiardiaRegression_mg_min_per_L: known.describe('By the regression, for comparison.'),
  giardia_log10: known,
  viruses_log10: known,
  stock_mL: known.describe('For one batch, for the dose.'),
  product_per_L: known.describe('For a litre of stock of one per cent: grams of a powder, millilitres of a liquid.'),
  residualBand: z.enum(residualBands).nullable(),
  wait_min: known,
  isTooTurbid: z.boolean().nullable().describe('Too turbid for chlorine to be relied on? Null where not known.'),
  credited: reductions,
});

/** Is the water of a site fit to drink? */
export const safety = z
  .strictObject({
    verdict,
    cappedBy: z.string().nullable().describe('What keeps it from holding: the code of its problem.'),
    finding: z.string().describe('In a few sentences.'),
    mayDrink: z
      .enum(['yes', 'notShown', 'no'])
      .describe(
        'no: a sample after hand-over held E. coli, or treatment is known not to work. notShown: nothing proves it.',
      ),
    ...cupSaid,
    isReckoned: z.boolean().describe('False where rows in doubt keep barriers and germs from being reckoned.'),
    barriers: z.array(barrier).describe('Along the way of the water.'),
    credited: reductions.describe('Sum of what is credited, for those whose water is treated.'),
    leaking: reductions.nullable().describe('The same with one cartridge leaking; null where there is no unit.'),
    effective: reductions.describe('Of the mean of what is drunk, over people and days: for display alone.'),
    tier: z
      .union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)])
      .describe('3: highly protective, 2: protective, 1: targeted, 0: none.'),
    skipping_fraction: known.describe('Of the people, who drink untreated water; null: not stated.'),
    daysOff_per_year: known.describe('Days on which the water of everybody goes untreated; null: not stated.'),
    sourceDays: sourceDays.nullable().describe('Null where the site names no second source.'),
    risks: z.array(risk).describe('The worst first.'),
    target_DALY_per_person_per_year: z.number(),
    waterTests,
    chlorine: chlorine.nullable().describe('Null where water is not chlorinated.'),
    boilsAt_C: known.describe('At which water boils there; null where the height is not known.'),
  })
  .describe('A planning aid: the health authority and accredited laboratories decide.')
  .meta({ id: 'safety' });
