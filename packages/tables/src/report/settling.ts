import { z } from 'zod';
import { verdict } from './parts.ts';

const known = z.number().nullable();

/** What the settling station found of one tank. */
export const settling = z
  .strictObject({
    tankId: z.string().nullable().describe('Null where a site that is to be judged has no settling tank.'),
    verdict,
    cappedBy: z.string().nullable().describe('What keeps it from holding: the code of its problem.'),
    finding: z.string().describe('In a few sentences. Fine clay and germs do not settle, whatever the verdict.'),
    planArea_m2: known,
    cells_count: z.int().describe('Mixed cells in a row; 1 where nothing is said of walls in it.'),
    flowByDay_L_per_s: known.describe('In the hours people pump on the day that asks for most.'),
    flowInStorm_L_per_s: known,
    overflowRateByDay_m_per_h: known,
    overflowRateInStorm_m_per_h: known,
    grain_um: z.number().describe('The grain that is to settle.'),
    sinks_m_per_h: known.describe('How fast it sinks in still water.'),
    settledByDay_fraction: known,
    settledInStorm_fraction: known,
    firstTenth_min: known.describe('After so long a tenth of the water has gone through by day, the tank being full.'),
    grains: z
      .array(
        z.strictObject({
          grain_um: z.number(),
          leavesByDay_fraction: known,
          leavesInStorm_fraction: known,
        }),
      )
      .describe('What leaves, from clay to sand; none where it is not known.'),
    sludge_L_per_year: known.describe('Null where it is not known what roofs shed.'),
    cleanAfter_months: known.describe('Until the sludge comes near the draw-off; null where not known, or never.'),
  })
  .meta({ id: 'settling' });
