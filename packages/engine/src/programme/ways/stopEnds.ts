import type { Arcs } from './fastestTo.ts';
import type { ReadyParty } from './readyParty.ts';
import type { ReadyWays, StopLoad, WayStop } from './waysFacts.ts';

/** Stops that are reached by one search: from one end, with the same ways shut to what must come there. */
export interface Ends {
  readonly end_position: number;
  /** The carrier by which the end is left again; -1: the end is the stop itself. */
  readonly slot_position: number;
  /** Ways x carriers that do not let the load through. */
  readonly shut_positions: readonly number[];
  readonly hanging: readonly Hanging[];
}

/** Stops of one place. */
export interface Hanging {
  /** The way that leads to it from the end; -1: it is the end. */
  readonly lastWay_position: number;
  readonly isLastBack: boolean;
  /** Places in the stops. */
  readonly stops_positions: readonly number[];
}

interface EndsFound extends Omit<Ends, 'hanging'> {
  readonly hanging: Map<number, { lastWay_position: number; isLastBack: boolean; stops_positions: number[] }>;
}

/** Where to search from, each search once: stops at one place share it, and so do stops that hang by one way each on one place. */
export function endsOf(stops: readonly WayStop[], ready: ReadyWays, arcs: Arcs, party: ReadyParty): readonly Ends[] {
  const found = new Map<string, EndsFound>();
  const shutBy = new Map<string, { readonly key: string; readonly shut_positions: readonly number[] }>();
  stops.forEach(({ place, load }, index) => {
    const node = ready.nodeOf.get(place);
    if (node === undefined) return;
    const loadKey = load === null ? '' : `${load.kg} ${load.litres} ${load.longest_m}`;
    if (!shutBy.has(loadKey)) {
      const shut_positions = shutTo(load, party);
      shutBy.set(loadKey, { key: shut_positions.join(), shut_positions });
    }
    const { key, shut_positions } = shutBy.get(loadKey)!;
    for (const { end, slot, lastWay_position, isLastBack } of endsAt(node, ready, arcs, party)) {
      const whole = `${end} ${slot} ${key}`;
      const ends = found.get(whole) ?? { end_position: end, slot_position: slot, shut_positions, hanging: new Map() };
      const own = ends.hanging.get(lastWay_position) ?? { lastWay_position, isLastBack, stops_positions: [] };
      own.stops_positions.push(index);
      ends.hanging.set(lastWay_position, own);
      found.set(whole, ends);
    }
  });
  return [...found.values()].map((ends) => ({ ...ends, hanging: [...ends.hanging.values()] }));
}

/** The place itself, or, where one way alone leads there, where that way comes from: once for each carrier that goes it. */
export function endsAt(node: number, { ways }: ReadyWays, arcs: Arcs, party: ReadyParty) {
  const first = arcs.start_positions[node]!;
  if (arcs.start_positions[node + 1]! - first !== 1)
    return [{ end: node, slot: -1, lastWay_position: -1, isLastBack: false }];
  const lastWay_position = arcs.way_positions[first]!;
  const isLastBack = arcs.isBack_count[first] === 1;
  const end = arcs.from_positions[first]!;
  return party.carriers.flatMap(({ mode }, slot) =>
    mode === ways[lastWay_position]!.way.mode ? [{ end, slot, lastWay_position, isLastBack }] : [],
  );
}

/** Ways, by carrier, on which the load cannot pass. */
export function shutTo(load: StopLoad | null, { limitOf_positions, limits, there_h }: ReadyParty): readonly number[] {
  if (load === null) return [];
  const isTight = limits.limits.map(
    ({ kg, litres, longest_m }) => load.kg > kg || load.litres > litres || load.longest_m > longest_m,
  );
  const shut: number[] = [];
  limitOf_positions.forEach((limit, at) => {
    if (isTight[limit] && there_h[at] !== Number.POSITIVE_INFINITY) shut.push(at);
  });
  return shut;
}
