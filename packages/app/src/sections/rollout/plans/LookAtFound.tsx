import type { RolloutComparison, RolloutSheet } from '@eavewell/tables';
import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useWho } from '../../../api/useWho.ts';
import { askForName, Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PaperFoot } from '../paper/PaperFoot.tsx';
import { rolloutQuery } from '../rolloutQuery.ts';
import { WithWorkings } from '../working/opening.tsx';
import { ChangedTrips, LeavingSoon, NotHoldingAnew } from './ChangedTrips.tsx';
import { Back, ComparedCosts, ComparedPicture } from './ComparedParts.tsx';
import { ComparedAreas, ComparedSites } from './ComparedTables.tsx';
import { foundQuery } from './comparedQuery.ts';
import { NotBegun } from './MakePlan.tsx';
import { Searching } from './Searching.tsx';
import { ToldOtherwise } from './ToldOtherwise.tsx';
import { UnsaidTrips } from './UnsaidTrips.tsx';
import { useFound } from './useFound.ts';
import type { Found } from './useSearch.ts';

type Anew = NonNullable<RolloutComparison['anew']>;

interface OfPage {
  readonly programmeId: string;
  readonly sheet: RolloutSheet;
}

/** A plan that was found in place of another, before it is kept: what it changes, for whom, and what of it comes from what happened. */
export function LookAtFound({ programmeId, sheet, into }: OfPage & { readonly into: string | null }) {
  const { say } = useLanguage();
  const { found } = useFound(programmeId, into);
  const plan = sheet.plans.find(({ planId }) => planId === into);
  if (found === undefined) return <p role="status">{say('rolloutPlans.comparing')}</p>;
  if (found === null || plan === undefined)
    return (
      <>
        <h1>{say('rolloutPlans.anew_head')}</h1>
        <p role="status">{say('rolloutPlans.anew_gone')}</p>
        <Searching programmeId={programmeId} sheet={sheet} />
        <Back programmeId={programmeId} />
      </>
    );
  const title = say('rolloutPlans.anew_title', { name: plan.name });
  return (
    <div className="compare-plans">
      <PaperFoot programme={sheet.programme} plan={plan.name} sheet={title} />
      <h1>{title}</h1>
      <Looked programmeId={programmeId} sheet={sheet} found={found} />
      <Back programmeId={programmeId} plan={found.into} />
    </div>
  );
}

function Looked({ programmeId, sheet, found }: OfPage & { readonly found: Found }) {
  const { say } = useLanguage();
  const { data: compared, error, isFetching } = useQuery(foundQuery(programmeId, found));
  if (error !== null) throw error;
  if (compared === null) return <p role="status">{say('rolloutPlans.anew_gone')}</p>;
  if (compared?.anew == null) return <p role="status">{say('rolloutPlans.comparing')}</p>;
  const { a, b, anew, sites, byArea } = compared;
  return (
    <WithWorkings
      programmeId={programmeId}
      sheet={{ planId: found.into, stamp: compared.stamp, futures: 'none', crews: [] }}
    >
      <ul className="compared-said">
        {anew.said.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      {isFetching ? <p role="status">{say('rolloutPlans.comparing')}</p> : null}
      <FoundFor anew={anew} found={found} />
      <LeavingSoon trips={anew.trips} />
      <NotHoldingAnew broken={anew.broken} />
      <Unsaid programmeId={programmeId} sheet={sheet} found={found} />
      <ToldOtherwise anew={anew} />
      <Acts programmeId={programmeId} sheet={sheet} found={found} />
      <ComparedPicture compared={compared} />
      <ComparedSites sites={sites} a={a} b={b} isAnew />
      <ChangedTrips trips={anew.trips} />
      <ComparedCosts compared={compared} currency={sheet.currency} />
      <ComparedAreas areas={byArea} a={a} b={b} />
    </WithWorkings>
  );
}

/** Of the plan it is kept as, which need not be the one in force: trips that should have left. */
function Unsaid({ programmeId, sheet, found: { into } }: OfPage & { readonly found: Found }) {
  const isOther = sheet.planId !== into;
  const { data: other } = useQuery({ ...rolloutQuery(programmeId, into), enabled: isOther });
  const of = isOther ? other : sheet;
  return of === undefined ? null : <UnsaidTrips programmeId={programmeId} sheet={of} />;
}

/** For whom and for which tables it was found, and what was entered since. */
function FoundFor({ anew, found }: { readonly anew: Anew; readonly found: Found }) {
  const { say, numbers } = useLanguage();
  const { by, at, entered_count, isPlanChanged } = found;
  return (
    <>
      <p className="small">{say('rolloutPlans.anew_of', { by, at: numbers.moment(at) })}</p>
      {entered_count === 0 && !isPlanChanged ? null : (
        <section className="changed-since" aria-label={say('rolloutPlans.changed')}>
          {entered_count === 0 ? null : (
            <p>
              <b>{say('rolloutPlans.anew_entered', { count: entered_count })}</b>
            </p>
          )}
          <ul className="plain-list">
            {anew.entered.map((one) => (
              <li key={`${one.at} ${one.said}`}>
                <span className="small">
                  {numbers.moment(one.at)}, {one.by}
                </span>{' '}
                {one.said}
              </li>
            ))}
          </ul>
          {isPlanChanged ? <p>{say('rolloutPlans.anew_beside')}</p> : null}
        </section>
      )}
    </>
  );
}

/** Why something was not done is said below the presses. */
const saidBelow = () => undefined;

/** Keep it, leave it, or search on from it. What follows does not wait for this part of the page: it goes as soon as nothing is held. */
// long: three presses, and what is said where one of them cannot be done
function Acts({ programmeId, sheet, found }: OfPage & { readonly found: Found }) {
  const { say } = useLanguage();
  const who = useWho();
  const navigate = useNavigate();
  const { keep, leave, anew, begin, isBusy } = useFound(programmeId, found.into);
  const show = (plan: string) =>
    void navigate({ to: '/p/$programmeId/rollout', params: { programmeId }, search: { plan } });
  const isOff = isBusy || keep.isPending || leave.isPending;
  const named = (act: () => void) => () => {
    if (who === '') askForName();
    else act();
  };
  return (
    <div className="on-screen">
      <div className="presses anew-acts">
        <button
          type="button"
          className="button main"
          disabled={isOff}
          onClick={named(() => void keep.mutateAsync(found).then(({ planId }) => show(planId), saidBelow))}
        >
          {say(found.isPlanChanged ? 'rolloutPlans.anew_keep_beside' : 'rolloutPlans.anew_keep')}
        </button>
        <button
          type="button"
          className="button"
          disabled={isOff}
          onClick={() => void leave.mutateAsync(found).then(() => show(found.into), saidBelow)}
        >
          {say('rolloutPlans.anew_leave')}
        </button>
        <button type="button" className="button" disabled={isOff} onClick={named(anew)}>
          {say('rolloutPlans.anew_search_on')}
        </button>
        <button type="button" className="button" onClick={() => window.print()}>
          {say('rolloutPlans.print')}
        </button>
        <Who />
      </div>
      <p className="anew-phone small">{say('rolloutPlans.anew_phone')}</p>
      <NotBegun error={keep.error ?? leave.error ?? begin.error} />
      <Searching programmeId={programmeId} sheet={sheet} />
    </div>
  );
}
