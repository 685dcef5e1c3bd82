import type { RolloutSheet } from '@eavewell/tables';
import { memo, useId, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { xOf } from './axis.ts';
import { type Rise, type StockLine, stepsPath, stockLines, valuesTo, yOf } from './curves.ts';
import { AxisHead, BandTitle, Ground, type OnAxis } from './Ground.tsx';
import { stockBindings } from './stockBinds.ts';
import type { TripOfCrew } from './tripWords.ts';

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
  const { say } = useLanguage();
  const lines = useMemo(() => stockLines(sheet), [sheet]);
  const line = chosenOf(lines, key);
  if (line === undefined) return null;
  return (
    <>
      <BandTitle on={on} title={say('rolloutBands.stock')} about={say('rolloutBands.stock_about')}>
        <label>
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
      </BandTitle>
      <StockRow line={line} on={on} />
    </>
  );
});

const chosenOf = (lines: readonly StockLine[], key: string | null) => lines.find((one) => one.key === key) ?? lines[0];

/** Parts that hold trips up, on paper, at the most. Ours. */
const binding_most = 3;

/** On paper: the parts that hold trips up, then that which was chosen on the screen. */
export function StockOnPaper({
  sheet,
  on,
  chosen,
}: {
  readonly sheet: RolloutSheet;
  readonly on: OnAxis;
  readonly chosen: string | null;
}) {
  const { say, numbers } = useLanguage();
  const lines = stockLines(sheet);
  const binding = stockBindings(sheet, lines);
  const shown = binding.slice(0, binding_most);
  const other = chosenOf(lines, chosen);
  const all =
    other === undefined || shown.some(({ line }) => line === other) ? shown : [...shown, { line: other, trips: [] }];
  const nameOf = ({ trip, crew }: TripOfCrew) =>
    say('rolloutBands.trip_at', { crew: crew.name, leaves: numbers.date(trip.leaves) });
  return all.map(({ line, trips }, nth) => (
    <div key={line.key} className="stock-on-paper">
      <AxisHead on={on} />
      <BandTitle on={on} title={say('rolloutBands.stock')} about={say('rolloutBands.stock_about')}>
        <p>
          {say('rolloutBands.stock_part', { part: line.part, store: line.store })}
          {trips.length === 0 ? null : `. ${say('rolloutBands.stock_holds', { trips: trips.map(nameOf).join('; ') })}`}
        </p>
        {nth === 0 && binding.length > binding_most ? (
          <p>{say('rolloutBands.stock_holds_more', { count: binding.length - binding_most })}</p>
        ) : null}
      </BandTitle>
      <StockRow line={line} on={on} />
    </div>
  ));
}

function StockRow({ line, on }: { readonly line: StockLine; readonly on: OnAxis }) {
  const { numbers } = useLanguage();
  const rise = riseOf(line);
  return (
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
  );
}

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
