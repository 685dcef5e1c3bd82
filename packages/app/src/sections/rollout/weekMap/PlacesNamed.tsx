import type { RolloutSheet } from '@eavewell/tables';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { InWords } from './InWords.tsx';

/** The places of a map in words: where many lie close, not all of them are lettered on it. */
export function PlacesNamed({ places }: Pick<RolloutSheet, 'places'>) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const named = places
    .filter(({ latitude_deg, longitude_deg }) => latitude_deg !== null && longitude_deg !== null)
    .map(({ name, kind }) => (kind === null ? name : `${name} (${words.choice(kind)})`));
  if (named.length === 0) return null;
  return <InWords head={say('rolloutMap.places', { count: named.length })} names={named.sort()} />;
}
