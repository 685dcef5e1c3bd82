import { drives } from '@eavewell/engine';
import { z } from 'zod';
import { day, verdict } from './parts.ts';

const known = z.number().nullable();

const peak = z.strictObject({
  peak: z.enum(['morning', 'evening']),
  asked_L: z.number(),
  possible_L: z.number().describe('What unit and taps give in that hour, as the set is now.'),
  lastWait_min: known.describe(
    'What the last in line waits, as the set is now; null where the line has no end that day.',
  ),
  lastWaitWorn_min: known.describe('The same when the set is worn.'),
});

const pressureTest = z
  .strictObject({
    testedOn: day,
    pressure_kPa: z.number(),
    smallestSeen_um: z.number().describe('The smallest hole that lets air through at that pressure.'),
    supports_log10: known.describe('Log reduction of what is larger than such a hole that the fall supports.'),
    fallLimit_kPa_per_min: known.describe('A faster fall no longer supports what is claimed of protozoa.'),
  })
  .describe('The last test with air under pressure. It sees no hole smaller than that, and nothing of viruses.');

/** What the station of the treatment unit found of one unit. */
export const treatment = z
  .strictObject({
    serial: z.string().nullable().describe('Null where a site that is to be judged has no unit.'),
    partId: z.string().nullable(),
    verdict,
    cappedBy: z.string().nullable().describe('What keeps it from holding: the code of its problem.'),
    finding: z.string().describe('In a few sentences. Whether it keeps up, not whether its water is fit to drink.'),
    drive: z.enum(drives).nullable().describe('rated: at its rated pressure, because none is known.'),
    pressure_kPa: known.describe('Across its membranes.'),
    waterTemperature_C: z.number(),
    flowClean_L_per_h: known.describe('At that pressure and temperature, with a new set.'),
    flowNow_L_per_h: known.describe('By the last reading that can be used; as new where there is none.'),
    flowWorn_L_per_h: known.describe('With a set that is due to be changed.'),
    resistanceNow_ratio: known.describe('Over that of a clean set; null where nothing was read.'),
    pumpPower_W: known.describe('What the one who pumps gives; null where there is no hand pump.'),
    strokes_per_min: known,
    handForce_N: known.describe('At the handle; null where the piston is not known.'),
    asked_L_per_day: known.describe('Its share, on the day that asks for most.'),
    treated_L_per_day: known.describe('With what goes back through it to clean it.'),
    backwash_min_per_day: known,
    hoursNeeded_h: known.describe('As the set is now.'),
    hoursNeededWorn_h: known,
    peaks: z.array(peak).describe('The line at the taps in the two hours that most people come in.'),
    meanWait_min: known.describe('If people came one by one at random, as a check; null where the line has no end.'),
    unitHead_m: known.describe('Head it takes at the flow of all its taps, clean.'),
    pressureTest: pressureTest.nullable(),
  })
  .meta({ id: 'treatment' });
