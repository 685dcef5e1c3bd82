import { useNavigate } from '@tanstack/react-router';
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import { useChange } from '../../api/useChange.ts';
import { useWho } from '../../api/useWho.ts';
import type { RowNow } from '../../forms/draft.ts';
import { NotSaved } from '../../forms/FaultSummary.tsx';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { Who } from '../../forms/Who.tsx';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** Takes a site out of the programme with all its rows, as one record that undo brings back. */
export function RemoveSite(props: {
  readonly programmeId: string;
  readonly siteId: string;
  readonly rows: readonly RowNow[];
}) {
  const { say } = useLanguage();
  return (
    <DialogTrigger>
      <Button className="button plain">{say('forms.remove_site')}</Button>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-sheet">
          <Heading slot="title">{say('forms.remove_site')}</Heading>
          <Asked {...props} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

function Asked({
  programmeId,
  siteId,
  rows,
}: {
  readonly programmeId: string;
  readonly siteId: string;
  readonly rows: readonly RowNow[];
}) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const navigate = useNavigate();
  const who = useWho();
  const { change, state, outcome } = useChange(programmeId);
  const others = [...new Set(rows.map(({ table }) => table))].filter((table) => table !== 'sites');
  const what = others.map((table) => words.rows(table, rows.filter((row) => row.table === table).length)).join(', ');
  const remove = async () => {
    const changes = rows.map(({ table, key, cells }) => ({
      kind: 'removed' as const,
      table,
      key,
      before: { ...cells },
    }));
    const { isSaved } = await change(changes);
    if (isSaved) await navigate({ to: '/p/$programmeId/sites', params: { programmeId } });
  };
  return (
    <>
      <p>{say(what === '' ? 'forms.remove_site_alone' : 'forms.remove_site_with', { site: siteId, what })}</p>
      <NotSaved outcome={outcome} />
      <Who />
      <Button className="button main" isDisabled={who === '' || state === 'saving'} onPress={() => void remove()}>
        {say('forms.remove_site')}
      </Button>
    </>
  );
}
