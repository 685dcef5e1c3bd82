import {
  backwashShare_fraction,
  type DayIndex,
  type DesignSettings,
  type DesignStorm,
  type DrainageFinding,
  engineProblem,
  type HeadFinding,
  type Judged,
  type PartFacts,
  type Place,
  type Problem,
  type RainByIntensity,
  roofPlanArea,
  type SafetyFinding,
  type SettlingFinding,
  type SiteFacts,
  type SourceDaysOfBody,
  type StandFinding,
  type StandGate,
  type Station,
  type StationVerdict,
  type StormTold,
  type TreatmentFinding,
  unusableFigures,
  type WorkingLine,
  worstVerdict,
} from './kernel/index.ts';
import { siteUntilToday } from './siteUntilToday.ts';
import { boilingPoint_C, chlorineFinding } from './water/chlorine/index.ts';
import { drainageFinding, stormFlows_L_per_s } from './water/drainage/index.ts';
import { headFindings } from './water/head/index.ts';
import { firstFlushFindings } from './water/roof/index.ts';
import { type SafetyGiven, safetyFinding, safetyInDoubt } from './water/safety/index.ts';
import { settlingFindings } from './water/settling/index.ts';
import { standFindings, standGate } from './water/stand/index.ts';
import { shareOverCapacity_fraction } from './water/storm/index.ts';
import { treatmentFindings, unitHead_m } from './water/treatment/index.ts';
import { waterTestsFinding } from './water/waterTests/index.ts';

/** What is known of a site beside its facts. */
export interface StationsGiven {
  readonly settings: DesignSettings;
  /** The catalogue. */
  readonly parts: readonly PartFacts[];
  readonly storm: DesignStorm | null;
  /** What is said of the storm, where a station is judged by it; null where there is no gauge. */
  readonly stormTold: StormTold | null;
  /** How rain falls there by intensity; null where no short intervals tell. */
  readonly rainByIntensity: RainByIntensity | null;
  /** What the day that asks for most asks of each body of water, by its first tank; empty where that is not known. */
  readonly demandHighest_L_per_day: ReadonlyMap<string, number>;
  /** On how many days each body of water leaves people to the second source; null where the balance is not known. */
  readonly sourceDays: readonly SourceDaysOfBody[] | null;
  /** The day it is asked on; null where that is not known. */
  readonly today: DayIndex | null;
}

/** What the stations found that no day of rain is run for. */
export interface OtherStations {
  readonly drainage: DrainageFinding | null;
  readonly settling: readonly SettlingFinding[];
  readonly head: readonly HeadFinding[];
  readonly stands: readonly StandFinding[];
  readonly treatment: readonly TreatmentFinding[];
  readonly safety: SafetyFinding | null;
  readonly standGate: StandGate;
  readonly verdicts: Readonly<Record<Exclude<Station, 'storage'>, StationVerdict>>;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/**
 * Do gutters, settling tank, stand and pipes of this site do their work? Each station for itself: what is missing at one leaves the
 * others judged.
 *
 * @param whole - the site's facts, rows of days to come among them
 * @param given - settings, catalogue, the storm [mm/h] and what is asked of each body of water [L/day]
 * @returns findings and verdicts of every station but storage, with their problems and working
 * @definition ours: docs/decisions/0170-stations-without-days.md
 */
export function otherStations(whole: SiteFacts, given: StationsGiven): OtherStations {
  const { site, problems: datedAhead } = siteUntilToday(whole, given.today);
  const { settings, parts, storm, demandHighest_L_per_day, today } = given;
  const drainage = drainageOf(site, given);
  const flows = stormFlows_L_per_s({ site, storm, settings });
  const settling = settlingFindings({
    site,
    stormFlow_L_per_s: flows,
    demandHighest_L_per_day,
    gutteredArea_m2: gutteredAreas_m2(site),
    settings,
  });
  const stand = standFindings({ site, settings, today });
  const head = headFindings({ site, parts, settings: withUnitHead(site, settings) });
  const givenUnit = {
    site,
    demandHighest_L_per_day: askedByPeople_L_per_day(site, demandHighest_L_per_day),
    gravityHead_m: gravityHead_m(head.finding),
  };
  const treatment = treatmentFindings({ ...givenUnit, settings });
  const tested = () => treatmentFindings({ ...givenUnit, settings: withTestsRead(settings) }).finding ?? [];
  const safety = safetyOf(site, settings, treatment.finding ?? tested(), given.sourceDays, today);
  const ofStorm = drainage.finding || settling.finding ? ofStormTold(given) : { problems: [], working: [] };
  const stands = (of: Beside, verdict: StationVerdict) => verdictWithDoubts(of, verdict, site, settings);
  return {
    drainage: drainage.finding,
    settling: settling.finding ?? [],
    head: head.finding ?? [],
    stands: stand.finding ?? [],
    treatment: treatment.finding ?? [],
    safety: safety.finding,
    standGate: standGateOf(site, today),
    verdicts: {
      roof: 'notJudged',
      gutter: stands('drainage', drainage.finding?.verdict ?? 'notJudged'),
      settling: stands('settling', worstOf(settling.finding)),
      stand: stands('stand', worstOf(stand.finding)),
      treatmentUnit: stands('treatment', worstOf(treatment.finding)),
      tap: stands('head', worstOf(head.finding)),
      cup: cupOf(site, settings, safety.finding),
    },
    problems: [
      ...doubtsBeside(site),
      ...datedAhead,
      ...[ofStorm, drainage, settling, stand, head, treatment, safety].flatMap(({ problems }) => problems),
    ],
    working: [ofStorm, drainage, settling, stand, head, treatment, safety].flatMap(({ working }) => working),
  };
}

/** What a treatment unit takes of the head is that of its own cartridges, where they are known. */
export function withUnitHead(site: SiteFacts, settings: DesignSettings): DesignSettings {
  const own_m = unitHead_m(site, settings);
  return own_m === null ? settings : { ...settings, unitHead_m: own_m };
}

/** What people ask of all bodies of water on the day that asks for most: without what goes back through the treatment unit, which it adds itself. */
export function askedByPeople_L_per_day({ treatment }: SiteFacts, byTank: ReadonlyMap<string, number>): number | null {
  if (byTank.size === 0) return null;
  const asked = [...byTank.values()].reduce((sum, litres) => sum + litres, 0);
  return asked / (1 + backwashShare_fraction(treatment.units));
}

/** The least head that is left across the unit by gravity, where the way to the taps was measured. */
export function gravityHead_m(ways: readonly Pick<HeadFinding, 'headLeft_m' | 'lossInUnit_m'>[] | null): number | null {
  const heads = (ways ?? []).map(({ headLeft_m, lossInUnit_m }) =>
    headLeft_m === null || lossInUnit_m === null ? null : headLeft_m + lossInUnit_m,
  );
  return heads.length === 0 || heads.includes(null) ? null : Math.min(...heads.map((head) => head!));
}

/** Whether a unit keeps up may be left unjudged; what its tests with air showed of its membranes is known all the same. */
export function withTestsRead(settings: DesignSettings): DesignSettings {
  return settings.judgeTreatment === 'never' ? { ...settings, judgeTreatment: 'whereMeasured' } : settings;
}

/** Samples, chlorine, barriers and risks. */
export function safetyOf(
  site: SiteFacts,
  settings: DesignSettings,
  treatment: readonly TreatmentFinding[],
  sourceDays: readonly SourceDaysOfBody[] | null,
  today: DayIndex | null,
): Judged<SafetyFinding> {
  return withSamples(site, settings, (known) => safetyFinding({ ...known, treatment, sourceDays, today }));
}

/**
 * What is said of drinking the water of a site of which a row could not be used? Its samples speak for themselves.
 *
 * @param whole - the site's facts, rows of days to come among them
 * @param programme - the settings, and the day it is asked on
 * @returns the finding, and the verdict of the cup
 * @definition ours: docs/decisions/0241-samples-speak-alone.md
 */
export function cupInDoubt(
  whole: SiteFacts,
  { settings, today = null }: { readonly settings: DesignSettings; readonly today?: DayIndex | null },
): Pick<OtherStations, 'safety' | 'problems' | 'working'> & {
  readonly verdicts: Pick<OtherStations['verdicts'], 'cup'>;
} {
  const { site, problems: datedAhead } = siteUntilToday(whole, today);
  const withheldBy = withheldByOf(whole);
  const found = withSamples(site, settings, (known) =>
    safetyInDoubt({ ...known, treatment: [], sourceDays: null, today }, withheldBy),
  );
  const ofSamples = datedAhead.filter(
    ({ place }) => place.file === 'waterTests.csv' || place.file === 'inspections.csv',
  );
  return {
    safety: found.finding,
    verdicts: { cup: found.finding?.verdict ?? 'notJudged' },
    problems: found.finding === null ? [] : [...ofSamples, ...found.problems],
    working: found.working,
  };
}

/** Rows and figures of a whole site that could not be used. */
export function withheldByOf(site: SiteFacts): readonly Place[] {
  return [...site.doubts, ...unusableFigures(site).map(({ place }) => place)];
}

/** What samples, chlorine and the height say by themselves, and what is judged of them. */
function withSamples(
  site: SiteFacts,
  settings: DesignSettings,
  judge: (
    known: Pick<SafetyGiven, 'site' | 'settings' | 'waterTests' | 'chlorine' | 'boilsAt_C'>,
  ) => Judged<SafetyFinding>,
): Judged<SafetyFinding> {
  const waterTests = waterTestsFinding(site);
  const chlorine = chlorineFinding(site, settings);
  const { altitude_m } = site.safety;
  const boilsAt_C = altitude_m === null ? null : boilingPoint_C(altitude_m);
  const found = judge({
    ...{ site, boilsAt_C, settings },
    waterTests: waterTests.finding,
    chlorine: chlorine.finding,
  });
  if (found.finding === null) return found;
  return {
    finding: found.finding,
    problems: [...waterTests.problems, ...chlorine.problems, ...found.problems],
    working: [...waterTests.working, ...chlorine.working, ...found.working],
  };
}

/** Water is not called fit to drink while what is known of it or of the treatment unit could not be read. Germs that were found were found, whatever else is in doubt. */
export function cupOf(
  site: SiteFacts,
  settings: DesignSettings,
  safety: Pick<SafetyFinding, 'verdict' | 'reasons'> | null,
): StationVerdict {
  if (safety?.reasons.includes('found')) return 'short';
  const verdict = verdictWithDoubts('safety', safety?.verdict ?? 'notJudged', site, settings);
  const isUnread = site.doubtsBeside.treatment.length > 0;
  return verdict !== 'notJudged' && settings.judgeSafety !== 'never' && isUnread ? 'unknown' : verdict;
}

/** What was measured and could not be read was measured: a station in doubt is unknown, and not left out. */
export function verdictWithDoubts(
  of: Beside,
  verdict: StationVerdict,
  { doubtsBeside }: SiteFacts,
  settings: DesignSettings,
): StationVerdict {
  return doubtsBeside[of].length > 0 && settings[judgedBy[of]] !== 'never' ? 'unknown' : verdict;
}

/** Share of the rain that falls harder than a gutter carries, where short intervals tell. */
function lossOf({ rainByIntensity: rain }: StationsGiven) {
  if (rain === null) return {};
  return { shareOverCapacity: (capacity_mm_per_h: number) => shareOverCapacity_fraction(rain, capacity_mm_per_h) };
}

/** What is said of the storm; that there is none is told by each station that wants one. */
function ofStormTold({ stormTold }: StationsGiven): StormTold {
  const { problems, working } = stormTold ?? { problems: [], working: [] };
  return { problems: problems.filter(({ code }) => code !== 'storm.no_intensity'), working };
}

/** Plan area with a gutter of each roof whose area is known; one of which nobody said is taken whole. */
export function gutteredAreas_m2({ roofs }: SiteFacts): ReadonlyMap<string, number> {
  return new Map(
    roofs.flatMap((roof) => {
      const area_m2 = roofPlanArea(roof);
      return area_m2 === null ? [] : [[roof.roofId, area_m2 * (roof.gutteredFraction ?? 1)] as const];
    }),
  );
}

/**
 * May the tanks of this site be filled and handed over, as far as their stands go? Known whatever else is in doubt.
 *
 * @param site - the site's facts
 * @param today - the day it is asked on; null where that is not known
 * @returns the gate; `closed` too where the height of a stand could not be read
 * @definition ours: docs/decisions/0185-the-gate-of-a-stand.md
 */
export function standGateOf(site: SiteFacts, today: DayIndex | null): StandGate {
  const gate = standGate(site.tanks, today);
  const isUnread = site.doubtsBeside.stand.some(({ column }) => column === 'standHeight_m');
  return gate === 'notNeeded' && isUnread ? 'closed' : gate;
}

/** Gutters and pipes in the storm, and beside them what the first-flush chambers do. */
function drainageOf(site: SiteFacts, given: StationsGiven): Judged<DrainageFinding> {
  const { settings, parts, storm } = given;
  const firstFlush = firstFlushFindings({ site, settings });
  const found = drainageFinding({
    site,
    storm,
    parts,
    settings,
    firstFlush: firstFlush.finding ?? [],
    ...lossOf(given),
  });
  if (found.finding === null) return found;
  return {
    finding: found.finding,
    problems: [...found.problems, ...firstFlush.problems],
    working: [...found.working, ...firstFlush.working],
  };
}

type Beside = keyof SiteFacts['doubtsBeside'];

/** The setting that says where each is judged. */
const judgedBy = {
  drainage: 'judgeDrainage',
  settling: 'judgeSettling',
  stand: 'judgeStand',
  head: 'judgeHead',
  treatment: 'judgeTreatment',
  safety: 'judgeSafety',
} as const satisfies Record<Beside, keyof DesignSettings>;

/** Rows and cells that one station alone is judged by and that could not be used. */
function doubtsBeside({ siteId, doubtsBeside: by }: SiteFacts): readonly Problem[] {
  return (Object.keys(by) as Beside[]).flatMap((of) => {
    const [first] = by[of];
    if (first === undefined) return [];
    return [engineProblem('site.station_in_doubt', { ...first, siteId }, { station: of, count: by[of].length })];
  });
}

/** The worst of a station's findings; `notJudged` where there is none. */
export function worstOf(findings: readonly { readonly verdict: StationVerdict }[] | null): StationVerdict {
  return findings === null || findings.length === 0
    ? 'notJudged'
    : worstVerdict(findings.map(({ verdict }) => verdict));
}
