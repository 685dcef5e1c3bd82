import type {
  DayIndex,
  GaugeFinding,
  Problem,
  ProgrammeFacts,
  SiteDesign,
  SiteFacts,
  StorageSeries,
} from './kernel/index.ts';
import { tankSizes } from './parts/index.ts';
import { type Market, marketOn, type SiteRemedies, siteRemedies } from './remedies/index.ts';
import { designSite, type Programme, siteProblems, siteSeries } from './site.ts';
import { judgedRain, rainRecord } from './water/rain/index.ts';

/** A programme ready to be judged: its gauges checked once, and what all sites share. */
export interface ReadyProgramme extends Programme {
  readonly gauges: ReadonlyMap<string, GaugeFinding>;
  /** What can be bought, at the prices of one day. */
  readonly market: Market;
}

/**
 * What does each gauge come to? Checks every record once, for all the sites that use it.
 *
 * @param facts - the programme
 * @returns by gaugeId: rain ready for the balance [mm], or null with the blockers that say why, and every problem found
 * @definition ours: docs/methods/rain.md
 */
export function readyGauges(facts: Pick<ProgrammeFacts, 'gauges' | 'settings'>): ReadonlyMap<string, GaugeFinding> {
  const found = new Map<string, GaugeFinding>();
  for (const gauge of facts.gauges) {
    const { gaugeId, name } = gauge;
    const record = rainRecord(gauge);
    const rain = record.ok ? judgedRain(record.value, facts.settings) : null;
    found.set(gaugeId, {
      gaugeId,
      name,
      rain: rain?.ok ? rain.value : null,
      problems: [...record.problems, ...(rain?.problems ?? [])],
    });
  }
  return found;
}

/**
 * Makes a programme ready: gauges checked, the catalogue's tanks in order of size, empty stores.
 *
 * @param facts - the programme
 * @param pricesOn - the day whose prices count [day]; null: the latest there is a price of
 * @returns what every site needs: gauges with their rain [mm], catalogue of tanks [L], settings
 * @definition ours
 */
export function readyProgramme(facts: ProgrammeFacts, pricesOn: DayIndex | null = null): ReadyProgramme {
  return {
    settings: facts.settings,
    catalogue: tankSizes(facts.parts),
    gauges: readyGauges(facts),
    market: marketOn(facts.parts, facts.prices, pricesOn),
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
 * What happens in one site's tank, day by day?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready
 * @returns daily series [mm, L], or null where the site is `unknown`
 * @definition ours
 */
export function seriesOf(site: SiteFacts, ready: ReadyProgramme): StorageSeries | null {
  return siteSeries(site, gaugeOf(site, ready), ready);
}

/**
 * What would mend one site that is short or tight?
 *
 * @param site - the site's facts
 * @param ready - the programme, ready
 * @param design - the site's design, where it is known already
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

function gaugeOf(site: SiteFacts, ready: ReadyProgramme): GaugeFinding | undefined {
  return site.gaugeId === null ? undefined : ready.gauges.get(site.gaugeId);
}
