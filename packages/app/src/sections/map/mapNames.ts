import type { SitePoint } from './frame.ts';
import { lettering, letterWidth } from './letterWidth.ts';
import type { MarksDrawn } from './marks.ts';
import { type NameAsked, placeNames, type Rect } from './names.ts';
import type { PlanePoint } from './plane.ts';
import { onPicture, type Size, type View } from './view.ts';
import type { MapPlace, WaysDrawn } from './ways.ts';

/** A name on the map, and whose it is. */
export interface MapName {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end' | 'middle';
  readonly of: 'site' | 'place' | 'river' | 'label';
}

/** Words at a point of the plane. */
export interface PointLabel {
  readonly key: string;
  readonly text: string;
  readonly point: PlanePoint;
  /** The site it names, where it is one: it is not named twice, and nothing is lettered over its mark. */
  readonly site?: string;
}

/** What names are set from. */
export interface NamesAsked {
  readonly drawn: MarksDrawn;
  /** The one that is chosen and the one that is pointed at: named before all others, whatever their verdict. */
  readonly named: readonly SitePoint[];
  readonly places: readonly MapPlace[];
  readonly ways: WaysDrawn;
  /** What is lettered beside names, most wanted first. */
  readonly labels?: readonly PointLabel[];
  /** The most sites that are named; those the list shows come first. */
  readonly most: number;
}

/**
 * The names in the picture: those that are chosen, sites the list shows, stores and landings, then rivers; as many as there is
 * room for.
 */
export function mapNames(
  { drawn, named, places, ways, most, labels = [] }: NamesAsked,
  view: View,
  size: Size,
): readonly MapName[] {
  const ask = (key: string, text: string, [x, y]: readonly [number, number], clear: number, weight: 400 | 700) => ({
    ...{ key, text, x, y, clear },
    width: letterWidth(text, weight),
    height: lettering * 1.2,
  });
  const at = (point: readonly [number, number]) => onPicture(view, size, point);
  const isLabelled = ({ key }: SitePoint) => labels.some(({ site }) => site === key);
  const chosen = named
    .filter((site) => !isLabelled(site))
    .map((site) => ask(`site ${site.key}`, site.name, at(site.point), 10, 700));
  const labelled = labels.filter(({ site }) => site !== undefined).map(({ point }) => squareAt(at(point)));
  const lettered = labels.map(({ key, text, point }) => ask(`label ${key}`, text, at(point), 9, 700));
  const listed = drawn.marks
    .filter((mark) => mark.size > 12 && !named.some(({ key }) => key === mark.site.key))
    .reverse()
    .slice(0, most)
    .map(({ site, x, y, size: high }) => ask(`site ${site.key}`, site.name, [x, y], high / 2, 700));
  const stores = places.map(({ key, name, point }) => ask(`place ${key}`, name, at(point), 5, 400));
  const rivers = ways.rivers.map(({ key, name, point }) => ask(`river ${key}`, name, at(point), 2, 400));
  const asked: readonly NameAsked[] = [...chosen, ...lettered, ...listed, ...stores, ...rivers];
  return placeNames(asked, [...marksTaken(drawn), ...labelled, ...buttonsTaken(size)], size).map((name) => ({
    ...name,
    of: name.key.slice(0, name.key.indexOf(' ')) as MapName['of'],
  }));
}

/** What the mark of a labelled site takes [px]. */
const squareAt = ([x, y]: PlanePoint): Rect => ({ left: x - 8, right: x + 8, top: y - 9, bottom: y + 9 });

function marksTaken({ marks }: MarksDrawn): readonly Rect[] {
  return marks.map(({ x, y, size }) => ({
    left: x - size / 2 + 2,
    right: x + size / 2 - 2,
    top: y - size / 2 + 1,
    bottom: y + size / 2 - 1,
  }));
}

/** Where the arrow of north and the bar of the scale stand, in either direction of writing. */
function buttonsTaken({ wide, high }: Size): readonly Rect[] {
  return [
    { left: wide - 40, right: wide, top: 0, bottom: 62 },
    { left: 0, right: Math.min(160, wide / 2), top: high - 34, bottom: high },
  ];
}
