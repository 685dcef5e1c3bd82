import type { DayIndex, WaterTestFinding, WaterTestsFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

type Day = DayIndex | string;
type TestSaid = Omit<WaterTestFinding, 'takenOn'> & { readonly takenOn: Day };
type Inspected = NonNullable<WaterTestsFinding['inspection']>;

/** What samples and walks are said from: days as a report writes them. */
export type WaterTestsSaid = Omit<WaterTestsFinding, 'tests' | 'last' | 'inspection'> & {
  readonly tests: readonly TestSaid[];
  readonly last: TestSaid | null;
  readonly inspection: (Omit<Inspected, 'inspectedOn'> & { readonly inspectedOn: Day }) | null;
};

/**
 * What the samples of a site say, in a sentence or two.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function waterTestsSaid({ say, numbers }: Speech, f: WaterTestsSaid): string {
  const { last } = f;
  if (last === null || last.sign === null || last.count_per_100mL === null) return say('findings.waterTests.none');
  return say('findings.waterTests.last', {
    day: numbers.date(last.takenOn),
    point: last.point,
    sign: last.sign,
    count: numbers.quantity(last.count_per_100mL, 'count'),
  });
}
