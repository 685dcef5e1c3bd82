import type { RolloutSheet } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';

/** A figure of the plan as a whole. */
export interface PlanFigure {
  readonly figure: 'finish' | 'waiting' | 'bound' | 'cost';
  readonly name: string;
  readonly said: string;
}

/** When all drink, how long people wait, how far that is from the best, what it costs. */
export function planFigures(
  { finish, waiting, cost, isCostAtLeast, currency, planId, provisos, candidates }: RolloutSheet,
  { say, numbers }: Pick<AppLanguage, 'say' | 'numbers'>,
): readonly PlanFigure[] {
  if (planId === null || waiting === null) return [];
  const isAll = candidates.every(({ tripId }) => tripId !== null) && provisos.every(({ kind }) => kind !== 'notDone');
  const named = (figure: PlanFigure['figure'], said: string): PlanFigure => ({
    ...{ figure, said },
    name: say(`rolloutPlans.figure_${figure}`, { isAll: isAll ? 'yes' : 'no' }),
  });
  const all = finish?.likely ?? null;
  const money = currency === null ? numbers.fixed(cost, 0) : numbers.money(cost, currency);
  const gap = waiting.bound?.gap_fraction ?? null;
  return [
    ...(all === null ? [] : [named('finish', numbers.date(all))]),
    named(
      'waiting',
      say('rolloutPlans.figure_waits', {
        amount: say('rolloutPlans.person_days', { amount: numbers.fixed(waiting.personDays, 0) }),
        mean: numbers.days(Math.round(waiting.mean_days)),
      }),
    ),
    ...(gap === null ? [] : [named('bound', say('rolloutPlans.figure_gap', { gap: numbers.percentAtMost(gap) }))]),
    named('cost', isCostAtLeast ? say('rolloutPlans.figure_atLeast', { cost: money }) : money),
  ];
}
