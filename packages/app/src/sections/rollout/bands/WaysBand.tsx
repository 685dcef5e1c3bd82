import type { RolloutSheet, SheetStrip } from '@eavewell/tables';
import { memo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { dayOf, xOf } from './axis.ts';
import { BandTitle, Ground, type OnAxis } from './Ground.tsx';

const height = 24;
const foot = 21;
/** A week in which it was closed every year is as tall as this [px]. */
const bar = 15;

/** Ways that close: when this plan does not go them, and how often each week closed in the years of the gauge. */
export const WaysBand = memo(function WaysBand({
  strips,
  on,
}: {
  readonly strips: RolloutSheet['strips'];
  readonly on: OnAxis;
}) {
  const { say } = useLanguage();
  if (strips.length === 0) return null;
  return (
    <>
      <BandTitle on={on} title={say('rolloutBands.ways')} about={say('rolloutBands.ways_about')} />
      <ul className="band-list">
        {strips.map((strip) => (
          <li key={strip.stripId} className="band-row">
            <div className="band-name one-line" title={strip.name}>
              {strip.name}
              <Said strip={strip} />
            </div>
            <Ground on={on} height={height}>
              <Strip strip={strip} on={on} />
            </Ground>
          </li>
        ))}
      </ul>
    </>
  );
});

/** In words what the strip shows: when it is not gone, and when it was worst. */
function Said({ strip: { spans, weeks } }: { readonly strip: SheetStrip }) {
  const { say, numbers } = useLanguage();
  const worst = weeks.reduce<SheetStrip['weeks'][number] | null>(
    (most, one) => (one.closed_fraction > (most?.closed_fraction ?? 0) ? one : most),
    null,
  );
  return (
    <span className="said-only">
      {spans.map(({ from, to, said }) => (
        <span key={from}>
          {'; '}
          {say('rolloutBands.way_span', { from: numbers.date(from), to: numbers.date(to), said })}
        </span>
      ))}
      {worst === null ? null : (
        <span>
          {'; '}
          {say('rolloutBands.way_worst', {
            share: numbers.percent(worst.closed_fraction),
            date: numbers.date(worst.from),
          })}
        </span>
      )}
    </span>
  );
}

function Strip({ strip: { spans, weeks }, on: { axis, seen } }: { readonly strip: SheetStrip; readonly on: OnAxis }) {
  const { say } = useLanguage();
  const bars = weeks.flatMap(({ from, closed_fraction }) => {
    const day = dayOf(from);
    if (day === null || closed_fraction <= 0) return [];
    const x = xOf(axis, day);
    return x + axis.week_px < seen.from || x > seen.to ? [] : [{ x, tall: Math.max(1.5, bar * closed_fraction) }];
  });
  const blocks = spans.flatMap(({ from, to, kind, said }) => {
    const [begin, end] = [dayOf(from), dayOf(to)];
    if (begin === null || end === null) return [];
    const x = Math.max(0, xOf(axis, begin));
    const right = Math.min(axis.width_px, xOf(axis, end + 1));
    return right <= x || right < seen.from || x > seen.to ? [] : [{ x, right, kind, said }];
  });
  return (
    <>
      <path className="b-strip" d={`M0 ${foot}H${axis.width_px}`} />
      <path
        className="b-share"
        d={bars.map(({ x, tall }) => `M${x + 0.5} ${foot}v${-tall}h${Math.max(1, axis.week_px - 1)}v${tall}Z`).join('')}
      />
      {blocks.map(({ x, right, kind, said }) => (
        <g key={`${x} ${kind}`}>
          <title>{said}</title>
          {kind === 'slower' ? null : <rect className="b-ground" x={x} y={foot - bar} width={right - x} height={bar} />}
          <rect className={`b-closed b-${kind}`} x={x} y={foot - bar} width={right - x} height={bar} />
          <BlockName
            x={Math.max(x, seen.from)}
            right={Math.min(right, seen.to)}
            name={say(`rolloutBands.kind_${kind}`)}
          />
        </g>
      ))}
    </>
  );
}

/** What closes it, in the middle of the part that is drawn, where there is room. */
function BlockName({ x, right, name }: { readonly x: number; readonly right: number; readonly name: string }) {
  if (right - x < name.length * 7.5 + 8) return null;
  return (
    <text className="b-letters b-on-hatch" x={(x + right) / 2} y={foot - 3.5} textAnchor="middle">
      {name}
    </text>
  );
}
