import type { DayOrder, Ration } from '../../kernel/index.ts';
import { type Balance, judgedRules, type RunRules } from './dayByDay.ts';

/**
 * By which rules is a site's record run?
 *
 * @param order - the order of the day [text]
 * @param ration - what is given while the tank is low [fraction]; null where nothing is rationed
 * @returns the rules of a judged run: two passes from an empty tank, with the ration [fraction]
 * @definition ours: docs/decisions/0091-order-on-request.md, 0092-rationing.md
 * @example
 * rulesOf('yas', null).order // → 'yas'
 */
export function rulesOf(order: DayOrder, ration: Ration | null): RunRules {
  return { ...judgedRules, order, ration };
}

/**
 * Do these rules look at how full the tank is, so that every size has to be run on its own?
 *
 * @param rules - the rules of the run, its ration [fraction]
 * @returns true under yas and where water is rationed
 * @definition ours: docs/methods/storage.md, sizes run one by one
 * @example
 * looksAtContent(rulesOf('ybs', null)) // → false
 */
export function looksAtContent(rules: RunRules): boolean {
  return rules.order === 'yas' || (rules.ration ?? null) !== null;
}

/**
 * The balance that stands for a day of these rules under `drawFirst`. Under `ybs` the day's rain serves the day's demand before
 * either touches the tank, so a day is one net half-step: what is left of the demand is drawn, or what is left of the rain is
 * stored, and drawing before storing is then no matter.
 *
 * @param balance - inflow and demands by day [L]
 * @param rules - the rules of the run, its ration [fraction]
 * @returns under ybs without rationing the net balance [L]; else the same balance
 * @law `drawFirst` on the net balance has the dry days and the contents of `ybs` on the whole one
 * @definition ours: docs/methods/storage.md, every size at once
 * @example
 * Array.from(balanceUnder({ inflow_L: Float64Array.of(5, 1), judged_L: Float64Array.of(2, 2), other_L: Float64Array.of(0, 0) }, rulesOf('ybs', null)).inflow_L) // → [3, 0]
 */
export function balanceUnder(balance: Balance, rules: RunRules): Balance {
  if (rules.order !== 'ybs' || looksAtContent(rules)) return balance;
  return { ...netOf(balance), whole: balance };
}

/** What is left of each day's rain and of its demand once the one has served the other. */
export function netOf(balance: Balance): Balance {
  const { inflow_L, judged_L, other_L } = balance;
  const direct = (day: number) => Math.min(judged_L[day]!, inflow_L[day]!);
  const directOther = (day: number) => Math.min(other_L[day]!, inflow_L[day]! - direct(day));
  return {
    ...balance,
    inflow_L: inflow_L.map((inflow, day) => inflow - direct(day) - directOther(day)),
    judged_L: judged_L.map((judged, day) => judged - direct(day)),
    other_L: other_L.map((other, day) => other - directOther(day)),
  };
}
