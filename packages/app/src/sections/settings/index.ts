import { lazyRouteComponent } from '@tanstack/react-router';

/** Settings and tables of the whole programme. Their forms are loaded when they are opened. */
export const Settings = lazyRouteComponent(() => import('./Settings.tsx'), 'Settings');
export const TableRows = lazyRouteComponent(() => import('./TableRows.tsx'), 'TableRows');
