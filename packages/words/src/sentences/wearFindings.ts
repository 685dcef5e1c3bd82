import { type DayIndex, type WearFinding, wearEnds } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

type Day = DayIndex | string;

/** What a set of cartridges is said from: codes as words, days as a report writes them. */
export type WearSaid = Omit<WearFinding, 'setSince' | 'unknownBy' | 'endsOn'> & {
  readonly setSince: Day | null;
  readonly unknownBy: string | null;
  readonly endsOn: { readonly p10: Day; readonly p50: Day; readonly p90: Day } | null;
};

/**
 * When a set of cartridges is due, in a sentence or two.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function wearSaid({ say, numbers }: Speech, f: WearSaid): string {
  const { serial, endsOn, endsBy_fraction: by } = f;
  if (endsOn === null) return say('findings.wear.unknown', { serial });
  const end = wearEnds.reduce((first, one) => (by[one] > by[first] ? one : first));
  return say('findings.wear.due', {
    serial,
    middle: numbers.date(endsOn.p50),
    from: numbers.date(endsOn.p10),
    to: numbers.date(endsOn.p90),
    end,
    share: numbers.percent(by[end]),
  });
}
