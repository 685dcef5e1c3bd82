import { useQuery } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { queries } from '../../../api/queries.ts';
import { useWho } from '../../../api/useWho.ts';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import type { Judged, KeepOutcome, SiteWater } from '../../../water/index.ts';
import type { SiteReport } from '../siteFigures.ts';
import { draftProblems } from './draftProblems.ts';
import { remedyKey, stepWords } from './stepWords.ts';

/** What is changed and not kept: each step, what it comes to beside what is saved, and what can be done with it. */
export function DraftBar({
  programmeId,
  water,
  remedies,
}: {
  readonly programmeId: string;
  readonly water: SiteWater;
  /** Those that are shown. */
  readonly remedies: SiteReport['remedies'];
}) {
  // Once one is taken others are found: what it was called is remembered.
  const abouts = useRef(new Map<string, string>());
  for (const { changes, about } of remedies?.ranked ?? []) abouts.current.set(remedyKey(changes), about);
  const { say } = useLanguage();
  const [outcome, setOutcome] = useState<KeepOutcome | null>(null);
  const { draft, saved, drafted, hasDraft, isKeeping } = water;
  const who = useWho();
  if (!hasDraft) return <Kept {...{ programmeId, outcome }} canRedo={draft.undone.length > 0} onRedo={water.redo} />;
  const keep = async () => setOutcome(await water.keep());
  return (
    <section className="draft-bar" aria-label={say('water.changed')}>
      <div>
        <h2>{say('water.changed')}</h2>
        <Steps draft={draft} abouts={abouts.current} />
        {saved && drafted ? <Then now={saved} then={drafted} /> : <p className="small">{say('water.judging')}</p>}
        {saved && drafted
          ? draftProblems(saved.report, drafted.report).map(({ code, what, todo }) => (
              <p key={`${code} ${what}`} className="small">
                {what} {todo}
              </p>
            ))
          : null}
        {outcome !== null && !outcome.isSaved ? <NotKept outcome={outcome} /> : null}
      </div>
      <div className="draft-acts on-screen">
        <Who />
        <button type="button" className="button main" disabled={isKeeping || who === ''} onClick={() => void keep()}>
          {say('water.keep')}
        </button>
        <button type="button" className="button" onClick={water.discard}>
          {say('water.let_go')}
        </button>
        <button type="button" className="button plain" onClick={water.undo}>
          {say('water.step_back')}
        </button>
        {draft.undone.length === 0 ? null : (
          <button type="button" className="button plain" onClick={water.redo}>
            {say('water.step_forth')}
          </button>
        )}
      </div>
    </section>
  );
}

function Steps({
  draft,
  abouts,
}: {
  readonly draft: SiteWater['draft'];
  readonly abouts: ReadonlyMap<string, string>;
}) {
  const language = useLanguage();
  return (
    <ol className="draft-steps">
      {draft.steps.map((step, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: steps are made in this order and taken back from its end
        <li key={i}>{stepWords(step, abouts, language)}</li>
      ))}
    </ol>
  );
}

/** The verdict as saved, and as it would be. */
export function Then({ now, then }: { readonly now: Judged; readonly then: Judged }) {
  const { say } = useLanguage();
  return (
    <p className="then" role="status">
      <One judged={then} head={say('water.then')} />
      <One judged={now} head={say('water.now')} isSmall />
    </p>
  );
}

function One({
  judged,
  head,
  isSmall = false,
}: {
  readonly judged: Judged;
  readonly head: string;
  readonly isSmall?: boolean;
}) {
  const { say, numbers } = useLanguage();
  const { verdict, storages } = judged.report;
  const [worst] = storages;
  return (
    <span className={isSmall ? 'doubt' : ''}>
      {head} <VerdictMark verdict={verdict} size={isSmall ? 14 : 22} />{' '}
      <span className={`w-${verdict}`}>{say(`sites.verdict_${verdict}`)}</span>
      {worst === undefined
        ? ''
        : `, ${say('site.good_years', { years: numbers.ofYears(worst.goodYears, worst.judgedYears) })}, ${numbers.dryDaysAYear(worst.dryDays_per_year)}`}
    </span>
  );
}

/** What came of keeping, once nothing is left to keep. */
function Kept({
  programmeId,
  outcome,
  canRedo,
  onRedo,
}: {
  readonly programmeId: string;
  readonly outcome: KeepOutcome | null;
  readonly canRedo: boolean;
  onRedo(): void;
}) {
  const { say } = useLanguage();
  const { data: programme } = useQuery(queries.programme(programmeId));
  // Once it was taken back, or something else was done, it is no news any more.
  const isLast = outcome !== null && (outcome.isKept || programme?.undo === outcome.record);
  return (
    <div className="draft-kept on-screen" role="status">
      {outcome?.isSaved && isLast ? (
        <p>
          {say(outcome.isKept ? 'water.kept_here' : 'water.kept')}{' '}
          {outcome.told.map((one) => say(one.key, one.values)).join(' ')}
        </p>
      ) : null}
      {canRedo ? (
        <button type="button" className="press" onClick={onRedo}>
          {say('water.step_forth')}
        </button>
      ) : null}
    </div>
  );
}

function NotKept({ outcome }: { readonly outcome: KeepOutcome }) {
  const { say } = useLanguage();
  const why = [
    ...outcome.refused.map((one) => say(one.key, one.values)),
    ...outcome.problems.map(({ what, todo }) => `${what} ${todo}`),
  ].join(' ');
  // It is never told without a reason.
  const other =
    outcome.reason === 'unreachable'
      ? say('water.problem_unreachable')
      : say(outcome.reason === 'refused' ? 'water.problem_refused' : 'water.problem_broken');
  return (
    <p className="trouble" role="alert">
      {say('water.not_kept', { why: why === '' ? other : why })}
    </p>
  );
}
