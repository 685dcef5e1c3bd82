import { useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { lastWords, reasonsOfReport, useIsCupOfBefore } from '../safety/index.ts';
import { type Figure, type SiteReport, workingOf } from './siteFigures.ts';
import { isOpened } from './stationFigures.ts';
import { alike, dueFigure, unitFigures } from './treatmentFigures.ts';

/** Treatment and safety of a site in short: what the unit passes, when its set is due, what may be said of drinking; and the way to the rest. */
export function TreatmentAndSafety({
  report,
  programmeId,
  siteId,
  opened,
  onOpen,
}: {
  readonly report: SiteReport;
  readonly programmeId: string;
  readonly siteId: string;
  readonly opened: string | null;
  onOpen(code: string): void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { treatment, wear, safety, stations } = report;
  const { data: site } = useSuspenseQuery(queries.site(programmeId, siteId));
  const isOfBefore = useIsCupOfBefore(programmeId, siteId, site);
  const figures = [
    ...alike(treatment, language).flatMap((one) => unitFigures(one, language)),
    ...(wear ?? []).flatMap((one) => dueFigure(one, language) ?? []),
  ];
  const may =
    safety === null ? null : safety.mayDrink === 'yes' && stations.cup === 'unknown' ? 'notShown' : safety.mayDrink;
  return (
    <section className="treatment-safety" aria-labelledby="treatment-safety-head">
      <h2 id="treatment-safety-head">{say('site.treatment_safety')}</h2>
      {may === null ? (
        <p>{say('safety.because_notJudged')}</p>
      ) : isOfBefore && may === 'yes' ? (
        // That it is fit is not said of before.
        <p>{say('safety.again')}.</p>
      ) : (
        <div className="verdict">
          <VerdictMark verdict={stations.cup} size={may === 'yes' ? 20 : 32} />
          <div>
            <p className={`w-${stations.cup}`}>{say(`safety.drink_${may}`)}.</p>
            <p>{safety === null ? null : reasonsOfReport(safety, language)[0]}</p>
            {safety === null ? null : <p className="small">{lastWords({ cup: safety.waterTests }, language)}</p>}
          </div>
        </div>
      )}
      {figures.length === 0 ? null : (
        <ul className="unit-figures">
          {figures.map((figure) => (
            <li key={`${figure.code} ${figure.of}`}>
              <FigureWords figure={figure} report={report} opened={opened} onOpen={onOpen} />{' '}
              {figure.likely === '' ? null : <span className="small">{figure.likely}</span>}
            </li>
          ))}
        </ul>
      )}
      <p className="on-screen to-safety">
        <Link to="/p/$programmeId/sites/$siteId/safety" params={{ programmeId, siteId }}>
          {say('site.to_safety')}
        </Link>{' '}
        <Link to="/p/$programmeId/sites/$siteId/water-safety" params={{ programmeId, siteId }}>
          {say('safety.to_paper')}
        </Link>
      </p>
    </section>
  );
}

function FigureWords({
  figure,
  report,
  opened,
  onOpen,
}: {
  readonly figure: Figure;
  readonly report: SiteReport;
  readonly opened: string | null;
  onOpen(code: string): void;
}) {
  const { say } = useLanguage();
  if (!isOpened(figure, report)) return figure.value;
  const line = workingOf(figure);
  return (
    <button
      type="button"
      className="opens"
      aria-expanded={opened === line}
      aria-label={say('site.open_working', { figure: figure.value })}
      onClick={() => onOpen(line)}
    >
      {figure.value}
    </button>
  );
}
