import { folderTables, type RolloutSheet } from '@eavewell/tables';
import { useNavigate } from '@tanstack/react-router';
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { useKnownRows } from '../../../forms/useKnownRows.ts';
import { askForName } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { ShortForm } from '../happened/ShortForm.tsx';
import { edited, inForceChanges, planTables, removedPlan } from './planRows.ts';

interface OfPlan {
  readonly programmeId: string;
  readonly plan: RolloutSheet['plans'][number];
}

/** Lets a plan be the one that is followed; the one before is not any more. */
export function PutInForce({ programmeId, plan }: OfPlan) {
  const { say } = useLanguage();
  const who = useWho();
  const rows = useKnownRows(programmeId, planTables);
  const { change, state, outcome } = useChange(programmeId);
  if (plan.isInForce) return null;
  return (
    <>
      <button
        type="button"
        className="button on-screen"
        disabled={rows === null || state === 'saving'}
        onClick={() => {
          if (who === '') askForName();
          else void change(inForceChanges(rows ?? [], plan.planId));
        }}
      >
        {say('rolloutPlans.put_in_force', { name: plan.name })}
      </button>
      <NotSaved outcome={outcome} />
    </>
  );
}

/** What the plan is called, and what is to be known of it. */
export function NameAndNote({ programmeId, plan }: OfPlan) {
  const { say } = useLanguage();
  const rows = useKnownRows(programmeId, planTables);
  const row = rows?.find(({ table, key }) => table === 'plans' && key === plan.planId);
  const { name, note } = folderTables.plans.columns;
  if (row === undefined) return null;
  return (
    <details className="on-screen">
      <summary className="press">{say('rolloutPlans.rename')}</summary>
      <ShortForm
        key={`${row.cells['name']} ${row.cells['note']}`}
        programmeId={programmeId}
        press={say('forms.save')}
        fields={[
          { field: 'name', column: name, label: say('rolloutPlans.name'), initial: row.cells['name'] ?? null },
          { field: 'note', column: note, label: say('rolloutPlans.note'), initial: row.cells['note'] ?? null },
        ]}
        make={(cells) => {
          const change = edited(row, { name: cells['name'] ?? null, note: cells['note'] ?? null });
          return { changes: change === null ? [] : [change], faults: [] };
        }}
      />
    </details>
  );
}

/** Takes a plan out with its trips, once it was asked; undo brings it back. */
export function RemovePlan(props: OfPlan) {
  const { say } = useLanguage();
  return (
    <DialogTrigger>
      <Button className="button plain on-screen">{say('rolloutPlans.remove')}</Button>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-sheet">
          <Heading slot="title">{say('rolloutPlans.remove')}</Heading>
          <AskRemove {...props} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

function AskRemove({ programmeId, plan }: OfPlan) {
  const { say } = useLanguage();
  const who = useWho();
  const navigate = useNavigate();
  const rows = useKnownRows(programmeId, planTables);
  const { change, state, outcome } = useChange(programmeId);
  const remove = async () => {
    const { isSaved } = await change(removedPlan(rows ?? [], plan.planId));
    if (isSaved) await navigate({ to: '/p/$programmeId/rollout', params: { programmeId }, search: {} });
  };
  return (
    <>
      <p>
        {say('rolloutPlans.remove_about', {
          name: plan.name,
          trips: plan.trips_count,
          isInForce: plan.isInForce ? 'yes' : 'no',
        })}
      </p>
      <NotSaved outcome={outcome} />
      {who === '' ? <p className="field-wanting">{say('forms.name_needed')}</p> : null}
      <Button
        className="button main"
        isDisabled={who === '' || rows === null || state === 'saving'}
        onPress={() => void remove()}
      >
        {say('rolloutPlans.remove')}
      </Button>
    </>
  );
}
