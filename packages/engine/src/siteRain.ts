import {
  type Checked,
  type DesignSettings,
  engineProblem,
  type GaugeFacts,
  type GaugeFinding,
  type JudgedRain,
  type Problem,
  type ProgrammeFacts,
  type RainRecord,
  type Scenario,
  type SiteFacts,
} from './kernel/index.ts';
import { type GaugeStorm, gaugeStorms, stormHere } from './siteStorm.ts';
import {
  doubleMass,
  doubleMassProblems,
  type GaugeRecord,
  judgedMadeRain,
  judgedRain,
  type MonthTotal,
  monthlyNormals,
  monthsFromNormals,
  monthTotals,
  neighboursOf,
  normalsBesideRecord,
  normalsProblems,
  rainByDistance,
  rainRecord,
  scenarioRain,
  twelveNormals,
} from './water/rain/index.ts';

/** The rain of a programme: its gauges checked once, and their records for the sites without a gauge of their own. */
export interface ReadyRain {
  readonly settings: DesignSettings;
  /** By gaugeId; those that were wanted. */
  readonly gauges: ReadonlyMap<string, GaugeFinding>;
  /** The same before any scenario. */
  readonly gaugesAsTheyWere: ReadonlyMap<string, GaugeFinding>;
  readonly allGauges: readonly GaugeFacts[];
  /** What was measured, of every gauge that has a record. */
  readonly records: readonly GaugeRecord[];
  /** The storm of every gauge by its own rows, by gaugeId. */
  readonly storms: ReadonlyMap<string, GaugeStorm>;
  /** The question the rain is put to; null: as it was. */
  readonly scenario: Scenario | null;
  /** The rain of the site asked for last, so that one site is worked out once and a programme needs no more memory than a site. */
  readonly lastSite: { site: SiteFacts | null; gauge: GaugeFinding | undefined };
}

/** A gauge, its record or why there is none. */
interface GaugeRead {
  readonly gauge: GaugeFacts;
  readonly record: Checked<RainRecord>;
}

type Totals = (record: RainRecord) => readonly MonthTotal[];

/**
 * What rain has the programme? Checks every record once, for all the sites that use it, and holds it against the gauges near by.
 *
 * @param facts - the programme's gauges and settings
 * @param only - ids of the gauges wanted; the others still speak as neighbours. All where it is not given
 * @returns the gauges with their rain [mm], and what was measured at each
 * @law a gauge's finding is the same whichever gauges are wanted, and whatever their order
 * @definition ours: docs/methods/rain.md
 */
export function readyRain(facts: Pick<ProgrammeFacts, 'gauges' | 'settings'>, only?: ReadonlySet<string>): ReadyRain {
  const { gauges, settings } = facts;
  const all = gauges.map((gauge): GaugeRead => ({ gauge, record: rainRecord(gauge) }));
  const records = all.flatMap(({ gauge, record }): GaugeRecord[] =>
    record.ok ? [{ gauge, record: record.value }] : [],
  );
  const totals = new Map<RainRecord, readonly MonthTotal[]>();
  const totalsOf: Totals = (record) => {
    const found = totals.get(record) ?? monthTotals(record);
    totals.set(record, found);
    return found;
  };
  const wanted = all.filter(({ gauge }) => only === undefined || only.has(gauge.gaugeId));
  const storms = gaugeStorms(gauges, new Map(records.map(({ record }) => [record.gaugeId, record])), settings);
  const found = wanted.map((one) => {
    const finding = gaugeFinding(one, records, settings, totalsOf);
    return [finding.gaugeId, withStorm(finding, one.gauge, gauges, storms, settings)] as const;
  });
  const findings = new Map(found);
  return {
    settings,
    gauges: findings,
    gaugesAsTheyWere: findings,
    allGauges: gauges,
    records,
    storms,
    scenario: null,
    lastSite: { site: null, gauge: undefined },
  };
}

/**
 * What does each gauge come to?
 *
 * @param facts - the programme's gauges and settings
 * @param only - ids of the gauges wanted; all where it is not given
 * @returns by gaugeId: rain ready for the balance [mm], or null with the blockers that say why, and every problem found
 * @law a gauge's finding is the same whichever gauges are wanted, and whatever their order
 * @definition ours: docs/methods/rain.md
 */
export function readyGauges(
  facts: Pick<ProgrammeFacts, 'gauges' | 'settings'>,
  only?: ReadonlySet<string>,
): ReadonlyMap<string, GaugeFinding> {
  return readyRain(facts, only).gauges;
}

/** The gauge with its storm, and with what is wrong in the rows it was to come from. */
function withStorm(
  finding: GaugeFinding,
  gauge: GaugeFacts,
  gauges: readonly GaugeFacts[],
  storms: ReadonlyMap<string, GaugeStorm>,
  settings: DesignSettings,
): GaugeFinding {
  const here = stormHere(gauge, gauges, storms, settings);
  const ofRows = storms.get(gauge.gaugeId)?.ofRows ?? [];
  return { ...finding, problems: [...finding.problems, ...ofRows], ...here };
}

function gaugeFinding(read: GaugeRead, known: readonly GaugeRecord[], settings: DesignSettings, totalsOf: Totals) {
  const { gauge, record } = read;
  const measured = measuredFinding(read, known, settings, totalsOf);
  if (gauge.normals.length === 0) return measured;
  if (!measured.rain || !record.ok) return madeFinding(gauge, measured, settings);
  return {
    ...measured,
    problems: [...measured.problems, ...normalsBesideRecord(gauge, monthlyNormals(record.value))],
  };
}

const noStorm = { storm: null, stormTold: { problems: [], working: [] }, rainByIntensity: null } as const;

/** What the gauge's own record comes to. */
function measuredFinding(
  { gauge, record }: GaugeRead,
  known: readonly GaugeRecord[],
  settings: DesignSettings,
  totalsOf: Totals,
): GaugeFinding {
  const { gaugeId, name } = gauge;
  if (!record.ok) return { gaugeId, name, rain: null, problems: record.problems, byDistance: [], ...noStorm };
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
    byDistance: [],
    ...noStorm,
  };
}

/** Why a gauge has no record that can be judged, where normals may stand in for it. */
const nothingToJudge: readonly string[] = ['rain.none', 'rain.too_short'];

/** Rain made up from normals, where the gauge has no record that can be judged; a record in a wrong unit is to be mended first. */
function madeFinding(gauge: GaugeFacts, measured: GaugeFinding, settings: DesignSettings): GaugeFinding {
  const stops = measured.problems.filter((problem) => problem.severity === 'blocker');
  if (!stops.every(({ code }) => nothingToJudge.includes(code))) return measured;
  const faults = normalsProblems(gauge);
  const months = faults.length > 0 ? null : monthsFromNormals(twelveNormals(gauge));
  if (!months) return { ...measured, problems: [...measured.problems, ...faults] };
  const rain = judgedMadeRain(gauge.gaugeId, months, settings);
  if (!rain.ok) return { ...measured, problems: [...measured.problems, ...rain.problems] };
  const { gaugeId } = gauge;
  const aside = stops.flatMap(({ code, facts, place }) =>
    code === 'rain.too_short' ? [engineProblem('rain.record_set_aside', place, facts)] : [],
  );
  const [first] = gauge.normals;
  const { source, yearFrom, yearTo } = first!;
  const facts = {
    years: settings.madeYears,
    seed: settings.seed,
    source: source ?? '',
    ...(yearFrom === null || yearTo === null ? {} : { yearFrom, yearTo }),
  };
  return {
    ...measured,
    rain: rain.value,
    problems: [
      ...measured.problems.filter((problem) => !stops.includes(problem)),
      ...aside,
      engineProblem('rain.made_up', { file: 'normals.csv', gaugeId }, facts),
      ...rain.problems,
    ],
  };
}

/**
 * The same programme's rain put to a question: the gauges' rain as it would be, the problems as they are.
 *
 * @param ready - the rain as it was
 * @param scenario - the question: shares [fraction] and last years [year]
 * @returns the rain under it [mm]
 * @problem rain.too_short - none of a record's last years can be judged
 * @definition ours: docs/decisions/0087-drier-and-wetter.md
 */
export function rainUnder<R extends ReadyRain>(ready: R, scenario: Scenario): R {
  const under = (finding: GaugeFinding) => findingUnder(finding, scenario, ready.settings.seed);
  const gauges = new Map([...ready.gauges].map(([gaugeId, finding]) => [gaugeId, under(finding)]));
  return { ...ready, gauges, scenario, lastSite: { site: null, gauge: undefined } };
}

function findingUnder(finding: GaugeFinding, scenario: Scenario, seed: number): GaugeFinding {
  if (!finding.rain) return finding;
  const rain = scenarioRain(finding.rain, scenario, seed);
  if (rain) return { ...finding, rain };
  const facts = { wholeYears: scenario.lastYears ?? 0, startMonth: finding.rain.startMonth, judgedYears: 0 };
  const problem = engineProblem('rain.too_short', { gaugeId: finding.gaugeId }, facts);
  return { ...finding, rain: null, problems: [...finding.problems, problem] };
}

/**
 * Which rain falls on a site? That of the gauge given for it; where none is given, that of the gauges within reach.
 *
 * @param site - the site's facts: gaugeId, or its position [deg]
 * @param ready - the programme's rain
 * @returns the gauge's finding, or one made for the site; undefined where the site names no gauge that is known and has no position
 * @problem site.gauge_by_distance - the rain is a mean of gauges within reach, or of one alone
 * @problem site.gauge_too_far - no gauge is within reach
 * @definition ours: docs/decisions/0088-several-gauges-for-one-site.md
 */
export function gaugeOf(site: SiteFacts, ready: ReadyRain): GaugeFinding | undefined {
  if (site.gaugeId !== null) return ready.gauges.get(site.gaugeId);
  const { lastSite } = ready;
  if (lastSite.site !== site) {
    const found = gaugeByDistance(site, ready);
    lastSite.gauge = found && ready.scenario ? findingUnder(found, ready.scenario, ready.settings.seed) : found;
    lastSite.site = site;
  }
  return lastSite.gauge;
}

/** The gauges one site's rain follows from, by id. */
export interface GaugesOfSite {
  /** Those whose readings speak: the site's own and its neighbours, or those within reach. */
  readonly read: ReadonlySet<string>;
  /** Those of which only the place counts: the nearest, where it is beyond reach. */
  readonly placed: ReadonlySet<string>;
  /** Of those, the ones a programme of this site alone is to be made ready for: none where its rain is made by distance. */
  readonly wanted: ReadonlySet<string>;
}

/**
 * Which gauges does one site's rain follow from? With these alone, and the same settings, it gets the same rain as among all.
 *
 * @param site - the site's facts: gaugeId, or its position [deg]
 * @param facts - the programme's gauges, whose readings are not looked at, and its settings
 * @returns ids of gauges; none where the site names no gauge that is known and has no position
 * @law the gauge of a site is the same with these gauges as with all of the programme
 * @definition ours: docs/decisions/0146-facts-of-one-site.md
 */
export function gaugesOfSite(
  site: Pick<SiteFacts, 'gaugeId' | 'latitude_deg' | 'longitude_deg'>,
  facts: { readonly gauges: readonly GaugeRecord['gauge'][]; readonly settings: DesignSettings },
): GaugesOfSite {
  const { gauges, settings } = facts;
  const standIns = gauges.map((gauge) => ({ gauge, record: emptyRecord(gauge.gaugeId) }));
  const ids = (near: ReturnType<typeof neighboursOf>) => near.map(({ record }) => record.gaugeId);
  const none = new Set<string>();
  if (site.gaugeId !== null) {
    const own = gauges.find(({ gaugeId }) => gaugeId === site.gaugeId);
    if (own === undefined) return { read: none, placed: none, wanted: none };
    const wanted = new Set([own.gaugeId]);
    // Its neighbours speak for its gaps, and one within reach may lend its storm.
    const near = [neighboursOf(own, standIns), neighboursOf(own, standIns, settings.gaugeReach_km)];
    return { read: new Set([own.gaugeId, ...near.flatMap(ids)]), placed: none, wanted };
  }
  const every = neighboursOf({ ...site, gaugeId: '' }, standIns, Number.POSITIVE_INFINITY);
  const within = every.filter(({ distance_km }) => distance_km <= settings.gaugeReach_km);
  const isNear = within.length > 0;
  return { read: new Set(ids(within)), placed: new Set(isNear ? [] : ids(every.slice(0, 1))), wanted: none };
}

function gaugeByDistance(site: SiteFacts, ready: ReadyRain): GaugeFinding | undefined {
  const { siteId, latitude_deg, longitude_deg } = site;
  if (latitude_deg === null || longitude_deg === null) return undefined;
  const { gaugeReach_km: reach_km, seed } = ready.settings;
  const here = { gaugeId: '', latitude_deg, longitude_deg };
  const place = { file: 'sites.csv', column: 'gaugeId', siteId };
  const standIns = ready.allGauges.map((gauge) => ({ gauge, record: emptyRecord(gauge.gaugeId) }));
  const every = neighboursOf(here, standIns, Number.POSITIVE_INFINITY);
  const [nearest] = every;
  if (!nearest) return undefined;
  const name = siteId;
  const ofStorm = stormHere({ ...here, gaugeId: null, siteId }, ready.allGauges, ready.storms, ready.settings);
  const none = { gaugeId: '', name, rain: null, byDistance: [], ...ofStorm };
  if (nearest.distance_km > reach_km) {
    const facts = { gaugeId: nearest.record.gaugeId, distance_km: nearest.distance_km, reach_km };
    return { ...none, problems: [engineProblem('site.gauge_too_far', place, facts)] };
  }
  const near = neighboursOf(here, ready.records, reach_km);
  const known = new Set(near.map(({ record }) => record.gaugeId));
  const within = every.filter(({ distance_km }) => distance_km <= reach_km);
  const without = within.flatMap(({ record }) => (known.has(record.gaugeId) ? [] : [record.gaugeId]));
  if (near.length === 0) return nearestAlone(within, ready, place, none);
  const { record, shares } = rainByDistance(`site ${siteId}`, near);
  const rain = judgedRain(record, { ...ready.settings, gapFilling: 'otherYears' });
  const facts = {
    gauges: shares.map(({ gaugeId }) => gaugeId),
    distances_km: shares.map(({ distance_km }) => distance_km.toFixed(1)),
    weights_fraction: shares.map(({ weight_fraction }) => weight_fraction.toFixed(2)),
    without,
    seed,
  };
  const problems = rain.problems.map((problem) => ({ ...problem, place: { siteId, ...dayOf(problem) } }));
  return {
    ...none,
    rain: rain.ok ? named(rain.value, facts.gauges.join(', ')) : null,
    problems: [engineProblem('site.gauge_by_distance', place, facts), ...problems],
    byDistance: shares,
  };
}

/** No gauge within reach has a record: the nearest whose normals gave rain stands alone; else none does, and each says why. */
function nearestAlone(
  within: readonly { readonly record: RainRecord; readonly distance_km: number }[],
  ready: ReadyRain,
  place: Problem['place'],
  none: Omit<GaugeFinding, 'problems'>,
): GaugeFinding {
  const ids = new Set(within.map(({ record }) => record.gaugeId));
  const isReady = within.every(({ record }) => ready.gaugesAsTheyWere.has(record.gaugeId));
  const programme = { gauges: ready.allGauges, settings: ready.settings };
  const findings = isReady ? ready.gaugesAsTheyWere : readyGauges(programme, ids);
  const first = within.find(({ record }) => findings.get(record.gaugeId)?.rain);
  if (!first) {
    const [nearest] = within;
    return { ...none, problems: findings.get(nearest!.record.gaugeId)?.problems ?? [] };
  }
  const { gaugeId } = first.record;
  const found = findings.get(gaugeId)!;
  const without = within.flatMap(({ record }) => (record.gaugeId === gaugeId ? [] : [record.gaugeId]));
  const facts = {
    gauges: [gaugeId],
    distances_km: [first.distance_km.toFixed(1)],
    weights_fraction: ['1.00'],
    without,
  };
  return {
    ...none,
    rain: found.rain,
    problems: [engineProblem('site.gauge_by_distance', place, facts), ...found.problems],
    byDistance: [{ gaugeId, distance_km: first.distance_km, weight_fraction: 1 }],
  };
}

/** Stands for a gauge where only its position is asked. */
function emptyRecord(gaugeId: string): RainRecord {
  return { gaugeId, firstDay: 0, rain_mm: new Float64Array(0), state: new Uint8Array(0) };
}

function named(rain: JudgedRain, gaugeId: string): JudgedRain {
  return { ...rain, record: { ...rain.record, gaugeId } };
}

function dayOf({ place }: Problem): { readonly day?: string } {
  return place.day === undefined ? {} : { day: place.day };
}
