import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import { queries } from '../api/queries.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { cellText } from './cellText.ts';
import { useFieldWords } from './useFieldWords.ts';

/** A cell of the programme. */
export interface CellPlace {
  readonly table: string;
  readonly key: string;
  readonly column: string;
}

/** Opens what stood in a cell: since when, and who put it there. With a figure inside, the figure opens. */
export function CellHistory(props: {
  readonly programmeId: string;
  readonly place: CellPlace;
  readonly label: string;
  readonly children?: ReactNode;
}) {
  const { say } = useLanguage();
  const { label, children } = props;
  return (
    <DialogTrigger>
      <Button
        className={children === undefined ? 'history-press' : 'history-press opens'}
        {...(children === undefined ? { 'aria-label': say('forms.history_of', { field: label }) } : {})}
      >
        {children ?? say('forms.history')}
      </Button>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-sheet">
          <Heading slot="title">{say('forms.history_of', { field: label })}</Heading>
          <Entries {...props} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

function Entries({ programmeId, place }: { readonly programmeId: string; readonly place: CellPlace }) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { table, key, column } = place;
  const { data, isError } = useQuery(queries.history(programmeId, { table, key, column }));
  if (isError) return <p>{say('forms.history_not_read')}</p>;
  if (data === undefined) return <p>{say('forms.reading')}</p>;
  if (data.entries.length === 0) return <p>{say('forms.history_none')}</p>;
  const value = (cell: string | null) => cellText(place, cell, numbers, words) ?? say('forms.not_known');
  return (
    <ol className="history-list" reversed>
      {[...data.entries].reverse().map(({ record, before, after }) => (
        <li key={`${record.device}.${record.number}`}>
          <b>{value(after)}</b>{' '}
          {before === null ? null : <span className="small">{say('forms.instead_of', { before: value(before) })}</span>}
          <br />
          <span className="small">{say('forms.by_when', { who: record.by, when: numbers.moment(record.at) })}</span>
        </li>
      ))}
    </ol>
  );
}
