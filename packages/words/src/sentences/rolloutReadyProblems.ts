import type { rolloutReadyProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { type Sentences, says } from './telling.ts';

const sites = (t: Told) => ({ sites: t.text('sites'), count: t.count('count') });
const parts = (t: Told) => ({ parts: t.text('parts'), count: t.count('count') });

/** What making a rollout ready finds, in words. */
export const rolloutReadySentences: Sentences<keyof typeof rolloutReadyProblems> = {
  'rollout.no_crews': (t) => says(t, 'rollout.no_crews'),
  'rollout.crew_base_unknown': (t) =>
    says(t, 'rollout.crew_base_unknown', { crew: t.text('crew'), base: t.text('base') }),
  'rollout.crew_never_works': (t) => says(t, 'rollout.crew_never_works', { crew: t.text('crew') }),
  'rollout.no_agreements': (t) => says(t, 'rollout.no_agreements'),
  'rollout.tight': (t) => says(t, 'rollout.tight', sites(t)),
  'rollout.short_planned': (t) => says(t, 'rollout.short_planned', sites(t)),
  'rollout.kit_in_part': (t) => says(t, 'rollout.kit_in_part', sites(t)),
  'rollout.mass_unknown': (t) => says(t, 'rollout.mass_unknown', parts(t)),
  'rollout.service_unknown': (t) => says(t, 'rollout.service_unknown', sites(t)),
  'rollout.stock_never_enough': (t) =>
    says(t, 'rollout.stock_never_enough', { part: t.text('part'), needed: t.count('needed'), comes: t.count('comes') }),
  'rollout.stock_overdrawn': (t) =>
    says(t, 'rollout.stock_overdrawn', {
      ...{ part: t.text('part'), store: t.text('store'), taken: t.count('taken'), there: t.count('there') },
    }),
  'rollout.stock_unknown': (t) => says(t, 'rollout.stock_unknown', parts(t)),
  'rollout.main_store_unknown': (t) => says(t, 'rollout.main_store_unknown', { store: t.text('store') }),
  'rollout.haul_unknown': (t) => says(t, 'rollout.haul_unknown', { store: t.text('store'), from: t.text('from') }),
  'rollout.begins_in_past': (t) => says(t, 'rollout.begins_in_past', { from: t.text('from') }),
  'rollout.cost_unknown': (t) => says(t, 'rollout.cost_unknown', { of: t.text('of') }),
  'rollout.fuel_price_unknown': (t) => says(t, 'rollout.fuel_price_unknown'),
  'rollout.left_after_today': (t) =>
    says(t, 'rollout.left_after_today', { trip: t.text('trip'), day: t.numbers.date(t.text('day')) }),
  'rollout.two_under_way': (t) => says(t, 'rollout.two_under_way', { crew: t.text('crew'), trips: t.text('trips') }),
  'rollout.not_handed_over': (t) => says(t, 'rollout.not_handed_over', { ...sites(t), trip: t.text('trip') }),
  'rollout.trips_without_crew': (t) =>
    says(t, 'rollout.trips_without_crew', { crew: t.text('crew'), trips: t.text('trips'), count: t.count('count') }),
};
