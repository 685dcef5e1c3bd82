import type { WearEnd, WearFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

/** What a set of cartridges is said from; a report names its days as text, and the missing fact by its code alone. */
export interface WearSaid extends Omit<WearFinding, 'unknownBy' | 'setSince' | 'endsOn'> {
  readonly unknownBy: string | null;
  readonly endsOn: Readonly<Record<'p10' | 'p50' | 'p90', number | string>> | null;
}

/**
 * When the cartridges of one treatment unit are due, in a few sentences.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function wearSaid(w: Speech, f: WearSaid): string {
  const { say } = w;
  const unit = f.serial;
  if (f.endsOn === null)
    return f.litres_L === null
      ? say('findings.wear.unknown', { unit })
      : say('findings.wear.litresOnly', { unit, ...litresSaid(w, f.litres_L) });
  return [due(w, f, f.endsOn, unit), ...litres(w, f), fouling(w, f)].join(' ');
}

function due({ say, numbers }: Speech, f: WearSaid, { p10, p50, p90 }: NonNullable<WearSaid['endsOn']>, unit: string) {
  const most = mostOf(f);
  const values = {
    unit,
    share: numbers.percent(most === 'none' ? 1 : f.endsBy_fraction[most]),
    middle: numbers.date(p50),
    early: numbers.date(p10),
    late: numbers.date(p90),
    end: say(`findings.wear.end.${most}`),
  };
  return say(values.early === values.late ? 'findings.wear.dueOnce' : 'findings.wear.due', values);
}

/** What ends it in most futures; `none` where nothing does. */
function mostOf({ endsBy_fraction: by }: WearSaid): WearEnd | 'none' {
  const [most] = (Object.keys(by) as WearEnd[]).sort((a, b) => by[b] - by[a]);
  return most !== undefined && by[most] > 0 ? most : 'none';
}

/** Litres of years to come are known to two figures or three, and not to the litre. */
function rough(value_L: number): number {
  return Number(value_L.toPrecision(3));
}

function litresSaid({ numbers }: Speech, { p10, p50, p90 }: NonNullable<WearSaid['litres_L']>) {
  const range = numbers.quantity({ low: rough(p10), high: rough(p90) }, 'L');
  return { middle: numbers.quantity(rough(p50), 'L'), range };
}

function litres(w: Speech, { litres_L: passed }: WearSaid): readonly string[] {
  return passed === null ? [] : [w.say('findings.wear.litres', litresSaid(w, passed))];
}

/** What readings say of how fast it clogs here. */
function fouling({ say, numbers }: Speech, { readings_count: count, fouling_ratio: by }: WearSaid): string {
  if (count === 0) return say('findings.wear.byRating');
  const range = numbers.quantity({ low: by.p10, high: by.p90 }, '');
  return say('findings.wear.byReadings', { count, times: numbers.quantity(by.p50, ''), range });
}
