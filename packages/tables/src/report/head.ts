import { headPlaces, pipeLegs } from '@eavewell/engine';
import { z } from 'zod';
import { verdict } from './parts.ts';

const known = z.number().nullable();

const segment = z.strictObject({
  pipeId: z.string().nullable().describe('Null for the treatment unit.'),
  leg: z.enum(pipeLegs).nullable(),
  bore_mm: known,
  length_m: known,
  velocity_m_per_s: known,
  friction_m: z.number().describe('Head its wall takes.'),
  minor_m: z.number().describe('Head its fittings take; all that the unit takes.'),
});

const gradePoint = z.strictObject({
  place: z.enum(headPlaces),
  pipeId: z.string().nullable().describe('The pipe that ends there.'),
  along_m: z.number().describe('Along the pipes from the tank.'),
  elevation_m: known.describe('Height of the place itself; null between places that were measured.'),
  grade_m: z.number().describe('To which the water would rise in a tube beside it.'),
});

/** What the station of the taps found of one body of water. */
export const head = z
  .strictObject({
    tankIds: z.array(z.string()).describe('None where a site that is to be judged has no tank or no pipe.'),
    verdict,
    cappedBy: z.string().nullable().describe('The assumption that keeps it from holding: the code of its problem.'),
    finding: z.string().describe('In a few sentences.'),
    flowWanted_L_per_min: known.describe('With every tap open.'),
    lowLevel_m: known.describe('Of the water over the ground, the tank at its outlet.'),
    fullLevel_m: known.describe('The same with the tank at its overflow.'),
    fallToTap_m: known.describe('From the low level; under 0 the taps lie higher.'),
    fallToUnit_m: known,
    lossToUnit_m: known,
    lossInUnit_m: known,
    lossToTap_m: known,
    flowLow_L_per_min: known.describe('Without a hand pump, the tank at its outlet.'),
    flowFull_L_per_min: known,
    headLeft_m: known.describe('At the taps at the flow wanted, the tank at its outlet; under 0: so much is missing.'),
    headLeftFull_m: known,
    hasHandPump: z.boolean(),
    pumpAdds_m: known.describe('Null where there is no hand pump.'),
    pumpPower_W: known.describe('At its handle, one person for all the taps.'),
    onePerson_L_per_min: known.describe('What one person can keep up; null where nothing is to be added.'),
    suction_m: known.describe('How far the pump draws water up, losses included.'),
    segments: z.array(segment).describe('In the order of the water, at the flow wanted.'),
    grade: z.array(gradePoint).describe('At the flow wanted, the tank at its outlet.'),
    leastBore_mm: known.describe('The narrowest bore of all its pipes with which it holds; null where none does.'),
    leastPartId: z.string().nullable().describe('The narrowest pipe of the catalogue with which it holds.'),
    leastPart_mm: known,
  })
  .meta({ id: 'head' });
