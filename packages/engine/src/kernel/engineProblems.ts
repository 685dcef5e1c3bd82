import { problemMaker } from './problems.ts';
import { chlorineProblems } from './roomProblems/chlorine.ts';
import { costProblems } from './roomProblems/cost.ts';
import { drainageProblems } from './roomProblems/drainage.ts';
import { headProblems } from './roomProblems/head.ts';
import { kitProblems } from './roomProblems/kit.ts';
import { loadsProblems } from './roomProblems/loads.ts';
import { moneyProblems } from './roomProblems/money.ts';
import { rolloutReadyProblems } from './roomProblems/rolloutReady.ts';
import { safetyProblems } from './roomProblems/safety.ts';
import { settlingProblems } from './roomProblems/settling.ts';
import { standProblems } from './roomProblems/stand.ts';
import { stormProblems } from './roomProblems/storm.ts';
import { treatmentProblems } from './roomProblems/treatment.ts';
import { waterTestsProblems } from './roomProblems/waterTests.ts';
import { waysProblems } from './roomProblems/ways.ts';
import { wearProblems } from './roomProblems/wear.ts';

/** Every problem the engine can find, with its severity. The words package holds one sentence for each. */
export const engineProblems = {
  'rain.none': 'blocker',
  'rain.too_short': 'blocker',
  'rain.day_twice_same': 'warning',
  'rain.day_twice_differs': 'warning',
  'rain.out_of_order': 'warning',
  'rain.day_far': 'warning',
  'rain.negative': 'warning',
  'rain.absurd': 'warning',
  'rain.large': 'note',
  'rain.in_inches': 'blocker',
  'rain.in_tenths': 'blocker',
  'rain.same_for_days': 'warning',
  'rain.month_twice': 'warning',
  'rain.days_missing': 'warning',
  'rain.year_not_judged': 'warning',
  'rain.days_filled': 'note',
  'rain.days_filled_neighbours': 'note',
  'rain.no_neighbour': 'note',
  'rain.gap_not_filled': 'warning',
  'rain.shifted': 'note',
  'rain.part_years_cut': 'note',
  'rain.few_years': 'warning',
  'rain.double_mass_bends': 'note',
  'rain.made_up': 'warning',
  'rain.record_set_aside': 'warning',
  'rain.normals_incomplete': 'blocker',
  'rain.normals_impossible': 'blocker',
  'rain.normals_differ': 'warning',
  'site.facts_in_doubt': 'blocker',
  'site.figure_unusable': 'blocker',
  'site.target_of_programme': 'note',
  'site.people_unknown': 'blocker',
  'site.people_from_households': 'warning',
  'site.growth_not_used': 'warning',
  'site.design_year_before_count': 'warning',
  'site.gauge_unknown': 'blocker',
  'site.gauge_by_distance': 'note',
  'site.gauge_too_far': 'blocker',
  'site.roof_none': 'blocker',
  'site.roof_area_unknown': 'blocker',
  'site.roof_area_differs': 'warning',
  'site.roof_very_large': 'warning',
  'site.roof_material_unsafe': 'warning',
  'site.runoff_assumed': 'note',
  'site.gutters_assumed': 'warning',
  'site.first_flush_assumed': 'note',
  'site.diverter_blocked': 'warning',
  'site.tank_none': 'blocker',
  'site.tank_volume_unknown': 'blocker',
  'site.tank_volume_stated': 'warning',
  'site.tank_volume_differs': 'warning',
  'site.tank_levels_differ': 'warning',
  'site.tank_stands_level': 'note',
  'site.tank_shares_unknown': 'blocker',
  'site.tank_shares_differ': 'blocker',
  'site.tank_shares_sum': 'blocker',
  'site.tank_reserve': 'note',
  'site.tank_no_roof': 'warning',
  'site.roof_tank_unknown': 'blocker',
  'site.settling_not_counted': 'warning',
  'site.ration_incomplete': 'blocker',
  'site.second_source': 'warning',
  'site.demand_assumed': 'note',
  'site.no_judged_demand': 'blocker',
  'site.presence_gaps': 'note',
  'site.nobody_present': 'blocker',
  'site.station_in_doubt': 'warning',
  'site.dated_ahead': 'warning',
  ...stormProblems,
  ...drainageProblems,
  ...settlingProblems,
  ...headProblems,
  ...treatmentProblems,
  ...wearProblems,
  ...waterTestsProblems,
  ...chlorineProblems,
  ...safetyProblems,
  ...standProblems,
  ...kitProblems,
  ...loadsProblems,
  ...moneyProblems,
  ...costProblems,
  ...waysProblems,
  ...rolloutReadyProblems,
} as const;

export type EngineProblemCode = keyof typeof engineProblems;

/** Makes one of the engine's problems. */
export const engineProblem = problemMaker(engineProblems);
