import type {
  DayIndex,
  GaugeFinding,
  Judged,
  Problem,
  ProgrammeFacts,
  SiteDesign,
  SiteFacts,
  StorageSeries,
  WearFinding,
} from './kernel/index.ts';
import { tankSizes } from './parts/index.ts';
import { type Market, marketOn, type SiteRemedies, siteRemedies } from './remedies/index.ts';
import { designSite, type Programme, siteInFull, siteProblems, siteSeries } from './site.ts';
import { gaugeOf, type ReadyRain, readyRain } from './siteRain.ts';

import { siteWear } from './siteWear.ts';

export { type GaugesOfSite, gaugesOfSite, type ReadyRain, rainUnder, readyGauges } from './siteRain.ts';

/** A programme ready to be judged: its gauges checked once, and what all sites share. */
export interface ReadyProgramme extends Programme, ReadyRain {
  /** What can be bought, at the prices of one day. */
  readonly market: Market;
}

/** What of a programme is to be made ready. */
export interface ReadyWanted {
  /** The day whose prices count; null or left out: the latest there is a price of. */
  readonly pricesOn?: DayIndex | null;
  /** The day it is asked on: a stand signed for on a later day is not signed for yet. Null or left out: not known. */
  readonly today?: DayIndex | null;
  /** Ids of the gauges its sites use, where not all are wanted; the others still speak as neighbours. */
  readonly gauges?: ReadonlySet<string>;
}

/**
 * Makes a programme ready: gauges checked, the catalogue's tanks in order of size, empty stores.
 *
 * @param facts - the programme: rain [mm], sizes [m, L], prices and costs [currency]
 * @param wanted - the day of the prices and the gauges, where they are not all
 * @returns what every site needs: gauges with their rain [mm], catalogue of tanks [L], settings, market
 * @definition ours
 */
export function readyProgramme(facts: ProgrammeFacts, wanted: ReadyWanted = {}): ReadyProgramme {
  return {
    ...readyRain(facts, wanted.gauges),
    catalogue: tankSizes(facts.parts),
    parts: facts.parts,
    today: wanted.today ?? null,
    market: marketOn(facts.parts, facts.prices, wanted.pricesOn ?? null, { settings: facts.settings, kit: facts.kit }),
    yields: new WeakMap(),
    drawn: new Map(),
  };
}

/**
 * Which verdict does every site get? One site at a time, in the order of the table, so that a large programme needs no more
 * memory than a small one.
 *
 * @param sites - the sites' facts
 * @param ready - the programme, ready
 * @returns one design a site, as each is done
 * @law the order of sites changes no design
 * @definition ours
 */
export function* designSites(sites: readonly SiteFacts[], ready: ReadyProgramme): Generator<SiteDesign, void> {
  for (const site of sites) yield designSite(site, gaugeOf(site, ready), ready);
}

/** One site as it was judged: its design, and of its problems those of its own facts. */
export interface JudgedSite {
  readonly design: SiteDesign;
  readonly ownProblems: readonly Problem[];
}

/**
 * Which verdict does every site get, and what is missing or assumed in its own facts? `designSites` and `problemsOf` in one, each station judged
 * once.
 *
 * @param sites - the sites' facts
 * @param ready - the programme, ready
 * @returns for each site, as it is done, its design and the problems of its own facts
 * @law the designs are those of `designSites`, the problems those of `problemsOf`
 * @definition ours
 */
export function* judgedSites(sites: readonly SiteFacts[], ready: ReadyProgramme): Generator<JudgedSite, void> {
  for (const site of sites) {
    const { design, ownProblems } = siteInFull(site, gaugeOf(site, ready), ready);
    yield { design, ownProblems };
  }
}

/**
 * What is missing or assumed in one site's own facts, before any day is run?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready
 * @returns problems of the site that no table's row and no gauge tells already
 * @definition ours
 */
export function problemsOf(site: SiteFacts, ready: ReadyProgramme): readonly Problem[] {
  return siteProblems(site, gaugeOf(site, ready), ready);
}

/**
 * What happens in one site's tanks, day by day?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready
 * @returns daily series [mm, L] of each body of water; none where the site is `unknown`
 * @definition ours
 */
export function seriesOf(site: SiteFacts, ready: ReadyProgramme): readonly StorageSeries[] {
  return siteSeries(site, gaugeOf(site, ready), ready);
}

/**
 * What would mend one site that is short or tight?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready: rain [mm], tanks [L], prices [currency]
 * @param design - the site's design [L], [day/year], where it is known already
 * @returns remedies in their order [L, day/year, year, currency]; null where the site is neither short nor tight
 * @definition ours: docs/methods/remedies.md
 */
export function remediesOf(
  site: SiteFacts,
  ready: ReadyProgramme,
  design: SiteDesign = designSite(site, gaugeOf(site, ready), ready),
): SiteRemedies | null {
  return siteRemedies(design, { site, gauge: gaugeOf(site, ready), programme: ready, market: ready.market });
}

/**
 * When are the cartridges of one site due?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready: rain [mm], settings, the day it is asked on
 * @param design - the site's design [L, kPa], where it is known already
 * @returns a finding for each unit in use: its last day [day] and litres [L] as ranges; null where the site has none
 * @definition ours: docs/methods/wear.md
 */
export function wearOf(site: SiteFacts, ready: ReadyProgramme, design?: SiteDesign): Judged<readonly WearFinding[]> {
  return siteWear(site, gaugeOf(site, ready), ready, design);
}

/**
 * Which rain does one site rest on?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready
 * @returns the gauge given for it, or the gauges within reach as one [mm]; undefined where there is none
 * @definition ours: docs/methods/rain.md
 */
export function rainOfSite(site: SiteFacts, ready: ReadyProgramme): GaugeFinding | undefined {
  return gaugeOf(site, ready);
}
