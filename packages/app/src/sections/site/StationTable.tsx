import { Fragment } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { type Station, stationsInOrder } from '../sites/index.ts';
import { type Figure, type SiteReport, workingOf } from './siteFigures.ts';
import { figuresOf, isOpened, sentencesOf } from './stationFigures.ts';

/** How a station stands: its mark with its name and its word. */
function Stands({ design, station }: { readonly design: SiteReport; readonly station: Station }) {
  const { say } = useLanguage();
  const verdict = design.stations[station];
  const isException = verdict !== 'holds' && verdict !== 'notJudged';
  return (
    <>
      <VerdictMark verdict={verdict} size={isException ? 24 : 14} />{' '}
      <span className={`w-${verdict}`}>
        {say('sites.station_stands', {
          station: say(`sites.station_${station}`),
          verdict: say(`sites.verdict_${verdict}`),
        })}
      </span>
    </>
  );
}

/** Station by station: figure, likely range and target. Every figure opens to its working. */
export function StationTable({
  design,
  opened,
  onOpen,
}: {
  readonly design: SiteReport;
  /** The line of the working that is opened; null where none is. */
  readonly opened: string | null;
  onOpen(code: string): void;
}) {
  const language = useLanguage();
  const { say } = language;
  const judged = stationsInOrder.filter((station) => design.stations[station] !== 'notJudged');
  const others = stationsInOrder.filter((station) => design.stations[station] === 'notJudged');
  return (
    <>
      <table className="stations">
        <caption className="said-only">{say('site.stations')}</caption>
        <thead>
          <tr>
            {(['station', 'figure', 'likely', 'target'] as const).map((head) => (
              <th key={head} scope="col">
                {say(`site.${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {judged.map((station) => {
            const figures = figuresOf(station, design, language);
            const sentences = sentencesOf(station, design, language);
            const rows = Math.max(1, figures.length) + Number(sentences.length > 0);
            return (
              <Fragment key={station}>
                <tr>
                  <th scope="rowgroup" rowSpan={rows}>
                    <Stands design={design} station={station} />
                  </th>
                  {figures[0] ? (
                    <FigureCells figure={figures[0]} {...{ design, opened, onOpen }} />
                  ) : (
                    <td colSpan={3} />
                  )}
                </tr>
                {figures.slice(1).map((figure) => (
                  <tr key={`${figure.value} ${figure.target}`} className="more">
                    <FigureCells figure={figure} {...{ design, opened, onOpen }} />
                  </tr>
                ))}
                {sentences.length === 0 ? null : (
                  <tr className="more said">
                    <td colSpan={3}>
                      {sentences.map((one) => (
                        <p key={one} className="small">
                          {one}
                        </p>
                      ))}
                    </td>
                  </tr>
                )}
              </Fragment>
            );
          })}
        </tbody>
      </table>
      {others.length === 0 ? null : (
        <p className="small not-judged">
          {say('site.not_judged', { stations: others.map((station) => say(`sites.station_${station}`)).join(', ') })}
        </p>
      )}
    </>
  );
}

function FigureCells({
  figure,
  design,
  opened,
  onOpen,
}: {
  readonly figure: Figure;
  readonly design: SiteReport;
  readonly opened: string | null;
  onOpen(code: string): void;
}) {
  const { say } = useLanguage();
  const { value, likely, target } = figure;
  const line = workingOf(figure);
  return (
    <>
      <td>
        {isOpened(figure, design) ? (
          <button
            type="button"
            className="opens"
            aria-expanded={opened === line}
            aria-label={say('site.open_working', { figure: value })}
            onClick={() => onOpen(line)}
          >
            {value}
          </button>
        ) : (
          value
        )}
      </td>
      <td>{likely}</td>
      <td>
        {target === '' ? null : <span className="on-phone">{say('site.target')}: </span>}
        {target}
      </td>
    </>
  );
}
