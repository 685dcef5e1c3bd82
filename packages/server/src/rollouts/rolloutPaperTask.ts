import { haulsPaper, itineraryPaper, manifestPaper, noticesPaper, type RolloutPaper } from '@eavewell/paper';
import type { RolloutTripAnswer } from '@eavewell/tables';
import { loadPaperLanguage } from '@eavewell/words';
import type { PackMade } from '../kits/packTask.ts';

/** What a paper of the rollout is made of. */
export interface RolloutPaperAsked {
  readonly kind: 'manifest' | 'hauls' | 'notices' | 'itinerary';
  /** Trips in full, each as JSON, in the order they stand. */
  readonly trips: readonly string[];
  /** Whose itinerary it is, where there may be no trip. */
  readonly crew: { readonly programme: string; readonly plan: string; readonly crew: RolloutTripAnswer['crew'] } | null;
  readonly language: string;
  readonly printedOn: string;
  readonly printedAt: string | null;
}

/** Lays a manifest, sheets of what is brought, an itinerary or notices on paper. */
export async function rolloutPaperTask(asked: RolloutPaperAsked): Promise<PackMade> {
  const language = await loadPaperLanguage(asked.language);
  const { printedOn, printedAt } = asked;
  const trips = asked.trips.map((text) => JSON.parse(text) as RolloutTripAnswer);
  const made = paperOf(asked, trips, language, { printedOn, printedAt });
  return made.kind === 'made'
    ? { kind: 'made', bytes: made.bytes }
    : { kind: 'lettersMissing', letters: made.letters.map(({ letter }) => letter) };
}

function paperOf(
  { kind, crew }: RolloutPaperAsked,
  trips: readonly RolloutTripAnswer[],
  language: Awaited<ReturnType<typeof loadPaperLanguage>>,
  options: Pick<RolloutPaperAsked, 'printedOn' | 'printedAt'>,
): RolloutPaper {
  const [first] = trips;
  if (kind === 'manifest' && first !== undefined) return manifestPaper(first, language, options);
  if (kind === 'hauls' && first !== undefined) return haulsPaper(first, language, options);
  if (kind === 'itinerary' && crew !== null) return itineraryPaper({ ...crew, trips }, language, options);
  return noticesPaper(trips, language, options);
}
