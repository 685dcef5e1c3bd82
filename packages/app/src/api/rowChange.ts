import type { paths } from './apiTypes.ts';

type ChangesAsked =
  paths['/api/programmes/{programmeId}/changes']['post']['requestBody']['content']['application/json'];

/** One row added, edited or removed, with what was seen before. */
export type RowChange = ChangesAsked['changes'][number];
