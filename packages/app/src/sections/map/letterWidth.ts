/** How wide letters are [px], by weight. */
const known = new Map<string, number>();
let pen: CanvasRenderingContext2D | null | undefined;
let face = '';

/** The size of letters on a map [px]: the least of the look. */
export const lettering = 13;

/** How wide a name is on the map [px]; roughly, where the browser cannot tell. */
export function letterWidth(text: string, weight: 400 | 700): number {
  const key = `${weight} ${text}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  if (pen === undefined) {
    pen = document.createElement('canvas').getContext('2d');
    face = getComputedStyle(document.body).fontFamily;
  }
  if (!pen) return text.length * lettering * 0.62;
  pen.font = `${weight} ${lettering}px ${face}`;
  const width = pen.measureText(text).width + 2;
  known.set(key, width);
  return width;
}
