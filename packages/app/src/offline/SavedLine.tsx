import { useLanguage } from '../language/LanguageProvider.tsx';
import { useKeptChanges } from './useKept.ts';

/** Said where a form was saved: it is in the programme, or kept in this browser until it can be. */
export function SavedLine({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const isWaiting = useKeptChanges().some((kept) => kept.programmeId === programmeId);
  return <p role="status">{say(isWaiting ? 'offline.kept_line' : 'forms.saved')}</p>;
}
