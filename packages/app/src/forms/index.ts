import { lazy } from 'react';

/** Sets one field for many sites: `<SetForMany programmeId siteIds />`. Loaded when it is shown. */
export const SetForMany = lazy(() => import('./SetForMany.tsx').then((loaded) => ({ default: loaded.SetForMany })));
