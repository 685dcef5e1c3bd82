import type { RolloutSheet, SheetStrip } from '@eavewell/tables';
import { memo, type ReactNode } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { dayOf, xOf } from './axis.ts';
import { BandTitle, Ground, type OnAxis } from './Ground.tsx';
import { unsureAfter } from './guessed.ts';
import { spanWords } from './tripWords.ts';

/** Higher than any name of a way [px]: what is over is cut off at its foot. */
const tall_px = 400;
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
  const isGuessed = strips.some(({ spans }) => spans.some(({ isToGuessed }) => isToGuessed));
  const about = say('rolloutBands.ways_about', { hasGuess: isGuessed ? 'yes' : 'no' });
  return (
    <>
      <BandTitle on={on} title={say('rolloutBands.ways')} about={about} />
      <ul className="band-list">
        {strips.map((strip) => (
          <li key={strip.stripId} className="band-row">
            <div className="band-name way-name">
              {strip.name}
              <Said strip={strip} />
            </div>
            <div className="way-ground">
              <Ground on={on} height={tall_px}>
                <Strip strip={strip} on={on} />
              </Ground>
            </div>
          </li>
        ))}
      </ul>
    </>
  );
});

/** In words what the strip shows: when it is not gone, and when it was worst. */
function Said({ strip: { spans, weeks } }: { readonly strip: SheetStrip }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const worst = weeks.reduce<SheetStrip['weeks'][number] | null>(
    (most, one) => (one.closed_fraction > (most?.closed_fraction ?? 0) ? one : most),
    null,
  );
  return (
    <span className="said-only">
      {spans.map((span) => (
        <span key={`${span.from} ${span.kind}`}>
          {'; '}
          {spanWords(span, language)}
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

function Strip({ strip, on: { axis, seen } }: { readonly strip: SheetStrip; readonly on: OnAxis }) {
  const { say } = useLanguage();
  const bars = strip.weeks.flatMap(({ from, closed_fraction }) => {
    const day = dayOf(from);
    if (day === null || closed_fraction <= 0) return [];
    const x = xOf(axis, day);
    return x + axis.week_px < seen.from || x > seen.to ? [] : [{ x, tall: Math.max(1.5, bar * closed_fraction) }];
  });
  const boxOf = ({ from, to }: { readonly from: string; readonly to: string }) => {
    const [begin, end] = [dayOf(from), dayOf(to)];
    if (begin === null || end === null) return null;
    const x = Math.max(0, xOf(axis, begin));
    const right = Math.min(axis.width_px, xOf(axis, end + 1));
    return right <= x || right < seen.from || x > seen.to ? null : { x, right };
  };
  const blocks = strip.spans.map((span) => {
    const after = unsureAfter(span, strip);
    return { span, box: boxOf(span), unsure: after === null ? null : boxOf(after) };
  });
  return (
    <>
      <path className="b-strip" d={`M0 ${foot}H${axis.width_px}`} />
      <path
        className="b-share"
        d={bars.map(({ x, tall }) => `M${x + 0.5} ${foot}v${-tall}h${Math.max(1, axis.week_px - 1)}v${tall}Z`).join('')}
      />
      {blocks.map(({ span: { from, kind, said }, box, unsure }) => (
        <g key={`${from} ${kind}`}>
          {box === null ? null : (
            <Block {...box} kind={kind} said={said}>
              <BlockName
                x={Math.max(box.x, seen.from)}
                right={Math.min(box.right, seen.to)}
                name={say(`rolloutBands.kind_${kind}`)}
              />
            </Block>
          )}
          {unsure === null ? null : <Unsure {...unsure} />}
        </g>
      ))}
    </>
  );
}

function Block({
  x,
  right,
  kind,
  said,
  children,
}: {
  readonly x: number;
  readonly right: number;
  readonly kind: SheetStrip['spans'][number]['kind'];
  readonly said: string;
  readonly children: ReactNode;
}) {
  return (
    <>
      <title>{said}</title>
      {kind === 'slower' ? null : <rect className="b-ground" x={x} y={foot - bar} width={right - x} height={bar} />}
      <rect className={`b-closed b-${kind}`} x={x} y={foot - bar} width={right - x} height={bar} />
      {children}
    </>
  );
}

/** After a last day that is a guess: hatched still, paler and without an end, and a word where there is room. */
function Unsure({ x, right }: { readonly x: number; readonly right: number }) {
  const { say } = useLanguage();
  const word = say('rolloutBands.guessed');
  const width = right - x;
  const hasRoom = width >= word.length * 7.5 + 8;
  return (
    <g>
      <rect className="b-unsure" x={x} y={foot - bar} width={width} height={bar} />
      <path className="b-unsure-edge" d={`M${x} ${foot - bar}h${width}`} />
      <text className="b-letters b-on-hatch" x={x + width / 2} y={foot - 3.5} textAnchor="middle">
        {hasRoom ? word : '?'}
      </text>
    </g>
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
