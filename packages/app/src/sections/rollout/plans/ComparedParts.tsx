import type { RolloutComparison } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { useId } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Differences } from './ComparedTables.tsx';
import { ServedPicture } from './ServedPicture.tsx';

interface OfTwo {
  readonly compared: RolloutComparison;
}

/** How many people drink from which day on under either plan. */
export function ComparedPicture({ compared }: OfTwo) {
  const { say } = useLanguage();
  return (
    <>
      <h2>{say('rolloutPlans.people_title')}</h2>
      <ServedPicture compared={compared} a={compared.a.name} b={compared.b.name} />
    </>
  );
}

/** What the second plan takes beside the first. */
export function ComparedCosts({ compared, currency }: OfTwo & { readonly currency: string | null }) {
  const { say } = useLanguage();
  const id = useId();
  return (
    <>
      <h2 id={id}>{say('rolloutPlans.costs_title', { a: compared.a.name, b: compared.b.name })}</h2>
      <Differences compared={compared} currency={currency} labelled={id} />
    </>
  );
}

/** Back to the plan. */
export function Back({ programmeId, plan }: { readonly programmeId: string; readonly plan?: string }) {
  const { say } = useLanguage();
  return (
    <p className="on-screen">
      <Link to="/p/$programmeId/rollout" params={{ programmeId }} search={plan === undefined ? {} : { plan }}>
        {say('rolloutPlans.back')}
      </Link>
    </p>
  );
}
