import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { queries } from '../api/queries.ts';
import { type ChangeOutcome, useStep } from '../api/useChange.ts';
import { useWho } from '../api/useWho.ts';
import { useFieldWords } from '../forms/useFieldWords.ts';
import { Who } from '../forms/Who.tsx';
import { meantBy, nameOfRecord, type RecordTold, recordSentence } from '../history/recordSentence.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { type Step, stepOfKeys } from './stepOfKeys.ts';

const isField = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable="true"], [role="dialog"]');

/** Undo and redo, with what each would take back in words, and what was taken back last. */
export function UndoSteps({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const who = useWho();
  const asked = useAsked(programmeId);
  const [told, setTold] = useState<{ step: Step; what: string; outcome: ChangeOutcome } | null>(null);
  const [isNameAsked, setNameAsked] = useState(false);
  const steps = { undo: useStep(programmeId, 'undo'), redo: useStep(programmeId, 'redo') };
  const isBusy = steps.undo.isPending || steps.redo.isPending;
  const go = async (step: Step) => {
    const what = asked[step];
    if (what === null || isBusy) return;
    setNameAsked(who === '');
    if (who === '') return;
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
            type="button"
            className="button plain"
            disabled={isBusy}
            title={asked[step]}
            aria-keyshortcuts={step === 'undo' ? 'Control+Z' : 'Control+Shift+Z'}
            onClick={() => void go(step)}
          >
            {say(`history.press_${step}`)}: <span className="undo-what">{asked[step]}</span>
          </button>
        ),
      )}
      {isNameAsked && who === '' ? <Who /> : null}
      <p role="status" className="undo-told">
        {told === null ? null : <Told {...told} />}
      </p>
    </div>
  );
}

function Told({
  step,
  what,
  outcome,
}: {
  readonly step: Step;
  readonly what: string;
  readonly outcome: ChangeOutcome;
}) {
  const { say } = useLanguage();
  const problems = outcome.problems.map((problem) => `${problem.what} ${problem.todo}`).join(' ');
  if (!outcome.isSaved && outcome.reason === 'unreachable') return say('forms.not_saved_unreachable');
  if (!outcome.isSaved && problems === '') return say('app.refused');
  if (!outcome.isSaved) return problems;
  return (
    <>
      {say(`history.told_${step}`, { what })} {problems}
    </>
  );
}

/** What undo and redo would do, in words; null where there is nothing. */
function useAsked(programmeId: string): Readonly<Record<Step, string | null>> {
  const { say } = useLanguage();
  const words = useFieldWords();
  const { data: state } = useQuery(queries.programme(programmeId));
  const { data: last } = useQuery({ ...queries.lastRecords(programmeId), enabled: state !== undefined });
  const records = last?.records ?? [];
  const find = (name: string) => records.find((record) => nameOfRecord(record) === name);
  const cell = (_: unknown, value: string | null) => (value === null ? say('forms.not_known') : words.choice(value));
  const sentence = (record: RecordTold | undefined) =>
    record === undefined
      ? say('history.earlier')
      : recordSentence(meantBy(record, find), { say, words, cell, find, siteName: () => null });
  const what = (name: string | null | undefined) => (name == null ? null : sentence(find(name)));
  return { undo: what(state?.undo), redo: what(state?.redo) };
}
