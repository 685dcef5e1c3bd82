import {
  type DayIndex,
  engineProblem,
  type KitRule,
  type Problem,
  type SiteFacts,
  type WorkingLine,
} from '../../kernel/index.ts';
import { countedDesign } from './countedDesign.ts';
import { type AllCounted, countedFor, idsOf } from './countedFor.ts';
import { jointsOf } from './jointsOf.ts';
import type { CountedDesign, CountedFor, Cutting, KitMarket } from './kitFacts.ts';
import { type KitLine, kitLine } from './kitLine.ts';
import { idsFrom, isCut, isLength, knownOf } from './kitRuns.ts';
import { compareText, type ReadyRules, readyRules } from './readyRules.ts';
import { thingsWithoutPart } from './thingsWithoutPart.ts';

/** All parts one site needs. */
export interface SiteKit {
  readonly siteId: string;
  /** Was it handed over, so that nothing is wanted? */
  readonly isBuilt: boolean;
  /** By partId. */
  readonly lines: readonly KitLine[];
  readonly problems: readonly Problem[];
  /** Rules that counted something here. */
  readonly ruleIds: readonly string[];
  /** Of all lines, one after the other. */
  readonly working: readonly WorkingLine[];
}

/**
 * Which parts, and how many, does a site need? None where it is handed over; else what kitOfDesign counts of what is not built yet.
 *
 * @param site - the site's facts
 * @param market - catalogue, rules, what a cut takes [mm], and today [day]
 * @returns a line for each part [count, in what the part is counted in]; problems but those of rules, which programmeKit tells once
 * @problem kit.site_in_doubt - rows of the site could not be used, so that what they tell of is not in its kit
 * @problem kit.no_pipes - no pipe was surveyed, and none is in the kit
 * @problem kit.part_unknown - and all others of kitOfDesign
 * @law a site that is handed over needs nothing
 * @definition ours: docs/methods/kit.md
 */
export function kitOfSite(site: SiteFacts, market: KitMarket): SiteKit {
  const { today, settings } = market;
  if (isHandedOver(site.handOverDay, today))
    return { siteId: site.siteId, isBuilt: true, lines: [], problems: [], ruleIds: [], working: [] };
  const cutting = { cut_mm: settings.cutWaste_mm, squareOff_mm: 0 };
  const kit = kitOfDesign(countedDesign(site, today), readyRules(market.kit.rules, market.parts), cutting);
  return { ...kit, problems: [...ofSurvey(site), ...kit.problems] };
}

/** Rows that could not be read, and pipes nobody surveyed: what belongs to them is in no line. */
function ofSurvey({ siteId, doubts, doubtsBeside, pipes, tanks }: SiteFacts): readonly Problem[] {
  const { drainage, settling, stand, head, treatment } = doubtsBeside;
  const places = [...doubts, ...drainage, ...settling, ...stand, ...head, ...treatment];
  const of = [...new Set(places.flatMap(({ file }) => (file === undefined ? [] : [file])))].sort();
  return [
    ...(places.length > 0 ? [engineProblem('kit.site_in_doubt', { siteId }, { of })] : []),
    ...(pipes.length === 0 && tanks.length > 0 ? [engineProblem('kit.no_pipes', { siteId })] : []),
  ];
}

function isHandedOver(handOverDay: DayIndex | null, today: DayIndex | null): boolean {
  return handOverDay !== null && today !== null && handOverDay <= today;
}

/**
 * Which parts, and how many, does a design take? What it names, and what rules count of it: so many for each thing or each metre, each
 * rule rounded as it says; gutters, downpipes and pipes cut from bars, all runs of a part together, and joints where runs are longer than a
 * bar; then spares, rounded up to whole ones here, since they go along to the site. A thing that is named and counted by a rule for the
 * same kind of part is counted once, as named.
 *
 * @param design - what there is to be counted: things [count] and runs [m]
 * @param ready - rules and catalogue, looked through: readyRules
 * @param cutting - what a cut and a squared end take [mm]
 * @returns a line for each part [count, in what the part is counted in], with what counts it and how bars are cut [m]; problems
 * @problem kit.part_unknown - the design names a part that is not in the catalogue
 * @problem kit.counted_twice - a rule would count what the design names already
 * @problem kit.counted_both_ways - a part is counted by the thing and by its metres
 * @problem kit.set_by_unit - the part of a set of cartridges is counted for the set and, by a rule, for its unit as well
 * @problem kit.condition_unknown - a rule looks at something that is not known here, and counts nothing there
 * @problem kit.count_unknown - how many there are of a thing is not known
 * @problem kit.length_unknown - how long a run is, is not known
 * @problem kit.length_assumed - how long a run is, is assumed
 * @problem kit.thing_assumed - a thing nobody surveyed is taken to be there
 * @problem kit.part_without_length - a gutter, downpipe or pipe of the catalogue has no length
 * @problem kit.bars_not_least - fewer bars may do
 * @problem kit.thing_without_part - a thing is there and nothing counts a part for it
 * @law more of a thing, or a longer run, never takes fewer parts, where its bars are shown to be the least
 * @law the order of rules changes nothing
 * @definition ours: docs/methods/kit.md
 */
export function kitOfDesign(design: CountedDesign, ready: ReadyRules, cutting: Cutting): SiteKit {
  const isJoint = (rule: KitRule) => rule.countedBy === 'gutterJoint' || rule.countedBy === 'pipeJoint';
  // Where runs are joined is known once it is known what they are made of.
  const joints = ready.rules.some(isJoint) ? jointsOf(design, countedFor(design, ready).counted, ready, cutting) : [];
  const whole = { ...design, counted: [...design.counted, ...joints] };
  const all = countedFor(whole, ready);
  const { lines, problems } = kitLines(whole, all, ready, cutting);
  const { siteId } = design;
  return {
    siteId,
    isBuilt: false,
    lines,
    problems: [
      ...problems,
      ...ofRules(all, siteId),
      ...ofThings(all, siteId),
      ...thingsWithoutPart(whole, all.counted, ready),
    ],
    ruleIds: [...new Set(all.counted.flatMap(({ rule }) => (rule === null ? [] : [rule.ruleId])))],
    working: lines.flatMap(({ working }) => working),
  };
}

/** A line for each part, and what is wrong with each. */
function kitLines(
  { siteId }: CountedDesign,
  all: AllCounted,
  ready: ReadyRules,
  cutting: Cutting,
): { readonly lines: readonly KitLine[]; readonly problems: readonly Problem[] } {
  const byPart = new Map<string, CountedFor[]>();
  for (const one of all.counted) byPart.set(one.partId, [...(byPart.get(one.partId) ?? []), one]);
  const open = new Set(all.undecided.map(({ rule }) => rule.partId));
  const lines: KitLine[] = [];
  const problems: Problem[] = [];
  for (const partId of [...new Set([...byPart.keys(), ...open])].sort(compareText)) {
    const part = ready.parts.get(partId);
    const counted = byPart.get(partId) ?? [];
    if (part === undefined) {
      const of = counted.flatMap(({ ones }) => idsOf(ones));
      problems.push(engineProblem('kit.part_unknown', { siteId }, { partId, by: 'design', of }));
      continue;
    }
    const line = kitLine(part, counted, open.has(partId), cutting);
    if (line.total_count !== 0 || line.isAtLeast) lines.push(line);
    if (counted.some(({ countedBy }) => isCut(part, countedBy)) && !(part.length_m !== null && part.length_m > 0))
      problems.push(engineProblem('kit.part_without_length', { siteId }, { partId }));
    const { cuts } = line;
    if (cuts !== null && cuts.bound_count < cuts.bars_count) {
      const most = cuts.bars_count - cuts.bound_count;
      problems.push(engineProblem('kit.bars_not_least', { siteId }, { partId, bars: cuts.bars_count, most }));
    }
    problems.push(...bothWays(partId, counted, siteId), ...setByUnit(partId, counted, siteId));
  }
  return { lines, problems };
}

/** A part counted by the thing and by its metres. */
function bothWays(partId: string, counted: readonly CountedFor[], siteId: string): readonly Problem[] {
  const wanted = counted.filter(({ rule }) => rule === null || rule.each_count > 0);
  const isTwice = wanted.some(({ countedBy }) => wanted.some((other) => other.countedBy === `${countedBy}Metre`));
  const rules = wanted.flatMap(({ rule }) => (rule === null ? [] : [rule.ruleId]));
  return isTwice ? [engineProblem('kit.counted_both_ways', { siteId }, { partId, rules })] : [];
}

/** Two sets are in the kit of a unit whose set is named or counted, and for which a rule counts the same part: told, since one may be meant as a spare. */
function setByUnit(partId: string, counted: readonly CountedFor[], siteId: string): readonly Problem[] {
  const named = counted.filter(
    ({ rule, countedBy }) => countedBy === 'cartridgeSet' && (rule === null || rule.each_count > 0),
  );
  const units = new Set(named.flatMap(({ ones }) => idsOf(ones)));
  return counted.flatMap(({ rule, countedBy, ones }) => {
    if (rule === null || countedBy !== 'unit' || !(rule.each_count > 0)) return [];
    const of = idsOf(ones).filter((id) => units.has(id));
    return of.length === 0 ? [] : [engineProblem('kit.set_by_unit', { siteId }, { partId, ruleId: rule.ruleId, of })];
  });
}

function ofRules({ twice, undecided }: AllCounted, siteId: string): readonly Problem[] {
  const told = ({ ruleId, partId, countedBy }: KitRule, of: readonly string[]) => ({ ruleId, partId, countedBy, of });
  // Rules for gutters of each width ask for the same width.
  const alike = new Map<string, { readonly rules: string[]; readonly one: AllCounted['undecided'][number] }>();
  for (const one of undecided) {
    const key = JSON.stringify([one.rule.countedBy, one.ids, one.fields]);
    const others = alike.get(key);
    if (others === undefined) alike.set(key, { rules: [one.rule.ruleId], one });
    else others.rules.push(one.rule.ruleId);
  }
  return [
    ...twice.map(({ rule, ids }) => engineProblem('kit.counted_twice', { siteId }, told(rule, ids))),
    ...[...alike.values()].map(({ rules, one: { rule, ids, fields } }) =>
      engineProblem('kit.condition_unknown', { siteId }, { rules, countedBy: rule.countedBy, of: ids, fields }),
    ),
  ];
}

/** Things whose number or length is not known, or assumed, once for each kind of thing that something counts. */
function ofThings({ counted }: AllCounted, siteId: string): readonly Problem[] {
  const problems: Problem[] = [];
  const things = [...new Set(counted.map(({ countedBy }) => countedBy))].sort(compareText);
  for (const countedBy of things) {
    const ones = [...new Set(counted.filter((one) => one.countedBy === countedBy).flatMap((one) => one.ones))];
    const { known, unknown } = knownOf(ones);
    const tell = (code: ThingProblem, of: readonly string[], isTold: boolean) => {
      if (isTold) problems.push(engineProblem(code, { siteId }, { countedBy, of }));
    };
    tell(isLength(countedBy) ? 'kit.length_unknown' : 'kit.count_unknown', idsOf(unknown), unknown.length > 0);
    const assumed = known.filter((one) => one.isAssumed);
    tell('kit.thing_assumed', idsOf(assumed), assumed.length > 0 && !isLength(countedBy));
    const lengths = known.some(({ run }) => run?.from === 'assumed');
    tell('kit.length_assumed', idsFrom(known, 'assumed'), lengths);
  }
  return problems;
}

type ThingProblem = 'kit.length_unknown' | 'kit.count_unknown' | 'kit.thing_assumed' | 'kit.length_assumed';
