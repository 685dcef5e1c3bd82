import { useSuspenseQuery } from '@tanstack/react-query';
import { Outlet, useParams } from '@tanstack/react-router';
import { Suspense, useEffect } from 'react';
import { queries } from '../api/queries.ts';
import { keep } from '../kept.ts';
import { Head } from './Head.tsx';
import { Main } from './Main.tsx';
import { ProgrammeMenu } from './ProgrammeMenu.tsx';

/** The pages of one programme, under its name, which does not wait for them. */
export function ProgrammeSheet() {
  const programmeId = useParams({ from: '/p/$programmeId', select: (params) => params.programmeId });
  const { data: programme } = useSuspenseQuery(queries.programme(programmeId));
  useEffect(() => keep('programme', programmeId), [programmeId]);
  return (
    <>
      <Head programmeId={programmeId}>
        <ProgrammeMenu programmeId={programmeId} name={programme.name} />
      </Head>
      <Main>
        <Suspense fallback={null}>
          <Outlet />
        </Suspense>
      </Main>
    </>
  );
}
