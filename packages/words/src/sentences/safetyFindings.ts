import type { SafetyFinding, SourceDays } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import type { ChlorineSaid } from './chlorineFindings.ts';
import { type PlaceSaid, placeIn } from './place.ts';
import { yes } from './telling.ts';
import { sourceOfRisk, waterOfRisk } from './waterOfRisk.ts';
import type { WaterTestsSaid } from './waterTestsFindings.ts';

/** What the safety of a site's water is said from: codes as words, days as a report writes them. */
export type SafetySaid = Omit<SafetyFinding, 'cappedBy' | 'withheldBy' | 'waterTests' | 'chlorine'> & {
  readonly cappedBy: string | null;
  readonly withheldBy: readonly PlaceSaid[];
  readonly waterTests: WaterTestsSaid;
  readonly chlorine: ChlorineSaid | null;
};

/**
 * What may be said of drinking the water of a site, in a few sentences: never that it is safe without saying what shows it.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function safetySaid({ say, numbers }: Speech, f: SafetySaid): string {
  const [worst] = f.risks;
  const years = (value: number) => numbers.quantity(value * million_people, '');
  const days = f.sourceDays === null ? [] : [sourceDaysSaid({ say, numbers }, f.sourceDays)];
  return [
    say(`findings.safety.mayDrink.${f.mayDrink}`),
    ...becauseSaid({ say, numbers }, f),
    ...(worst
      ? [
          say('findings.safety.risk', {
            pathogen: worst.pathogen,
            ...waterOfRisk(sourceOfRisk(worst, f), { numbers }),
            isOver: yes(worst.DALYHigh_per_person_per_year > f.target_DALY_per_person_per_year),
            risk: years(worst.DALY_per_person_per_year),
            high: years(worst.DALYHigh_per_person_per_year),
            target: years(f.target_DALY_per_person_per_year),
          }),
        ]
      : []),
    ...days,
    ...(worst && f.skipping_fraction !== null && worst.fromSkipping_fraction >= toldShare_fraction
      ? [
          say('findings.safety.skipping', {
            share: numbers.percent(worst.fromSkipping_fraction),
            skipping: numbers.percent(f.skipping_fraction),
          }),
        ]
      : []),
    ...(f.barriers.length > 0 ? [say('findings.safety.tier', { tier: String(f.tier) })] : []),
  ].join(' ');
}

/** What is told before any figure: a unit that failed its test, rows that keep more from being said, a sample that is too old, a walk that found much. */
function becauseSaid(w: Speech, f: SafetySaid): readonly string[] {
  const { say, numbers } = w;
  const { failedUnits: units, withheldBy, isReckoned, reasons, notes } = f;
  const { lastCleanOn } = f.waterTests;
  return [
    ...(units.length > 0 ? [say('findings.safety.unitFailed', { count: units.length, units: units.join(', ') })] : []),
    ...(withheldBy.length > 0
      ? [
          say('findings.safety.withheld', {
            isReckoned: yes(isReckoned),
            ...placesSaid(w, withheldBy),
          }),
        ]
      : []),
    ...(reasons.includes('sampleTooOld') && lastCleanOn !== null
      ? [say('findings.safety.tooOld', { day: numbers.date(lastCleanOn) })]
      : []),
    ...(notes.includes('walkAtRisk') && f.mayDrink === 'yes' ? [say('findings.safety.walkAtRisk')] : []),
  ];
}

/** Places, each once, without the site they are of: that is told already. */
function placesSaid(w: Speech, all: readonly PlaceSaid[]): { readonly count: number; readonly places: string } {
  const said = [...new Set(all.map(({ siteId: _, ...at }) => placeIn(w)(at)))];
  return { count: said.length, places: said.join('; ') };
}

/**
 * On how many days of a year which water is drunk, in a sentence.
 *
 * @param w - the words and numbers of a language
 * @param days - days of the second source, as the balance of the tanks has them
 */
export function sourceDaysSaid({ say, numbers }: Speech, days: SourceDays): string {
  const { name: source, days_per_year, days_per_year_range: range } = days;
  if (days_per_year === null || range === null) return say('findings.safety.sourceDays.unknown', { source });
  if (days_per_year === 0) return say('findings.safety.sourceDays.none', { source });
  return say('findings.safety.sourceDays.known', {
    source,
    days: numbers.daysAYear(days_per_year),
    low: numbers.given(Math.round(range.low), ''),
    high: numbers.given(Math.round(range.high), ''),
  });
}

/** Healthy years lost are told of so many people. */
const million_people = 1e6;

/** From here on it is told what those who skip bear of it. */
const toldShare_fraction = 0.5;
