import { memo, type ReactElement } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { type SiteEntry, type Stations, stationsInOrder } from './overview.ts';
import { stationsWords } from './rowWords.ts';

/** How wide a station's column is, and how high the thread [px]: sites.css and the drawing over the columns have the same. */
const [column, high] = [30, 28] as const;
/** A mark is as large as it matters, as a share of the drawn one: an exception stands out, what holds is small. */
const small = 11 / 24;
/** What the line keeps free on each side of a mark [px]. */
const free = 3;
/** The tank of a mark, from its lower left corner [px]: straight walls, a slightly domed lid (look/VerdictMark.tsx has the same). */
const tank = 'v-17q7.5-5 15 0v17z';
const smallTank = `v${-17 * small}q${7.5 * small} ${-5 * small} ${15 * small} 0v${17 * small}z`;

/** The kinds of lines that all marks of one thread together are drawn with. */
const kinds = ['rule', 'holds', 'notJudged', 'unknown', 'tight', 'half', 'short'] as const;

/** The stations of one site on a thread, along the water's path: one picture with few lines, as many are drawn at once. It is never mirrored. */
export const Thread = memo(function Thread({ site }: { readonly site: SiteEntry }) {
  const language = useLanguage();
  const { stations } = site;
  if (stations === null) return <span className="thread" />;
  return (
    <svg
      className="thread"
      width={column * stationsInOrder.length}
      height={high}
      role="img"
      aria-label={stationsWords(site, language)}
      focusable="false"
    >
      {threadOf(stations)}
    </svg>
  );
});

const drawn = new Map<string, readonly ReactElement[]>();

/** The lines of a thread. Most sites have one of a few: each is made once. */
function threadOf(stations: Stations): readonly ReactElement[] {
  const name = stationsInOrder.map((station) => stations[station]).join(' ');
  const known = drawn.get(name);
  if (known !== undefined) return known;
  const lines = linesOf(stations);
  const made = kinds
    .filter((kind) => lines[kind] !== '')
    .map((kind) => <path key={kind} className={`t-${kind}`} d={lines[kind]} />);
  drawn.set(name, made);
  return made;
}

function linesOf(stations: Stations): Record<(typeof kinds)[number], string> {
  const lines = { rule: '', holds: '', notJudged: '', unknown: '', tight: '', half: '', short: '' };
  let from = column / 2;
  for (const [i, station] of stationsInOrder.entries()) {
    const verdict = stations[station];
    const middle = column * (i + 0.5);
    const isSmall = verdict === 'holds' || verdict === 'notJudged';
    const share = isSmall ? small : 1;
    const clear = 10 * share + free;
    if (i > 0) lines.rule += `M${from} ${high / 2}H${middle - clear}`;
    from = middle + clear;
    const [left, foot] = [middle - 7.5 * share, high / 2 + 10.5 * share];
    if (verdict === 'notJudged') lines.notJudged += `M${middle} ${high / 2 + 2 * small}h0`;
    else lines[verdict] += `M${left} ${foot}${isSmall ? smallTank : tank}`;
    if (verdict === 'tight') lines.half += `M${left} ${foot}v-9.5h15v9.5z`;
  }
  return lines;
}
