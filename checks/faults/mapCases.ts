import { expect, it } from 'vitest';
import { readMap } from '../../packages/formats/src/readMap.ts';
import { line } from './folder.ts';

export const bytes = (text: string) => new TextEncoder().encode(text);
export const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
export const point = (name: string, ...coordinates: readonly unknown[]) => ({
  type: 'Feature',
  properties: { name },
  geometry: { type: 'Point', coordinates },
});
export const collection = (...features: readonly unknown[]) => ({ type: 'FeatureCollection', features });
export const json = (value: unknown) => bytes(JSON.stringify(value));
export const good = point('Tarn', 125.25, -8.5);
export const kmlPoint = (name: string, coordinates: string) =>
  `<Placemark><name>${name}</name><Point><coordinates>${coordinates}</coordinates></Point></Placemark>`;
export const kml = (inside: string, head = '<?xml version="1.0" encoding="UTF-8"?>') =>
  `${head}<kml xmlns="http://www.opengis.net/kml/2.2" xmlns:gx="http://www.google.com/kml/ext/2.2"><Document>${inside}</Document></kml>`;
export const tarn = kmlPoint('Tarn', '125.25,-8.5');
export const gpx = (inside: string) =>
  `<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">${inside}</gpx>`;
export const wpt = (name: string, lat: string, lon: string, more = '') =>
  `<wpt lat="${lat}" lon="${lon}"><name>${name}</name>${more}</wpt>`;

/** A map with one fault, and all that must come of it. */
export interface MapCase {
  readonly fault: string;
  readonly file: Uint8Array;
  /** Every problem: code, severity, place and value. */
  readonly problems: readonly string[];
  /** Names of the points that can be used all the same. */
  readonly points?: readonly (string | null)[];
  readonly lines?: number;
}

export const ofFile = (code: string, value: unknown = 'a.map') =>
  `${code} blocker @ a.map - - = ${JSON.stringify(value)}`;
export const warned = (code: string, value: unknown) => `${code} warning @ a.map - - = ${JSON.stringify(value)}`;
export const noted = (code: string, value: unknown) => `${code} note @ a.map - - = ${JSON.stringify(value)}`;

/** Reads each map and asserts its problems and what could be used of it. */
export function assertCases(cases: readonly MapCase[]): void {
  it.each(cases)('$fault', ({ file, problems, points, lines }) => {
    const read = readMap(file, 'a.map');
    expect(read.problems.map(line)).toEqual(problems);
    expect(read.points.map(({ name }) => name)).toEqual(points ?? []);
    if (lines !== undefined) expect(read.lines).toHaveLength(lines);
  });
}
