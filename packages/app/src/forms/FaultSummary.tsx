import { type Ref, useEffect, useEffectEvent, useRef } from 'react';
import type { ChangeOutcome } from '../api/useChange.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { fieldId } from './Field.tsx';
import type { FieldFault } from './outcome.ts';
import { useFieldWords } from './useFieldWords.ts';
import { whoId } from './Who.tsx';

/** All that stands against saving, at the top of a form. Each leads to its field; the page goes to it when saving was tried. */
export function FaultSummary(props: {
  readonly faults: readonly FieldFault[];
  readonly outcome: ChangeOutcome | null;
  readonly needsName: boolean;
  /** Grows with each try. */
  readonly tries: number;
}) {
  const { faults, outcome, needsName, tries } = props;
  const ref = useRef<HTMLDivElement>(null);
  const isRefused = outcome !== null && !outcome.isSaved;
  const count = faults.length + (needsName ? 1 : 0);
  const isShown = tries > 0 && (count > 0 || isRefused);
  const goThere = useEffectEvent((_tries: number, _isRefused: boolean) => {
    if (isShown) ref.current?.focus();
  });
  // It is gone to when saving was tried or refused, never while she types.
  useEffect(() => goThere(tries, isRefused), [tries, isRefused]);
  return isShown ? <Summary {...props} count={count} box={ref} /> : null;
}

function Summary({
  faults,
  outcome,
  needsName,
  count,
  box,
}: {
  readonly faults: readonly FieldFault[];
  readonly outcome: ChangeOutcome | null;
  readonly needsName: boolean;
  readonly count: number;
  readonly box: Ref<HTMLDivElement>;
}) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const lead = (id: string) => (event: { preventDefault(): void }) => {
    event.preventDefault();
    document.getElementById(id)?.focus();
  };
  return (
    <div className="trouble" ref={box} tabIndex={-1}>
      {count > 0 ? <p>{say('forms.not_saved_faults', { count })}</p> : <NotSaved outcome={outcome} />}
      <ul>
        {needsName ? (
          <li>
            <a href={`#${whoId}`} onClick={lead(whoId)}>
              {say('forms.name_needed')}
            </a>
          </li>
        ) : null}
        {faults.map(({ row, column, said }) => (
          <li key={`${row.table}/${row.key}/${column}`}>
            <a href={`#${fieldId(row, column)}`} onClick={lead(fieldId(row, column))}>
              {words.label(row.table, column)}
            </a>
            {': '}
            {say(said.key, said.values)}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Why the program did not save, in its own words; what was typed stays. */
export function NotSaved({ outcome }: { readonly outcome: ChangeOutcome | null }) {
  const { say } = useLanguage();
  if (outcome === null || outcome.isSaved) return null;
  if (outcome.reason === 'unreachable') return <p>{say('forms.not_saved_unreachable')}</p>;
  if (outcome.reason === 'refused') return <p>{say('app.refused')}</p>;
  return (
    <>
      <p>{say('forms.not_saved')}</p>
      <ul>
        {outcome.problems.map(({ what, todo }) => (
          <li key={what}>
            {what} {todo}
          </li>
        ))}
      </ul>
    </>
  );
}
