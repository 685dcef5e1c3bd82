import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { type Served, serve, tasks } from '@eavewell/server';
import { workHere } from '@eavewell/work';
import { strToU8, zipSync } from 'fflate';
import type { Files } from './folder.ts';

/** An answer: its status and what it holds. */
export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  // biome-ignore lint/suspicious/noExplicitAny: an answer is looked into by tests, each of which knows its form
  readonly body: any;
}

/** Asks a server as its own page does. */
export class Page {
  readonly served: Served;
  readonly origin: string;
  readonly cookie: string;

  private constructor(served: Served, cookie: string) {
    this.served = served;
    this.origin = `http://127.0.0.1:${served.port}`;
    this.cookie = cookie;
  }

  static async open(served: Served): Promise<Page> {
    const opened = await fetch(served.address, { redirect: 'manual' });
    return new Page(served, opened.headers.get('set-cookie')!.split(';')[0]!);
  }

  async ask(method: string, path: string, body?: unknown): Promise<Answer> {
    const isBytes = body instanceof Uint8Array;
    const type = isBytes ? 'application/octet-stream' : 'application/json';
    const headers = {
      cookie: this.cookie,
      origin: this.origin,
      ...(body === undefined ? {} : { 'content-type': type }),
    };
    const sent = body === undefined ? {} : { body: isBytes ? new Uint8Array(body) : JSON.stringify(body) };
    const answer = await fetch(`${this.origin}${path}`, { method, headers, ...sent });
    const isJson = /json/.test(answer.headers.get('content-type') ?? '');
    const bytes = new Uint8Array(await answer.arrayBuffer());
    const read = isJson ? JSON.parse(new TextDecoder().decode(bytes)) : bytes;
    return { status: answer.status, headers: answer.headers, body: read };
  }

  /** A new programme without anything in it. */
  async empty(name = 'Tarn water'): Promise<string> {
    const made = await this.ask('POST', '/api/programmes', { name, from: 'empty', by: 'Nadi' });
    return `/api/programmes/${made.body.programmeId}`;
  }

  /** Sends a file to be looked at. */
  send(programme: string, name: string, bytes: Uint8Array, more = ''): Promise<Answer> {
    return this.ask('POST', `${programme}/imports?name=${encodeURIComponent(name)}${more}`, bytes);
  }

  /** Sends a file and takes it in. */
  async takeIn(programme: string, name: string, bytes: Uint8Array, more = ''): Promise<Answer> {
    const review = await this.send(programme, name, bytes, more);
    if (review.status !== 201) return review;
    return this.ask('POST', `${programme}/imports/${review.body.importId}/accept`, { by: 'Nadi' });
  }
}

/** Files packed as a zip. */
export function zipOf(files: Files): Uint8Array {
  return zipSync(
    Object.fromEntries(
      Object.entries(files).map(([path, content]) => [path, typeof content === 'string' ? strToU8(content) : content]),
    ),
  );
}

/** What a server told while it ran. */
export interface Told {
  /** Each design that was done: its sites, and how many were carried over. */
  readonly done: { readonly sites: number; readonly carried: number }[];
}

/** Runs the work with a server on an empty data folder, or on that given, and takes it away unless it is to be kept. */
export async function withServer<T>(
  work: (page: Page, folder: string, told: Told) => Promise<T>,
  {
    folder: given,
    keep = false,
    threads = false,
  }: { readonly folder?: string; readonly keep?: boolean; readonly threads?: boolean } = {},
): Promise<T> {
  const folder = given ?? join(await mkdtemp(join(tmpdir(), 'eavewell-server-')), 'data');
  const faults: unknown[] = [];
  const told: Told = { done: [] };
  try {
    const started = await serve({
      ...{ folder, port: 0, version: '0.1.0', demoName: null, by: 'Eavewell' },
      // In this thread, so that a test steps through it; in threads where it is about them.
      ...(threads ? {} : { work: workHere(tasks) }),
      onFault: (error) => faults.push(error),
      onDesign: (done) => told.done.push(done),
    });
    if (!started.ok) throw new Error(started.problems.map(({ code }) => code).join());
    const result = await work(await Page.open(started.value), folder, told).finally(() => started.value.close());
    if (faults.length > 0) throw faults[0];
    return result;
  } finally {
    if (!keep) await rm(dirname(folder), { recursive: true, force: true });
  }
}

/** Sends files as a form, each under its name. */
export async function sendForm(
  page: Page,
  at: string,
  files: Readonly<Record<string, string | Uint8Array>>,
  more = '',
): Promise<Answer> {
  const edge = '--------edge-of-the-form';
  const parts: Buffer[] = [];
  for (const [name, content] of Object.entries(files)) {
    parts.push(
      Buffer.from(
        `--${edge}\r\nContent-Disposition: form-data; name="files"; filename="${name}"\r\nContent-Type: application/octet-stream\r\n\r\n`,
      ),
    );
    parts.push(Buffer.from(content), Buffer.from('\r\n'));
  }
  const body = Buffer.concat([...parts, Buffer.from(`--${edge}--\r\n`)]);
  const headers = { cookie: page.cookie, origin: page.origin, 'content-type': `multipart/form-data; boundary=${edge}` };
  const answer = await fetch(`${page.origin}${at}/imports${more}`, { method: 'POST', headers, body });
  return { status: answer.status, headers: answer.headers, body: await answer.json() };
}

/** What is told of files, a line each. */
export const told = (answer: Answer) =>
  answer.body.problems.map(
    ({ code, place }: { code: string; place: { file?: string; row?: number; column?: string } }) =>
      [code, place.file, place.row, place.column].filter((part) => part !== undefined).join(' '),
  );
/** Rows added, by table. */
export const addedOf = (answer: Answer) =>
  Object.fromEntries(answer.body.changes.map((one: { table: string; added: number }) => [one.table, one.added]));
/** Takes an import in. */
export const accept = (page: Page, at: string, answer: Answer, more = {}) =>
  page.ask('POST', `${at}/imports/${answer.body.importId}/accept`, { by: 'Nadi', ...more });

/** The imports that pass through a data folder. */
export const passing = (folder: string) => readdir(join(folder, 'passing', 'imports')).catch(() => []);
