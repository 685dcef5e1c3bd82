import type { RolloutSheet } from '@eavewell/tables';
import { useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { axisOf, dateOf, dayOf, xOf } from './axis.ts';
import { StockRows } from './BandTables.tsx';
import { type StockLine, stepsPath, yOf } from './curves.ts';
import type { StockAhead } from './stockAhead.ts';

/** Parts of a store that stand open before the others. Ours. */
const open_most = 3;

/** What lies in the stores as sentences, what is short first, then what is used up first; each opens to its curve and its days. */
export function StockList({ ahead, sheet }: { readonly ahead: readonly StockAhead[]; readonly sheet: RolloutSheet }) {
  const { say } = useLanguage();
  if (ahead.length === 0) return null;
  const short_count = ahead.filter(({ short }) => short !== null).length;
  const stores = [...new Set(ahead.map(({ line }) => line.storeId))];
  return (
    <section className="stock-list" aria-labelledby="stock-list">
      <h2 id="stock-list">{say('rolloutBands.stock')}</h2>
      <p className={short_count > 0 ? 'w-short' : undefined}>
        {say('rolloutBands.stock_said', { count: short_count })}
      </p>
      {stores.map((storeId) => {
        const own = ahead.filter(({ line }) => line.storeId === storeId);
        const open = own.filter(({ short }, at) => at < open_most || short !== null);
        const others = own.slice(open.length);
        return (
          <section key={storeId}>
            <h3>{own[0]!.line.store}</h3>
            <Parts parts={open} sheet={sheet} />
            {others.length === 0 ? null : (
              <details>
                <summary>{say('rolloutBands.stock_more', { count: others.length })}</summary>
                <Parts parts={others} sheet={sheet} />
              </details>
            )}
          </section>
        );
      })}
    </section>
  );
}

function Parts({ parts, sheet }: { readonly parts: readonly StockAhead[]; readonly sheet: RolloutSheet }) {
  return (
    <ul>
      {parts.map((one) => (
        <li key={one.line.key}>
          <Part of={one} sheet={sheet} />
        </li>
      ))}
    </ul>
  );
}

function Part({ of, sheet }: { readonly of: StockAhead; readonly sheet: RolloutSheet }) {
  const { say, numbers } = useLanguage();
  const [isOpen, setOpen] = useState(false);
  const { line, now_count, until, next, short } = of;
  const day = (at: number) => numbers.date(dateOf(at));
  const said =
    short !== null
      ? say('rolloutBands.stock_short', { part: line.part, count: short.count, day: day(short.at) })
      : until === null
        ? say('rolloutBands.stock_enough', { part: line.part, count: now_count })
        : say('rolloutBands.stock_until', { part: line.part, count: now_count, day: day(until) });
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary className={short === null ? undefined : 'w-short'}>
        {said} {next === null ? null : say('rolloutBands.stock_next', { count: next.in_count, day: day(next.at) })}
      </summary>
      {isOpen ? (
        <div className="band-table">
          <StockCurve line={line} sheet={sheet} />
          <StockRows line={line} part={`stock ${line.key}`} />
        </div>
      ) : null}
    </details>
  );
}

const [width_px, height_px] = [300, 64] as const;

/** The curve of one part alone, as wide as the page; the table under it has its days. */
function StockCurve({ line, sheet }: { readonly line: StockLine; readonly sheet: RolloutSheet }) {
  const { say, numbers } = useLanguage();
  const counts = line.points.map(({ value }) => value);
  const rise = {
    ...{ height_px, least: counts.reduce((a, b) => Math.min(a, b), 0) },
    most: counts.reduce((a, b) => Math.max(a, b), 1),
  };
  const today = dayOf(sheet.day) ?? 0;
  const days = [today, ...line.points.map(({ at }) => at)];
  const [first, last] = [days.reduce((a, b) => Math.min(a, b)), days.reduce((a, b) => Math.max(a, b))];
  const weeks_count = axisOf(first, last, 1).weeks_count;
  const axis = axisOf(first, last, width_px / weeks_count);
  const zero = yOf(rise, 0);
  const start = line.points[0];
  const before = start === undefined ? 0 : start.value - start.in_count + start.out_count;
  const ends = [dateOf(axis.first), dateOf(axis.first + 7 * weeks_count - 1)];
  return (
    <div className="stock-curve" dir="ltr">
      <p className="small">{numbers.fixed(rise.most, 0)}</p>
      <svg
        className="band-drawing"
        viewBox={`0 -2 ${width_px} ${height_px + 4}`}
        role="img"
        aria-label={say('rolloutBands.stock_part', { part: line.part, store: line.store })}
      >
        <path className="b-week" d={`M${xOf(axis, today)} 0V${height_px}`} />
        <path className="b-zero" d={`M0 ${zero}H${width_px}`} />
        <path className="b-stock" d={stepsPath(line.points, before, axis, rise)} />
      </svg>
      <p className="small ends">
        {ends.map((end) => (
          <span key={end}>{numbers.date(end)}</span>
        ))}
      </p>
    </div>
  );
}
