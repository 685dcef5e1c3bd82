import { haulsPaper, itineraryPaper, manifestPaper, type PaperOptions, type RolloutPaper } from '@eavewell/paper';
import type { CrewOfPaper } from '@eavewell/report';
import { loadPaperLanguage } from '@eavewell/words';

/** A paper as a file of its own; or why there is none, in sentences. */
export type PdfFile =
  | { readonly file: string; readonly bytes: Uint8Array }
  | { readonly file: string; readonly said: readonly string[] };

/**
 * What a crew is given, to be printed: a manifest of every trip, what is brought before it, an itinerary of every crew.
 *
 * @param crews - crews with their trips
 * @param code - language of paper
 * @param options - when it is printed
 * @returns one after the other, so that one alone is held at a time
 * @definition ours
 */
export async function* rolloutPdfs(
  crews: readonly CrewOfPaper[],
  code: string,
  options: PaperOptions,
): AsyncGenerator<PdfFile> {
  const language = await loadPaperLanguage(code);
  for (const crew of crews) {
    yield fileOf(`itinerary-${crew.crew.crewId}.pdf`, itineraryPaper(crew, language, options));
    for (const trip of crew.trips) {
      yield fileOf(`manifest-${trip.trip.tripId}.pdf`, manifestPaper(trip, language, options));
      if (trip.hauls.length > 0) yield fileOf(`hauls-${trip.trip.tripId}.pdf`, haulsPaper(trip, language, options));
    }
  }
}

const fileOf = (file: string, paper: RolloutPaper): PdfFile =>
  paper.kind === 'made' ? { file, bytes: paper.bytes } : { file, said: paper.said };
