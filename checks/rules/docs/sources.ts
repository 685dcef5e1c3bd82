import { readFileSync } from 'node:fs';

/** One entry of docs/sources.json: a text, table or programme library that a number or a method was taken from. */
export interface Source {
  readonly id: string;
  readonly title: string;
  readonly publisher: string;
  readonly year: number | null;
  readonly place?: string;
  readonly url?: string;
  /** Was the text open when it was used, known from another that quotes it, or written from memory? */
  readonly read: 'opened' | 'quoted' | 'memory';
}

const idForm = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** Reads the list of sources. */
export function readSources(file: string): readonly Source[] {
  return JSON.parse(readFileSync(file, 'utf8')) as readonly Source[];
}

/** Everything wrong with a list of sources, in words. */
export function sourceListFaults(list: unknown): readonly string[] {
  if (!Array.isArray(list)) return ['the list is no list'];
  const ids = new Set<string>();
  return list.flatMap((entry: Partial<Record<keyof Source, unknown>>, index) => {
    const id = typeof entry.id === 'string' ? entry.id : `entry ${index + 1}`;
    const faults: string[] = [];
    if (!idForm.test(id)) faults.push('id is not lower case with hyphens');
    if (ids.has(id)) faults.push('id stands twice');
    ids.add(id);
    for (const key of ['title', 'publisher'] as const)
      if (typeof entry[key] !== 'string' || entry[key] === '') faults.push(`has no ${key}`);
    if (entry.year !== null && !(Number.isInteger(entry.year) && (entry.year as number) > 1600))
      faults.push('year is no year');
    if (!['opened', 'quoted', 'memory'].includes(String(entry.read)))
      faults.push('read is not opened, quoted or memory');
    if (entry.url !== undefined && !/^https?:\/\/\S+$/.test(String(entry.url))) faults.push('url is no address');
    const known = ['id', 'title', 'publisher', 'year', 'place', 'url', 'read'];
    for (const key of Object.keys(entry)) if (!known.includes(key)) faults.push(`has an unknown ${key}`);
    return faults.map((fault) => `${id}: ${fault}`);
  });
}

/**
 * Everything wrong with `id, place; id, place` as written in a comment or a value. The first must be an id of the list;
 * a later part may be words of our own, unless it looks like an id.
 */
export function sourceFaults(text: string, ids: ReadonlySet<string>): readonly string[] {
  const parts = text.split(';').map((part) =>
    part
      .trim()
      .split(/[,\s(]/)[0]!
      .toLowerCase(),
  );
  return parts
    .filter((id, index) => !ids.has(id) && (index === 0 || (idForm.test(id) && id.includes('-'))))
    .map((id) => `source ${id || '(none)'} is not in docs/sources.json`);
}
