import type { Language } from '@eavewell/words';
import type { TripOnPaper } from './given.ts';

/** A leg in sentences: by which ways, what is changed where, how many porters. */
export function legSaid(
  leg: TripOnPaper['legs'][number],
  name: (id: string) => string,
  { say, numbers }: Language,
): readonly string[] {
  const [from, to] = [name(leg.from), name(leg.to)];
  if (leg.stretches.length === 0) return [say('rolloutPapers.no_way', { from, to })];
  // A tenth of an hour, and no leg of none.
  const hours = (time_h: number) => numbers.quantity(Math.max(0.1, Math.round(time_h * 10) / 10), 'h');
  const stretches = leg.stretches.map((one) =>
    say('rolloutPapers.stretch', { mode: one.mode, to: name(one.to), hours: hours(one.hours_h) }),
  );
  const changes = leg.stretches
    .filter(({ changeOver_h }) => changeOver_h > 0)
    .map((one) => say('rolloutPapers.change_over', { place: name(one.from), hours: hours(one.changeOver_h) }));
  const porters = leg.porters_count;
  return [
    say('rolloutPapers.go', { from, to, stretches: stretches.join('; ') }),
    ...changes,
    ...(porters > 0 ? [say('rolloutPapers.porters', { count: numbers.given(porters, '') })] : []),
  ];
}
