import type { RolloutComparison, RolloutSheet } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';
import type { SearchState } from './useSearch.ts';

type Language = Pick<AppLanguage, 'say' | 'numbers'>;

/** How far a search is, what it has found, and how much better the best can be. */
export function searchWords(
  state: Pick<SearchState, 'waiting' | 'bound' | 'gap_fraction'>,
  { people_count }: Pick<RolloutSheet, 'people_count'>,
  { say, numbers }: Language,
): string {
  if (state.waiting === null) return say('rolloutPlans.search_begun');
  const mean = people_count > 0 ? state.waiting / people_count : null;
  const found = mean === null ? '' : say('rolloutPlans.search_waiting', { days: numbers.days(Math.round(mean)) });
  const gap =
    state.gap_fraction === null
      ? say('rolloutPlans.search_no_bound')
      : say('rolloutPlans.search_gap', { gap: numbers.percentAtMost(state.gap_fraction) });
  return `${found} ${gap}`.trim();
}

/** A plan in a list of them. */
export function planName(plan: RolloutSheet['plans'][number], { say }: Language): string {
  return plan.isInForce ? say('rolloutPlans.in_force_named', { name: plan.name }) : plan.name;
}

/** What a plan is, in a line. */
export function planFacts(plan: RolloutSheet['plans'][number], { say, numbers }: Language): string {
  const size = say('rolloutPlans.size', { trips: plan.trips_count, sites: plan.sites_count });
  const from = plan.from === null ? '' : say('rolloutPlans.from', { day: numbers.date(plan.from) });
  return [size, from, plan.note ?? ''].filter((one) => one !== '').join(' ');
}

/** What plan b takes beside plan a, row by row: its name, and by how much more or less. */
export function differenceRows(
  compared: RolloutComparison,
  currency: string | null,
  { say, numbers }: Language,
): readonly {
  readonly differs: 'finish' | 'waiting' | 'cost' | 'fuel' | 'trips';
  readonly row: string;
  readonly said: string;
}[] {
  const by = (value: number, amount: string, more: 'later' | 'more') =>
    Math.abs(value) < 0.5
      ? say('rolloutPlans.same')
      : say('rolloutPlans.by', { amount, how: value > 0 ? more : more === 'later' ? 'earlier' : 'less' });
  const whole = (value: number, unit: string) => numbers.quantity(Math.round(Math.abs(value)), unit);
  const { finish_days, waiting_personDays, cost, fuel_L, trips_count } = compared;
  const money =
    currency === null ? numbers.quantity(Math.round(Math.abs(cost)), '') : numbers.money(Math.abs(cost), currency);
  return [
    {
      differs: 'finish',
      row: say('rolloutPlans.row_finish'),
      said: by(finish_days, whole(finish_days, 'day'), 'later'),
    },
    {
      differs: 'waiting',
      row: say('rolloutPlans.row_waiting'),
      said: by(waiting_personDays, say('rolloutPlans.person_days', { amount: whole(waiting_personDays, '') }), 'more'),
    },
    { differs: 'cost', row: say('rolloutPlans.row_money'), said: by(cost, money, 'more') },
    { differs: 'fuel', row: say('rolloutPlans.row_fuel'), said: by(fuel_L, whole(fuel_L, 'L'), 'more') },
    {
      differs: 'trips',
      row: say('rolloutPlans.row_trips'),
      said: by(trips_count, say('rolloutPlans.trips', { count: Math.abs(trips_count) }), 'more'),
    },
  ];
}

/** A name for a plan that no other has: "Plan 2". */
export function freeName(names: readonly string[], { say }: Language): string {
  for (let nth = names.length + 1; ; nth++) {
    const name = say('rolloutPlans.name_nth', { nth });
    if (!names.includes(name)) return name;
  }
}
