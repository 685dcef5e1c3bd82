import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { askAnew } from '../../api/useChange.ts';
import { useWho } from '../../api/useWho.ts';
import { Who } from '../../forms/Who.tsx';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Brought } from './Brought.tsx';
import { type ImportName, letGo, type Review, reviewQuery, reviewsKey, takeIn } from './importsApi.ts';
import { Matchings } from './Matchings.tsx';
import { NotDoneWords } from './NotDoneWords.tsx';
import { ReviewChanges } from './ReviewChanges.tsx';
import { ReviewProblems } from './ReviewProblems.tsx';
import { StepsBack } from './StepsBack.tsx';
import { useReviewStep } from './useReviewStep.ts';

export interface ReviewProps {
  readonly review: Review;
  readonly name: ImportName;
  onOpen(importId: string | null): void;
}

/** Files that wait: what they bring, what is wrong in them, what they would change; and the word of the person. */
export function ReviewSheet(props: ReviewProps) {
  const { say } = useLanguage();
  const { review, name } = props;
  const step = useReviewStep(name);
  return (
    <>
      <h1>{titleOf(review, say)}</h1>
      <p>
        {say('imports.of_files', { file: review.sent[0] ?? review.file, more: Math.max(0, review.sent.length - 1) })}{' '}
        {say('imports.nothing_yet')}
      </p>
      {review.isReading ? (
        <p role="status">
          {say('imports.reading', { percent: Math.round(review.done_fraction * 100) })}
          <progress value={review.done_fraction} max={1} aria-label={say('imports.title')} />
        </p>
      ) : (
        <>
          <Brought review={review} step={step} />
          <Matchings review={review} step={step} />
          <ReviewProblems review={review} step={step} />
          <StepsBack review={review} step={step} />
          <ReviewChanges review={review} />
        </>
      )}
      <NotDoneWords error={step.error} />
      <p className="small">{say('imports.waits_an_hour')}</p>
      <Word {...props} />
    </>
  );
}

function titleOf(
  { changes, isReading, freshRecords, mayBeAccepted, problems, there }: Review,
  say: ReturnType<typeof useLanguage>['say'],
): string {
  if (isReading) return say('imports.title');
  if (there !== null) return say('imports.title_there', { name: there.name });
  const sum = (kind: 'added' | 'edited' | 'removed') => changes.reduce((all, table) => all + table[kind], 0);
  const [added, edited, removed] = [sum('added'), sum('edited'), sum('removed')];
  const isNothing = added + edited + removed === 0 && freshRecords === 0;
  // What cannot be compared yet may change something once it is mended.
  if (isNothing) return say(mayBeAccepted || problems.length === 0 ? 'imports.changes_nothing' : 'imports.not_ready');
  return say('imports.would_change', { added, edited, removed });
}

/** Take in or let go, under whose name. */
// long: the foot of the page: its presses and what comes of each
function Word({ review, name, onOpen }: ReviewProps) {
  const { say } = useLanguage();
  const who = useWho();
  const client = useQueryClient();
  const navigate = useNavigate();
  const isNew = name.programmeId === null;
  const { there } = review;
  const [typedName, setProgrammeName] = useState<string | null>(null);
  const programmeName =
    typedName ?? (there === null ? (review.programmeName ?? '') : say('imports.second_name', { name: there.name }));
  const accepting = useMutation({
    mutationFn: () => takeIn(name, { by: who, name: isNew ? programmeName.trim() : null, isBeside: there !== null }),
    onSuccess: async ({ programmeId }) => {
      await navigate({ to: '/p/$programmeId/sites', params: { programmeId } });
      client.removeQueries({ queryKey: reviewsKey(name.programmeId) });
      await askAnew(client, programmeId);
    },
    // What was looked at is another now: it is shown anew.
    onError: () => client.invalidateQueries({ queryKey: reviewsKey(name.programmeId) }),
  });
  const going = useMutation({
    mutationFn: () => letGo(name),
    onSuccess: () => {
      onOpen(null);
      client.removeQueries({ queryKey: reviewQuery(name).queryKey, type: 'inactive' });
    },
  });
  const isBusy = accepting.isPending || going.isPending;
  const isSameName = isNew && there !== null && programmeName.trim() === there.name;
  const isWanting = who === '' || isSameName || (isNew && programmeName.trim() === '');
  return (
    <div className="save-bar on-screen">
      <NotDoneWords error={accepting.error ?? going.error} />
      {review.mayBeAccepted || review.isReading ? null : <p className="small">{say('imports.not_yet')}</p>}
      {there === null ? null : <There there={there} isSameName={isSameName} />}
      {isNew ? (
        <p className="who">
          <label htmlFor="programme-of-files">{say('programmes.name')}</label>
          <input
            id="programme-of-files"
            value={programmeName}
            maxLength={200}
            onChange={(event) => setProgrammeName(event.target.value)}
          />
        </p>
      ) : null}
      <Who />
      <p className="save-presses">
        <button
          type="button"
          className="button main"
          disabled={!review.mayBeAccepted || isWanting || isBusy}
          onClick={() => accepting.mutate()}
        >
          {say(there !== null ? 'imports.make_second' : isNew ? 'imports.make_programme' : 'imports.take_in')}
        </button>
        <button type="button" className="button" disabled={isBusy} onClick={() => going.mutate()}>
          {say('imports.let_go')}
        </button>
      </p>
    </div>
  );
}

/** The programme of these files is here already: it can be opened, or a second one made beside it. */
function There(props: { readonly there: NonNullable<Review['there']>; readonly isSameName: boolean }) {
  const { say } = useLanguage();
  const { programmeId, name } = props.there;
  return (
    <div className="heed">
      <p>
        {say('imports.there')}{' '}
        <Link to="/p/$programmeId/sites" params={{ programmeId }}>
          {say('imports.open_there', { name })}
        </Link>
      </p>
      <p>{say('imports.there_about', { name })}</p>
      {props.isSameName ? <p className="field-wanting">{say('imports.name_of_its_own', { name })}</p> : null}
    </div>
  );
}
