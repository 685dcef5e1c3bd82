import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { dayOnClock, isoDay, type SiteFacts } from '@eavewell/engine';
import { threadWork } from '@eavewell/work';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { makePacks, type PackMade, type PacksWanted } from '../packs/makePacks.ts';
import { paperLanguageOf } from '../packs/paperLanguage.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import { factsOfSite } from './design.ts';
import type { FolderFound, FromData } from './folderOrData.ts';
import { nearestIds } from './nearestIds.ts';
import { makeOutFolder } from './outFolder.ts';
import { readFolder } from './readFolder.ts';

const { pack: words } = spoken.commandLine;

export interface PackOptions extends FromData {
  readonly site?: string;
  readonly out?: string;
  readonly by?: string;
  readonly overwrite?: boolean;
}

/** With so many sites or more two threads share the work, which each must read the programme for. Ours. */
const leastForThreads_sites = 20;
const threads_count = 2;
/** Sites that are named where no pack could be made. */
const mostNamed = 20;

/** Makes what is carried to a site on paper: of one site, or of all. */
export async function packCommand(
  { path: folder }: FolderFound,
  options: PackOptions,
  language: string | null,
  context: Context,
): Promise<ExitCode> {
  const read = await readFolder(folder, context);
  const { kit } = read.facts;
  const facts = options.site === undefined ? read.facts : factsOfSite(read.facts, options.site);
  const out = options.out ?? '.';
  const wanted = {
    ...{
      siteIds: facts.sites.map(({ siteId }) => siteId),
      out,
      language: language === null ? 'en' : paperLanguageOf(language),
    },
    carrierId: carrierOf(options.by, kit.carriers),
    ...today(),
  };
  await makeOutFolder(out);
  if (options.overwrite !== true) refuseToOverwrite(out, facts.sites);
  const made = new Map<string, PackMade>();
  const told = (one: PackMade) => {
    made.set(one.siteId, one);
    context.progress.at(() => words.working(made.size, wanted.siteIds.length));
  };
  if (facts.sites.length < leastForThreads_sites) await makePacks(read.facts, wanted, told);
  else await inThreads(folder, wanted, told);
  context.progress.done();
  const all = wanted.siteIds.flatMap((siteId) => made.get(siteId) ?? []);
  await write(context.around.stdout, printed(all, out, context));
  return all.some(({ said }) => said.length > 0) ? exitCodes.blocker : exitCodes.done;
}

function today(): Pick<PacksWanted, 'today' | 'printedOn'> {
  const day = dayOnClock(new Date());
  return { today: day, printedOn: isoDay(day) };
}

function carrierOf(
  by: string | undefined,
  carriers: readonly { readonly carrierId: string; readonly limit_kg: number | null }[],
): string | null {
  if (by === undefined) return null;
  const ids = carriers.map(({ carrierId }) => carrierId);
  if (!ids.includes(by)) throw new WrongUse(words.unknownCarrier(by, nearestIds(by, ids)));
  return by;
}

/** A pack that lies there may have been written on: it is not made again unasked. */
function refuseToOverwrite(out: string, sites: readonly SiteFacts[]): void {
  const there = sites.filter(({ siteId }) => existsSync(join(out, `${siteId}.pdf`)));
  if (there.length > 0) throw new WrongUse(words.isThere(join(out, `${there[0]!.siteId}.pdf`), there.length));
}

/** Every second site to a thread each, so that large and small ones are shared alike. */
async function inThreads(folder: string, wanted: PacksWanted, told: (made: PackMade) => void): Promise<void> {
  const work = threadWork(new URL('../threads/thread.js', import.meta.url), threads_count);
  const jobs = Array.from({ length: threads_count }, (_, nth) => {
    const siteIds = wanted.siteIds.filter((_, i) => i % threads_count === nth);
    const onReport = (_: number, made: unknown) => told(made as PackMade);
    return work.start<void>('packs', { ...wanted, siteIds, folder }, { onReport });
  });
  try {
    await Promise.all(jobs.map(({ result }) => result));
  } finally {
    await work.close();
  }
}

function printed(all: readonly PackMade[], out: string, { look }: Context): string {
  const sheet = new Sheet(look);
  const done = all.filter(({ said }) => said.length === 0);
  const pages = done.reduce((sum, { pages_count }) => sum + pages_count, 0);
  sheet.line(words.made(done.length, pages, out));
  const shortened = done.filter(({ leftOut_count }) => leftOut_count > 0).length;
  if (shortened > 0) sheet.line(words.shortened(shortened));
  const failed = all.filter(({ said }) => said.length > 0);
  if (failed.length > 0) sheet.heading(words.notMade(failed.length));
  for (const { siteId, said } of failed.slice(0, mostNamed)) sheet.line(`${siteId}: ${said.join(' ')}`, 2, 2);
  return sheet.text();
}
