/** What an address asks of the rollout: which plan, the week on the map, a site that is looked for. */
export interface RolloutAskedOf {
  readonly plan?: string;
  readonly week?: string;
  readonly site?: string;
}

const dayForm = /^\d{4}-\d{2}-\d{2}$/;
const asText = (value: unknown) => (typeof value === 'string' || typeof value === 'number' ? String(value) : '');

/** Reads what an address asks; what is no answer to it is left out. */
export function rolloutAskedOf({ plan, week, site }: Record<string, unknown>): RolloutAskedOf {
  return {
    ...(asText(plan) === '' ? {} : { plan: asText(plan) }),
    ...(dayForm.test(asText(week)) ? { week: asText(week) } : {}),
    ...(asText(site) === '' ? {} : { site: asText(site) }),
  };
}

/** Two plans that are to be looked at side by side. */
export interface PlansCompared {
  readonly a?: string;
  readonly b?: string;
  /** Beside the first is the plan that was found in its place and is not kept. */
  readonly anew?: 'yes';
}

/** Reads which plans an address asks for. */
export function plansComparedOf({ a, b, anew }: Record<string, unknown>): PlansCompared {
  return {
    ...(asText(a) === '' ? {} : { a: asText(a) }),
    ...(asText(b) === '' ? {} : { b: asText(b) }),
    ...(anew === 'yes' ? { anew } : {}),
  };
}
