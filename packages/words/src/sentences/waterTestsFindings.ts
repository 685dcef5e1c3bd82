import type { DayIndex, WaterTestFinding, WaterTestsFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { type PlaceSaid, placeIn } from './place.ts';
import { roundedDown } from './roundedDown.ts';
import { yes } from './telling.ts';

type Day = DayIndex | string;
type TestSaid = Omit<WaterTestFinding, 'takenOn'> & { readonly takenOn: Day };
type Unusable = Omit<WaterTestsFinding['unusable'][number], 'at'> & { readonly at: PlaceSaid };
type Inspected = NonNullable<WaterTestsFinding['inspection']>;

/** What samples and walks are said from: days as a report writes them. */
export type WaterTestsSaid = Omit<WaterTestsFinding, 'tests' | 'unusable' | 'last' | 'lastCleanOn' | 'inspection'> & {
  readonly unusable: readonly Unusable[];
  readonly lastCleanOn: Day | null;
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
export function waterTestsSaid(w: Speech, f: WaterTestsSaid): string {
  return [lastSaid(w, f), unusableSaid(w, f), cleanSaid(w, f), walkSaid(w, f)].filter((text) => text !== '').join(' ');
}

function lastSaid({ say, numbers }: Speech, { last }: WaterTestsSaid): string {
  if (last === null || last.sign === null || last.count_per_100mL === null) return say('findings.waterTests.none');
  const { low_per_100mL: low, high_per_100mL: high } = last;
  const isRange = last.sign === 'equal' && low !== null && high !== null;
  return say('findings.waterTests.last', {
    day: numbers.date(last.takenOn),
    point: last.point,
    sign: last.sign,
    isBefore: yes(last.isBeforeHandOver),
    count: numbers.quantity(last.sign === 'more' ? roundedDown(last.count_per_100mL) : last.count_per_100mL, 'count'),
    range: isRange ? numbers.quantity({ low, high }, 'count') : '',
  });
}

/** Samples that cannot be used, with where they stand. */
function unusableSaid(w: Speech, { unusable }: WaterTestsSaid): string {
  if (unusable.length === 0) return '';
  const samples = unusable.map(({ testId: test, because, hasGerms, at: { siteId: _, ...at } }) =>
    w.say('findings.waterTests.unusableOne', { test, because, hasGerms: yes(hasGerms), place: placeIn(w)(at) }),
  );
  return w.say('findings.waterTests.unusable', { count: unusable.length, samples: samples.join('; ') });
}

/** What the clean ones in a row say together. */
function cleanSaid({ say, numbers }: Speech, f: WaterTestsSaid): string {
  if (f.clean_count < 2 || f.cleanBelow_per_100mL === null) return '';
  return say('findings.waterTests.clean', {
    count: f.clean_count,
    below: numbers.quantity(f.cleanBelow_per_100mL, 'per_100mL'),
  });
}

/** The walk, and what it and the sample ask for together. */
function walkSaid({ say, numbers }: Speech, { last, inspection, priority }: WaterTestsSaid): string {
  if (inspection === null) return '';
  // Beside germs that were found no word says that there is little to fear.
  const isFound = last?.sign === 'more' || last?.sign === 'equal';
  const walk = say('findings.waterTests.inspection', {
    day: numbers.date(inspection.inspectedOn),
    score: inspection.score,
    band: isFound ? 'none' : inspection.band,
  });
  return priority === null || isFound ? walk : `${walk} ${say('findings.waterTests.priority', { band: priority })}`;
}
