import type { components } from '../api/apiTypes.ts';

/** The report of a site as the program answers with it: made here, it is of the same form. */
export type SiteReport = components['schemas']['site'];
