import type { RolloutSheet } from '@eavewell/tables';
import { memo, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { dayOf, xOf } from './axis.ts';
import { bandPath, drinkingOf, type Rise, stepsPath, valuesTo, yOf } from './curves.ts';
import { BandTitle, Ground, type OnAxis } from './Ground.tsx';

const height = 190;
/** Room over the curve for the line of all, and under it for dates [px]. */
const [above, below] = [22, 24];

/** People who drink, week by week: the line, eight in ten futures about it, all as a dashed line, the dates of the finish. */
export const DrinkingBand = memo(function DrinkingBand({
  sheet,
  on,
}: {
  readonly sheet: RolloutSheet;
  readonly on: OnAxis;
}) {
  const { say, numbers } = useLanguage();
  const drinking = useMemo(() => drinkingOf(sheet), [sheet]);
  const rise: Rise = { least: 0, most: drinking.all, height_px: height - above - below };
  const { axis } = on;
  const values = valuesTo(drinking.all, 4).filter((value) => drinking.all - value > drinking.all * 0.09);
  return (
    <>
      <BandTitle
        on={on}
        title={say('rolloutBands.drinking')}
        about={say(drinking.isDrawn ? 'rolloutBands.drinking_line' : 'rolloutBands.drinking_line_none')}
      />
      <div className="band-row">
        <div className="band-name" style={{ blockSize: height }}>
          <p className="on-line" style={{ insetBlockStart: above }}>
            {say('rolloutBands.drinking_all', { people: numbers.fixed(drinking.all, 0) })}
          </p>
          {values.map((value) => (
            <p key={value} className="on-line" style={{ insetBlockStart: above + yOf(rise, value) }}>
              {numbers.fixed(value, 0)}
            </p>
          ))}
        </div>
        <Ground on={on} height={height}>
          <g transform={`translate(0 ${above})`}>
            <path className="b-rule" d={values.map((value) => `M0 ${yOf(rise, value)}H${axis.width_px}`).join('')} />
            <path className="b-likely" d={bandPath(drinking.band, drinking.before, axis, rise)} />
            <path className="b-all" d={`M0 0H${axis.width_px}`} />
            <path className="b-zero" d={`M0 ${rise.height_px}H${axis.width_px}`} />
            <path className="b-curve" d={stepsPath(drinking.line, drinking.before, axis, rise)} />
            <Finishes sheet={sheet} on={on} height={rise.height_px} />
          </g>
          <Today on={on} y={height - 6} date={sheet.day} />
        </Ground>
      </div>
    </>
  );
});

/** Today, lettered at the foot of its line. */
function Today({ on, y, date }: { readonly on: OnAxis; readonly y: number; readonly date: string }) {
  const { say, numbers } = useLanguage();
  const x = xOf(on.axis, on.today + 0.5);
  const isAtEnd = x > on.axis.width_px - 130;
  return (
    <text className="b-letters" x={x + (isAtEnd ? -5 : 5)} y={y} textAnchor={isAtEnd ? 'end' : 'start'}>
      {say('rolloutBands.today', { date: numbers.date(date) })}
    </text>
  );
}

/** The days by which all drink. */
function Finishes({
  sheet,
  on,
  height: tall,
}: {
  readonly sheet: RolloutSheet;
  readonly on: OnAxis;
  readonly height: number;
}) {
  const { say, numbers } = useLanguage();
  const { finish } = sheet;
  if (finish === null) return null;
  const { futures, likely } = finish;
  const dates = (
    futures === null
      ? [{ date: likely, said: say('rolloutBands.likely') }]
      : [
          { date: futures.p50, said: say('rolloutBands.p50') },
          { date: futures.p90, said: say('rolloutBands.p90') },
        ]
  ).flatMap(({ date, said }) => {
    const day = dayOf(date);
    const x = day === null ? -1 : xOf(on.axis, day + 1);
    return date === null || x < 0 || x > on.axis.width_px ? [] : [{ date, said, x }];
  });
  return dates.map(({ date, said, x }, nth) => {
    const before = dates[nth - 1];
    // Two that are near each other: the later one's letters stand on its other side, or higher where there is no room.
    const isNear = before !== undefined && x - before.x < 150;
    const isAfter = (isNear && x + 150 < on.axis.width_px) || x < 150;
    const y = tall - 24 - (isNear && !isAfter ? 40 : 0);
    return (
      <g key={said}>
        <path className="b-finish" d={`M${x} 0V${tall}`} />
        <text className="b-date" x={x + (isAfter ? 5 : -5)} y={y} textAnchor={isAfter ? 'start' : 'end'}>
          {numbers.date(date)}
        </text>
        <text className="b-letters" x={x + (isAfter ? 5 : -5)} y={y + 16} textAnchor={isAfter ? 'start' : 'end'}>
          {said}
        </text>
      </g>
    );
  });
}
