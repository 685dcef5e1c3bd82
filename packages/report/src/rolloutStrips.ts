import { isoDay, type LevelShares, levelShares, type ReadyWays, type WayFacts, weekOf } from '@eavewell/engine';
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
}

/** Ways that close or grow slower, those alike as one, of all that some trip or candidate goes. */
export function stripsOf(told: StripsTold, crews: readonly SheetCrew[]): SheetStrip[] {
  const legs = crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.legs.flatMap(({ wayIds }) => wayIds)));
  const gone = new Set([...legs, ...told.waysWanted]);
  const shares = new SharesByGauge(told);
  const alike = new Map<string, { readonly ways: WayFacts[]; readonly strip: Pick<SheetStrip, 'spans' | 'weeks'> }>();
  told.ways.ways.forEach(({ way }, position) => {
    if (!gone.has(way.wayId)) return;
    const strip = { spans: spansOf(told, position, shares.of(way)), weeks: weeksOf(told, shares.of(way)) };
    if (strip.spans.length === 0 && strip.weeks.every(({ closed_fraction }) => closed_fraction === 0)) return;
    const key = JSON.stringify([way.mode, strip]);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { ways: [way], strip });
    else known.ways.push(way);
  });
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

/** Runs of days that are alike, within the days that are planned. */
function spansOf(told: StripsTold, position: number, shares: readonly (LevelShares | null)[] | null): Span[] {
  const { problem, language } = told;
  const spans: Span[] = [];
  let begun: { readonly from: number; readonly state: DayState } | null = null;
  const end = (to: number) => {
    if (begun === null) return;
    const { kind, reason } = begun.state;
    const said = language.say(`rolloutAnswers.way.${kind}`, { reason, hasReason: reason === '' ? 'no' : 'yes' });
    spans.push({ from: isoDay(problem.firstDay + begun.from), to: isoDay(problem.firstDay + to), kind, said });
    begun = null;
  };
  for (let day = 0; day < problem.horizon_days; day++) {
    const state = stateOn(told, position, day, shares);
    if (begun !== null && begun.state.kind === state?.kind && begun.state.reason === state.reason) continue;
    end(day - 1);
    begun = state === null ? null : { from: day, state };
  }
  end(problem.horizon_days - 1);
  return spans;
}

function stateOn(
  { ways, facts, problem }: StripsTold,
  position: number,
  day: number,
  shares: readonly (LevelShares | null)[] | null,
): DayState | null {
  const holding = ways.causes.filter(
    ({ kind, ways_positions, holdsOn_days }) =>
      kind === 'closure' && holdsOn_days[day] === 1 && ways_positions.includes(position),
  );
  const closed = holding.find(({ slower_factor }) => slower_factor === Number.POSITIVE_INFINITY);
  if (closed !== undefined) return { kind: 'closed', reason: closed.reason ?? '' };
  const week = shares?.[weekOf(problem.firstDay + day)] ?? null;
  if (week !== null && week.open_fraction < facts.settings.openChance_fraction)
    return { kind: week.below_fraction >= week.above_fraction ? 'tooLow' : 'tooHigh', reason: '' };
  const [slower] = holding;
  return slower === undefined ? null : { kind: 'slower', reason: slower.reason ?? '' };
}

function weeksOf({ problem }: StripsTold, shares: readonly (LevelShares | null)[] | null): SheetStrip['weeks'] {
  if (shares === null) return [];
  const weeks: SheetStrip['weeks'] = [];
  const last = problem.firstDay + problem.horizon_days;
  for (let day = mondayOf(problem.firstDay); day < last; day += 7) {
    const own = shares[weekOf(day)] ?? null;
    if (own !== null) weeks.push({ from: isoDay(day), closed_fraction: closedOf(own) });
  }
  return weeks;
}
