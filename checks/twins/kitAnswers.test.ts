import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { Writable } from 'node:stream';
import { run } from '@eavewell/cli';
import { demoProgramme } from '@eavewell/demo';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { kitReport } from '@eavewell/tables';
import { expect, it } from 'vitest';
import { type Page, withServer, zipOf } from '../faults/served.ts';

class Kept extends Writable {
  text = '';
  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.text += chunk.toString('utf8');
    done();
  }
}

async function reported(folder: string) {
  const [stdout, stderr] = [new Kept(), new Kept()];
  await run(['kit', folder, '--json'], { stdout, stderr, env: { LANG: 'C.UTF-8' }, platform: 'linux' });
  return kitReport.parse(JSON.parse(stdout.text));
}

/** A folder with all that stands in it, rain in a folder of its own too. */
async function zipped(folder: string): Promise<Uint8Array> {
  const found = await readdir(folder, { withFileTypes: true, recursive: true });
  const paths = found.filter((one) => one.isFile()).map(({ parentPath, name }) => join(parentPath, name));
  const files = paths.map(async (path) => [relative(folder, path), await readFile(path)] as const);
  return zipOf(Object.fromEntries(await Promise.all(files)));
}

async function designed(page: Page, programme: string): Promise<void> {
  for (;;) {
    const { body } = await page.ask('GET', programme);
    expect(body.isFailed).toBe(false);
    if (body.done_fraction === 1) return;
    await new Promise((later) => setTimeout(later, 50));
  }
}

/** What both tell of a cost in figures, without how it is called. */
function figuresOf<T extends NonNullable<Awaited<ReturnType<typeof reported>>['sites'][number]['cost']>>(cost: T) {
  const { currency, day, years_count, isAtLeast, perYear_amount, total_amount, presentValue_amount } = cost;
  const { perYearSpread_amount, served_people, perPersonYear_amount, perPersonYearSpread_amount } = cost;
  return {
    ...{ currency, day, years_count, isAtLeast, perYear_amount, total_amount, presentValue_amount },
    ...{ perYearSpread_amount, served_people, perPersonYear_amount, perPersonYearSpread_amount },
    heads: cost.heads.map(({ head, perYear_amount: a, least_amount, most_amount, reasons }) => ({
      ...{ head, perYear_amount: a, least_amount, most_amount },
      reasons: reasons.map((one: string | { readonly reason: string }) => (typeof one === 'string' ? one : one.reason)),
    })),
  };
}

it('the page and the command tell one cost of every site, of units that are not there yet too', {
  timeout: 120_000,
}, async () => {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-kit-answers-'));
  try {
    const folder = join(room, 'islands');
    const { planted: _, rawFiles: __, ...made } = demoProgramme({ sites: 60 });
    await writeProgramme(folder, made);
    const { facts } = await readProgramme(folder);
    const waiting = facts.sites
      .filter(({ treatment }) => treatment.units.some((unit) => unit.installedOn === null))
      .map(({ siteId }) => siteId);
    expect(waiting).toContain('S018');
    expect(waiting.length).toBeGreaterThan(5);
    const report = await reported(folder);
    expect(report.sites.map(({ siteId }) => siteId)).toEqual(facts.sites.map(({ siteId }) => siteId));
    // The two are not alike in knowing nothing: the life of a set that is to come moves a cost.
    const moved = report.sites.filter(({ cost }) => cost?.swings.some(({ inputId }) => /^life .*@/.test(inputId)));
    expect(moved.filter(({ siteId }) => waiting.includes(siteId)).length).toBeGreaterThan(5);
    await withServer(async (page) => {
      const programme = await page.empty();
      const taken = await page.takeIn(programme, 'islands.zip', await zipped(folder));
      expect(taken.status).toBe(200);
      await designed(page, programme);
      for (const { siteId, cost } of report.sites) {
        const { body } = await page.ask('GET', `${programme}/sites/${siteId}/kit`);
        expect([siteId, body.cost && figuresOf(body.cost)]).toEqual([siteId, cost && figuresOf(cost)]);
      }
      const { body } = await page.ask('GET', `${programme}/kit`);
      expect(figuresOf(body.cost)).toEqual(figuresOf(report.cost.all!));
    });
  } finally {
    await rm(room, { recursive: true, force: true });
  }
});
