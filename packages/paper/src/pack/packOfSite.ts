import {
  type CarriedLine,
  type Carrier,
  type CarrierMode,
  judgedSites,
  kitAtSite,
  loadsOf,
  type PartFacts,
  type PartsApart,
  piecesOf,
  type ReadyKit,
  type ReadyProgramme,
  type SiteFacts,
} from '@eavewell/engine';
import { siteReport } from '@eavewell/report';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { PackLoad, SitePackOptions } from './content.ts';
import { contentOf } from './contentOf.ts';
import { loadsSaid } from './loadsSaid.ts';
import { type SitePack, sitePack } from './sitePack.ts';

/** What the packs of all sites of a programme share. */
export interface PacksReady {
  readonly ready: ReadyProgramme;
  readonly kit: ReadyKit;
  readonly language: Language;
  readonly options: SitePackOptions;
  /** What carries the kit; null: nothing is said to. */
  readonly carrier: Carrier | null;
}

/** What is asked first to carry a kit, where nothing is chosen: what takes all of it on the last long stretch. Ours. */
const modesInOrder: readonly CarrierMode[] = ['boat', 'truck', 'twoPeople', 'person'];

/**
 * Which carrier is the kit of a pack told by, where nobody chose one? The boat that may carry most, else the truck, else people.
 *
 * @param carriers - the programme's
 * @returns the carrier; null where there is none of these modes
 * @definition ours: docs/methods/paper.md
 */
export function usualCarrier(carriers: readonly Carrier[]): Carrier | null {
  for (const mode of modesInOrder) {
    const of = carriers.filter((one) => one.mode === mode && one.limit_kg !== null);
    if (of.length > 0) return of.reduce((most, one) => (one.limit_kg! > most.limit_kg! ? one : most));
  }
  return null;
}

/**
 * Makes the pack of one site from its facts: it is judged, its kit is counted and loaded, and all of it is laid on paper.
 *
 * @param site - the site's facts
 * @param shared - the programme ready to be judged and for kits, the language, when it is printed, what carries the kit
 * @returns the file, or the letters that no face has
 * @definition ours: docs/methods/paper.md
 */
export function packOfSite(site: SiteFacts, shared: PacksReady): SitePack {
  const { ready, kit, language, options, carrier } = shared;
  const [judged] = judgedSites([site], ready);
  const report = siteReport(judged!.design, null, language, null);
  const { parts, facts, settings } = kit;
  const carried = { parts, carrier, keptApart: facts.kit.keptApart };
  const { lines } = kitAtSite(site, kit);
  return packOf({ site, report, lines, carried, programme: settings.programme }, language, options);
}

/** A site as it was judged, with its kit. */
export interface PackGiven {
  readonly site: SiteFacts;
  /** In the language of the pack. */
  readonly report: SiteReport;
  /** Parts of its kit, and how many of each [count]. */
  readonly lines: readonly CarriedLine[];
  readonly carried: KitCarried;
  readonly programme: string;
}

/**
 * Lays the pack of a site on paper, whoever judged it and counted its kit: the command or the server.
 *
 * @param given - the site, its report, its kit and what carries it
 * @param language - of the pack
 * @param options - when it is printed
 * @returns the file, or the letters that no face has
 * @definition ours: docs/methods/paper.md
 */
export function packOf(
  { site, report, lines, carried, programme }: PackGiven,
  language: Language,
  options: SitePackOptions,
): SitePack {
  const beside = { caretaker: null, trip: null, way: [], detail: null, measuredBy: null, measuredOn: null };
  const loads = kitSaid(lines, carried, language);
  return sitePack(contentOf({ ...beside, site, report, programme, loads }, language), language, options);
}

/** How a kit is carried: by what, of which catalogue, and what stays apart. */
export interface KitCarried {
  readonly parts: readonly PartFacts[];
  /** Null: nobody states one, and all is one list. */
  readonly carrier: Carrier | null;
  readonly keptApart: readonly PartsApart[];
}

/**
 * The kit of a site as a pack tells it, load by load.
 *
 * @param lines - its parts and how many of each [count]
 * @param carried - by what it is carried
 * @param language - of the pack
 * @returns loads; none where nothing is to be brought
 * @definition ours: docs/methods/paper.md
 */
export function kitSaid(
  lines: readonly CarriedLine[],
  { parts, carrier, keptApart }: KitCarried,
  language: Language,
): readonly PackLoad[] {
  const pieces = piecesOf(lines, parts);
  if (pieces.length === 0) return [];
  const by = carrier ?? noCarrier(language);
  return loadsSaid({ carrier: by, found: loadsOf(pieces, by, keptApart), parts }, language);
}

/** Where nobody states a carrier, all is one list. */
function noCarrier({ say }: Language): Carrier {
  return {
    ...{ carrierId: '-', name: say('pack.no_carrier'), mode: 'truck', limit_kg: Number.MAX_SAFE_INTEGER },
    ...{ limit_L: null, longest_m: null, stowage_fraction: 1, carriers_count: 1, freeboard_cm: null },
    freeboardEmpty_cm: null,
    length_m: null,
    ...{ leastFreeboard_cm: null, limitSetBy: null, limitSetOn: null },
  };
}
