import { useFieldWords } from '../forms/useFieldWords.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { nameOfRecord, type RecordTold, type RecordWords } from './recordSentence.ts';

/** What records are put into words with where no table of the programme is read: sites by their ids. */
export function useTelling(records: readonly RecordTold[]): RecordWords {
  const { say } = useLanguage();
  const words = useFieldWords();
  return {
    ...{ say, words },
    cell: (_, value) => (value === null ? say('forms.not_known') : words.choice(value)),
    siteName: () => null,
    find: (name) => records.find((record) => nameOfRecord(record) === name),
  };
}
