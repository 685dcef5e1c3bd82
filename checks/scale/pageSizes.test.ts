import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { builtPages, filesAskedFor, pageFiles, sizeLines } from '../../bench/pageSizes.mjs';
import { journey } from '../journeys/journey.ts';
import { repository } from '../rules/repository.ts';

/** What may be sent before the sites can be used [byte, gzip]: 350 kB, as this program asked of itself. */
const mostForSites_bytes = 350_000;

/** The map and its outlines come in files of their own, after the list that can be used without them. */
const ofMap = /(?:SitesMap|outlineWorker|countries-50m)/;

journey('the sites can be used after 350 kB; everything else is loaded when it is asked for', async ({ open }) => {
  const { page, context } = await open();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  // A fresh visit: nothing kept by the browser counts.
  await (await context.newCDPSession(page)).send('Network.setCacheDisabled', { cacheDisabled: true });
  await page.reload();
  await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  await expect.poll(() => asked.some((one) => one.includes('countries-50m')), { timeout: 30_000 }).toBe(true);
  await page.waitForTimeout(500);
  const files = pageFiles(join(repository, builtPages));
  const loaded = filesAskedFor(files, asked);
  const needed = loaded.filter(({ file }) => !ofMap.test(file));
  const map = loaded.filter(({ file }) => ofMap.test(file));
  const others = files.filter((file) => !loaded.includes(file));
  console.log(
    `For the sites:\n${sizeLines(needed).join('\n')}\n\nOf the map beside them, when they are there:\n${sizeLines(map).join('\n')}`,
  );
  console.log(`When asked for:\n${sizeLines(others).join('\n')}`);
  expect(map.map(({ file }) => file).some((file) => file.endsWith('.json'))).toBe(true);
  expect(needed.map(({ file }) => file)).toContain('index.html');
  expect(needed.filter(({ file }) => file.endsWith('.js')).length).toBeGreaterThan(1);
  expect(needed.filter(({ file }) => file.endsWith('.woff2')).length).toBeGreaterThan(0);
  const scripts = needed.filter(({ file }) => file.endsWith('.js'));
  const texts = scripts.map(({ file }) => readFileSync(join(repository, builtPages, file), 'utf8'));
  // Libraries in the form for writing programs are larger and slower, and say so in their texts.
  expect(texts.some((text) => text.includes('react.dev/link/react-devtools'))).toBe(false);
  expect(needed.reduce((sum, { gzip_bytes }) => sum + gzip_bytes, 0)).toBeLessThanOrEqual(mostForSites_bytes);
});
