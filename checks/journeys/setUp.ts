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
  }
}

/** What the program answers of its programmes. */
interface ProgrammesAnswer {
  readonly programmes: readonly { readonly programmeId: string }[];
}

/** Lets the program make its demo programme, judge it and count its kits, and ends it: the folder is left as after a day of work. */
async function madeDemo(): Promise<Served> {
  const served = await Served.begin(null);
  const opened = await fetch(served.address, { redirect: 'manual' });
  const headers = { cookie: opened.headers.get('set-cookie')!.split(';')[0]! };
  const ask = async <T>(path: string) => (await (await fetch(`${served.origin}${path}`, { headers })).json()) as T;
  const { programmes } = await ask<ProgrammesAnswer>('/api/programmes');
  const until = Date.now() + 120_000;
  for (;;) {
    const { done_fraction } = await ask<{ done_fraction: number }>(`/api/programmes/${programmes[0]!.programmeId}`);
    if (done_fraction === 1) break;
    if (Date.now() > until) throw new Error(`The design of the demo is ${done_fraction} done after two minutes.`);
    await new Promise((later) => setTimeout(later, 200));
  }
  // Kits are kept with it: each file of journeys that asks for them would wait for them anew.
  await ask(`/api/programmes/${programmes[0]!.programmeId}/kit`);
  await served.stop();
  return served;
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
  return async () => {
    await server.close();
    await demo?.end();
  };
}
