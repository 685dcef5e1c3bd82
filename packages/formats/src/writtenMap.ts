import type { MapContent, ShownPoint, ShownWay } from '@eavewell/tables';
import { DOMImplementation, type Element, XMLSerializer } from '@xmldom/xmldom';
import { zipSync } from 'fflate';
import type { MapKind } from './readMap.ts';
import { coordinatesOf, cutAtMeridian, lineGeometry } from './wayLines.ts';

/** Namespaces. Source: OGC KML 2.2, section 6.2; GPX 1.1 schema. */
const namespaces = { kml: 'http://www.opengis.net/kml/2.2', gpx: 'http://www.topografix.com/GPX/1/1' } as const;
/** A zip's entry has a day; always the same, so that the same map gives the same bytes. */
const zipDay = new Date(2000, 0, 1);
const metres = (length_km: number) => Number(length_km.toFixed(3));

/** What XML cannot hold at all, even escaped. Source: XML 1.0, section 2.2 (from memory). */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what it is for
const unwritable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

/** What is said of a map as a whole, and how people are written on it. */
export interface AboutMap {
  readonly title: string;
  readonly creator: string;
  readonly people: (count: number) => string;
}

/** Puts an element with attributes and text under another. */
function put(
  under: Element,
  name: string,
  text: string | null = null,
  attributes: Readonly<Record<string, string>> = {},
) {
  const document = under.ownerDocument!;
  const element = document.createElementNS(under.namespaceURI, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value.replace(unwritable, '\ufffd'));
  if (text !== null) element.appendChild(document.createTextNode(text.replace(unwritable, '\ufffd')));
  under.appendChild(element);
  return element;
}

function xmlText(kind: 'kml' | 'gpx', fill: (root: Element) => void): string {
  const document = new DOMImplementation().createDocument(namespaces[kind], kind, null);
  fill(document.documentElement!);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(document)}\n`;
}

/** What is said of a point beside its name, by property; what is not known is left out. */
function pointFacts({ kind, idName, id, people }: ShownPoint): Readonly<Record<string, string | number>> {
  return { [idName]: id, kind, ...(people === null ? {} : { people }) };
}

function wayFacts({ wayId, mode, from, to, length_km }: ShownWay): Readonly<Record<string, string | number>> {
  const known = Object.entries({ mode, from, to }).flatMap(([key, value]) => (value === null ? [] : [[key, value]]));
  return { wayId, ...(Object.fromEntries(known) as Record<string, string>), length_km: metres(length_km) };
}

const wayName = ({ name, wayId }: ShownWay) => name ?? wayId;

function geojsonText({ points, ways }: MapContent): string {
  const features = [
    ...points.map((point) => ({
      type: 'Feature',
      id: point.id,
      properties: { name: point.name, ...pointFacts(point) },
      geometry: { type: 'Point', coordinates: coordinatesOf(point.position) },
    })),
    ...ways.map((way) => ({
      type: 'Feature',
      id: way.wayId,
      properties: { name: wayName(way), ...wayFacts(way) },
      geometry: lineGeometry(way.pieces),
    })),
  ];
  const lines = features.map((feature) => JSON.stringify(feature)).join(',\n');
  return `{"type":"FeatureCollection","features":[\n${lines}\n]}\n`;
}

function placemark(folder: Element, name: string, facts: Readonly<Record<string, string | number>>): Element {
  const element = put(folder, 'Placemark');
  put(element, 'name', name);
  const data = put(element, 'ExtendedData');
  for (const [key, value] of Object.entries(facts)) put(put(data, 'Data', null, { name: key }), 'value', String(value));
  return element;
}

const tuple = (position: Parameters<typeof coordinatesOf>[0]) => coordinatesOf(position).join(',');

function kmlText({ points, ways }: MapContent, title: string): string {
  return xmlText('kml', (root) => {
    const document = put(root, 'Document');
    put(document, 'name', title);
    for (const kind of new Set(points.map((point) => point.kind))) {
      const folder = put(document, 'Folder');
      put(folder, 'name', kind);
      for (const point of points.filter((one) => one.kind === kind)) {
        const element = put(placemark(folder, point.name, pointFacts(point)), 'Point');
        put(element, 'coordinates', tuple(point.position));
      }
    }
    if (ways.length === 0) return;
    const folder = put(document, 'Folder');
    put(folder, 'name', 'way');
    for (const way of ways) {
      const mark = placemark(folder, wayName(way), wayFacts(way));
      const pieces = cutAtMeridian(way.pieces);
      const above = pieces.length > 1 ? put(mark, 'MultiGeometry') : mark;
      for (const piece of pieces) put(put(above, 'LineString'), 'coordinates', piece.map(tuple).join(' '));
    }
  });
}

/** Latitude and longitude as attributes. GPX knows no longitude of 180: it is -180 there. Source: gpx-one, longitudeType. */
function latLon(position: Parameters<typeof coordinatesOf>[0]): Readonly<Record<string, string>> {
  const [longitude, latitude] = coordinatesOf(position).map((value) => value.toFixed(7)) as [string, string];
  return { lat: latitude, lon: Number(longitude) === 180 ? '-180.0000000' : longitude };
}

function gpxText({ points, ways }: MapContent, { title, creator, people }: AboutMap): string {
  return xmlText('gpx', (root) => {
    root.setAttribute('version', '1.1');
    root.setAttribute('creator', creator);
    put(put(root, 'metadata'), 'name', title);
    for (const point of points) {
      const element = put(root, 'wpt', null, latLon(point.position));
      put(element, 'name', point.name);
      put(element, 'cmt', point.id);
      if (point.people !== null) put(element, 'desc', people(point.people));
      put(element, 'type', point.kind);
    }
    for (const way of ways) {
      const element = put(root, 'trk');
      put(element, 'name', wayName(way));
      put(element, 'cmt', way.wayId);
      if (way.mode !== null) put(element, 'type', way.mode);
      for (const piece of way.pieces) {
        const segment = put(element, 'trkseg');
        for (const position of piece) put(segment, 'trkpt', null, latLon(position));
      }
    }
  });
}

/**
 * How is a map written? As GeoJSON, KML, KMZ or GPX: points with id, name, kind and people, ways with id, name, mode, ends and
 * length. What is not known is left out.
 *
 * @param content - the points and ways
 * @param kind - the form
 * @param about - the programme's name, what made the file, and people in words [text]
 * @returns the file [byte]
 * @law read back, it gives the same positions to 7 decimals
 * @source rfc7946, sections 3 and 4; kml-two, clauses 7 to 10; gpx-one, gpxType
 */
export function writtenMap(content: MapContent, kind: MapKind, about: AboutMap): Uint8Array {
  const { title } = about;
  const bytes = (text: string) => new TextEncoder().encode(text);
  switch (kind) {
    case 'geojson':
      return bytes(geojsonText(content));
    case 'kml':
      return bytes(kmlText(content, title));
    case 'kmz':
      return zipSync({ 'doc.kml': [bytes(kmlText(content, title)), { mtime: zipDay }] });
    case 'gpx':
      return bytes(gpxText(content, about));
  }
}
