import type { TableProblemCode } from '@eavewell/tables';
import type { Told } from '../problems.ts';
import { quoted, type Sentences, says, saysOrMeant } from './telling.ts';

const value = (t: Told) => ({ value: quoted(t) });
const days = (t: Told) => ({ from: t.numbers.date(t.text('from')), to: t.numbers.date(t.text('to')) });
const metres = (t: Told, name: string): string => t.numbers.quantity(t.number(name) ?? t.text(name), 'm');

/** Which of the columns are empty, by their names in the file. */
const missing = (t: Told) => ({ missing: t.list('missing').join(', ') });

const links = {
  'link.unknown_store': (t) => saysOrMeant(t, 'link.unknown_store', value(t)),
  'link.unknown_carrier': (t) => saysOrMeant(t, 'link.unknown_carrier', value(t)),
  'link.unknown_way': (t) => saysOrMeant(t, 'link.unknown_way', value(t)),
  'link.unknown_crew': (t) => saysOrMeant(t, 'link.unknown_crew', value(t)),
  'link.unknown_work_calendar': (t) => saysOrMeant(t, 'link.unknown_work_calendar', value(t)),
  'link.unknown_river_gauge': (t) => saysOrMeant(t, 'link.unknown_river_gauge', value(t)),
  'link.area_unused': (t) => says(t, 'link.area_unused', value(t)),
  'link.skill_unused': (t) => says(t, 'link.skill_unused', value(t)),
} satisfies Partial<Sentences<TableProblemCode>>;

const ways = {
  'rollout.way_to_itself': (t) => says(t, 'rollout.way_to_itself', value(t)),
  'rollout.way_unfinished': (t) => says(t, 'rollout.way_unfinished', { ...value(t), ...missing(t) }),
  'rollout.closure_of_nothing': (t) => says(t, 'rollout.closure_of_nothing', value(t)),
  'rollout.closure_when': (t) => says(t, 'rollout.closure_when', { ...value(t), how: t.text('how') }),
  'rollout.dates_turned': (t) => says(t, 'rollout.dates_turned', days(t)),
  'rollout.level_unlikely': (t) =>
    says(t, 'rollout.level_unlikely', {
      level: metres(t, 'value'),
      gauge: quoted(t, 'gauge'),
      median: metres(t, 'median'),
      likely: metres(t, 'likely'),
      count: t.count('count'),
    }),
  'rollout.levels_turned': (t) =>
    says(t, 'rollout.levels_turned', { least: metres(t, 'least'), greatest: metres(t, 'greatest') }),
  'rollout.limit_unlikely': (t) =>
    says(t, 'rollout.limit_unlikely', {
      limit: metres(t, 'value'),
      low: metres(t, 'low'),
      high: metres(t, 'high'),
      likely: metres(t, 'likely'),
    }),
} satisfies Partial<Sentences<TableProblemCode>>;

const crews = {
  'rollout.stores_in_circle': (t) => says(t, 'rollout.stores_in_circle', { stores: t.text('stores') }),
  'rollout.store_without_carrier': (t) => says(t, 'rollout.store_without_carrier', value(t)),
  'rollout.crew_without_carrier': (t) => says(t, 'rollout.crew_without_carrier', value(t)),
  'rollout.calendar_overlaps': (t) => says(t, 'rollout.calendar_overlaps', { ...value(t), other: t.text('other') }),
  'rollout.cost_unfinished': (t) =>
    says(t, 'rollout.cost_unfinished', { ...value(t), ...missing(t), isOnce: t.text('isOnce') }),
  'rollout.range_turned': (t) =>
    says(t, 'rollout.range_turned', {
      low: t.numbers.days(t.count('low')),
      likely: t.numbers.days(t.count('likely')),
      high: t.numbers.days(t.count('high')),
    }),
  'rollout.deadline_before_ready': (t) =>
    says(t, 'rollout.deadline_before_ready', {
      finish: t.numbers.date(t.text('value')),
      ready: t.numbers.date(t.text('ready')),
    }),
  'rollout.priority_unexplained': (t) => says(t, 'rollout.priority_unexplained', { factor: t.text('value') }),
} satisfies Partial<Sentences<TableProblemCode>>;

const dayOf = (t: Told, name: string): string => t.numbers.date(t.text(name));

const plans = {
  'link.unknown_plan': (t) => saysOrMeant(t, 'link.unknown_plan', value(t)),
  'link.unknown_trip': (t) => saysOrMeant(t, 'link.unknown_trip', value(t)),
  'rollout.plan_without_trips': (t) => says(t, 'rollout.plan_without_trips', value(t)),
  'rollout.plans_in_force': (t) => says(t, 'rollout.plans_in_force', { ...value(t), used: t.text('used') }),
  'rollout.back_before_left': (t) =>
    says(t, 'rollout.back_before_left', { ...value(t), left: dayOf(t, 'left'), back: dayOf(t, 'back') }),
  'rollout.back_without_left': (t) =>
    says(t, 'rollout.back_without_left', { ...value(t), used: dayOf(t, 'used'), back: dayOf(t, 'back') }),
  'rollout.handed_over_outside': (t) =>
    says(t, 'rollout.handed_over_outside', {
      ...{ value: dayOf(t, 'value'), trip: t.text('trip') },
      ...{ left: dayOf(t, 'left'), back: dayOf(t, 'back') },
    }),
  'rollout.more_away_than_there': (t) =>
    says(t, 'rollout.more_away_than_there', {
      ...{ value: t.text('value'), carrier: t.text('carrier'), there: t.count('there') },
    }),
} satisfies Partial<Sentences<TableProblemCode>>;

/** What joining the tables of the rollout brings to light, in words. */
export const rolloutTableSentences = { ...links, ...ways, ...crews, ...plans };
