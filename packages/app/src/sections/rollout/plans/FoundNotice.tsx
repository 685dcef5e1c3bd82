import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useFound } from './useFound.ts';

/** That a plan was found in place of the one that is shown, and waits to be looked at. */
export function FoundNotice({ programmeId, planId }: { readonly programmeId: string; readonly planId: string }) {
  const { say } = useLanguage();
  const { found } = useFound(programmeId, planId);
  if (found == null) return null;
  return (
    <section className="changed-since on-screen" aria-label={say('rolloutPlans.anew_head')}>
      <p>
        <b>{say('rolloutPlans.anew_found')}</b>
      </p>
      <p className="presses">
        <Link
          className="button main"
          to="/p/$programmeId/rollout/plans"
          params={{ programmeId }}
          search={{ a: planId, anew: 'yes' }}
        >
          {say('rolloutPlans.anew_look')}
        </Link>
      </p>
    </section>
  );
}
