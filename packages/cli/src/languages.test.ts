import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { folderTables } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from './run.ts';

async function eavewell(args: readonly string[], env: Record<string, string> = {}) {
  const [out, err]: [string[], string[]] = [[], []];
  const into = (pieces: string[]) =>
    new Writable({
      write(chunk: Buffer, _, done) {
        pieces.push(String(chunk));
        done();
      },
    });
  const [stdout, stderr] = [into(out), into(err)];
  const code = await run(args, { stdout, stderr, env: { LANG: 'C.UTF-8', ...env }, platform: 'linux' });
  await new Promise<void>((ended) => stdout.end(ended));
  return { code, out: out.join(''), err: err.join('') };
}

let room: string;
let folder: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-languages-'));
  folder = join(room, 'islands');
  await eavewell(['demo', folder, '--sites', '24']);
});
afterAll(() => rm(room, { recursive: true, force: true }));

describe('a language', () => {
  it('is chosen by the command line or the environment, for one run', async () => {
    const spanish = await eavewell(['design', folder, '--language', 'es']);
    expect(spanish.out).toMatch(/24 sitios/);
    expect(spanish.out).toMatch(/racha seca más larga/);
    expect((await eavewell(['check', folder], { EAVEWELL_LANGUAGE: 'es-MX' })).out).toMatch(/filas usadas/);
    expect((await eavewell(['check', folder, '--language=en'], { EAVEWELL_LANGUAGE: 'es' })).out).toMatch(/rows used/);
    expect((await eavewell(['--help', '--language', 'es'])).out).toMatch(/rachas secas/);
    expect((await eavewell(['check', folder])).out).toMatch(/rows used/);
  });

  it('that there is not is refused, with those there are', async () => {
    for (const tag of ['xx', '', 'not a tag', '../en']) {
      const { code, err } = await eavewell(['check', folder, '--language', tag]);
      expect([code, err]).toEqual([2, `There is no language "${tag}". There are: en (English), es (español).\n`]);
    }
  });

  it('for paper alone is none of the pages and of the terminal, and is taken by what prints', async () => {
    const refused = await eavewell(['check', folder, '--language', 'ar']);
    expect([refused.code, refused.err]).toEqual([2, expect.stringMatching(/^There is no language "ar"/)]);
    const printing = await eavewell(['--language', 'ar', 'pack', folder, '--no-such-option']);
    expect(printing.err).not.toMatch(/There is no language/);
    const unknown = await eavewell(['pack', folder, '--language', 'xx']);
    expect(unknown.err).toMatch(/^There is no language "xx"/);
  });

  it('says what is wrong with a command line, and heads its help', async () => {
    const wrong: readonly (readonly [args: readonly string[], english: RegExp, spanish: RegExp])[] = [
      [['--nope'], /^error: unknown option '--nope'\n$/, /^error: no se conoce la opción '--nope'\n$/],
      [
        ['chek'],
        /^error: unknown command 'chek'\n\(Did you mean check\?\)\n$/,
        /no se conoce[^\n]*\n\(¿Quiso decir check\?\)/,
      ],
      [['design', folder, '--site'], /^error: option '--site <id>' argument missing\n$/, /falta el valor de la opción/],
      [['demo', 'x', '--sites', 'abc'], /argument 'abc' is invalid\. How many sites/, /no sirve\. Cuántos sitios/],
      [
        ['rain', 'a', 'b', 'c'],
        /too many arguments for 'rain'\. Expected 2 arguments but got 3\./,
        /esperaban 2 argumentos y hay 3/,
      ],
    ];
    for (const [args, english, spanish] of wrong) {
      expect((await eavewell(args)).err).toMatch(english);
      expect((await eavewell([...args, '--language=es'])).err).toMatch(spanish);
    }
    const help = (await eavewell(['design', '--help', '--language', 'es'])).out;
    expect(help).toMatch(/^Uso: eavewell design/);
    expect(help).toMatch(/^Opciones:$/m);
    expect(help).not.toMatch(/Usage|Options:|Arguments:/);
  });

  it('changes sentences, and no figure', async () => {
    const sentences = ['what', 'todo', 'finding', 'about', 'label', 'formula', 'said', 'sourceSaid'];
    const figures = async (language: string) =>
      JSON.parse((await eavewell(['design', folder, '--json', '--language', language])).out, (key, value: unknown) =>
        sentences.includes(key) ? undefined : value,
      ) as { readonly sites: readonly { readonly problems: readonly { facts: object }[] }[] };
    const withoutFaults = (report: Awaited<ReturnType<typeof figures>>) =>
      JSON.stringify(report, (key, value: unknown) => (key === 'fault' ? undefined : value));
    const [english, spanish] = [await figures('en'), await figures('es')];
    expect(english.sites).toHaveLength(24);
    expect(withoutFaults(spanish)).toBe(withoutFaults(english));
  });
});

/** Everything outside ⟦ and ⟧: what the catalogue did not say. */
function outside(text: string): string {
  let [depth, rest] = [0, ''];
  for (const letter of text) {
    if (letter === '⟦') depth++;
    else if (letter === '⟧') depth--;
    else if (depth === 0) rest += letter;
  }
  expect(depth).toBe(0);
  return rest;
}

/** Names of files, tables and columns, and whatever the programme's own cells hold. */
async function ownWords(): Promise<ReadonlySet<string>> {
  const words = new Set(['eavewell', 'csv', 'json', 'rain', 'columns']);
  const add = (text: string) => {
    for (const word of text.match(/[A-Za-z]+/g) ?? []) words.add(word);
  };
  for (const [name, table] of Object.entries(folderTables)) add(`${name} ${Object.keys(table.columns).join(' ')}`);
  for (const file of await readdir(folder, { recursive: true }))
    if (/\.(csv|json)$/.test(file)) add(`${file} ${await readFile(join(folder, file), 'utf8')}`);
  for (let month = 0; month < 12; month++)
    add(new Date(Date.UTC(2001, month)).toLocaleString('en-GB', { month: 'long', timeZone: 'UTC' }));
  return words;
}

describe('no sentence is made outside the words', () => {
  const commands: readonly (readonly string[])[] = [
    ['check'],
    ['check', '--all'],
    ['design'],
    ['design', '--wet-days', '0.9', '--last-years', '15'],
    ['design', '--site', 'S002'],
    ['design', '--site', 'S010'],
    ['design', '--site', 'S999'],
    ['rain', 'G1'],
    ['rain', 'G4'],
    ['rain', 'G9'],
    ['columns'],
  ];
  for (const [command = '', ...more] of commands)
    it([command, ...more].join(' '), async () => {
      const own = await ownWords();
      const said = await eavewell([command, folder, ...more, '--language', 'en-XA']);
      const out = said.out + said.err;
      expect(out).toContain('⟦');
      const strange = (outside(out.replaceAll(folder, '')).match(/[A-Za-z]{2,}/g) ?? []).filter(
        (word) => !own.has(word),
      );
      expect([...new Set(strange)]).toEqual([]);
    });
});
