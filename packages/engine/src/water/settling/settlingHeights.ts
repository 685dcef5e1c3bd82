import { type EngineProblemCode, engineProblem, type Problem, type TankFacts } from '../../kernel/index.ts';
import { inletOverDrawOff_m, leastDrawOff_m } from './constants.ts';

/** What the heights of a settling tank do to it. */
export interface SettlingHeights {
  /** Does what settles leave again, as it is drawn from the floor? */
  readonly drawsSludge: boolean;
  /** Is it not known where it is drawn from? */
  readonly isUnknown: boolean;
  /** What keeps it from holding. */
  readonly cappedBy: EngineProblemCode | null;
  readonly problems: readonly Problem[];
}

/**
 * Are inlet, draw-off and floor of a settling tank apart? What comes in must not go straight out, nor what lies on the floor.
 *
 * @param siteId - the site, for the places of problems
 * @param tank - heights over its floor [m]
 * @returns what the heights do to it, and what is wrong with them
 * @problem settling.draw_off_unknown - the height of the draw-off is not measured
 * @problem settling.draw_off_low - the draw-off is at the floor
 * @problem settling.inlet_unknown - the height of the inlet is not measured
 * @problem settling.inlet_low - the inlet is not above the draw-off
 * @definition ours: docs/decisions/0180-settling.md
 */
export function settlingHeights(siteId: string, tank: TankFacts): SettlingHeights {
  const { tankId, outletHeight_m, inletHeight_m } = tank;
  const place = (column: string) => ({ file: 'tanks.csv', siteId, column });
  if (outletHeight_m === null) {
    const problem = engineProblem('settling.draw_off_unknown', place('outletHeight_m'), { tank: tankId });
    return { drawsSludge: false, isUnknown: true, cappedBy: null, problems: [problem] };
  }
  const problems: Problem[] = [];
  const drawsSludge = outletHeight_m < leastDrawOff_m;
  if (drawsSludge)
    problems.push(
      engineProblem('settling.draw_off_low', place('outletHeight_m'), {
        tank: tankId,
        outlet_m: outletHeight_m,
        least_m: leastDrawOff_m,
      }),
    );
  if (inletHeight_m === null)
    problems.push(engineProblem('settling.inlet_unknown', place('inletHeight_m'), { tank: tankId }));
  else if (inletHeight_m < outletHeight_m + inletOverDrawOff_m)
    problems.push(
      engineProblem('settling.inlet_low', place('inletHeight_m'), {
        tank: tankId,
        inlet_m: inletHeight_m,
        outlet_m: outletHeight_m,
        apart_m: inletOverDrawOff_m,
      }),
    );
  const capping = problems.find(({ code }) => code !== 'settling.draw_off_low');
  return { drawsSludge, isUnknown: false, cappedBy: (capping?.code ?? null) as EngineProblemCode | null, problems };
}
