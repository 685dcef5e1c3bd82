import {
  type SiteDesign,
  type SiteFacts,
  type Station,
  type StationVerdict,
  type Verdict,
  verdictOrder,
} from '../kernel/index.ts';
import type { ChangedSite } from './changedSite.ts';
import { changeKinds, type FittingChange } from './changes.ts';
import { nothingToBuy } from './cost.ts';
import { type FittingCase, type Reached, withFittings } from './fittingOptions.ts';
import { gutterFittings } from './gutterFittings.ts';
import { type JudgeOthers, type OthersTried, type SourceDaysAsked, textOf, withoutUnlooked } from './judgeOthers.ts';
import type { Market } from './market.ts';
import { overflowFittings, pipeFittings } from './pipeFittings.ts';
import type { Remedy } from './remedy.ts';
import { type StationBeside, stationsBeside } from './stationsBeside.ts';
import type { AsFitted } from './wantsFacts.ts';

/** What the other stations make of a remedy. */
export type WithOthers = Pick<Remedy, 'besides' | 'standGate'> & { readonly verdict: Verdict };

/** A site's stations beside storage under changes: which gutters and pipes they take, and how they then stand. */
export class BesideStorage {
  readonly #judge: JudgeOthers;
  readonly #market: Market;
  readonly #now: SiteDesign;
  /** The tanks there are. */
  readonly #tankIds: ReadonlySet<string>;
  readonly #known = new Map<string, readonly FittingChange[] | null>();
  /** Stations that gutters and pipes of the catalogue lift, nothing else changed. */
  readonly moved: ReadonlySet<StationBeside>;
  /** How the moved ones then stand. */
  readonly lifted: Readonly<Record<StationBeside, StationVerdict>>;
  /** The site with its gutters and pipes changed, as far as it tells why a station does not hold. */
  readonly fitted: AsFitted;
  /** Do gutters that are tight by their figures become so by an assumption alone? That is lifted too, though the verdict is the same. */
  readonly isAssumedLeft: boolean;
  /** The gutters and pipes they take. */
  readonly fittings: readonly FittingChange[];

  constructor(site: SiteFacts, now: SiteDesign, market: Market, judge: JudgeOthers) {
    this.#judge = judge;
    this.#market = market;
    this.#now = now;
    this.#tankIds = new Set(site.tanks.map(({ tankId }) => tankId));
    this.fittings = this.fittingsOf({ site, toBuy: nothingToBuy });
    const then =
      this.fittings.length === 0 ? null : judge(withFittings(site, this.fittings, nothingToBuy), noDemand, noDays);
    this.isAssumedLeft = then !== null && isAssumedAlone(then) && isByFigures(now);
    this.moved = new Set(
      then === null
        ? []
        : liftable.filter(
            (one) => isBetter(then.verdicts[one], now.stations[one]) || (one === 'gutter' && this.isAssumedLeft),
          ),
    );
    this.lifted = then?.verdicts ?? now.stations;
    const { stands, settling, treatment, safety, stations } = now;
    this.fitted = then
      ? {
          stands,
          settling,
          treatment,
          safety,
          drainage: then.drainage,
          head: then.head,
          stations: { ...stations, ...gutterAndTapOf(then) },
        }
      : now;
  }

  /** Stations that are judged, do not hold, and that gutters and pipes do not lift. */
  get besides(): readonly StationBeside[] {
    return stationsBeside.filter((one) => !this.moved.has(one) && isWanting(this.#now.stations[one]));
  }

  /** Stations that do not hold with the gutters and pipes changed. */
  get stillWanting(): readonly StationBeside[] {
    return stationsBeside.filter((one) => isWanting(this.fitted.stations[one]));
  }

  /**
   * Which gutters and pipes does a site with other changes take? For each station those with which it holds; where none does and it is
   * short, those with which it is tight.
   */
  fittingsOf(changed: ChangedSite): readonly FittingChange[] {
    const { site, toBuy } = changed;
    const keys: FittingKeys = {
      roofs: textOf([site.roofs, site.gutters, site.downpipes], withoutUnlooked),
      tanks: textOf([site.tanks], withoutUnlooked),
      pipes: textOf([site.pipes], withoutUnlooked),
    };
    const key = `all ${keys.roofs} ${keys.tanks} ${keys.pipes}`;
    const judge: FittingCase['judge'] = (one) => this.#judge(one, noDemand, noDays);
    const given = { toBuy, market: this.#market, judge };
    return this.#kept(key, () => together(this.#found(site, given, keys)))!;
  }

  #found(site: SiteFacts, given: FittingCase, keys: FittingKeys): readonly FittingChange[] {
    const others = this.#judge(site, noDemand, noDays);
    const { verdicts } = others;
    const take = (
      station: 'gutter' | 'tap',
      canHold: boolean,
      find: (target: Reached) => readonly FittingChange[] | null,
    ) => {
      const targets = verdicts[station] === 'short' ? (['holds', 'tight'] as const) : (['holds'] as const);
      for (const target of targets) {
        const found = target === 'holds' && !canHold ? null : find(target);
        if (found === null) continue;
        const then = this.#judge(withFittings(site, found, given.toBuy), noDemand, noDays);
        const isAssumed =
          station === 'gutter' && (this.#isAssumedOfNew(then, site) || (isByFiguresAlone && isAssumedAlone(then)));
        if (then.verdicts[station] === target || then.verdicts[station] === 'holds' || isAssumed) return found;
      }
      return [];
    };
    // What is tight by the storm itself, or by an assumption alone, no part makes hold.
    const canHold =
      (others.drainage?.cappedBy === null || this.#isAssumedOfNew(others, site)) &&
      (this.#now.storm?.cappedBy ?? null) === null;
    // Water enough, and some parts tight by their figures: those are mended, and what is assumed is for a survey.
    const isByFiguresAlone =
      this.#now.stations.storage === 'holds' && verdicts.gutter === 'tight' && others.drainage?.cappedBy === null;
    const by = isByFiguresAlone ? 'figures' : 'verdicts';
    const gutterGiven = isByFiguresAlone ? { ...given, judge: byFigures(given.judge) } : given;
    const ofGutters = (target: Reached) => {
      const gutters = this.#kept(`gutters ${target} ${by} ${keys.roofs}`, () =>
        gutterFittings(site, gutterGiven, target),
      );
      if (gutters === null) return null;
      const key = `overflows ${target} ${by} ${keys.roofs} ${keys.tanks}`;
      // No more can be said of the overflow of a tank that is not there yet.
      const most = this.#isOverflowNew(site) ? 'tight' : target;
      const overflows = this.#kept(key, () => overflowFittings(site, gutterGiven, most));
      return overflows && [...gutters, ...overflows];
    };
    const ofPipes = (target: Reached) =>
      this.#kept(`pipes ${target} ${keys.tanks} ${keys.pipes}`, () => pipeFittings(site, given, target));
    return [
      ...(isLiftable(verdicts.gutter) ? take('gutter', canHold, ofGutters) : []),
      ...(isLiftable(verdicts.tap) ? take('tap', true, ofPipes) : []),
    ];
  }

  /**
   * How do the other stations stand with all changes made? Those that are moved, or made worse, count; the others are told beside, as is
   * one that is not known for want of facts of what is new.
   */
  with(site: SiteFacts, demandHighest_L_per_day: ReadonlyMap<string, number>, sourceDays: SourceDaysAsked): WithOthers {
    const others = this.#judge(site, demandHighest_L_per_day, sourceDays);
    const { verdicts, standGate } = others;
    const besides: Station[] = [];
    let worst: Verdict = 'holds';
    for (const station of stationsBeside) {
      const then = verdicts[station];
      const now = this.#now.stations[station];
      if (then === 'notJudged' || then === 'holds') continue;
      const isOfNew = then === 'unknown' || (station === 'gutter' && this.#isAssumedOfNew(others, site));
      const counts = !isOfNew && (this.moved.has(station) || now === 'notJudged' || isBetter(now, then));
      if (!counts) besides.push(station);
      else if (isBetter(worst, then)) worst = then;
    }
    return { verdict: worst, besides, standGate };
  }

  /** Is it tight only because nobody has measured where the overflow, or the rim, of a new tank stands? */
  #isAssumedOfNew({ drainage }: OthersTried, site: SiteFacts): boolean {
    return drainage?.cappedBy === 'drainage.overflow_head_assumed' && this.#isOverflowNew(site);
  }

  #isOverflowNew({ tanks }: SiteFacts): boolean {
    return tanks.some(
      ({ tankId, overflowBore_mm, joinedTo }) =>
        (overflowBore_mm !== null || joinedTo !== null) && !this.#tankIds.has(tankId),
    );
  }

  #kept(key: string, make: () => readonly FittingChange[] | null): readonly FittingChange[] | null {
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const made = make();
    this.#known.set(key, made);
    return made;
  }
}

/** What of a site its gutters, overflows and pipes hang on. */
interface FittingKeys {
  readonly roofs: string;
  readonly tanks: string;
  readonly pipes: string;
}

const liftable = ['gutter', 'tap'] as const;

function gutterAndTapOf({ verdicts: { gutter, tap } }: OthersTried) {
  return { gutter, tap };
}

/** Is a station of gutters tight, and only by what was assumed? */
function isAssumedAlone({ drainage }: Pick<OthersTried, 'drainage'>): boolean {
  return drainage?.verdict === 'tight' && drainage.cappedBy !== null;
}

/** Has a site water enough, and gutters that are tight by their figures? */
function isByFigures({ stations, drainage }: Pick<SiteDesign, 'stations' | 'drainage'>): boolean {
  return stations.storage === 'holds' && drainage?.verdict === 'tight' && drainage.cappedBy === null;
}

/** Judges every part by its figures: one that would hold but for an assumption holds. */
function byFigures(judge: FittingCase['judge']): FittingCase['judge'] {
  return (site) => {
    const { drainage, head } = judge(site);
    const parts = drainage?.parts.map((part) => {
      const { capacity_L_per_s, flow_L_per_s_range, verdict } = part;
      const carries = (flow_L_per_s_range?.high ?? Infinity) <= (capacity_L_per_s ?? 0);
      return verdict === 'tight' && carries ? { ...part, verdict: 'holds' as const } : part;
    });
    return { drainage: drainage && { ...drainage, parts: parts! }, head };
  };
}

const noDemand: ReadonlyMap<string, number> = new Map();

/** Gutters and pipes hang on no day of a second source. */
const noDays: SourceDaysAsked = () => null;

function isWanting(verdict: StationVerdict): boolean {
  return verdict === 'short' || verdict === 'tight' || verdict === 'unknown';
}

function isLiftable(verdict: StationVerdict): boolean {
  return verdict === 'short' || verdict === 'tight';
}

/** A station that is not judged is neither better nor worse. */
function isBetter(one: StationVerdict, other: StationVerdict): boolean {
  if (one === 'notJudged' || other === 'notJudged') return false;
  return verdictOrder.indexOf(one) > verdictOrder.indexOf(other);
}

/** Changes of one part are told as one, the way of the water down. */
function together(changes: readonly FittingChange[]): readonly FittingChange[] {
  const merged: FittingChange[] = [];
  for (const change of changes) {
    const at = merged.findIndex((one) => isSamePart(one, change));
    const before = merged[at];
    if (before?.kind === 'largerGutter' && change.kind === 'largerGutter')
      merged[at] = { ...before, gutterIds: [...before.gutterIds, ...change.gutterIds] };
    else if (before?.kind === 'outlet' && change.kind === 'outlet')
      merged[at] = { ...before, gutterIds: [...before.gutterIds, ...change.gutterIds] };
    else merged.push(change);
  }
  return merged.sort((a, b) => changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind));
}

function isSamePart(one: FittingChange, other: FittingChange): boolean {
  if (one.kind === 'outlet' && other.kind === 'outlet')
    return one.partId === other.partId && one.outlet_mm === other.outlet_mm && one.added_count === other.added_count;
  return one.kind === 'largerGutter' && other.kind === 'largerGutter' && one.partId === other.partId;
}
