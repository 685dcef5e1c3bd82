import type { RolloutComparison } from '@eavewell/tables';
import { useMemo, useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useWidth } from '../../../look/useWidth.ts';
import { type ServedLines, type ServedPoint, servedLines } from './servedLines.ts';

const day_ms = 86_400_000;
/** Of the picture [px]. */
const [plot_px, head_px, foot_px, edge_px, most_px] = [186, 24, 44, 10, 900] as const;
/** Narrower than this the names of the two lines stand under each other, so much apart [px]. */
const [beside_px, under_px] = [520, 18] as const;

const dayNumber = (day: string) => Date.parse(`${day}T00:00:00Z`) / day_ms;

/** Two plans on one axis: how many people drink from which day on. */
export function ServedPicture(props: {
  readonly compared: Pick<RolloutComparison, 'servedA' | 'servedB' | 'people_count'>;
  readonly a: string;
  readonly b: string;
}) {
  const { say, numbers } = useLanguage();
  const box = useRef<HTMLDivElement>(null);
  const { width } = useWidth(box);
  const { compared, a, b } = props;
  const lines = useMemo(() => servedLines(compared), [compared]);
  if (lines === null) return null;
  const last = (line: readonly ServedPoint[]) => line.at(-1);
  const said = ([name, line]: readonly [string, readonly ServedPoint[]]) => {
    const end = last(line);
    return end === undefined
      ? say('rolloutPlans.line_nobody', { name })
      : say('rolloutPlans.line', { name, people: end.people, day: numbers.date(end.day) });
  };
  const text = (
    [
      [a, lines.a],
      [b, lines.b],
    ] as const
  )
    .map(said)
    .join(' ');
  return (
    <div className="served-picture" ref={box}>
      {width === null ? null : <Lines {...{ lines, a, b, text }} width={Math.min(width, most_px)} />}
      <p className="small">{text}</p>
    </div>
  );
}

/** The line of a plan as it is drawn: level until a day, then up. */
export function stepPath(
  line: readonly ServedPoint[],
  { x, y, until }: { x(day: string): number; y(people: number): number; readonly until: string },
): string {
  const first = line[0];
  if (first === undefined) return '';
  const at = (value: number) => value.toFixed(1);
  const steps = line.map(({ day, people }) => `H${at(x(day))}V${at(y(people))}`).join('');
  return `M${at(x(first.day))} ${at(y(0))}${steps}H${at(x(until))}`;
}

// long: the markup of one picture
function Lines(props: {
  readonly lines: ServedLines;
  readonly a: string;
  readonly b: string;
  readonly text: string;
  readonly width: number;
}) {
  const { numbers, say } = useLanguage();
  const { lines, a, b, text, width } = props;
  const { from, until, people } = lines;
  const isUnder = width < beside_px;
  const height_px = plot_px + foot_px + (isUnder ? under_px : 0);
  const [first, last] = [dayNumber(from), dayNumber(until)];
  const x = (day: string) => edge_px + ((width - 2 * edge_px) * (dayNumber(day) - first)) / Math.max(1, last - first);
  const y = (count: number) => plot_px - ((plot_px - head_px) * count) / Math.max(1, people);
  const scale = { x, y, until };
  const ground = y(0);
  return (
    <svg
      className="served-lines"
      width={width}
      height={height_px}
      viewBox={`0 0 ${width} ${height_px}`}
      role="img"
      aria-label={text}
    >
      <line className="axis" x1={0} x2={width} y1={ground} y2={ground} />
      <line className="all" x1={0} x2={width} y1={y(people)} y2={y(people)} />
      <text x={edge_px} y={y(people) - 6}>
        {say('rolloutPlans.line_all', { people })}
      </text>
      <path className="plan-a" d={stepPath(lines.a, scale)} />
      <path className="plan-b" d={stepPath(lines.b, scale)} />
      <text x={edge_px} y={ground + 16}>
        {numbers.date(from)}
      </text>
      <text x={width - edge_px} y={ground + 16} textAnchor="end">
        {numbers.date(until)}
      </text>
      <g transform={`translate(${edge_px} ${plot_px + foot_px - 8})`}>
        <path className="plan-a" d="M0 -4H28" />
        <text x={34}>{a}</text>
        <g transform={isUnder ? `translate(0 ${under_px})` : `translate(${width / 2} 0)`}>
          <path className="plan-b" d="M0 -4H28" />
          <text x={34}>{b}</text>
        </g>
      </g>
    </svg>
  );
}
