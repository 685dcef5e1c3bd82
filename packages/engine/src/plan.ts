import type {
  Checked,
  DayIndex,
  GaugeFacts,
  GaugeFinding,
  Problem,
  ProgrammeFacts,
  RainRecord,
  SiteDesign,
  SiteFacts,
  StorageSeries,
} from './kernel/index.ts';
import { tankSizes } from './parts/index.ts';
import { type Market, marketOn, type SiteRemedies, siteRemedies } from './remedies/index.ts';
import { designSite, type Programme, siteProblems, siteSeries } from './site.ts';
import {
  doubleMass,
  doubleMassProblems,
  type GaugeRecord,
  judgedRain,
  type MonthTotal,
  monthTotals,
  neighboursOf,
  rainRecord,
} from './water/rain/index.ts';

/** A programme ready to be judged: its gauges checked once, and what all sites share. */
export interface ReadyProgramme extends Programme {
  readonly gauges: ReadonlyMap<string, GaugeFinding>;
  /** What can be bought, at the prices of one day. */
  readonly market: Market;
}

/** What of a programme is to be made ready. */
export interface ReadyWanted {
  /** The day whose prices count; null or left out: the latest there is a price of. */
  readonly pricesOn?: DayIndex | null;
  /** Ids of the gauges its sites use, where not all are wanted; the others still speak as neighbours. */
  readonly gauges?: ReadonlySet<string>;
}

/** A gauge, its record or why there is none. */
interface GaugeRead {
  readonly gauge: GaugeFacts;
  readonly record: Checked<RainRecord>;
}

/**
 * What does each gauge come to? Checks every record once, for all the sites that use it, and holds it against the gauges
 * near by.
 *
 * @param facts - the programme
 * @param only - ids of the gauges wanted; the others still speak as neighbours. All where it is not given
 * @returns by gaugeId: rain ready for the balance [mm], or null with the blockers that say why, and every problem found
 * @law a gauge's finding is the same whichever gauges are wanted, and whatever their order
 * @definition ours: docs/methods/rain.md
 */
export function readyGauges(
  facts: Pick<ProgrammeFacts, 'gauges' | 'settings'>,
  only?: ReadonlySet<string>,
): ReadonlyMap<string, GaugeFinding> {
  const all = facts.gauges.map((gauge): GaugeRead => ({ gauge, record: rainRecord(gauge) }));
  const known = all.flatMap(({ gauge, record }): GaugeRecord[] => (record.ok ? [{ gauge, record: record.value }] : []));
  const totals = new Map<RainRecord, readonly MonthTotal[]>();
  const totalsOf = (record: RainRecord) => {
    const found = totals.get(record) ?? monthTotals(record);
    totals.set(record, found);
    return found;
  };
  const wanted = all.filter(({ gauge }) => only === undefined || only.has(gauge.gaugeId));
  return new Map(wanted.map((one) => [one.gauge.gaugeId, gaugeFinding(one, known, facts.settings, totalsOf)]));
}

function gaugeFinding(
  { gauge, record }: GaugeRead,
  known: readonly GaugeRecord[],
  settings: ProgrammeFacts['settings'],
  totalsOf: (record: RainRecord) => readonly MonthTotal[],
): GaugeFinding {
  const { gaugeId, name } = gauge;
  if (!record.ok) return { gaugeId, name, rain: null, problems: record.problems };
  const neighbours = neighboursOf(gauge, known);
  const rain = judgedRain(record.value, settings, neighbours);
  const mass = doubleMass(
    totalsOf(record.value),
    neighbours.map((one) => totalsOf(one.record)),
  );
  const ids = neighbours.map((one) => one.record.gaugeId);
  return {
    gaugeId,
    name,
    rain: rain.ok ? rain.value : null,
    problems: [...record.problems, ...rain.problems, ...doubleMassProblems(gaugeId, mass, ids)],
  };
}

/**
 * Makes a programme ready: gauges checked, the catalogue's tanks in order of size, empty stores.
 *
 * @param facts - the programme
 * @param wanted - the day of the prices and the gauges, where they are not all
 * @returns what every site needs: gauges with their rain [mm], catalogue of tanks [L], settings, market
 * @definition ours
 */
export function readyProgramme(facts: ProgrammeFacts, wanted: ReadyWanted = {}): ReadyProgramme {
  return {
    settings: facts.settings,
    catalogue: tankSizes(facts.parts),
    gauges: readyGauges(facts, wanted.gauges),
    market: marketOn(facts.parts, facts.prices, wanted.pricesOn ?? null),
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
