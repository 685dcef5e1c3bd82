import {
  type DesignSettings,
  engineProblem,
  type PartFacts,
  type Problem,
  plainWork,
  type RolloutFacts,
  type SiteWork,
  usualInstall_days,
} from './kernel/index.ts';
import { type Piece, pieceBulk_L, pieceLongest_m, piecesOf } from './programme/loads/index.ts';
import type { Job } from './programme/rollout/index.ts';
import { type PlanDays, workWindows } from './programmeRolloutDays.ts';
import type { LeftOutReason, LeftOutSite, RolloutAsked, RolloutSite } from './programmeRolloutFacts.ts';

/** A job before it is known which goods are counted. */
export interface DraftJob extends Omit<Job, 'needs'> {
  /** Where it hangs on the ways. */
  readonly place: string;
  /** Null: none. */
  readonly skill: string | null;
  /** How many of each part it takes [count]. */
  readonly parts: ReadonlyMap<string, number>;
}

/** Sites as jobs, and those that are not planned. */
export interface JobsFound {
  readonly jobs: readonly DraftJob[];
  readonly leftOut: readonly LeftOutSite[];
  readonly problems: readonly Problem[];
}

/** What sites are made jobs with. */
export interface JobMarket extends PlanDays {
  readonly asked: RolloutAsked;
  readonly facts: RolloutFacts;
  readonly settings: DesignSettings;
  readonly parts: readonly PartFacts[];
  readonly areaIds: readonly string[];
  /** Skills of all crews: a bit each. */
  readonly skillIds: readonly string[];
  /** Sites of trips that are under way. */
  readonly underWay: ReadonlySet<string>;
}

/** Nothing is known of by how much. */
export function leftOut(siteId: string, reason: LeftOutReason): LeftOutSite {
  return { siteId, reason, over_kg: null, over_L: null, over_m: null };
}

/** Every site that can be planned as a job; of the others why not. */
export function jobsOf(sites: readonly RolloutSite[], market: JobMarket): JobsFound {
  const { facts } = market;
  const works = new Map(facts.work.map((work) => [work.siteId, work]));
  // Where nobody writes down agreements, none is asked for.
  const areAgreed = facts.work.some(({ agreedOn }) => agreedOn !== null);
  const left: LeftOutSite[] = [];
  const jobs = sites.flatMap((one): readonly DraftJob[] => {
    const { siteId } = one.site;
    const work = works.get(siteId) ?? { siteId, place: siteId, ...plainWork };
    const windows = workWindows(work, market);
    const reason = reasonAgainst(one, work, { ...market, areAgreed, hasWindow: windows.length > 0 });
    if (reason !== null) {
      left.push(leftOut(siteId, reason));
      return [];
    }
    return [jobOf(one, work, windows, market)];
  });
  const planned = new Set(jobs.map(({ siteId }) => siteId));
  const problems = toldOf(
    sites.filter(({ site }) => planned.has(site.siteId)),
    market,
  );
  if (!areAgreed && jobs.length > 0) problems.push(engineProblem('rollout.no_agreements', { file: 'sites.csv' }));
  return { jobs, leftOut: left, problems };
}

function reasonAgainst(
  { site, verdict, people_count, lines }: RolloutSite,
  { agreedOn, skill }: SiteWork,
  market: JobMarket & { readonly areAgreed: boolean; readonly hasWindow: boolean },
): LeftOutReason | null {
  const { asked, settings, skillIds } = market;
  if (site.handOverDay !== null && site.handOverDay <= asked.today) return 'handedOver';
  if (market.underWay.has(site.siteId)) return 'underWay';
  if (asked.siteIds != null && !asked.siteIds.has(site.siteId)) return 'notAsked';
  if (settings.mustHold && (verdict === 'short' || verdict === 'unknown')) return verdict;
  if (people_count === null || !(people_count > 0)) return 'noPeople';
  if (market.areAgreed && agreedOn === null) return 'notAgreed';
  if (!lines.some(({ total_count }) => total_count !== null && total_count > 0)) return 'noKit';
  if (skill !== null && !skillIds.includes(skill)) return 'noSkill';
  return market.hasWindow ? null : 'noWindow';
}

function jobOf(one: RolloutSite, work: SiteWork, windows: Job['windows'], market: JobMarket): DraftJob {
  const { settings, areaIds, skillIds, firstDay, parts } = market;
  const pieces = piecesOf(one.lines, parts);
  const people = one.people_count!;
  const priority_factor = work.priority_factor > 0 ? work.priority_factor : 1;
  return {
    ...{ siteId: one.site.siteId, place: work.place, people, weight: people * priority_factor },
    ...{ install_days: work.install_days ?? usualInstall_days(settings), windows },
    finishBy: work.finishBy === null ? null : work.finishBy - firstDay,
    ...carriedOf(pieces),
    skill: work.skill,
    skills: work.skill === null ? 0 : 2 ** skillIds.indexOf(work.skill),
    area: work.weatherArea === null ? -1 : areaIds.indexOf(work.weatherArea),
    serviceWait_days: waitsOf(one),
    serviceWaits: one.serviceWaits?.byYear ?? null,
    parts: new Map(
      one.lines.flatMap(({ partId, total_count: all }) => (all !== null && all > 0 ? [[partId, all]] : [])),
    ),
  };
}

/** What a kit weighs, the room it takes and its longest piece; what is not known of a piece counts as nothing, and is told. */
function carriedOf(pieces: readonly Piece[]) {
  return {
    kg: pieces.reduce((sum, { mass_kg, count }) => sum + (mass_kg ?? 0) * count, 0),
    litres: pieces.reduce((sum, piece) => sum + (pieceBulk_L(piece) ?? 0) * piece.count, 0),
    longest_m: pieces.reduce((most, piece) => Math.max(most, pieceLongest_m(piece) ?? 0), 0),
  };
}

/** Days on which it would never serve wait as long as the longest of the others; all 0 where nothing is known. */
function waitsOf({ serviceWaits }: RolloutSite): Float64Array {
  if (serviceWaits === null) return new Float64Array(366);
  const { middle_days } = serviceWaits;
  const longest = middle_days.reduce<number>((most, wait) => Math.max(most, wait ?? 0), 0);
  return Float64Array.from(middle_days, (wait) => wait ?? longest);
}

/** What is not sure of the sites that are planned. */
function toldOf(sites: readonly RolloutSite[], { parts }: JobMarket): Problem[] {
  const problems: Problem[] = [];
  const idsOf = (is: (one: RolloutSite) => boolean) => sites.filter(is).map(({ site }) => site.siteId);
  const tell = (
    code: 'rollout.tight' | 'rollout.short_planned' | 'rollout.kit_in_part' | 'rollout.service_unknown',
    ids: readonly string[],
  ) => {
    if (ids.length > 0) problems.push(engineProblem(code, {}, { sites: ids, count: ids.length }));
  };
  tell(
    'rollout.tight',
    idsOf(({ verdict }) => verdict === 'tight'),
  );
  tell(
    'rollout.short_planned',
    idsOf(({ verdict }) => verdict === 'short' || verdict === 'unknown'),
  );
  tell(
    'rollout.kit_in_part',
    idsOf(({ lines }) => lines.some(({ isAtLeast }) => isAtLeast)),
  );
  tell(
    'rollout.service_unknown',
    idsOf(({ serviceWaits }) => (serviceWaits?.byYear ?? null) === null),
  );
  const unweighedOf = ({ lines }: RolloutSite) => piecesOf(lines, parts).filter(({ mass_kg }) => mass_kg === null);
  const unweighed = [...new Set(sites.flatMap(unweighedOf).map(({ name }) => name))].sort();
  if (unweighed.length > 0)
    problems.push(
      engineProblem(
        'rollout.mass_unknown',
        { file: 'parts.csv' },
        { parts: unweighed, count: unweighed.length, sites: idsOf((one) => unweighedOf(one).length > 0) },
      ),
    );
  return problems;
}
