import type { Problem } from '@eavewell/engine';
import { type MapThings, shown, tableProblem } from '@eavewell/tables';
import { gpx, kml } from '@tmcw/togeojson';
import { DOMParser, type Document, type Element, type Node } from '@xmldom/xmldom';
import { geojsonThings } from './geojsonThings.ts';
import { type XmlLimits, xmlFault } from './soundXml.ts';

/**
 * Deeper or larger than these, no map is read. Ours: folders in folders take a dozen; 300,000 elements, 100,000 positions of a track
 * with height and time, take most of 1 GB of memory.
 */
const mapXmlLimits: XmlLimits = { deepest: 100, most_elements: 300_000 };

const number = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const plainNumber = new RegExp(`^${number}$`);
const kmlTuple = new RegExp(`^${number},${number}(?:,${number})?$`);
const gxTuple = new RegExp(`^${number} +${number}(?: +${number})?$`);

/** What a point or a line is called in each kind of file. */
const thingNames = { kml: ['Placemark'], gpx: ['wpt', 'rte', 'trk'] } as const;

function elements(under: Document | Element, name: string): readonly Element[] {
  return Array.from(under.getElementsByTagName(name));
}

const textOf = (element: Element) => (element.textContent ?? '').trim();

/** The placemark, waypoint, route or track an element is in. */
function thingAbove(element: Element, names: readonly string[]): Element | null {
  let at: Node | null = element;
  while (at !== null && !names.includes(at.nodeName)) at = at.parentNode;
  return at as Element | null;
}

function nameOf(thing: Element): string {
  for (let child = thing.firstChild; child !== null; child = child.nextSibling)
    if (child.nodeName === 'name') return (child.textContent ?? '').trim();
  return '';
}

/** Coordinates that are no numbers, with the element they stand in. The library would read "8,5" as 8, or leave them out unsaid. */
function unsound(document: Document, kind: 'kml' | 'gpx'): readonly { at: Element; value: string }[] {
  if (kind === 'kml') {
    const texts = [
      ...elements(document, 'coordinates').map((at) => ({ at, value: textOf(at), form: kmlTuple })),
      ...elements(document, 'gx:coord').map((at) => ({ at, value: textOf(at), form: gxTuple })),
    ];
    return texts.flatMap(({ at, value, form }) => {
      const tuples = form === kmlTuple ? value.split(/\s+/) : [value.replace(/\s+/g, ' ')];
      const wrong = tuples.find((tuple) => !form.test(tuple));
      return wrong === undefined ? [] : [{ at, value: wrong }];
    });
  }
  return ['wpt', 'rtept', 'trkpt'].flatMap((name) =>
    elements(document, name).flatMap((at) => {
      const [latitude, longitude] = [at.getAttribute('lat') ?? '', at.getAttribute('lon') ?? ''];
      const isSound = [latitude, longitude].every((value) => plainNumber.test(value.trim()));
      return isSound ? [] : [{ at, value: `${latitude}, ${longitude}` }];
    }),
  );
}

/** Names and takes out the things that could not be read truly, so that none is left out unsaid. */
function withoutUnsound(document: Document, kind: 'kml' | 'gpx', file: string): readonly Problem[] {
  const names = thingNames[kind];
  const all = names.flatMap((name) => elements(document, name));
  const numbers = new Map(all.map((thing, i) => [thing, i + 1]));
  const wrong = new Map<Element, Problem>();
  const refuse = (thing: Element, code: Parameters<typeof tableProblem>[0], value: string) => {
    const facts = { name: shown(nameOf(thing)), number: numbers.get(thing) ?? 0, value: shown(value) };
    if (!wrong.has(thing)) wrong.set(thing, tableProblem(code, { file }, facts));
  };
  for (const { at, value } of unsound(document, kind)) {
    const thing = thingAbove(at, names);
    if (thing) refuse(thing, 'positions.not_a_number', value);
  }
  for (const name of kind === 'gpx' ? (['rte', 'trk'] as const) : [])
    for (const thing of elements(document, name)) {
      const parts = name === 'rte' ? [thing] : elements(thing, 'trkseg');
      const isLine = parts.some((part) => part.getElementsByTagName(`${name}pt`).length > 1);
      if (!isLine) refuse(thing, 'positions.line_too_short', nameOf(thing));
    }
  for (const thing of wrong.keys()) thing.parentNode?.removeChild(thing);
  return [...wrong.values()];
}

/** Names the addresses in the file and takes its links out. None is opened: what is behind a link is missing from the map. */
function addresses(document: Document, file: string): readonly Problem[] {
  const linked: string[] = [];
  const others: string[] = [];
  for (const href of elements(document, 'href')) {
    const value = textOf(href);
    if (value === '') continue;
    if (thingAbove(href, ['NetworkLink'])) linked.push(value);
    else if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(value)) others.push(value);
  }
  const problems: Problem[] = [];
  const say = (code: Parameters<typeof tableProblem>[0], found: readonly string[]) => {
    if (found.length > 0) problems.push(tableProblem(code, { file }, { value: shown(found[0]!), count: found.length }));
  };
  say('positions.link_not_followed', linked);
  for (const link of elements(document, 'NetworkLink')) link.parentNode?.removeChild(link);
  say('positions.address_not_opened', others);
  return problems;
}

function parsed(text: string): { readonly document: Document } | { readonly reason: string } {
  const complaints: string[] = [];
  try {
    // A warning is about what can be read all the same, such as a letter that was lost in a name.
    const onError = (level: string, message: string) => void (level === 'warning' || complaints.push(message));
    const parser = new DOMParser({ onError, locator: false });
    const document = parser.parseFromString(text, 'text/xml');
    return complaints.length > 0 ? { reason: complaints[0]! } : { document };
  } catch (error) {
    return { reason: (error as Error).message };
  }
}

/**
 * Which points and lines stand in this KML or GPX text? A library turns them into GeoJSON; before that, each coordinate is held to
 * be a plain number, since the library takes "8,5" for 8.
 *
 * @param text - the text [text]
 * @param file - the file's name, for the places of problems [text]
 * @returns points, lines and problems
 * @problem positions.doctype - it declares a document type; entities could hide in it
 * @problem positions.link_not_followed - it points to another map, which is not fetched
 * @law never throws; opens no address
 * @source @tmcw/togeojson, version 7.1.3; @xmldom/xmldom, version 0.9.12
 */
export function xmlThings(text: string, file: string): MapThings {
  const nothing = (code: Parameters<typeof tableProblem>[0], facts: Problem['facts']): MapThings => ({
    points: [],
    lines: [],
    problems: [tableProblem(code, { file }, { value: file, ...facts })],
  });
  const fault = xmlFault(text, mapXmlLimits);
  if (fault) {
    const { code, ...facts } = fault;
    return nothing(code, facts);
  }
  const read = parsed(text);
  if ('reason' in read) return nothing('positions.xml_broken', { reason: shown(read.reason) });
  const kind = read.document.documentElement?.nodeName ?? '';
  if (kind !== 'kml' && kind !== 'gpx') return nothing('positions.not_a_map', { found: shown(kind) });
  const before = [...addresses(read.document, file), ...withoutUnsound(read.document, kind, file)];
  try {
    const things = geojsonThings(kind === 'kml' ? kml(read.document) : gpx(read.document), file);
    return { ...things, problems: [...before, ...things.problems] };
  } catch (error) {
    return nothing('positions.xml_broken', { reason: shown((error as Error).message) });
  }
}
