/** What making a rollout ready can find, with its severity. */
export const rolloutReadyProblems = {
  'rollout.no_crews': 'blocker',
  'rollout.crew_base_unknown': 'warning',
  'rollout.crew_never_works': 'warning',
  'rollout.no_agreements': 'note',
  'rollout.tight': 'note',
  'rollout.short_planned': 'warning',
  'rollout.kit_in_part': 'warning',
  'rollout.mass_unknown': 'warning',
  'rollout.service_unknown': 'warning',
  'rollout.stock_never_enough': 'warning',
  'rollout.stock_unknown': 'note',
  'rollout.main_store_unknown': 'warning',
  'rollout.haul_unknown': 'warning',
  'rollout.cost_unknown': 'note',
  'rollout.fuel_price_unknown': 'note',
} as const;
