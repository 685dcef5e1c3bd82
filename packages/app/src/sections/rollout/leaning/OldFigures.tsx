import type { RolloutSheet } from '@eavewell/tables';
import { useQuery } from '@tanstack/react-query';
import { queries } from '../../../api/queries.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useMakingShare } from './useMakingShare.ts';

/** Over figures of before the last change, as long as those of after it are worked out. */
export function OldFigures({ sheet, programmeId }: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  const { say } = useLanguage();
  const { data: now } = useQuery(queries.programme(programmeId));
  const share = useMakingShare(programmeId);
  const isOld = now !== undefined && now.version > sheet.version;
  // The place that speaks is there before it has something to say, or nothing is read aloud.
  return (
    <div role="status" className="old-figures on-screen">
      {isOld ? (
        <p className="heed">
          {say('rolloutPlans.old_figures', { done: share === null ? 'no' : 'yes', share: share ?? '' })}
        </p>
      ) : null}
    </div>
  );
}
