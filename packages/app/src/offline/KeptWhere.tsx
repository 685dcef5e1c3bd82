import { Link } from '@tanstack/react-router';
import { useSyncExternalStore } from 'react';
import { useReach } from '../api/useReach.ts';
import { unsaved } from '../forms/unsaved.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { lastSaved, onSaved } from './lastSaved.ts';
import { NewPages } from './NewPages.tsx';
import { useKeptChanges } from './useKept.ts';
import { useReadAt } from './useReadAt.ts';
import './offline.css';

/** What is saved where, in words. */
export function KeptWhere({ programmeId }: { readonly programmeId?: string | undefined }) {
  const { say } = useLanguage();
  const kept = useKeptChanges();
  return (
    <div className="kept-where">
      <p role="status">
        <WhereSaved programmeId={programmeId} />
        {kept.length > 0 && <> {say('offline.kept', { count: kept.length })}</>}
      </p>
      {kept.length > 0 && (
        <p className="on-screen">
          <Link to="/kept">{say(kept.some(({ state }) => state !== 'waits') ? 'offline.decide' : 'offline.look')}</Link>
        </p>
      )}
      <NewPages />
    </div>
  );
}

/** Whether the program answers; and if not, of when what is seen is. */
function WhereSaved({ programmeId }: { readonly programmeId: string | undefined }) {
  const { say, numbers } = useLanguage();
  const reach = useReach();
  const readAt = useReadAt();
  const savedAt = useSyncExternalStore(onSaved, lastSaved);
  const count = useSyncExternalStore(unsaved.subscribe, () => unsaved.count(programmeId));
  const moment = (at: number) => numbers.moment(new Date(at).toISOString());
  if (reach === 'here' && count > 0) return say('forms.unsaved', { count });
  if (reach === 'here')
    return savedAt === null ? say('app.saved_here') : say('offline.saved_at', { at: moment(savedAt) });
  const seen = readAt === null ? '' : ` ${say('offline.read_at', { at: moment(readAt) })}`;
  return `${say(reach === 'gone' ? 'offline.gone' : 'app.refused')}${seen}`;
}
