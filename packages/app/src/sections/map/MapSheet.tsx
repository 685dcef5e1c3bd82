import { memo, type ReactNode } from 'react';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import type { SitePoint } from './frame.ts';
import type { MapName } from './mapNames.ts';
import type { Mark, MarksDrawn } from './marks.ts';
import type { Outline } from './outline.ts';
import { onPicture, type Size, type View } from './view.ts';
import type { MapPlace, WaysDrawn } from './ways.ts';

/** Everything the picture is drawn from. */
export interface MapDrawn {
  readonly view: View;
  readonly size: Size;
  readonly outline: Outline | null;
  readonly ways: WaysDrawn;
  readonly places: readonly MapPlace[];
  readonly drawn: MarksDrawn;
  readonly names: readonly MapName[];
  readonly selected: SitePoint | null;
  readonly told: SitePoint | null;
}

/** The map as lines: land, ways, places, sites, names. What it shows stands in the list as well, so it is not read out. */
export function MapSheet({ children, ...map }: MapDrawn & { readonly children?: ReactNode }) {
  const { view, size, outline, ways } = map;
  const [x, y] = onPicture(view, size, [0, 0]);
  const laid = `translate(${x} ${y}) scale(${view.pixels_per_km})`;
  return (
    <svg className="map-sheet" width={size.wide} height={size.high} aria-hidden="true" focusable="false">
      <g transform={laid}>
        {outline && <Land outline={outline} />}
        <Ways ways={ways} />
      </g>
      {map.places.map((place) => (
        <PlaceMark key={place.key} kind={place.kind} at={onPicture(view, size, place.point)} />
      ))}
      {children}
      <Sites drawn={map.drawn} />
      {[map.told, map.selected].map((site, i) =>
        site ? (
          <Ring key={i === 0 ? 'told' : 'selected'} at={onPicture(view, size, site.point)} isHeavy={i === 1} />
        ) : null,
      )}
      {map.names.map(({ key, text, x: left, y: top, anchor, of }) => (
        <text key={key} className={`map-name of-${of}`} x={left} y={top} textAnchor={anchor}>
          {text}
        </text>
      ))}
    </svg>
  );
}

/** Coasts in ink with three lines of water that fade outward; borders broken. */
const Land = memo(function Land({ outline: { coast, land, borders } }: { readonly outline: Outline }) {
  return (
    <>
      {coast !== null && (
        <>
          <path className="coast-water third" d={coast} />
          <path className="coast-clear third" d={coast} />
          <path className="coast-water second" d={coast} />
          <path className="coast-clear second" d={coast} />
          <path className="coast-water first" d={coast} />
          <path className="coast-clear first" d={coast} />
        </>
      )}
      {coast !== null && land !== null && <path className="land" d={land} />}
      {borders !== null && <path className="border" d={borders} />}
      {coast !== null && <path className="coast" d={coast} />}
    </>
  );
});

function Ways({ ways: { paths } }: { readonly ways: WaysDrawn }) {
  return (
    <>
      <path className="way river" d={paths.river} />
      <path className="way foot" d={paths.foot} />
      <path className="way other" d={paths.other} />
      <path className="way road" d={paths.road} />
      <path className="way road-inside" d={paths.road} />
    </>
  );
}

/** A store is a square, a landing a bar, any other place a small open square. */
function PlaceMark({ kind, at: [x, y] }: { readonly kind: MapPlace['kind']; readonly at: readonly [number, number] }) {
  if (kind === 'landing') return <path className="place landing" d={`M${x - 7} ${y}h14`} />;
  const half = kind === 'store' ? 4 : 3;
  return <rect className={`place ${kind}`} x={x - half} y={y - half} width={2 * half} height={2 * half} />;
}

const Sites = memo(function Sites({ drawn: { marks, specks, under } }: { readonly drawn: MarksDrawn }) {
  return (
    <>
      <path className="specks v-holds" d={specks} />
      <path className="specks under v-unknown" d={under.unknown} />
      <path className="specks under v-tight" d={under.tight} />
      <path className="specks under v-short" d={under.short} />
      {marks.map((mark) => (
        <SiteMark key={mark.site.key} mark={mark} />
      ))}
    </>
  );
});

function SiteMark({ mark: { site, x, y, size } }: { readonly mark: Mark }) {
  const wide = (size * 20) / 24;
  return (
    <g transform={`translate(${(x - wide / 2).toFixed(1)} ${(y - size / 2).toFixed(1)})`}>
      <path className="mark-ground" d="M2.5 22.5V5.5Q10 .5 17.5 5.5V22.5Z" transform={`scale(${size / 24})`} />
      <VerdictMark verdict={site.verdict} size={size} />
    </g>
  );
}

function Ring({ at: [x, y], isHeavy }: { readonly at: readonly [number, number]; readonly isHeavy: boolean }) {
  return <circle className={isHeavy ? 'ring chosen' : 'ring'} cx={x} cy={y} r={15} />;
}
