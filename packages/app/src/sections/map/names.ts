/** A name to be set beside its point [px]. */
export interface NameAsked {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Half the size of the mark it names [px]. */
  readonly clear: number;
  readonly width: number;
  readonly height: number;
}

/** A name with the place it got: its start, or its end, on the line of its letters [px]. */
export interface NamePlaced {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end' | 'middle';
}

/** A rectangle that is taken [px]. */
export interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const gap = 4;

const meets = (a: Rect, b: Rect) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The places a name may have: right of its point, left, above, below. */
function placesOf({ x, y, clear, width, height }: NameAsked) {
  const side = clear + gap;
  const level = y + height * 0.32;
  return [
    { x: x + side, y: level, anchor: 'start' as const, left: x + side },
    { x: x - side, y: level, anchor: 'end' as const, left: x - side - width },
    { x, y: y - side, anchor: 'middle' as const, left: x - width / 2 },
    { x, y: y + side + height * 0.75, anchor: 'middle' as const, left: x - width / 2 },
  ].map((place) => ({
    ...place,
    rect: { left: place.left, top: place.y - height * 0.8, right: place.left + width, bottom: place.y + height * 0.25 },
  }));
}

/**
 * Sets names beside their points so that none lies on another, on a mark or over the edge. Those that come first choose first; a
 * name for which there is no room is left out.
 *
 * @param asked - the names, most wanted first
 * @param marks - what must not be covered
 */
export function placeNames(
  asked: readonly NameAsked[],
  marks: readonly Rect[],
  { wide, high }: { readonly wide: number; readonly high: number },
): readonly NamePlaced[] {
  const taken: Rect[] = [...marks];
  const placed: NamePlaced[] = [];
  for (const one of asked) {
    const found = placesOf(one).find(
      ({ rect }) =>
        rect.left >= 2 &&
        rect.top >= 2 &&
        rect.right <= wide - 2 &&
        rect.bottom <= high - 2 &&
        !taken.some((other) => meets(rect, other)),
    );
    if (!found) continue;
    taken.push(found.rect);
    placed.push({ key: one.key, text: one.text, x: found.x, y: found.y, anchor: found.anchor });
  }
  return placed;
}
