import { queryOptions, useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { answerOf, api } from '../../api/client.ts';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { AreaTable } from './AreaTable.tsx';
import { HurtSites } from './HurtSites.tsx';
import { programmeYears, type SiteOfYears, worstYear, yearsByArea } from './programmeYears.ts';
import { YearRows } from './YearRows.tsx';
import { YearTable } from './YearTable.tsx';
import { notInPicture, worstWords } from './yearWords.ts';
import './waterYears.css';

/** While verdicts are being worked out the years are read again this often [ms]. Ours. */
const again_ms = 10_000;

const yearsQuery = (programmeId: string, isRunning: boolean) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'years'],
    queryFn: () => answerOf(api.GET('/api/programmes/{programmeId}/years', { params: { path: { programmeId } } })),
    structuralSharing: false,
    refetchInterval: isRunning ? again_ms : false,
  });

/** The water of a whole programme: which past year would have hurt whom. */
export function ProgrammeWater() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/water' });
  const { data: state } = useSuspenseQuery(queries.programme(programmeId));
  const isRunning = state.done_fraction < 1 && !state.isFailed && !state.isCalledOff;
  const { data } = useSuspenseQuery(yearsQuery(programmeId, isRunning));
  const isOfNow = data.designVersion === state.version && state.done_fraction === 1;
  return (
    <div className="programme-water">
      {isOfNow ? null : (
        <p role="status" className="small">
          {say(isRunning ? 'waterYears.running' : 'waterYears.of_before')}
        </p>
      )}
      <Years sites={data.sites} programmeId={programmeId} isRunning={isRunning} />
    </div>
  );
}

/** What is shown of the years: of all sites, or of one area. */
function useYears(sites: readonly SiteOfYears[]) {
  const { code } = useLanguage();
  const { area, year } = useSearch({ from: '/p/$programmeId/water' });
  const compare = useMemo(() => new Intl.Collator(code, { numeric: true }).compare, [code]);
  const whole = useMemo(() => programmeYears(sites), [sites]);
  const areas = useMemo(() => yearsByArea(sites, compare), [sites, compare]);
  const chosen = area === undefined ? undefined : areas.find((one) => one.area === area);
  const shown = chosen?.years ?? whole;
  const worst = worstYear(shown.years);
  const wanted = shown.years.find((one) => one.year === year);
  return { areas, area: chosen?.area ?? null, shown, worst, chosen: wanted ?? worst ?? shown.years.at(-1) };
}

function Years({
  sites,
  programmeId,
  isRunning,
}: {
  readonly sites: readonly SiteOfYears[];
  readonly programmeId: string;
  readonly isRunning: boolean;
}) {
  const language = useLanguage();
  const { say } = language;
  const { areas, area, shown, worst, chosen } = useYears(sites);
  const apart = notInPicture(shown, language);
  if (chosen === undefined)
    return (
      <>
        <h1>{say(isRunning ? 'waterYears.none_running' : 'waterYears.none')}</h1>
        {isRunning ? null : <p>{apart}</p>}
      </>
    );
  return (
    <>
      <h1>{worstWords(shown, worst, sites, area, language)}</h1>
      <p>{say('waterYears.what_year')}</p>
      {area === null ? null : (
        <p className="on-screen">
          <Link from="/p/$programmeId/water" to="." search={({ area: _, ...rest }) => rest} resetScroll={false}>
            {say('waterYears.all_areas')}
          </Link>
        </p>
      )}
      <div className="water-sheet">
        <YearRows years={shown.years} chosen={chosen} worst={worst} />
        <HurtSites key={`${chosen.year} ${area}`} year={chosen} programmeId={programmeId} />
      </div>
      {apart === '' ? null : <p>{apart}</p>}
      {areas.length < 2 ? null : <AreaTable areas={areas} chosen={area} />}
      <YearTable years={shown.years} />
      <p className="small">{say('waterYears.caution')}</p>
    </>
  );
}
