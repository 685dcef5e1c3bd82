import { type ReactNode, Suspense } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useMakingShare } from './useMakingShare.ts';

interface Waiting {
  readonly programmeId: string;
  /** What the page is called, where it has a name before its data are there. */
  readonly title?: string;
}

/** Says what is being done while the plan of a programme is worked out, and how far it is; never an empty page. */
export function WhileWorkedOut({ children, ...waiting }: Waiting & { readonly children: ReactNode }) {
  return <Suspense fallback={<Wait {...waiting} />}>{children}</Suspense>;
}

function Wait({ programmeId, title }: Waiting) {
  const { say } = useLanguage();
  const share = useMakingShare(programmeId);
  return (
    <>
      {title === undefined ? null : <h1>{title}</h1>}
      <p role="status" className="being-worked-out">
        {say('rolloutPlans.working_out', { done: share === null ? 'no' : 'yes', share: share ?? '' })}
      </p>
    </>
  );
}
