import type { RolloutSheet } from '@eavewell/tables';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** The places of a map in words: where many lie close, not all of them are lettered on it. */
export function PlacesNamed({ places }: Pick<RolloutSheet, 'places'>) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const named = places.filter(({ latitude_deg, longitude_deg }) => latitude_deg !== null && longitude_deg !== null);
  if (named.length === 0) return null;
  return (
    <details className="places-named">
      <summary>{say('rolloutMap.places', { count: named.length })}</summary>
      <ul>
        {named
          .toSorted((a, b) => a.name.localeCompare(b.name))
          .map(({ placeId, name, kind }) => (
            <li key={placeId}>
              {name}
              {kind === null ? '' : `: ${words.choice(kind)}`}
            </li>
          ))}
      </ul>
    </details>
  );
}
