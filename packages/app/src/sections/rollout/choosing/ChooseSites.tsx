import type { SheetCandidate } from '@eavewell/tables';
import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { SiteFinder } from '../../sites/index.ts';
import { whenAsked } from '../finding/whenAsked.ts';
import { WhileWorkedOut } from '../leaning/WhileWorkedOut.tsx';
import { PaperFoot } from '../paper/PaperFoot.tsx';
import { planNamed } from '../plans/planNamed.ts';
import { rolloutQuery } from '../rolloutQuery.ts';
import { CandidateRows } from './CandidateRows.tsx';
import { ChoosingTools } from './ChoosingTools.tsx';
import { tallySentence } from './choosingWords.ts';
import { candidateTally, chosenCandidates, inOrder } from './chosenCandidates.ts';
import { NotHolding } from './NotHolding.tsx';
import { SetWork } from './SetWork.tsx';
import './choosing.css';

const from = '/p/$programmeId/rollout/sites';
const nobody: ReadonlySet<string> = new Set();

/** Which sites go in, and which do not, and why; what is agreed with each is set here, for one or for many. */
export function ChooseSites() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from });
  return (
    <WhileWorkedOut programmeId={programmeId} title={say('rolloutPlans.choose_sites')}>
      <Choosing />
    </WhileWorkedOut>
  );
}

// long: the sheet as it is read, part after part
function Choosing() {
  const language = useLanguage();
  const { say } = language;
  const { programmeId } = useParams({ from });
  const asked = useSearch({ from });
  const later = useDeferredValue(asked);
  const { data: sheet } = useSuspenseQuery(rolloutQuery(programmeId, asked.plan));
  const { candidates } = sheet;
  const tally = useMemo(() => candidateTally(candidates), [candidates]);
  const ordered = useMemo(() => inOrder(candidates), [candidates]);
  const finder = useMemo(() => whenAsked(() => new SiteFinder(ordered)), [ordered]);
  const [typed, setTyped] = useState('');
  const wanted = useDeferredValue(typed);
  const found = useMemo(() => {
    const places = wanted.trim() === '' ? null : finder().find(wanted);
    return chosenCandidates(places === null ? ordered : [...places].map((at) => ordered[at]!), later);
  }, [finder, ordered, wanted, later]);
  const [own, setOwn] = useState<ReadonlySet<string> | null>(null);
  // Who comes for one site comes to set something of it.
  const chosen = useMemo(() => own ?? (asked.site === undefined ? nobody : new Set([asked.site])), [own, asked.site]);
  const toggle = useCallback(
    (siteId: string) =>
      setOwn((before) => {
        const next = new Set(before ?? (asked.site === undefined ? [] : [asked.site]));
        if (!next.delete(siteId)) next.add(siteId);
        return next;
      }),
    [asked.site],
  );
  const ofPlan = asked.plan === undefined ? {} : { plan: asked.plan };
  return (
    <div className="choose-sites">
      <PaperFoot programme={sheet.programme} plan={planNamed(sheet)} sheet={say('rolloutPlans.choose_sites')} />
      <h1>{tallySentence(tally, sheet.planId !== null, language)}</h1>
      <p className="on-screen">
        <Link to="/p/$programmeId/rollout" params={{ programmeId }} search={ofPlan}>
          {say('rolloutChoosing.back')}
        </Link>
      </p>
      <NotHolding programmeId={programmeId} candidates={candidates} isWhoAsked={chosen.size > 0} />
      <ChoosingTools {...{ candidates, tally, asked, typed }} onType={setTyped} />
      {chosen.size === 0 ? null : (
        <section className="chosen-work on-screen" aria-labelledby="chosen-work">
          <h2 id="chosen-work">
            {say('rolloutChoosing.set', { count: chosen.size, name: nameOfOne(candidates, chosen) })}
          </h2>
          <SetWork programmeId={programmeId} siteIds={chosen} />
        </section>
      )}
      <p className="list-acts on-screen">
        <span role="status">{say('sites.shown', { count: found.length })}</span>{' '}
        {found.length === 0 ? null : (
          <button type="button" className="press" onClick={() => setOwn(new Set(found.map(({ siteId }) => siteId)))}>
            {say('rolloutChoosing.choose_all', { count: found.length })}
          </button>
        )}{' '}
        {chosen.size === 0 ? null : (
          <button type="button" className="press" onClick={() => setOwn(nobody)}>
            {say('rolloutChoosing.choose_none')}
          </button>
        )}
      </p>
      {found.length === 0 ? null : (
        <CandidateRows programmeId={programmeId} plan={asked.plan} sites={found} chosen={chosen} onToggle={toggle} />
      )}
    </div>
  );
}

/** What the one site is called that is chosen; empty where there are more. */
function nameOfOne(candidates: readonly SheetCandidate[], chosen: ReadonlySet<string>): string {
  return chosen.size === 1 ? (candidates.find(({ siteId }) => chosen.has(siteId))?.name ?? '') : '';
}
