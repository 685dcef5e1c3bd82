import type { StopLoad, WayClosure, WayFacts, WaysAsked } from '@eavewell/engine';

/** What a party goes by, as the slow way sees it: a carrier's id, the mode it goes, its speed and what it takes. */
export interface SlowCarrier {
  readonly carrierId: string;
  readonly mode: WayFacts['mode'];
  readonly speed_km_per_h: number;
  readonly kg: number;
}

/** Is the closure in force on this day of the year's calendar, written as a date? */
function holds({ months, from, to }: WayClosure, day: number): boolean {
  const month = new Date(day * 86_400_000).getUTCMonth() + 1;
  return (
    (months.length === 0 || months.includes(month)) && (from === null || from <= day) && (to === null || day <= to)
  );
}

/** Hours of a way on a day by a carrier, from `from` to `to` or back; null: it cannot be gone so. */
function hoursOn(asked: WaysAsked, way: WayFacts, carrier: SlowCarrier, day: number, isBack: boolean): number | null {
  if (way.mode !== carrier.mode) return null;
  let factor = 1;
  for (const closure of asked.closures) {
    const isIts =
      closure.wayId === way.wayId || (closure.weatherArea !== null && closure.weatherArea === way.weatherArea);
    if (!isIts || !holds(closure, day)) continue;
    if (closure.slower_factor === null) return null;
    factor = Math.max(factor, closure.slower_factor);
  }
  const bySpeed = way.length_km === null ? null : way.length_km / carrier.speed_km_per_h;
  const hours = isBack ? (way.back_h ?? way.there_h ?? bySpeed) : (way.there_h ?? bySpeed ?? way.back_h);
  return hours === null ? null : hours * factor;
}

/**
 * Hours from every place to every other on a day, by trying every place and carrier between any two (Floyd and Warshall). Where a
 * load is given, by ways alone that let it through.
 */
export function slowHours(
  asked: WaysAsked,
  carriers: readonly SlowCarrier[],
  day: number,
  load: StopLoad | null,
): ReadonlyMap<string, number> {
  const places = asked.places.map(({ placeId }) => placeId);
  const states = places.flatMap((place) => carriers.map((carrier) => ({ place, carrier })));
  const hours = states.map((_, a) => states.map((_, b) => (a === b ? 0 : Number.POSITIVE_INFINITY)));
  states.forEach((one, a) => {
    states.forEach((other, b) => {
      if (a === b) return;
      if (one.place === other.place) {
        const own = asked.places.find(({ placeId }) => placeId === one.place)!.changeOver_h;
        hours[a]![b] = own ?? asked.settings.changeOver_h;
      }
      if (one.carrier !== other.carrier) return;
      for (const way of asked.ways) {
        const isThere = way.from === one.place && way.to === other.place;
        const isBack = way.to === one.place && way.from === other.place;
        if (!isThere && !isBack) continue;
        if (load !== null && load.kg > Math.min(way.limit_kg ?? Number.POSITIVE_INFINITY, one.carrier.kg)) continue;
        const own = hoursOn(asked, way, one.carrier, day, isBack);
        if (own !== null) hours[a]![b] = Math.min(hours[a]![b]!, own);
      }
    });
  });
  for (let via = 0; via < states.length; via++)
    for (let a = 0; a < states.length; a++)
      for (let b = 0; b < states.length; b++) hours[a]![b] = Math.min(hours[a]![b]!, hours[a]![via]! + hours[via]![b]!);
  const found = new Map<string, number>();
  states.forEach(({ place: from }, a) => {
    states.forEach(({ place: to }, b) => {
      const key = `${from} ${to}`;
      const least = from === to ? 0 : hours[a]![b]!;
      found.set(key, Math.min(found.get(key) ?? Number.POSITIVE_INFINITY, least));
    });
  });
  return found;
}
