import type { Cells } from '@eavewell/records';

interface Feature {
  readonly id?: unknown;
  readonly properties?: { readonly wayId?: unknown } | null;
}

/** The row that holds what a collection says beside its lines. */
const aroundKey = '#around';

/** Space between the parts of a JSON text, but not within its strings. */
const spaces = /("(?:[^"\\]|\\.)*")|\s+/g;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The id of a line; null where it has none that can name a row. */
function idOf(feature: unknown): string | null {
  const { id, properties } = (isObject(feature) ? feature : {}) as Feature;
  const found = properties?.wayId ?? id;
  return typeof found === 'string' && found !== '' && found !== aroundKey && found.length < 900 ? found : null;
}

/**
 * How are the lines of ways kept as rows of records? A row a way; what stands around them is a row too.
 *
 * @param text - ways.geojson [text]
 * @returns the rows by the id of the way; null where the file cannot be made again from rows, and is kept letter for letter
 * @law joinedWayLines gives the same JSON back
 * @definition ours: docs/decisions/0103-tables-as-records.md
 */
export function wayLineRows(text: string): ReadonlyMap<string, Cells> | null {
  const value = parsed(text);
  if (!isObject(value) || !Array.isArray(value['features'])) return null;
  const isPlain = text.replace(spaces, '$1') === JSON.stringify(value);
  if (!isPlain || Object.keys(value).at(-1) !== 'features') return null;
  const { features, ...around } = value;
  const rows = new Map<string, Cells>([[aroundKey, { line: JSON.stringify(around) }]]);
  for (const feature of features) {
    const id = idOf(feature);
    if (id === null || rows.has(id)) return null;
    rows.set(id, { line: JSON.stringify(feature) });
  }
  return rows;
}

/**
 * Which file of lines do these rows come to?
 *
 * @param rows - the rows of the table `wayLines`
 * @returns the text of ways.geojson; null where there are none [text]
 * @definition ours: docs/decisions/0103-tables-as-records.md
 */
export function joinedWayLines(rows: Iterable<readonly [string, Cells]>): string | null {
  let around: unknown = { type: 'FeatureCollection' };
  const features: unknown[] = [];
  let isThere = false;
  for (const [key, { line = 'null' }] of rows) {
    isThere = true;
    if (key === aroundKey) around = parsed(line);
    else features.push(parsed(line));
  }
  return isThere ? `${JSON.stringify({ ...(isObject(around) ? around : {}), features }, null, 2)}\n` : null;
}
