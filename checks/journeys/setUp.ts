import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { browserHere, thisAround } from '../../setup/browser.mjs';
import { buildPages } from '../../setup/pages.mjs';
import { compile } from '../../setup/setUp.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the one browser of all journeys listens. */
    browserAddress: string;
  }
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
  return () => server.close();
}
