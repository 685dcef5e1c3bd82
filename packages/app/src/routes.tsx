import type { QueryClient } from '@tanstack/react-query';
import {
  createRootRouteWithContext,
  createRoute,
  createRouter,
  type RouterHistory,
  redirect,
} from '@tanstack/react-router';
import { queries } from './api/queries.ts';
import { kept } from './kept.ts';
import { KeptPage } from './offline/index.ts';
import { Changes } from './sections/changes/index.ts';
import { NewSite } from './sections/facts/index.ts';
import { TakeIn, TakeInNew } from './sections/imports/index.ts';
import { kitAskedOf, ProgrammeKit, SiteKit } from './sections/kit/index.ts';
import { MapPage } from './sections/map/index.ts';
import { Programmes } from './sections/programmes/index.ts';
import {
  ChooseSites,
  ComparePlans,
  CrewItinerary,
  choosingAskedOf,
  EnterHappened,
  plansComparedOf,
  Rollout,
  rolloutAskedOf,
  TripSheet,
} from './sections/rollout/index.ts';
import { Safety, SiteSafety, safetyAskedOf, WaterSafetySheet } from './sections/safety/index.ts';
import { Settings, TableRows } from './sections/settings/index.ts';
import { InstallationSheet, SitePage } from './sections/site/index.ts';
import { askedOf, Sites } from './sections/sites/index.ts';
import { ProgrammeWater, waterAskedOf } from './sections/waterYears/index.ts';
import { ErrorSheet } from './sheet/ErrorSheet.tsx';
import { NoSuchSheet } from './sheet/NoSuchSheet.tsx';
import { ProgrammeSheet } from './sheet/ProgrammeSheet.tsx';
import { Sheet } from './sheet/Sheet.tsx';

const root = createRootRouteWithContext<{ client: QueryClient }>()({ component: Sheet });

/** The address without a section: the programme one was at last, or the list of them. */
const start = createRoute({
  getParentRoute: () => root,
  path: '/',
  beforeLoad: async ({ context }) => {
    const { programmes: all } = await context.client.ensureQueryData(queries.programmes());
    const programmes = all.filter(({ isSetAside }) => !isSetAside);
    const last = programmes.find(({ programmeId }) => programmeId === kept('programme'));
    const only = last ?? (programmes.length === 1 ? programmes[0] : undefined);
    if (only === undefined) throw redirect({ to: '/programmes' });
    throw redirect({ to: '/p/$programmeId/sites', params: { programmeId: only.programmeId } });
  },
});

const programmes = createRoute({ getParentRoute: () => root, path: '/programmes', component: Programmes });

/** All of one programme stands under its name. */
export const programmeRoute = createRoute({
  getParentRoute: () => root,
  path: '/p/$programmeId',
  component: ProgrammeSheet,
});

const sites = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/sites',
  component: Sites,
  validateSearch: askedOf,
});

const site = createRoute({ getParentRoute: () => programmeRoute, path: '/sites/$siteId', component: SitePage });

/** What is fitted at a site, on paper. */
const installation = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/sites/$siteId/installation',
  component: InstallationSheet,
});

/** Whether the water of each site is fit to drink. */
const safety = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/safety',
  component: Safety,
  validateSearch: safetyAskedOf,
});

const siteSafety = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/sites/$siteId/safety',
  component: SiteSafety,
});

/** What may be drunk at a site and what to do, on paper. */
const waterSafety = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/sites/$siteId/water-safety',
  component: WaterSafetySheet,
});

/** What goes in the boat and what it costs. */
const kit = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/kit',
  component: ProgrammeKit,
  validateSearch: kitAskedOf,
});

const siteKit = createRoute({ getParentRoute: () => programmeRoute, path: '/sites/$siteId/kit', component: SiteKit });

/** Who goes where, when, by which way. */
const rollout = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/rollout',
  component: Rollout,
  validateSearch: rolloutAskedOf,
});

/** A trip: what is aboard, in the order it is put in. */
const rolloutTrip = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/rollout/trips/$tripId',
  component: TripSheet,
  validateSearch: rolloutAskedOf,
});

/** What a crew does, day by day. */
const rolloutCrew = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/rollout/crews/$crewId',
  component: CrewItinerary,
  validateSearch: rolloutAskedOf,
});

const rolloutSites = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/rollout/sites',
  component: ChooseSites,
  validateSearch: choosingAskedOf,
});

const rolloutHappened = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/rollout/happened',
  component: EnterHappened,
  validateSearch: rolloutAskedOf,
});

const rolloutPlans = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/rollout/plans',
  component: ComparePlans,
  validateSearch: plansComparedOf,
});

/** The water of the whole programme, year by year. */
const water = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/water',
  component: ProgrammeWater,
  validateSearch: waterAskedOf,
});

/** What this browser keeps, of all programmes. */
const keptHere = createRoute({ getParentRoute: () => root, path: '/kept', component: KeptPage });

const map = createRoute({ getParentRoute: () => programmeRoute, path: '/map', component: MapPage });

const newSite = createRoute({ getParentRoute: () => programmeRoute, path: '/new-site', component: NewSite });

const importAsked = ({ importId }: Record<string, unknown>): { importId?: string } =>
  typeof importId === 'string' || typeof importId === 'number' ? { importId: String(importId) } : {};

const takeInNew = createRoute({
  getParentRoute: () => root,
  path: '/programmes/take-in',
  component: TakeInNew,
  validateSearch: importAsked,
});

const takeIn = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/take-in',
  component: TakeIn,
  validateSearch: importAsked,
});

const changes = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/changes',
  component: Changes,
  validateSearch: ({ q, source }: Record<string, unknown>): { q?: string; source?: string } => ({
    ...(typeof q === 'string' ? { q } : {}),
    ...(typeof source === 'string' ? { source } : {}),
  }),
});

const settings = createRoute({ getParentRoute: () => programmeRoute, path: '/settings', component: Settings });

const settingsTable = createRoute({
  getParentRoute: () => programmeRoute,
  path: '/settings/$table',
  component: TableRows,
});

const ofSite = [site, installation, siteSafety, waterSafety, siteKit];
const ofRollout = [rollout, rolloutTrip, rolloutCrew, rolloutSites, rolloutHappened, rolloutPlans];
const ofProgramme = [
  sites,
  ...ofSite,
  ...ofRollout,
  water,
  safety,
  kit,
  map,
  newSite,
  takeIn,
  changes,
  settings,
  settingsTable,
];
const tree = root.addChildren([start, programmes, takeInNew, keptHere, programmeRoute.addChildren(ofProgramme)]);

/** The addresses of the pages, and what stands at each. */
export function makeRouter(client: QueryClient, history: RouterHistory) {
  return createRouter({
    routeTree: tree,
    history,
    context: { client },
    defaultErrorComponent: ErrorSheet,
    defaultNotFoundComponent: NoSuchSheet,
    scrollRestoration: true,
  });
}

declare module '@tanstack/react-router' {
  interface Register {
    router: ReturnType<typeof makeRouter>;
  }
}
