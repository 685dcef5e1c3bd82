import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { good } from './folder.ts';
import { type Page, withServer, zipOf } from './served.ts';

const codesOf = ({ status, body }: Awaited<ReturnType<Page['ask']>>) => [
  status,
  ...(body.problems ?? []).map(({ code }: { code: string }) => code),
];

/** A small programme with rules and a boat, whose kit is wanted. */
const files = {
  ...good,
  'kitRules.csv': 'ruleId,partId,countedBy,each_count\nK1,tank-10,tank,2\nK2,nothing,site,1\n',
  'carriers.csv': 'carrierId,name,mode,limit_kg\nboat,boat Tern,boat,600\n',
};

async function tarn(page: Page, more: Readonly<Record<string, string>> = {}): Promise<string> {
  const programme = await page.empty();
  expect((await page.takeIn(programme, 'tarn.zip', zipOf({ ...files, ...more }))).status).toBe(200);
  return programme;
}

async function designed(page: Page, programme: string): Promise<void> {
  for (;;) {
    const { body } = await page.ask('GET', programme);
    expect(body.isFailed).toBe(false);
    if (body.done_fraction === 1) return;
    await new Promise((later) => setTimeout(later, 20));
  }
}

it('a kit that is asked for oddly is answered by a problem, a site there is not is named', async () => {
  await withServer(async (page) => {
    const programme = await tarn(page);
    const odd: readonly (readonly [string, number, string])[] = [
      [`${programme}/kit?neededOn=soon`, 400, 'request.wrong'],
      [`${programme}/sites/S999/kit`, 404, 'request.not_found'],
      [`${programme}/sites/__proto__/kit`, 404, 'request.not_found'],
      [`${programme}/sites/S999/pack.pdf`, 404, 'request.not_found'],
      [`${programme}/sites/S001/pack.pdf?language=${'x'.repeat(40)}`, 400, 'request.wrong'],
      ['/api/programmes/nobody/kit', 404, 'database.programme_unknown'],
    ];
    for (const [path, status, code] of odd)
      expect([path, ...codesOf(await page.ask('GET', path))]).toEqual([path, status, code]);
    const { status, body } = await page.ask('GET', `${programme}/kit?sites=S002,S999,S002`);
    expect([status, body.chosen, body.unknownSites, body.sites_count]).toEqual([200, ['S002'], ['S999'], 1]);
    // What is found is told in words; a rule of a part there is not is no rule, and its row is told with the tables.
    for (const { code, what, todo } of body.problems) expect([code, what, todo]).not.toContain('');
    expect(body.problems.map(({ code }: { code: string }) => code)).toContain('kit.parts_uncounted');
    const tables = await page.ask('GET', `${programme}/problems`);
    expect(JSON.stringify(tables.body.problems)).toContain('nothing');
    expect((await fetch(`${page.origin}${programme}/kit`)).status).toBe(403);
  });
});

it('kits that were damaged where they are kept are made anew', async () => {
  await withServer(async (page, folder) => {
    const programme = await tarn(page);
    await designed(page, programme);
    const before = await page.ask('GET', `${programme}/sites/S001/kit`);
    expect(before.status).toBe(200);
    const at = join(folder, 'derived', 'kits', programme.split('/').at(-1)!);
    for (const name of await readdir(at)) await writeFile(join(at, name, 'sites.jsonl'), '{"siteId":"S0');
    const after = await page.ask('GET', `${programme}/sites/S001/kit`);
    expect([after.status, after.body.lines]).toEqual([200, before.body.lines]);
    for (const name of await readdir(at)) await writeFile(join(at, name, 'sites.jsonl'), '');
    const sum = await page.ask('GET', `${programme}/kit?sites=S001`);
    expect([sum.status, sum.body.sites_count]).toEqual([200, 1]);
  });
});

it('a letter no face has is named, and no pack is made with a box in its place', async () => {
  await withServer(async (page) => {
    const sites = good['sites.csv']!.replace('Lower Tarn', 'Lower 𓀀 Tarn');
    const programme = await tarn(page, { 'sites.csv': sites });
    await designed(page, programme);
    const refused = await page.ask('GET', `${programme}/sites/S002/pack.pdf?language=en`);
    expect(codesOf(refused)).toEqual([422, 'request.letters_missing']);
    expect(refused.body.problems[0].what).toContain('𓀀');
    const made = await fetch(`${page.origin}${programme}/sites/S001/pack.pdf?language=en`, {
      headers: { cookie: page.cookie, origin: page.origin },
    });
    expect([made.status, made.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    expect(
      Buffer.from(await made.arrayBuffer())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });
});
