import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Head } from '../../sheet/Head.tsx';
import { Main } from '../../sheet/Main.tsx';
import { ShownMenu } from '../../sheet/ProgrammeMenu.tsx';
import { reviewQuery } from './importsApi.ts';
import { NotDoneWords } from './NotDoneWords.tsx';
import { ReviewSheet } from './ReviewSheet.tsx';
import { SendFiles } from './SendFiles.tsx';
import './imports.css';

/** Takes files into a programme. The address carries which files, so that loading the page again loses nothing. */
export function TakeIn() {
  const { programmeId } = useParams({ from: '/p/$programmeId/take-in' });
  const { importId } = useSearch({ from: '/p/$programmeId/take-in' });
  const navigate = useNavigate();
  const open = (id: string | null) =>
    void navigate({
      to: '/p/$programmeId/take-in',
      params: { programmeId },
      search: id === null ? {} : { importId: id },
    });
  return <Files programmeId={programmeId} importId={importId ?? null} onOpen={open} />;
}

/** Makes a programme of files. */
export function TakeInNew() {
  const { importId } = useSearch({ from: '/programmes/take-in' });
  const navigate = useNavigate();
  const open = (id: string | null) =>
    void navigate({ to: '/programmes/take-in', search: id === null ? {} : { importId: id } });
  return (
    <>
      <Head>
        <ShownMenu />
      </Head>
      <Main>
        <Files programmeId={null} importId={importId ?? null} onOpen={open} />
      </Main>
    </>
  );
}

interface FilesProps {
  readonly programmeId: string | null;
  readonly importId: string | null;
  onOpen(importId: string | null): void;
}

function Files({ programmeId, importId, onOpen }: FilesProps) {
  if (importId === null) return <SendFiles programmeId={programmeId} onSent={onOpen} />;
  return <Waiting programmeId={programmeId} importId={importId} onOpen={onOpen} key={importId} />;
}

function Waiting(props: FilesProps & { readonly importId: string }) {
  const { say } = useLanguage();
  const { programmeId, importId, onOpen } = props;
  const { data, error } = useQuery(reviewQuery({ programmeId, importId }));
  const isCutShort = error !== null && data?.isReading === true;
  if (data !== undefined && !isCutShort)
    return <ReviewSheet review={data} name={{ programmeId, importId }} onOpen={onOpen} />;
  return (
    <>
      <h1>{say('imports.title')}</h1>
      {error === null ? <p>{say('forms.reading')}</p> : <NotDoneWords error={error} />}
      {error === null ? null : (
        <button type="button" className="button" onClick={() => onOpen(null)}>
          {say('imports.begin_again')}
        </button>
      )}
    </>
  );
}
