import { engineProblem, type Problem, type WayFacts } from '../../kernel/index.ts';
import { fastest_km_per_h, mostAreas_count } from './constants.ts';
import { wayCauses } from './wayCauses.ts';
import type { NetworkWay, ReadyWays, WaysAsked } from './waysFacts.ts';

/**
 * Makes the network of places, sites and ways ready: every end looked up, every figure looked at, every closure and river level laid out by
 * day.
 *
 * @param asked - places, ways, closures, levels [m], carriers, and the days looked ahead [day]
 * @returns the network, with what was wrong in it; nothing that can be used is left out
 * @problem ways.ends_nowhere - when a way ends at no place and no site
 * @problem ways.figure_unusable - when a figure is negative, or no number
 * @problem ways.hours_contradict - when its hours would be faster than 150 km/h over its length
 * @problem ways.closure_unused - when a closure names no way that is there
 * @problem ways.carrier_unknown - when levels are given for a carrier that is not there
 * @problem ways.level_without_gauge - when a carrier's levels are given for a way with no gauge
 * @problem ways.levels_short - when a gauge was read in too few years
 * @problem ways.areas_many - when there are more weather areas than can be told apart
 * @definition ours: docs/methods/rollout.md, ways
 */
export function readyWays(asked: WaysAsked): ReadyWays {
  const problems: Problem[] = [];
  const { places, siteIds, settings } = asked;
  const nodeIds = [...new Set([...places.map(({ placeId }) => placeId), ...siteIds])];
  const nodeOf = new Map(nodeIds.map((id, index) => [id, index]));
  const changeOver_h = new Float64Array(nodeIds.length).fill(settings.changeOver_h);
  for (const { placeId, changeOver_h: own_h } of places)
    if (isHours(own_h)) changeOver_h[nodeOf.get(placeId)!] = own_h;
    else if (own_h !== null)
      problems.push(
        engineProblem('ways.figure_unusable', { file: 'places.csv' }, figure(placeId, 'changeOver_h', own_h)),
      );
  const maySleep_count = new Uint8Array(nodeIds.length).fill(1);
  for (const place of places) if (!place.maySleep) maySleep_count[nodeOf.get(place.placeId)!] = 0;
  const ways = asked.ways.flatMap((way): readonly NetworkWay[] => {
    const from = nodeOf.get(way.from);
    const to = nodeOf.get(way.to);
    const nowhere = [from === undefined ? way.from : null, to === undefined ? way.to : null].filter(
      (id) => id !== null,
    );
    for (const end of nowhere)
      problems.push(engineProblem('ways.ends_nowhere', { file: 'ways.csv' }, { way: way.wayId, end }));
    if (from === undefined || to === undefined || from === to) return [];
    return [{ way: usableWay(way, problems), from, to }];
  });
  const known = new Set(asked.carriers.map(({ carrierId }) => carrierId));
  for (const { carrierId, wayId } of asked.wayLevels)
    if (!known.has(carrierId))
      problems.push(
        engineProblem('ways.carrier_unknown', { file: 'wayLevels.csv' }, { carrier: carrierId, of: wayId }),
      );
  const found = wayCauses(asked, ways);
  problems.push(...found.problems);
  const ofWays = ways.flatMap(({ way }) => way.weatherArea ?? []);
  const named = [...new Set([...ofWays, ...(asked.siteAreas ?? [])])].sort();
  if (named.length > mostAreas_count)
    problems.push(engineProblem('ways.areas_many', { file: 'ways.csv' }, { most: mostAreas_count }));
  const areaIds = named.slice(0, mostAreas_count);
  return { asked, nodeIds, nodeOf, ways, changeOver_h, maySleep_count, causes: found.causes, areaIds, problems };
}

const figures = [
  'length_km',
  'there_h',
  'back_h',
  'limit_kg',
  'limit_L',
  'longest_m',
  'fuel_L_per_km',
] as const satisfies readonly (keyof WayFacts)[];

/** A way without the figures that cannot be meant; a limit that is none lets nothing through. */
function usableWay(way: WayFacts, problems: Problem[]): WayFacts {
  const mended: { -readonly [K in keyof WayFacts]: WayFacts[K] } = { ...way };
  const at = { file: 'ways.csv' };
  for (const name of figures) {
    const value = way[name];
    if (value === null || isHours(value)) continue;
    problems.push(engineProblem('ways.figure_unusable', at, figure(way.wayId, name, value)));
    mended[name] = name.startsWith('limit') || name === 'longest_m' ? 0 : null;
  }
  if (!isHours(way.porters_count)) {
    problems.push(engineProblem('ways.figure_unusable', at, figure(way.wayId, 'porters', way.porters_count)));
    mended.porters_count = 0;
  }
  const { length_km } = mended;
  for (const name of ['there_h', 'back_h'] as const) {
    const hours_h = mended[name];
    if (length_km === null || hours_h === null || length_km <= fastest_km_per_h * hours_h) continue;
    const facts = { way: way.wayId, hours_h, length_km, most_km_per_h: fastest_km_per_h };
    problems.push(engineProblem('ways.hours_contradict', { ...at, column: name }, facts));
    mended[name] = null;
  }
  return mended;
}

function isHours(value: number | null): value is number {
  return value !== null && Number.isFinite(value) && value >= 0;
}

function figure(of: string, column: string, value: number) {
  return { of, column, value: String(value) };
}
