import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { browserHere, thisAround } from '../../setup/browser.mjs';
import { buildPages } from '../../setup/pages.mjs';
import { compile } from '../../setup/setUp.mjs';
import { Served } from './served.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the one browser of all journeys listens. */
    browserAddress: string;
    /** A data folder with the demo programme and its design, as the program itself made it; null where nothing needs one. */
    demoFolder: string | null;
    /** The address, with its key, of a program on another copy of it, for journeys that change nothing; null where nothing needs one. */
    readAddress: string | null;
  }
}

/** What the program answers of its programmes. */
interface ProgrammesAnswer {
  readonly programmes: readonly { readonly programmeId: string }[];
}

/** What it answers of one. */
interface ProgrammeAnswer {
  readonly done_fraction: number;
  /** One more with each change. */
  readonly version: number;
}

/** Asks a program as a page would, and tells the address of its one programme. */
async function askerOf(served: Served) {
  const opened = await fetch(served.address, { redirect: 'manual' });
  const headers = { cookie: opened.headers.get('set-cookie')!.split(';')[0]! };
  const ask = async <T>(path: string) => (await (await fetch(`${served.origin}${path}`, { headers })).json()) as T;
  const { programmes } = await ask<ProgrammesAnswer>('/api/programmes');
  return { ask, one: `/api/programmes/${programmes[0]!.programmeId}` };
}

/** Lets the program make its demo programme, judge it and count its kits, and ends it: the folder is left as after a day of work. */
async function madeDemo(): Promise<Served> {
  const served = await Served.begin(null);
  const { ask, one } = await askerOf(served);
  const until = Date.now() + 120_000;
  for (;;) {
    const { done_fraction } = await ask<ProgrammeAnswer>(one);
    if (done_fraction === 1) break;
    if (Date.now() > until) throw new Error(`The design of the demo is ${done_fraction} done after two minutes.`);
    await new Promise((later) => setTimeout(later, 200));
  }
  // Kits are kept with it: each file of journeys that asks for them would wait for them anew.
  await ask(`${one}/kit`);
  await served.stop();
  return served;
}

/** A program for all journeys that change nothing, and what ends it: that throws where one of them changed the demo. */
async function forReaders(demo: Served): Promise<{ readonly address: string; readonly end: () => Promise<void> }> {
  const served = await Served.begin(demo.folder);
  const { ask, one } = await askerOf(served);
  const { version } = await ask<ProgrammeAnswer>(one);
  return {
    address: served.address,
    end: async () => {
      const now = await ask<ProgrammeAnswer>(one);
      await served.end();
      if (now.version !== version) throw new Error('A journey that was to change nothing changed the demo.');
    },
  };
}

/** Builds what is out of date and starts one browser for all journeys; the answer ends it. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (compile() !== 0 || buildPages() !== 0) throw new Error('The build failed; the errors stand above.');
  const around = await thisAround();
  const here = browserHere(around);
  if ('wanted' in here) throw new Error(here.wanted);
  const server = await chromium.launchServer({
    executablePath: here.browser,
    // The sandbox of Chromium does not start for root; for everybody else it stays.
    chromiumSandbox: !around.isRoot,
    args: ['--disable-dev-shm-usage'],
  });
  project.provide('browserAddress', server.wsEndpoint());
  // The pages of the one suite beside it are weighed as they are on a first start.
  const demo = project.name === 'journeys' ? await madeDemo() : null;
  project.provide('demoFolder', demo?.folder ?? null);
  const readers = demo && (await forReaders(demo));
  project.provide('readAddress', readers?.address ?? null);
  return async () => {
    await server.close();
    const ended = await Promise.allSettled([readers?.end(), demo?.end()]);
    const fault = ended.find((one) => one.status === 'rejected');
    if (fault === undefined) return;
    // What is thrown here is told, and the run would be called right all the same.
    process.exitCode = 1;
    throw fault.reason;
  };
}
