import type { RolloutSheet } from '@eavewell/tables';

/** What the plan is called that is shown; null: there is none. */
export const planNamed = ({ plans, planId }: Pick<RolloutSheet, 'plans' | 'planId'>): string | null =>
  plans.find((plan) => plan.planId === planId)?.name ?? null;
