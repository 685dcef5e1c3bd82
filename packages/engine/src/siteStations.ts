import {
  type DesignSettings,
  type DesignStorm,
  type DrainageFinding,
  engineProblem,
  type HeadFinding,
  type PartFacts,
  type Problem,
  type SettlingFinding,
  type SiteFacts,
  type StandFinding,
  type StandGate,
  type Station,
  type StationVerdict,
  type StormTold,
  type WorkingLine,
  worstVerdict,
} from './kernel/index.ts';
import { drainageFinding, stormFlows_L_per_s } from './water/drainage/index.ts';
import { headFindings } from './water/head/index.ts';
import { roofPlanArea } from './water/roof/index.ts';
import { settlingFindings } from './water/settling/index.ts';
import { standFindings } from './water/stand/index.ts';

/** What is known of a site beside its facts. */
export interface StationsGiven {
  readonly settings: DesignSettings;
  /** The catalogue. */
  readonly parts: readonly PartFacts[];
  readonly storm: DesignStorm | null;
  /** What is said of the storm, where a station is judged by it. */
  readonly stormTold: StormTold;
  /** What the day that asks for most asks of each body of water, by its first tank; empty where that is not known. */
  readonly demandHighest_L_per_day: ReadonlyMap<string, number>;
}

/** What the stations found that no day of rain is run for. */
export interface OtherStations {
  readonly drainage: DrainageFinding | null;
  readonly settling: readonly SettlingFinding[];
  readonly head: readonly HeadFinding[];
  readonly stands: readonly StandFinding[];
  readonly standGate: StandGate;
  readonly verdicts: Readonly<Record<Exclude<Station, 'storage'>, StationVerdict>>;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/**
 * Do gutters, settling tank, stand and pipes of this site do their work? Each station for itself: what is missing at one leaves the
 * others judged.
 *
 * @param site - the site's facts
 * @param given - settings, catalogue, the storm [mm/h] and what is asked of each body of water [L/day]
 * @returns findings and verdicts of every station but storage, with their problems and working
 * @definition ours: docs/decisions/0170-stations-without-days.md
 */
export function otherStations(site: SiteFacts, given: StationsGiven): OtherStations {
  const { settings, parts, storm } = given;
  const drainage = drainageFinding({ site, storm, parts, settings });
  const flows = stormFlows_L_per_s({ site, storm, settings });
  const { demandHighest_L_per_day } = given;
  const settling = settlingFindings({
    site,
    stormFlow_L_per_s: flows,
    demandHighest_L_per_day,
    gutteredArea_m2: gutteredAreas_m2(site),
    settings,
  });
  const stand = standFindings({ site, settings });
  const head = headFindings({ site, parts, settings });
  const inDoubt = doubtsBeside(site);
  const ofStorm = drainage.finding || settling.finding ? given.stormTold : { problems: [], working: [] };
  const stands = (of: Beside, verdict: StationVerdict) =>
    site.doubtsBeside[of].length > 0 && verdict !== 'notJudged' ? 'unknown' : verdict;
  return {
    drainage: drainage.finding,
    settling: settling.finding ?? [],
    head: head.finding ?? [],
    stands: stand.finding ?? [],
    standGate: stand.gate,
    verdicts: {
      roof: 'notJudged',
      gutter: stands('drainage', drainage.finding?.verdict ?? 'notJudged'),
      settling: stands('settling', worstOf(settling.finding)),
      stand: stands('stand', worstOf(stand.finding)),
      treatmentUnit: 'notJudged',
      tap: stands('head', worstOf(head.finding)),
    },
    problems: [...inDoubt, ...[ofStorm, drainage, settling, stand, head].flatMap(({ problems }) => problems)],
    working: [ofStorm, drainage, settling, stand, head].flatMap(({ working }) => working),
  };
}

/** Plan area with a gutter of each roof whose area is known; one of which nobody said is taken whole. */
function gutteredAreas_m2({ roofs }: SiteFacts): ReadonlyMap<string, number> {
  return new Map(
    roofs.flatMap((roof) => {
      const area_m2 = roofPlanArea(roof);
      return area_m2 === null ? [] : [[roof.roofId, area_m2 * (roof.gutteredFraction ?? 1)] as const];
    }),
  );
}

type Beside = keyof SiteFacts['doubtsBeside'];

/** Rows and cells that one station alone is judged by and that could not be used. */
function doubtsBeside({ siteId, doubtsBeside: by }: SiteFacts): readonly Problem[] {
  return (Object.keys(by) as Beside[]).flatMap((of) => {
    const [first] = by[of];
    if (first === undefined) return [];
    return [engineProblem('site.station_in_doubt', { ...first, siteId }, { station: of, count: by[of].length })];
  });
}

function worstOf(findings: readonly { readonly verdict: StationVerdict }[] | null): StationVerdict {
  return findings === null || findings.length === 0
    ? 'notJudged'
    : worstVerdict(findings.map(({ verdict }) => verdict));
}
