import type { CostHead } from '../../kernel/index.ts';
import { capitalMaintenanceOver_years } from './constants.ts';

/** Heads of what interest is reckoned on. */
export const capitalHeads: readonly CostHead[] = ['capExHardware', 'capExSoftware', 'capManEx'];

/** What money is spent on, where no head is stated. */
export const spendings = [
  'kit',
  'freight',
  'crew',
  'survey',
  'training',
  'committee',
  'caretaker',
  'waterTests',
  'cleaning',
  'renewal',
  'visits',
  'sparesStore',
] as const;
export type Spending = (typeof spendings)[number];

const headOf: Readonly<Record<Exclude<Spending, 'renewal'>, CostHead>> = {
  kit: 'capExHardware',
  freight: 'capExHardware',
  crew: 'capExHardware',
  survey: 'capExSoftware',
  training: 'capExSoftware',
  committee: 'capExSoftware',
  caretaker: 'opEx',
  waterTests: 'opEx',
  cleaning: 'opEx',
  visits: 'directSupport',
  sparesStore: 'directSupport',
};

/**
 * Under which head does a spending stand? What is renewed more than a year apart is capital maintenance, what is renewed more often a running cost; it is the likely life that decides.
 *
 * @param spending - what the money is for [text]
 * @param life_years - of what is renewed: how long it lasts [year]; null of all else
 * @returns the head [text]
 * @source washcost-heads, heads of cost (from memory); which spending stands where is ours: docs/decisions/0255-heads-of-cost.md
 * @example
 * headOfSpending('freight', null) // → 'capExHardware'
 * headOfSpending('renewal', 2.5) // → 'capManEx'
 * headOfSpending('renewal', 1) // → 'opEx'
 */
export function headOfSpending(spending: Spending, life_years: number | null): CostHead {
  if (spending !== 'renewal') return headOf[spending];
  return life_years !== null && life_years <= capitalMaintenanceOver_years ? 'opEx' : 'capManEx';
}
