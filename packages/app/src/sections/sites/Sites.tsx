import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { memo } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { useIsDrawn } from '../../look/useIsDrawn.ts';
import { NoSites } from './NoSites.tsx';
import { overviewQuery } from './overviewQuery.ts';
import { Progress } from './Progress.tsx';
import { Sentence } from './Sentence.tsx';
import { SitesSheet } from './SitesSheet.tsx';
import { TallyBar } from './Tally.tsx';
import './sites.css';

/** Every site of a programme, those that need her first. */
export function Sites() {
  const { code } = useLanguage();
  const programmeId = useParams({ from: '/p/$programmeId/sites', select: (params) => params.programmeId });
  const { data: state } = useSuspenseQuery(queries.programme(programmeId));
  const isRunning = state.done_fraction < 1 && !state.isFailed && !state.isCalledOff;
  const { data: overview } = useSuspenseQuery(overviewQuery(programmeId, code, isRunning));
  const isDrawn = useIsDrawn('sites');
  if (overview.count === 0) return <NoSites programmeId={programmeId} />;
  const { head, numbers, count } = overview;
  const isOfBefore = head.designVersion !== null && head.designVersion !== state.version;
  return (
    <>
      <Sentence tally={head.tally} />
      <Progress programmeId={programmeId} state={state} count={count} isOfBefore={isOfBefore} />
      <TallyBar tally={head.tally} />
      {numbers.isWithoutStorm ? <NoStorm programmeId={programmeId} /> : null}
      {isDrawn ? (
        <SitesSheet
          programmeId={programmeId}
          name={state.name}
          overview={overview}
          isDone={state.done_fraction === 1 && head.designVersion === state.version}
        />
      ) : null}
    </>
  );
}

/** Where no gauge has a storm no gutter is judged: it is said once, with the way to where storms are put in. */
const NoStorm = memo(function NoStorm({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  return (
    <p className="small no-storm">
      {say('sites.no_storm')}{' '}
      <Link to="/p/$programmeId/settings/$table" params={{ programmeId, table: 'storms' }} className="on-screen">
        {say('sites.no_storm_put')}
      </Link>
    </p>
  );
});
