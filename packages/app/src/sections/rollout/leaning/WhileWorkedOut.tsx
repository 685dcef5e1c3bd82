import { type ReactNode, Suspense } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useMakingShare } from './useMakingShare.ts';

/** Says what is being done while the plan of a programme is worked out, and how far it is; never an empty page. */
export function WhileWorkedOut(props: { readonly programmeId: string; readonly children: ReactNode }) {
  return <Suspense fallback={<Wait programmeId={props.programmeId} />}>{props.children}</Suspense>;
}

function Wait({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const share = useMakingShare(programmeId);
  return (
    <p role="status" className="being-worked-out">
      {say('rolloutPlans.working_out', { done: share === null ? 'no' : 'yes', share: share ?? '' })}
    </p>
  );
}
