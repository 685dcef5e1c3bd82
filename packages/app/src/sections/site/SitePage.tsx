import { useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { lazy, Suspense } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { SiteFacts } from '../facts/index.ts';
import { CupOfBefore, reasonsOfReport, useIsCupOfBefore } from '../safety/index.ts';
import { costWords, overviewQuery, type SiteEntry, stationsInOrder } from '../sites/index.ts';
import { Among } from './Among.tsx';
import { GateBand, standingTanks } from './GateBand.tsx';
import { Problems, problemsOnce } from './Problems.tsx';
import { recordSaid } from './recordSaid.ts';
import type { SiteReport } from './siteFigures.ts';
import './site.css';

/** The drawing with the charts: a large piece that the list of sites does not need. */
const WaterSheet = lazy(() => import('./water/WaterSheet.tsx').then((loaded) => ({ default: loaded.WaterSheet })));

/** One site: verdict, stations, what would mend it, what was found in its tables, and its facts. */
// long: one part of a page as it is read, line after line
export function SitePage() {
  const language = useLanguage();
  const { code, say } = language;
  const { programmeId, siteId } = useParams({ from: '/p/$programmeId/sites/$siteId' });
  const { data: site } = useSuspenseQuery(queries.site(programmeId, siteId));
  const { data: overview } = useQuery(overviewQuery(programmeId, code, false));
  const { design } = site;
  const entry = overview?.siteAt(overview.placeOf(siteId));
  const row = site.rows.find(({ table }) => table === 'sites')?.cells ?? {};
  const name = row['name'] ?? design?.name ?? siteId;
  const isCupOfBefore = useIsCupOfBefore(programmeId, siteId, site);
  const isOfBefore = site.designVersion !== null && site.designVersion !== site.version;
  return (
    <>
      <Among programmeId={programmeId} overview={overview} siteKey={siteId} />
      <h1>{name}</h1>
      <p className="facts-line">{factsOf(siteId, row['area'], design, entry, language).join(', ')}</p>
      {design === null ? null : (
        <>
          <GateBand gate={design.standGate} tanks={standingTanks(site.rows)} />
          <p className="to-installation on-screen">
            <Link to="/p/$programmeId/sites/$siteId/installation" params={{ programmeId, siteId }}>
              {say('site.to_installation')}
            </Link>{' '}
            <Link to="/p/$programmeId/sites/$siteId/safety" params={{ programmeId, siteId }}>
              {say('site.to_safety')}
            </Link>{' '}
            <Link to="/p/$programmeId/rollout" params={{ programmeId }} search={{ site: siteId }}>
              {say('rolloutFinding.from_site')}
            </Link>
          </p>
          {isCupOfBefore && design.safety !== null ? <CupOfBefore programmeId={programmeId} state={site} /> : null}
          {design.safety?.mayDrink === 'no' ? <DoNotDrink /> : null}
        </>
      )}
      {design === null ? <NotJudged isDone={site.done_fraction === 1} /> : null}
      <Suspense
        fallback={
          design === null ? null : (
            <Verdict design={design} remedies={design.remedies} entry={entry} isOfBefore={isOfBefore} />
          )
        }
      >
        <WaterSheet
          {...{ programmeId, siteId, name, design }}
          key={siteId}
          verdictOf={(report, remedies, { isTried, onOpen }) => (
            <Verdict
              design={report}
              remedies={remedies}
              entry={entry}
              isOfBefore={isOfBefore && report === design}
              isTried={isTried}
              onOpen={onOpen}
            />
          )}
        />
      </Suspense>
      {design === null && site.problems.length === 0 ? null : (
        <Problems problems={problemsOnce(site.problems, design?.problems ?? [])} />
      )}
      <Suspense fallback={null}>
        <SiteFacts programmeId={programmeId} siteId={siteId} key={siteId} />
      </Suspense>
    </>
  );
}

/** Over everything else of the site: nobody drinks there before it is mended. */
function DoNotDrink() {
  const { say } = useLanguage();
  return (
    <p className="trouble do-not-drink">
      <strong className="w-short">{say('safety.drink_no')}.</strong> {say('safety.step_treat')}{' '}
      {say('safety.step_mend')} {say('safety.step_again')}
    </p>
  );
}

/** The line under the name: who it is for, and whose rain it has. */
function factsOf(
  siteId: string,
  area: string | undefined,
  design: SiteReport | null,
  entry: SiteEntry | undefined,
  { say }: Pick<ReturnType<typeof useLanguage>, 'say'>,
): readonly string[] {
  // Before it is judged, what was counted is what is known.
  const people = (design ?? entry)?.people ?? null;
  const later = design?.design_people ?? null;
  return [
    siteId,
    ...(design?.siteClass ? [design.siteClass] : []),
    people === null ? say('sites.no_people') : say('site.people', { people }),
    ...(later !== null && later !== people ? [say('site.people_design', { people: later })] : []),
    ...(area === undefined ? [] : [area]),
    ...(design?.gaugeId ? [say('site.rain_of', { gauge: design.gaugeId })] : []),
  ];
}

function NotJudged({ isDone }: { readonly isDone: boolean }) {
  const { say } = useLanguage();
  return (
    <p className="verdict">
      <VerdictMark verdict="unknown" size={40} />
      <span>{say(isDone ? 'sites.line_not_used' : 'sites.line_not_yet')}</span>
    </p>
  );
}

/** The verdict in a sentence that could be read aloud, and the smallest change that mends it. */
function Verdict({
  design,
  remedies,
  entry,
  isOfBefore,
  isTried = false,
  onOpen,
}: {
  /** Opens how a figure was reached; left out while nothing can be opened. */
  onOpen?(code: string): void;
  readonly design: SiteReport;
  readonly remedies: SiteReport['remedies'];
  /** It is the verdict of what was changed and is not kept. */
  readonly isTried?: boolean;
  readonly entry: SiteEntry | undefined;
  readonly isOfBefore: boolean;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { verdict, finding, safety } = design;
  // Of the cup the short reason: what it does to those who drink stands with its safety.
  const said = safety === null ? finding : finding.replace(safety.finding, reasonsOfReport(safety, language)[0]);
  const cannotTell = recordSaid(design, language);
  // The stations that stand as badly as the site; where it is the tank alone, the sentence says so.
  const worst = stationsInOrder
    .filter((station) => verdict !== 'holds' && design.stations[station] === verdict)
    .map((station) => say(`sites.station_${station}`));
  const first = remedies?.ranked[0];
  const cost =
    costWords(first?.cost.amount ?? null, first?.cost.currency ?? null, { say, numbers }) ?? say('site.cost_not_known');
  const why = entry?.notMended ?? null;
  return (
    <div className="verdict">
      <VerdictMark verdict={verdict} size={verdict === 'holds' ? 28 : 44} />
      <div>
        <p className={`w-${verdict}`}>
          {say(`sites.verdict_${verdict}`)}
          {worst.length === 0 ? null : ` ${say('site.at_stations', { stations: worst.join(', ') })}`}
          {isTried ? <span className="tried">{say('water.as_changed')}</span> : null}
        </p>
        <p className="sentence">
          {said}{' '}
          {onOpen === undefined || design.storages.length === 0 ? null : (
            <button type="button" className="opens how on-screen" onClick={() => onOpen('storage.goodYears')}>
              {say('water.how')}
            </button>
          )}
        </p>
        {first ? <p>{say('site.smallest', { about: first.about, cost })}</p> : null}
        {!first && why !== null ? <p>{why}</p> : null}
        {cannotTell.length === 0 ? null : <p className="small">{cannotTell.join(' ')}</p>}
        {isOfBefore ? <p className="small">{say('sites.of_before')}</p> : null}
      </div>
    </div>
  );
}
