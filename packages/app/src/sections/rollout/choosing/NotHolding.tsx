import type { SheetCandidate } from '@eavewell/tables';
import { useMemo, useState } from 'react';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { settingsChanges } from '../../../forms/settingsRows.ts';
import { useKnownRows } from '../../../forms/useKnownRows.ts';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { notHolding } from './chosenCandidates.ts';

const asked = ['settings'] as const;

/** Whether sites that do not hold are planned: said with how many they are, and settled for the whole programme alone. */
// long: one question: what it is, its answer, what came of it
export function NotHolding(props: {
  readonly programmeId: string;
  readonly candidates: readonly SheetCandidate[];
  /** The form below asks who makes a change: it is asked once on a page. */
  readonly isWhoAsked: boolean;
}) {
  const { say, numbers } = useLanguage();
  const { programmeId, candidates, isWhoAsked } = props;
  const [isOpen, setOpen] = useState(false);
  const { left, planned } = useMemo(() => notHolding(candidates), [candidates]);
  const known = useKnownRows(programmeId, asked);
  const who = useWho();
  const { change, state, outcome } = useChange(programmeId);
  if (left.sites_count === 0 && planned.sites_count === 0) return null;
  const isBold = planned.sites_count > 0;
  const counted = isBold ? planned : left;
  const values = { count: counted.sites_count, people: numbers.people(counted.people) };
  const put = async () => {
    const changes = settingsChanges({ mustHold: isBold ? 'yes' : 'no' }, known ?? []);
    if (changes.length > 0) await change(changes);
  };
  return (
    <section className="not-holding" aria-labelledby="not-holding">
      <h2 id="not-holding">{say('rolloutChoosing.hold_title')}</h2>
      <p>{say(isBold ? 'rolloutChoosing.hold_planned' : 'rolloutChoosing.hold_left', values)}</p>
      <details className="on-screen" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{say(isBold ? 'rolloutChoosing.hold_mend' : 'rolloutChoosing.hold_all_the_same')}</summary>
        <p>{say(isBold ? 'rolloutChoosing.hold_mend_about' : 'rolloutChoosing.hold_all_about', values)}</p>
        {isOpen && !isWhoAsked ? <Who /> : null}
        <NotSaved outcome={outcome} />
        <button
          type="button"
          className="button"
          disabled={known === null || who === '' || state === 'saving'}
          onClick={() => void put()}
        >
          {say(isBold ? 'rolloutChoosing.hold_only' : 'rolloutChoosing.hold_all', values)}
        </button>
      </details>
    </section>
  );
}
