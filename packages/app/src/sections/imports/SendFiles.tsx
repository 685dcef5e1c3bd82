import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useId, useState } from 'react';
import { Button, DropZone, FileTrigger, Text } from 'react-aria-components';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { chosenOf, chosenOfDrop } from './chosenFiles.ts';
import { type Chosen, type Review, reviewQuery, reviewsQuery, sendFiles } from './importsApi.ts';
import { NotDoneWords } from './NotDoneWords.tsx';

const absents = ['stay', 'go'] as const;

/** Files are dropped or chosen here. They are looked at before anything changes. */
// long: one page: where files are dropped or chosen
export function SendFiles({
  programmeId,
  onSent,
}: {
  readonly programmeId: string | null;
  onSent(importId: string): void;
}) {
  const { say } = useLanguage();
  const id = useId();
  const [absent, setAbsent] = useState<Review['absent']>('stay');
  const [isNothing, setNothing] = useState(false);
  const client = useQueryClient();
  const sending = useMutation({
    mutationFn: (files: readonly Chosen[]) => sendFiles(programmeId, files, absent),
    onSuccess: (review) => {
      const name = { programmeId, importId: review.importId };
      client.setQueryData(reviewQuery(name).queryKey, review);
      onSent(review.importId);
    },
  });
  const send = (files: readonly Chosen[]) => {
    setNothing(files.length === 0);
    if (files.length > 0 && !sending.isPending) sending.mutate(files);
  };
  return (
    <>
      <h1>{say(programmeId === null ? 'imports.title_new' : 'imports.title')}</h1>
      <p>{say('imports.about')}</p>
      <Waits programmeId={programmeId} onOpen={onSent} />
      {programmeId === null ? null : (
        <fieldset className="absent">
          <legend>{say('imports.absent')}</legend>
          {absents.map((one) => (
            <label key={one}>
              <input type="radio" name={id} checked={absent === one} onChange={() => setAbsent(one)} />
              {say(`imports.absent_${one}`)}
            </label>
          ))}
        </fieldset>
      )}
      <DropZone className="drop" onDrop={({ items }) => void chosenOfDrop(items).then(send)}>
        <Text slot="label">{say('imports.drop')}</Text>
        <div className="drop-presses">
          <FileTrigger allowsMultiple onSelect={(files) => send(chosenOf(files ?? []))}>
            <Button className="button main">{say('imports.choose_files')}</Button>
          </FileTrigger>
          <FileTrigger acceptDirectory onSelect={(files) => send(chosenOf(files ?? []))}>
            <Button className="button">{say('imports.choose_folder')}</Button>
          </FileTrigger>
        </div>
      </DropZone>
      <p className="small">{say('imports.limits')}</p>
      <p role="status">
        {sending.isPending ? say('imports.sending', { count: sending.variables.length }) : null}
        {isNothing ? say('imports.no_files') : null}
      </p>
      <NotDoneWords error={sending.error} />
    </>
  );
}

/** Files that were sent before and still wait. */
function Waits({ programmeId, onOpen }: { readonly programmeId: string | null; onOpen(importId: string): void }) {
  const { say } = useLanguage();
  const { data } = useQuery(reviewsQuery(programmeId));
  if (data === undefined || data.imports.length === 0) return null;
  return (
    <div className="heed">
      <p>{say('imports.waiting')}</p>
      <ul>
        {data.imports.map(({ importId, sent }) => (
          <li key={importId}>
            <button type="button" className="button plain" onClick={() => onOpen(importId)}>
              {say('imports.look_at', { file: sent[0] ?? '', more: sent.length - 1 })}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
