import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams } from '@tanstack/react-router';
import { useDeferredValue, useEffect, useRef, useState } from 'react';
import { queries } from '../api/queries.ts';
import { type ChangeOutcome, useStep } from '../api/useChange.ts';
import { useWho } from '../api/useWho.ts';
import { Who } from '../forms/Who.tsx';
import { askedBefore, meantBy, type RecordTold, recordSentence } from '../history/recordSentence.ts';
import { useTelling } from '../history/useTelling.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { AskUndo } from './AskUndo.tsx';
import { type Step, stepOfKeys } from './stepOfKeys.ts';

const isField = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable="true"], [role="dialog"]');

/** A step that was made, and what came of it. */
interface StepDone {
  readonly step: Step;
  readonly what: string;
  readonly outcome: ChangeOutcome;
}

/** Undo and redo, with what each would take back in words, and what was taken back last. */
export function UndoSteps({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const who = useWho();
  const asked = useAsked(programmeId);
  const [told, setTold] = useState<StepDone | null>(null);
  const [isNameAsked, setNameAsked] = useState(false);
  const steps = { undo: useStep(programmeId, 'undo'), redo: useStep(programmeId, 'redo') };
  const navigate = useNavigate();
  const siteId = useParams({ strict: false, select: (params) => params.siteId });
  const isBusy = steps.undo.isPending || steps.redo.isPending;
  const undoPress = useRef<HTMLButtonElement>(null);
  const [isAsking, setAsking] = useState(false);
  const go = async (step: Step, isSure = false) => {
    const what = asked[step]?.what;
    if (what === undefined || isBusy) return;
    setNameAsked(who === '');
    if (who === '') return;
    const isToBeAsked = step === 'undo' && asked.ask !== null && !isSure;
    setAsking(isToBeAsked);
    if (isToBeAsked) return;
    // Who stands at a site that goes is led to those that stay.
    if (siteId !== undefined && asked[step]?.going.includes(siteId))
      await navigate({ to: '/p/$programmeId/sites', params: { programmeId } });
    setTold({ step, what, outcome: await steps[step].mutateAsync(who) });
  };
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const step = stepOfKeys(event);
      if (step === null || event.defaultPrevented || isField(event.target)) return;
      event.preventDefault();
      void go(step);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  });
  return (
    <div className="undo-steps on-screen">
      {(['undo', 'redo'] as const).map((step) =>
        asked[step] === null ? null : (
          <button
            key={step}
            ref={step === 'undo' ? undoPress : null}
            type="button"
            className="button plain"
            disabled={isBusy}
            title={asked[step].what}
            aria-keyshortcuts={step === 'undo' ? 'Control+Z' : 'Control+Shift+Z'}
            onClick={() => void go(step)}
          >
            {say(`history.press_${step}`)}: <span className="undo-what">{asked[step].what}</span>
          </button>
        ),
      )}
      {isAsking && asked.ask !== null && asked.undo !== null ? (
        <AskUndo
          what={asked.undo.what}
          ask={asked.ask}
          count={asked.undo.count}
          near={undoPress}
          onAnswer={(isWanted) => {
            setAsking(false);
            if (isWanted) void go('undo', true);
          }}
        />
      ) : null}
      {isNameAsked && who === '' ? <Who /> : null}
      <Told told={told} />
    </div>
  );
}

/** What came of the last step. It is one line of the head where it was done, and whole where something is to be said of it. */
function Told({ told }: { readonly told: StepDone | null }) {
  const { say } = useLanguage();
  if (told === null) return <p role="status" className="undo-told" />;
  const { step, what, outcome } = told;
  const problems = outcome.problems.map((problem) => `${problem.what} ${problem.todo}`).join(' ');
  const wrong = outcome.reason === 'unreachable' ? say('forms.not_saved_unreachable') : problems || say('app.refused');
  if (!outcome.isSaved)
    return (
      <p role="status" className="undo-told">
        {wrong}
      </p>
    );
  const done = `${say(`history.told_${step}`, { what })} ${problems}`.trim();
  return (
    <p role="status" className={problems === '' ? 'undo-told is-done' : 'undo-told'} title={done}>
      {done}
    </p>
  );
}

/** What a step would do, in words, and to how many rows. */
interface StepTold {
  readonly what: string;
  readonly count: number;
  /** Sites that are no more once it is made. */
  readonly going: readonly string[];
}

/** What undo and redo would do; null where there is nothing. And what is asked before an undo; null where a press is enough. */
type Asked = Readonly<Record<Step, StepTold | null>> & { readonly ask: ReturnType<typeof askedBefore> };

function useAsked(programmeId: string): Asked {
  const { say } = useLanguage();
  const { data: state } = useQuery(queries.programme(programmeId));
  const { data } = useQuery({ ...queries.lastRecords(programmeId), enabled: state !== undefined });
  // Their sentences are a rendering of their own: what answers at once does not wait for them.
  const last = useDeferredValue(data);
  const records = last?.records ?? [];
  const telling = useTelling(records);
  const { find } = telling;
  const sentence = (record: RecordTold | undefined) =>
    record === undefined ? say('history.earlier') : recordSentence(meantBy(record, find), telling);
  const told = (name: string | null | undefined): StepTold | null => {
    if (name == null) return null;
    const record = find(name);
    const going = (record?.changes ?? []).flatMap(({ kind, table, key }) =>
      kind === 'added' && table === 'sites' ? [key] : [],
    );
    return { what: sentence(record), count: record?.changeCount ?? 0, going };
  };
  const undone = state?.undo == null ? undefined : find(state.undo);
  return {
    undo: told(state?.undo),
    redo: told(state?.redo),
    ask: undone === undefined ? null : askedBefore(meantBy(undone, find)),
  };
}
