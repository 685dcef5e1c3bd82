import {
  type ClosureOnDay,
  closuresOfWay,
  isoDay,
  type LevelShares,
  levelShares,
  type ReadyWays,
  readIsoDay,
  type WayFacts,
  weekOf,
} from '@eavewell/engine';
import type { SheetCrew, SheetStrip } from '@eavewell/tables';
import { mondayOf, type Told } from './rolloutTold.ts';

/** What the strips are made from. */
export interface StripsGiven {
  readonly ways: ReadyWays;
  /** Ways to sites that may be planned and are in no trip. */
  readonly waysWanted: ReadonlySet<string>;
}

type StripsTold = StripsGiven & Pick<Told, 'facts' | 'problem' | 'today' | 'language' | 'nameOf'>;
type Span = SheetStrip['spans'][number];

/** What holds on one day; null: the way is gone as ever. */
interface DayState {
  readonly kind: Span['kind'];
  readonly reason: string;
  /** It holds no longer than that day, as somebody guessed. */
  readonly endsAsGuessed: boolean;
}

/** All that is drawn: from the first trip that left to the last day looked at [day]. */
interface DrawnDays {
  readonly first: number;
  readonly end: number;
}

/** Ways that close or grow slower, those alike as one, of all that some trip or candidate goes. */
export function stripsOf(told: StripsTold, crews: readonly SheetCrew[]): SheetStrip[] {
  const legs = crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.legs.flatMap(({ wayIds }) => wayIds)));
  const gone = new Set([...legs, ...told.waysWanted]);
  const shares = new SharesByGauge(told);
  const days = drawnDays(told, crews);
  const alike = new Map<string, { readonly ways: WayFacts[]; readonly strip: Pick<SheetStrip, 'spans' | 'weeks'> }>();
  for (const { way } of told.ways.ways) {
    if (!gone.has(way.wayId)) continue;
    const strip = { spans: spansOf(told, way, shares.of(way), days), weeks: weeksOf(shares.of(way), days) };
    if (strip.spans.length === 0 && strip.weeks.every(({ closed_fraction }) => closed_fraction === 0)) continue;
    const key = JSON.stringify([way.mode, strip]);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { ways: [way], strip });
    else known.ways.push(way);
  }
  return [...alike.values()].map(({ ways, strip }) => ({
    stripId: `${ways[0]!.mode}-${ways[0]!.wayId}`,
    name: nameOfWays(told, ways),
    mode: ways[0]!.mode,
    wayIds: ways.map(({ wayId }) => wayId),
    ...strip,
  }));
}

function nameOfWays({ language, nameOf }: StripsTold, ways: readonly WayFacts[]): string {
  const [first] = ways;
  const { name, from, to } = first!;
  return language.say('rolloutAnswers.strip', {
    ...{ name: name ?? '', hasName: name === null ? 'no' : 'yes', more: ways.length - 1 },
    ...{ from: nameOf.get(from) ?? from, to: nameOf.get(to) ?? to },
  });
}

/** Shares of years by week of a way, for the boat of the crews that goes it on most days; null: no level bounds it. */
class SharesByGauge {
  private readonly known = new Map<string, readonly (LevelShares | null)[] | null>();
  private readonly boats: readonly string[];

  constructor(private readonly told: StripsTold) {
    const { facts } = told;
    const taken = new Set(facts.rollout.crews.flatMap(({ carrierIds }) => carrierIds));
    this.boats = facts.kit.carriers
      .filter(({ carrierId, mode }) => mode === 'boat' && taken.has(carrierId))
      .map(({ carrierId }) => carrierId);
  }

  of({ wayId, riverGaugeId }: WayFacts): readonly (LevelShares | null)[] | null {
    if (riverGaugeId === null) return null;
    const { wayLevels, riverLevels } = this.told.facts.rollout;
    const bounds = this.boats.map(
      (boat) => wayLevels.find((one) => one.wayId === wayId && one.carrierId === boat) ?? null,
    );
    // A boat of which no bounds are stated goes it at any level.
    if (bounds.length === 0 || bounds.includes(null)) return null;
    const key = JSON.stringify([riverGaugeId, bounds.map((one) => [one!.least_m, one!.greatest_m])]);
    const found = this.known.get(key);
    if (found !== undefined) return found;
    const levels = riverLevels.filter((one) => one.riverGaugeId === riverGaugeId);
    const all = bounds.map((one) => levelShares(levels, one!));
    const best = all[0]!.map((_, week) => all.map((own) => own[week] ?? null).reduce(lessClosed));
    this.known.set(key, best);
    return best;
  }
}

const closedOf = ({ open_fraction }: LevelShares) => 1 - open_fraction;

function lessClosed(one: LevelShares | null, other: LevelShares | null): LevelShares | null {
  if (one === null || other === null) return one ?? other;
  return closedOf(other) < closedOf(one) ? other : one;
}

function drawnDays({ problem, today }: StripsTold, crews: readonly SheetCrew[]): DrawnDays {
  const left = crews.flatMap(({ trips }) => trips.flatMap(({ leaves }) => readIsoDay(leaves) ?? []));
  const first = left.reduce((least, day) => Math.min(least, day), Math.min(today, problem.firstDay));
  return { first, end: problem.firstDay + problem.horizon_days };
}

/** Runs of days that are alike, of all that are drawn. */
function spansOf(
  told: StripsTold,
  way: WayFacts,
  shares: readonly (LevelShares | null)[] | null,
  { first, end }: DrawnDays,
): Span[] {
  const { language, facts, ways, problem } = told;
  const closures = closuresOfWay(ways, way);
  // Of past weeks years of a gauge say nothing that was seen: who went there went there.
  const levelOn = (day: number) => (day < problem.firstDay ? null : (shares?.[weekOf(day)] ?? null));
  const on = (day: number) => stateOn(closures(day), levelOn(day), facts.settings.openChance_fraction);
  const spans: Span[] = [];
  for (let from = first, state = on(first); from < end; ) {
    let [to, last, next] = [from, state, from + 1 < end ? on(from + 1) : null];
    while (to + 1 < end && next?.kind === state?.kind && next?.reason === state?.reason) {
      to++;
      last = next;
      next = to + 1 < end ? on(to + 1) : null;
    }
    if (state !== null) {
      const { kind, reason } = state;
      const said = language.say(`rolloutAnswers.way.${kind}`, { reason, hasReason: reason === '' ? 'no' : 'yes' });
      const isToGuessed = last?.endsAsGuessed === true && opensTo(state, next);
      spans.push({ from: isoDay(from), to: isoDay(to), isToGuessed, kind, said });
    }
    [from, state] = [to + 1, next];
  }
  return spans;
}

/** Is more open on the next day than on that one? */
const opensTo = ({ kind }: DayState, next: DayState | null): boolean =>
  next === null || (next.kind === 'slower' && kind !== 'slower');

function stateOn(
  closures: readonly ClosureOnDay[],
  week: LevelShares | null,
  openChance_fraction: number,
): DayState | null {
  const said = (kind: DayState['kind'], own: readonly ClosureOnDay[]): DayState => ({
    ...{ kind, reason: own[0]!.reason ?? '', endsAsGuessed: own.some(({ endsAsGuessed }) => endsAsGuessed) },
  });
  const closed = closures.filter(({ isClosed }) => isClosed);
  if (closed.length > 0) return said('closed', closed);
  if (week !== null && week.open_fraction < openChance_fraction) {
    const kind = week.below_fraction >= week.above_fraction ? 'tooLow' : 'tooHigh';
    return { kind, reason: '', endsAsGuessed: false };
  }
  return closures.length === 0 ? null : said('slower', closures);
}

function weeksOf(shares: readonly (LevelShares | null)[] | null, { first, end }: DrawnDays): SheetStrip['weeks'] {
  if (shares === null) return [];
  const weeks: SheetStrip['weeks'] = [];
  for (let day = mondayOf(first); day < end; day += 7) {
    const own = shares[weekOf(day)] ?? null;
    if (own !== null) weeks.push({ from: isoDay(day), closed_fraction: closedOf(own) });
  }
  return weeks;
}
