import { type Checked, explain, type WorkingLine, workingInput } from '../../kernel/index.ts';
import type { DailyDemand } from './dailyDemand.ts';

/**
 * How many litres are asked of the tank where a share of what is treated goes back through the treatment unit to clean it? So much more of all that people ask, each day.
 *
 * @param demand - what people ask [L/day], or the problems alone
 * @param backwash_fraction - litres that go back ÷ litres people ask [fraction], 0 or more
 * @param working - lines already written; one is added where something goes back
 * @returns litres asked of the tank: means of the year and the highest day [L/day], by calendar day [L]; the same demand where nothing goes back
 * @problem site.people_unknown - as of the demand it is given
 * @law asked of the tank = asked by people × (1 + share), on every day
 * @definition ours: docs/decisions/0211-backwash-is-asked-of-the-tank.md
 */
export function demandWithBackwash(
  demand: Checked<DailyDemand>,
  backwash_fraction: number,
  working: WorkingLine[],
): Checked<DailyDemand> {
  if (!demand.ok || backwash_fraction === 0) return demand;
  const { judged_L_per_day, other_L_per_day, judgedHighest_L_per_day, judgedByDay_L, otherByDay_L } = demand.value;
  const times = 1 + backwash_fraction;
  const value = {
    judged_L_per_day: judged_L_per_day * times,
    other_L_per_day: other_L_per_day * times,
    judgedHighest_L_per_day: judgedHighest_L_per_day * times,
    judgedByDay_L: judgedByDay_L.map((litres) => litres * times),
    otherByDay_L: otherByDay_L.map((litres) => litres * times),
  };
  explain(working, {
    code: 'people.backwash',
    value: value.judged_L_per_day + value.other_L_per_day,
    unit: 'L/day',
    inputs: [
      workingInput('judgedDemand', judged_L_per_day, 'L/day'),
      workingInput('otherDemand', other_L_per_day, 'L/day'),
      workingInput('backwash', backwash_fraction, 'fraction'),
    ],
    source: 'definition',
  });
  return { ...demand, value };
}
