import type { RolloutSheet, SheetStrip } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';
import { unsureAfter } from './guessed.ts';

type OfNames = Pick<RolloutSheet, 'ways' | 'places' | 'candidates' | 'crews'>;

/** Each way of a strip by its name, or by its ends where it has none. */
export function wayNames(
  { wayIds }: Pick<SheetStrip, 'wayIds'>,
  { ways, places, candidates, crews }: OfNames,
  { say }: Pick<AppLanguage, 'say'>,
): readonly string[] {
  const stops = crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
  const nameOf = new Map([
    ...[...stops, ...candidates].map(({ siteId, name }) => [siteId, name] as const),
    ...places.map(({ placeId, name }) => [placeId, name] as const),
  ]);
  const wanted = new Set(wayIds);
  const named = ways
    .filter(({ wayId }) => wanted.has(wayId))
    .map(({ name, from, to }) =>
      name === null || name === ''
        ? say('rolloutBands.way_ends', { from: nameOf.get(from) ?? from, to: nameOf.get(to) ?? to })
        : name,
    );
  return [...new Set(named)];
}

/** What a strip is called where there is room for all of its ways. */
export function namesOfWays(strip: SheetStrip, of: OfNames, language: Pick<AppLanguage, 'say'>): string {
  const names = wayNames(strip, of, language);
  return names.length === 0 ? strip.name : names.join(', ');
}

/** Ways that are closed or slower today or later, with those spans; also such as may be closed still, as their last day was a guess. */
export function closingWays({ strips, day }: Pick<RolloutSheet, 'strips' | 'day'>) {
  return strips.flatMap((strip) => {
    const spans = strip.spans.filter((span) => (unsureAfter(span, strip)?.to ?? span.to) >= day);
    return spans.length === 0 ? [] : [{ strip, spans }];
  });
}
