/** What the address asks of the kit: the sites of a trip in the order they are come to, and the day all is needed on. */
export interface KitAsked {
  readonly sites?: string;
  readonly neededOn?: string;
}

const dayForm = /^\d{4}-\d{2}-\d{2}$/;

/** Reads what an address asks; what is no answer to it is left out. */
export function kitAskedOf({ sites, neededOn }: Record<string, unknown>): KitAsked {
  const asked = typeof sites === 'string' || typeof sites === 'number' ? tripOf(String(sites)) : [];
  return {
    ...(asked.length === 0 ? {} : { sites: asked.join(',') }),
    ...(typeof neededOn === 'string' && dayForm.test(neededOn) ? { neededOn } : {}),
  };
}

/** The sites of a trip, each once. */
export const tripOf = (sites: string | undefined): readonly string[] => [
  ...new Set((sites ?? '').split(',').filter((siteId) => siteId !== '')),
];

/** The trip with a site put at its end, or without it where it had it. */
export function tripWith(sites: string | undefined, siteId: string): string {
  const trip = tripOf(sites);
  return (trip.includes(siteId) ? trip.filter((one) => one !== siteId) : [...trip, siteId]).join(',');
}
