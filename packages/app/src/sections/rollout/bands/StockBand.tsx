import type { RolloutSheet } from '@eavewell/tables';
import { memo, useId, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { xOf } from './axis.ts';
import { type Rise, type StockLine, stepsPath, stockLines, valuesTo, yOf } from './curves.ts';
import { BandTitle, Ground, type OnAxis } from './Ground.tsx';

const height = 118;
const [above, below] = [20, 14];

/** Which part in which store is shown; null: the tightest. */
export interface StockChoice {
  readonly key: string | null;
  readonly onChoose: (key: string) => void;
}

/** What lies in a store of one part, day by day; which part is chosen from a list, the tightest first. */
export const StockBand = memo(function StockBand({
  sheet,
  on,
  choice: { key, onChoose },
}: {
  readonly sheet: RolloutSheet;
  readonly on: OnAxis;
  readonly choice: StockChoice;
}) {
  const { say, numbers } = useLanguage();
  const lines = useMemo(() => stockLines(sheet), [sheet]);
  const line = lines.find((one) => one.key === key) ?? lines[0];
  if (line === undefined) return null;
  const rise = riseOf(line);
  return (
    <>
      <BandTitle on={on} title={say('rolloutBands.stock')} about={say('rolloutBands.stock_about')}>
        <label className="on-screen">
          <span className="said-only">{say('rolloutBands.stock_of')}</span>
          <select value={line.key} onChange={(event) => onChoose(event.target.value)}>
            {lines.map((one) => (
              <option key={one.key} value={one.key}>
                {say('rolloutBands.stock_part_least', {
                  ...{ part: one.part, store: one.store, count: Math.abs(one.least_count) },
                  short: one.least_count < 0 ? 'yes' : 'no',
                })}
              </option>
            ))}
          </select>
        </label>
        <p className="on-paper">{say('rolloutBands.stock_part', { part: line.part, store: line.store })}</p>
      </BandTitle>
      <div className="band-row">
        <div className="band-name" style={{ blockSize: height }}>
          {valuesTo(rise.most, 2).map((value) => (
            <p key={value} className="on-line" style={{ insetBlockStart: above + yOf(rise, value) }}>
              {numbers.fixed(value, 0)}
            </p>
          ))}
        </div>
        <StockDrawing line={line} on={on} />
      </div>
    </>
  );
});

function riseOf({ points }: StockLine): Rise {
  const counts = points.map(({ value }) => value);
  return {
    least: counts.reduce((a, b) => Math.min(a, b), 0),
    most: counts.reduce((a, b) => Math.max(a, b), 1),
    height_px: height - above - below,
  };
}

function StockDrawing({ line, on }: { readonly line: StockLine; readonly on: OnAxis }) {
  const { say } = useLanguage();
  const { axis, seen } = on;
  const under = useId();
  const rise = riseOf(line);
  // What lay there when the axis begins is told by the last point before it.
  const before = line.points.filter(({ at }) => at < axis.first).at(-1)?.value ?? 0;
  const path = stepsPath(
    line.points.filter(({ at }) => at >= axis.first),
    before,
    axis,
    rise,
  );
  const zero = yOf(rise, 0);
  const arrivals = line.points.flatMap(({ at, in_count, value }) => {
    const x = xOf(axis, at);
    return in_count > 0 && x >= 0 && x >= seen.from && x <= seen.to ? [{ x, in_count, y: yOf(rise, value) }] : [];
  });
  return (
    <Ground on={on} height={height}>
      <g transform={`translate(0 ${above})`}>
        <path
          className="b-rule"
          d={valuesTo(rise.most, 2)
            .map((value) => `M0 ${yOf(rise, value)}H${axis.width_px}`)
            .join('')}
        />
        <clipPath id={under}>
          <rect x={0} y={zero} width={axis.width_px} height={Math.max(0, rise.height_px - zero)} />
        </clipPath>
        <path className="b-short" clipPath={`url(#${under})`} d={`${path}V${zero}H0Z`} />
        <path className="b-stock" d={path} />
        <path className="b-zero" d={`M0 ${zero}H${axis.width_px}`} />
        {arrivals.map(({ x, y, in_count }) => (
          <text key={x} className="b-letters" x={x + 3} y={Math.max(-6, y - 4)}>
            {say('rolloutBands.stock_arrives', { count: in_count })}
          </text>
        ))}
      </g>
    </Ground>
  );
}
