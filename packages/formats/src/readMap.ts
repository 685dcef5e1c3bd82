import type { Problem } from '@eavewell/engine';
import { type MapThings, shown, tableProblem } from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import { geojsonThings } from './geojsonThings.ts';
import { limitedZip, type ZipLimits } from './limitedZip.ts';
import { takenProblem } from './readCsvFile.ts';
import { xmlThings } from './xmlThings.ts';

/** Largest map that is opened, packed or expanded [byte]. Ours: the tracks of a year of a programme are a tenth of it. */
export const largestMap_bytes = 50e6;

/** How much may come out of a KMZ. Ours: text packs ten- to thirtyfold. */
export const kmzLimits: ZipLimits = {
  most_entries: 2000,
  largestEntry_bytes: largestMap_bytes,
  largest_bytes: largestMap_bytes,
  most_ratio: 200,
};

/** What a map file is, whatever its name ends in. */
export type MapKind = 'geojson' | 'kml' | 'kmz' | 'gpx';

/** A map file as it was read. */
export interface MapRead extends MapThings {
  /** Null where it is none of them. */
  readonly kind: MapKind | null;
}

const zipStart = [0x50, 0x4b];
const declared = /^\s*<\?xml[^>]{0,200}?encoding\s*=\s*["']([A-Za-z][\w.:-]{0,40})["']/;

const nothing = (kind: MapKind | null, ...problems: readonly Problem[]): MapRead => ({
  kind,
  points: [],
  lines: [],
  problems,
});

/** The text in the encoding the XML says it is in, where it is not in UTF-8; null where it says none. */
function inDeclared(bytes: Uint8Array): { readonly text: string; readonly taken: string } | null {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.byteLength, 300)).toString('latin1');
  const label = declared.exec(head)?.[1];
  if (label === undefined || /^utf-?(?:8|16)/i.test(label)) return null;
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return null;
  } catch {
    // Not UTF-8, so what the text says of itself counts.
  }
  try {
    return { text: new TextDecoder(label, { fatal: true }).decode(bytes), taken: label };
  } catch {
    return null;
  }
}

function textThings(bytes: Uint8Array, file: string): MapRead {
  const decoded = inDeclared(bytes) ?? decodeText(bytes);
  if ('encoding' in decoded) {
    const facts = { value: file, encoding: decoded.encoding, expected: 'UTF-8 text' };
    return nothing(null, tableProblem('file.wrong_encoding', { file }, facts));
  }
  const text = decoded.text.replace(/^\uFEFF/, '').trimStart();
  const taken = takenProblem(decoded, { file });
  if (text === '') return nothing(null, tableProblem('file.empty', { file }, { value: file }));
  if (/^(?:<!doctype\s+html|<html)/i.test(text))
    return nothing(null, tableProblem('positions.not_a_map', { file }, { value: file, found: 'html' }));
  if (text.startsWith('<')) {
    const things = xmlThings(text, file);
    return { kind: /<gpx[\s>]/.test(text) ? 'gpx' : 'kml', ...things, problems: [...taken, ...things.problems] };
  }
  if (!/^[{[]/.test(text)) {
    const found = shown(text.slice(0, 20));
    return nothing(null, tableProblem('positions.not_a_map', { file }, { value: file, found }));
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const { message } = error as SyntaxError;
    const at = /position (\d+)/.exec(message)?.[1];
    const isCutOff = /end of JSON/.test(message) || (at !== undefined && Number(at) >= text.trimEnd().length);
    const letter = at === undefined || isCutOff ? {} : { letter: Number(at) + 1 };
    const facts = { value: file, reason: isCutOff ? 'cutOff' : 'broken', ...letter };
    return nothing('geojson', tableProblem('positions.json_broken', { file }, facts));
  }
  const things = geojsonThings(value, file);
  return { kind: 'geojson', ...things, problems: [...taken, ...things.problems] };
}

const isKml = (name: string) => /\.kml$/i.test(name);

function kmzThings(bytes: Uint8Array, file: string): MapRead {
  const zip = limitedZip(bytes, kmzLimits, isKml);
  if ('fault' in zip) {
    const { code, entry, facts } = zip.fault;
    return nothing('kmz', tableProblem(code, { file }, { value: shown(entry === '' ? file : entry), ...facts }));
  }
  const maps = zip.names.filter(isKml);
  const taken = maps.find((name) => name === 'doc.kml') ?? maps[0];
  if (taken === undefined) {
    const found = zip.names.slice(0, 5).map(shown);
    return nothing('kmz', tableProblem('positions.kmz_without_kml', { file }, { value: file, found }));
  }
  const others = maps.filter((name) => name !== taken).map(shown);
  const things = textThings(zip.entries.get(taken)!, file);
  const isPlain = taken === 'doc.kml' && others.length === 0;
  const said = isPlain ? [] : [tableProblem('positions.kmz_taken', { file }, { value: shown(taken), others })];
  return { ...things, kind: 'kmz', problems: [...said, ...things.problems] };
}

/**
 * Which points and lines stand in a map file? GeoJSON, KML, KMZ or GPX, told by what is in it and not by its name.
 *
 * @param bytes - the file [byte]
 * @param file - its name, for the places of problems [text]
 * @returns what it is, its points and lines, and every problem
 * @problem positions.not_a_map - it is none of them
 * @problem positions.nothing - no point and no line in it can be used
 * @law never throws; opens no address and no other file; every position is in range
 * @source rfc7946, sections 3 and 4; kml-two, clauses 7 to 10; gpx-one, gpxType
 */
export function readMap(bytes: Uint8Array, file: string): MapRead {
  const read = zipStart.every((byte, i) => bytes[i] === byte) ? kmzThings(bytes, file) : textThings(bytes, file);
  const isEmpty = read.points.length === 0 && read.lines.length === 0;
  const isSaid = read.problems.some(({ severity }) => severity === 'blocker');
  if (!isEmpty || isSaid) return read;
  return { ...read, problems: [...read.problems, tableProblem('positions.nothing', { file }, { value: file })] };
}
