import { type GeoPosition, greatCircle_km, middleOf, type Place, type Problem } from '@eavewell/engine';
import { type TableProblemCode, tableProblem } from '../reading/tableProblems.ts';
import type { MapPoint } from './mapThings.ts';
import { type MatchedBy, type PositionTarget, TargetFinder } from './matchTargets.ts';

/** A point of the map that is a row of a table, and what it would change. */
export interface PositionMatch {
  readonly target: PositionTarget;
  readonly point: MapPoint;
  readonly by: MatchedBy;
  /** How far the row's position would move [km]; null where it has none. */
  readonly moved_km: number | null;
  /** A fault says it may be wrong: it is never set by itself. */
  readonly isDoubtful: boolean;
}

/** How the points of a map and the rows of the tables go together. */
export interface PositionsMatched {
  /** In the order of the tables' rows. */
  readonly matches: readonly PositionMatch[];
  readonly unmatchedPoints: readonly MapPoint[];
  readonly unmatchedTargets: readonly PositionTarget[];
  readonly problems: readonly Problem[];
}

/** What a match is held against. */
export interface MatchLimits {
  /** Further than this from the row's present position a point is in doubt [km]. */
  readonly far_km: number;
}

/** So few positions do not show where a programme lies. Ours, as for the positions of one table. */
const leastPositions = 5;
/** Further than this from the middle of the others a point is in doubt; nearer than that it is near [km]. Ours: 5° and 2°. */
const [farFromOthers_km, nearOthers_km] = [555, 222] as const;
/** Nearer than this, two positions are one [km]: a metre, less than a handheld can tell. Ours. */
export const samePlace_km = 0.001;

const written = ({ latitude_deg, longitude_deg }: GeoPosition) => `${latitude_deg}, ${longitude_deg}`;
const swapped = ({ latitude_deg, longitude_deg }: GeoPosition): GeoPosition | null =>
  Math.abs(longitude_deg) > 90 ? null : { latitude_deg: longitude_deg, longitude_deg: latitude_deg };

interface Doubt {
  readonly code: TableProblemCode;
  readonly facts: Problem['facts'];
}

/** What speaks against a point's position, seen from the row's own and from all the others. */
function doubtOf(
  position: GeoPosition,
  present: GeoPosition | null,
  middle: GeoPosition | null,
  { far_km }: MatchLimits,
): Doubt | null {
  const value = written(position);
  const [{ latitude_deg, longitude_deg }, other] = [position, swapped(position)];
  if (latitude_deg === 0 && longitude_deg === 0) return { code: 'positions.zero', facts: { value } };
  const moved_km = present === null ? null : greatCircle_km(position, present);
  const away_km = middle === null ? null : greatCircle_km(position, middle);
  const isFar = (moved_km !== null && moved_km > far_km) || (away_km !== null && away_km > farFromOthers_km);
  if (isFar && other) {
    const isOwnPlace = present !== null && greatCircle_km(other, present) <= far_km;
    const isNearOthers =
      middle !== null && away_km! > farFromOthers_km && greatCircle_km(other, middle) <= nearOthers_km;
    if (isOwnPlace || isNearOthers)
      return { code: 'positions.swapped_likely', facts: { value, likely: written(other) } };
  }
  if (moved_km !== null && moved_km > far_km)
    return { code: 'positions.far_from_present', facts: { value, moved_km, far_km } };
  if (away_km !== null && away_km > farFromOthers_km)
    return { code: 'positions.far_from_others', facts: { value, away_km } };
  return null;
}

interface Candidate {
  readonly point: MapPoint;
  readonly by: MatchedBy;
  isDoubtful: boolean;
}

const rank: readonly MatchedBy[] = ['id', 'name', 'likely'];

const labelOf = (point: MapPoint) => point.name ?? point.ids[0] ?? `${point.number}`;

/** Points by the row they are; each fault is written down once, here. */
class Matching {
  readonly problems: Problem[] = [];
  readonly candidates = new Map<PositionTarget, Candidate[]>();
  readonly unmatched: MapPoint[] = [];
  private readonly file: string;

  constructor(file: string) {
    this.file = file;
  }

  say(code: TableProblemCode, point: MapPoint, target: PositionTarget | null, facts: Problem['facts']): void {
    const about: Place = target?.table === 'sites' ? { siteId: target.id } : {};
    const gauge: Place = target?.table === 'gauges' ? { gaugeId: target.id } : {};
    const all = { name: labelOf(point), number: point.number, id: target?.id ?? '', ...facts };
    this.problems.push(tableProblem(code, { file: this.file, ...about, ...gauge }, all));
  }

  place(point: MapPoint, finder: TargetFinder): void {
    const found = finder.find(point);
    if (found === null) {
      this.unmatched.push(point);
      return;
    }
    const { by, targets, against } = found;
    const isOfSeveral = targets.length > 1;
    if (isOfSeveral)
      this.say('positions.of_two', point, null, { value: labelOf(point), ids: targets.map(({ id }) => id) });
    else if (against !== null)
      this.say('positions.id_and_name', point, targets[0]!, {
        value: labelOf(point),
        one: targets[0]!.id,
        other: against.id,
      });
    for (const target of targets) {
      const candidate = { point, by, isDoubtful: isOfSeveral || against !== null };
      const known = this.candidates.get(target);
      if (known) known.push(candidate);
      else this.candidates.set(target, [candidate]);
    }
  }

  /** Of several points for one row the surest kind counts; two of that kind in two places put it in doubt. */
  chosen(target: PositionTarget, all: readonly Candidate[]): readonly Candidate[] {
    const surest = rank.find((by) => all.some((candidate) => candidate.by === by))!;
    const best = all.filter(({ by }) => by === surest);
    this.unmatched.push(...all.filter(({ by }) => by !== surest).map(({ point }) => point));
    const [first] = best as [Candidate, ...Candidate[]];
    if (best.length === 1) return best;
    const names = best.map(({ point }) => labelOf(point));
    const isOnePlace = best.every(({ point }) => greatCircle_km(point.position, first.point.position) <= samePlace_km);
    this.say(isOnePlace ? 'positions.same_point' : 'positions.two_points', first.point, target, {
      value: target.id,
      count: best.length,
      names,
    });
    if (isOnePlace) return [{ ...first, isDoubtful: best.some(({ isDoubtful }) => isDoubtful) }];
    return best.map((candidate) => ({ ...candidate, isDoubtful: true }));
  }
}

/**
 * Which point of a map is which row of the tables, and what would it set? By id, by name letter for letter, or, as a proposal
 * only, by a name that is nearly one row's. A match that anything speaks against is marked and never set by itself.
 *
 * @param points - the points of the map
 * @param targets - the rows that have, or should have, a position
 * @param file - the map's name, for the places of problems [text]
 * @param limits - how far a position may move unquestioned [km]
 * @returns matches with the distance moved [km], what is matched by nothing on either side, and the doubts
 * @problem positions.two_points - two points in two places for one row
 * @problem positions.swapped_likely - the other way round it would be where the row, or the programme, is
 * @law the order of the points moves no match by more than a metre; a row gets more than one match only where each is in doubt
 * @definition ours: docs/decisions/0076-points-and-rows.md
 */
export function matchPositions(
  points: readonly MapPoint[],
  targets: readonly PositionTarget[],
  file: string,
  limits: MatchLimits,
): PositionsMatched {
  const matching = new Matching(file);
  const finder = new TargetFinder(targets);
  const nameless = points.filter(({ name, ids }) => name === null && ids.length === 0);
  if (nameless.length > 0)
    matching.say('positions.without_name', nameless[0]!, null, { value: '', count: nameless.length });
  for (const point of points) matching.place(point, finder);
  const known = targets.flatMap(({ position }) => position ?? []);
  const middle = known.length >= leastPositions ? middleOf(known) : null;
  const matches = targets.flatMap((target) => {
    const all = matching.candidates.get(target);
    if (all === undefined) return [];
    return matching.chosen(target, all).map(({ point, by, isDoubtful }): PositionMatch => {
      const { position: present } = target;
      const doubt = doubtOf(point.position, present, middle, limits);
      if (doubt) matching.say(doubt.code, point, target, doubt.facts);
      const moved_km = present === null ? null : greatCircle_km(point.position, present);
      return { target, point, by, moved_km, isDoubtful: isDoubtful || doubt !== null };
    });
  });
  return {
    matches,
    unmatchedPoints: matching.unmatched.toSorted((a, b) => a.number - b.number),
    unmatchedTargets: targets.filter((target) => !matching.candidates.has(target)),
    problems: matching.problems,
  };
}
