import { useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { WhileWorkedOut } from '../leaning/WhileWorkedOut.tsx';
import { PaperFoot } from '../paper/PaperFoot.tsx';
import { rolloutQuery } from '../rolloutQuery.ts';
import { WithWorkings } from '../working/opening.tsx';
import { Back, ComparedCosts, ComparedPicture } from './ComparedParts.tsx';
import { ComparedAreas, ComparedSites } from './ComparedTables.tsx';
import { comparedQuery } from './comparedQuery.ts';
import { LookAtFound } from './LookAtFound.tsx';
import { PutInForce } from './PlanActs.tsx';
import { planName } from './planWords.ts';
import './plans.css';

const from = '/p/$programmeId/rollout/plans';

/** Two plans side by side: what differs, for whom, what it costs. */
export function ComparePlans() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from });
  return (
    <WhileWorkedOut programmeId={programmeId} title={say('rolloutPlans.side_by_side')}>
      <TwoPlans />
    </WhileWorkedOut>
  );
}

// long: the page as it is read, part after part
function TwoPlans() {
  const language = useLanguage();
  const { say } = language;
  const { programmeId } = useParams({ from });
  const asked = useSearch({ from });
  const { data: sheet } = useSuspenseQuery(rolloutQuery(programmeId));
  const { plans } = sheet;
  if (asked.anew === 'yes') return <LookAtFound programmeId={programmeId} sheet={sheet} into={asked.a ?? null} />;
  const known = (planId: string | undefined) => plans.find((plan) => plan.planId === planId);
  const a = known(asked.a) ?? plans.find((plan) => plan.isInForce) ?? plans[0];
  const b = known(asked.b) ?? plans.find((plan) => plan !== a);
  if (a === undefined || b === undefined)
    return (
      <>
        <h1>{say('rolloutPlans.side_by_side')}</h1>
        <p>{say('rolloutPlans.one_plan')}</p>
        <Back programmeId={programmeId} />
      </>
    );
  return (
    <div className="compare-plans">
      <PaperFoot
        programme={sheet.programme}
        plan={say('rolloutPlans.two', { a: a.name, b: b.name })}
        sheet={say('rolloutPlans.side_by_side')}
      />
      <h1>{say('rolloutPlans.compared_title', { a: a.name, b: b.name })}</h1>
      <search className="two-plans on-screen">
        {(
          [
            ['a', a],
            ['b', b],
          ] as const
        ).map(([side, plan]) => (
          <PlanChoice key={side} {...{ plans, plan, side, language }} of={{ a: a.planId, b: b.planId }} />
        ))}
        <button type="button" className="button" onClick={() => window.print()}>
          {say('rolloutPlans.print')}
        </button>
      </search>
      {a === b ? <p role="status">{say('rolloutPlans.same_plan')}</p> : <Beside {...{ programmeId, a, b, sheet }} />}
      <Back programmeId={programmeId} />
    </div>
  );
}

type Sheet = Awaited<ReturnType<NonNullable<ReturnType<typeof rolloutQuery>['queryFn']>>>;
type Plan = Sheet['plans'][number];

function PlanChoice(props: {
  readonly plans: readonly Plan[];
  readonly plan: Plan;
  readonly side: 'a' | 'b';
  readonly of: { readonly a: string; readonly b: string };
  readonly language: ReturnType<typeof useLanguage>;
}) {
  const { plans, plan, side, of, language } = props;
  const navigate = useNavigate({ from });
  return (
    <label>
      {language.say(`rolloutPlans.side_${side}`)}{' '}
      <select
        value={plan.planId}
        onChange={(event) =>
          void navigate({ to: '.', search: { ...of, [side]: event.target.value }, replace: true, resetScroll: false })
        }
      >
        {plans.map((one) => (
          <option key={one.planId} value={one.planId}>
            {planName(one, language)}
          </option>
        ))}
      </select>
    </label>
  );
}

function Beside(props: {
  readonly programmeId: string;
  readonly a: Plan;
  readonly b: Plan;
  readonly sheet: Pick<Sheet, 'currency'>;
}) {
  const { say } = useLanguage();
  const { programmeId, a, b, sheet } = props;
  const asked = useDeferredValue({ a: a.planId, b: b.planId });
  const { data: compared, error } = useQuery(comparedQuery(programmeId, asked.a, asked.b));
  if (error !== null) throw error;
  if (compared === undefined) return <p role="status">{say('rolloutPlans.comparing')}</p>;
  const { said, sites, byArea, stamp } = compared;
  return (
    <WithWorkings programmeId={programmeId} sheet={{ planId: a.planId, stamp, futures: 'none', crews: [] }}>
      <ul className="compared-said">
        {said.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <p className="presses on-screen">
        <PutInForce programmeId={programmeId} plan={a} />
        <PutInForce programmeId={programmeId} plan={b} />
        <Who />
      </p>
      <ComparedPicture compared={compared} />
      <ComparedCosts compared={compared} currency={sheet.currency} />
      <ComparedSites sites={sites} a={compared.a} b={compared.b} />
      <ComparedAreas areas={byArea} a={compared.a} b={compared.b} />
    </WithWorkings>
  );
}
