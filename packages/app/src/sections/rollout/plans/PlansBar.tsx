import type { RolloutSheet } from '@eavewell/tables';
import { Link, useNavigate } from '@tanstack/react-router';
import { useId } from 'react';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { ChangedSince } from './ChangedSince.tsx';
import { FirstUse } from './FirstUse.tsx';
import { FoundNotice } from './FoundNotice.tsx';
import { MakePlan } from './MakePlan.tsx';
import { NameAndNote, PutInForce, RemovePlan } from './PlanActs.tsx';
import { planFacts, planName } from './planWords.ts';
import { Searching } from './Searching.tsx';
import './plans.css';

interface OfSheet {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** Which plan is shown, what is to be done with it, and what changed since it was worked out. */
export function PlansBar({ sheet, programmeId }: OfSheet) {
  const { say } = useLanguage();
  const plan = sheet.plans.find(({ planId }) => planId === sheet.planId);
  if (plan === undefined)
    return (
      <div className="plans-bar">
        <FirstUse programmeId={programmeId} />
        <Searching programmeId={programmeId} sheet={sheet} />
      </div>
    );
  return (
    <div className="plans-bar">
      <Which sheet={sheet} programmeId={programmeId} plan={plan} />
      <Searching programmeId={programmeId} sheet={sheet} />
      <FoundNotice programmeId={programmeId} planId={plan.planId} />
      <ChangedSince programmeId={programmeId} sheet={sheet} />
      <div className="plan-acts on-screen">
        <details>
          <summary className="press">{say('rolloutPlans.make')}</summary>
          <MakePlan programmeId={programmeId} sheet={sheet} />
        </details>
        <NameAndNote programmeId={programmeId} plan={plan} />
        <RemovePlan programmeId={programmeId} plan={plan} />
        <Who />
      </div>
    </div>
  );
}

/** The plan that is shown, by name, with the others one choice away; and the pages beside the sheet. */
function Which({ sheet, programmeId, plan }: OfSheet & { readonly plan: RolloutSheet['plans'][number] }) {
  const language = useLanguage();
  const { say } = language;
  const id = useId();
  const navigate = useNavigate();
  const show = (planId: string) =>
    void navigate({
      to: '/p/$programmeId/rollout',
      params: { programmeId },
      search: { plan: planId },
      resetScroll: false,
    });
  const search = { plan: plan.planId };
  // The plan that is shown beside the one in force.
  const inForce = sheet.plans.find((one) => one.isInForce && one !== plan);
  const beside = inForce === undefined ? { a: plan.planId } : { a: inForce.planId, b: plan.planId };
  return (
    <div className="which-plan">
      <p className="plan-shown">
        {sheet.plans.length < 2 ? (
          <>
            {say('rolloutPlans.plan')} <b>{plan.name}</b>{' '}
          </>
        ) : (
          <label htmlFor={id}>{say('rolloutPlans.plan')}</label>
        )}
        {sheet.plans.length < 2 ? null : (
          <select id={id} className="on-screen" value={plan.planId} onChange={(event) => show(event.target.value)}>
            {sheet.plans.map((one) => (
              <option key={one.planId} value={one.planId}>
                {planName(one, language)}
              </option>
            ))}
          </select>
        )}
        {sheet.plans.length < 2 ? null : <b className="on-paper">{plan.name}</b>}{' '}
        <span>{plan.isInForce ? say('rolloutPlans.in_force') : say('rolloutPlans.not_in_force')}</span>{' '}
        <span className="small">{planFacts(plan, language)}</span>
      </p>
      <PutInForce programmeId={programmeId} plan={plan} />
      <nav className="on-screen" aria-label={say('rolloutPlans.beside')}>
        <Link to="/p/$programmeId/rollout/happened" params={{ programmeId }} search={search}>
          {say('rolloutHappened.title')}
        </Link>
        <Link to="/p/$programmeId/rollout/sites" params={{ programmeId }} search={search}>
          {say('rolloutPlans.choose_sites')}
        </Link>
        {sheet.plans.length < 2 ? null : (
          <Link to="/p/$programmeId/rollout/plans" params={{ programmeId }} search={beside}>
            {say('rolloutPlans.side_by_side')}
          </Link>
        )}
      </nav>
    </div>
  );
}
