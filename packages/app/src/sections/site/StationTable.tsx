import { Fragment } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { type Station, stationsInOrder } from '../sites/index.ts';
import { type Figure, type SiteReport, storageFigures } from './siteFigures.ts';

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
  const figuresOf = (station: Station): readonly Figure[] =>
    station === 'storage' ? design.storages.flatMap((one) => storageFigures(one, design.target, language)) : [];
  return (
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
        {stationsInOrder.map((station) => {
          const figures = figuresOf(station);
          const rows = Math.max(1, figures.length);
          return (
            <Fragment key={station}>
              <tr>
                <th scope="rowgroup" rowSpan={rows}>
                  <Stands design={design} station={station} />
                </th>
                {figures[0] ? <FigureCells figure={figures[0]} {...{ opened, onOpen }} /> : <td colSpan={3} />}
              </tr>
              {figures.slice(1).map((figure) => (
                <tr key={`${figure.value} ${figure.target}`} className="more">
                  <FigureCells figure={figure} {...{ opened, onOpen }} />
                </tr>
              ))}
            </Fragment>
          );
        })}
      </tbody>
    </table>
  );
}

function FigureCells({
  figure,
  opened,
  onOpen,
}: {
  readonly figure: Figure;
  readonly opened: string | null;
  onOpen(code: string): void;
}) {
  const { say } = useLanguage();
  const { code, value, likely, target } = figure;
  return (
    <>
      <td>
        <button
          type="button"
          className="opens"
          aria-expanded={opened === code}
          aria-label={say('site.open_working', { figure: value })}
          onClick={() => onOpen(code)}
        >
          {value}
        </button>
      </td>
      <td>{likely}</td>
      <td>
        <span className="on-phone">{say('site.target')}: </span>
        {target}
      </td>
    </>
  );
}
