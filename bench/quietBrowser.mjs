// A browser that nobody listens to: Chromium spoken to through a pipe, asked for nothing but a page and its trace. A library that
// drives browsers has errors told to it (Runtime.enable), and for that the browser reads a script a second time wherever one is
// made while it is read: react-dom makes one, which then costs 60 to 90 ms that no person's browser spends.
import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Opens a browser with one page.
 *
 * @param browserPath - the program
 * @returns what sends to the browser and to its page, hears from it, and closes it
 */
export async function quietBrowser(browserPath, size = '1280,900') {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-quiet-'));
  const flags = ['--headless', '--no-sandbox', '--remote-debugging-pipe', '--no-first-run', '--lang=en'];
  const child = spawn(browserPath, [...flags, `--user-data-dir=${folder}`, `--window-size=${size}`, 'about:blank'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
  });
  const [waiting, heard] = [new Map(), new Map()];
  let [count, text] = [0, ''];
  child.stdio[4].setEncoding('utf8').on('data', (piece) => {
    const parts = (text + piece).split('\0');
    text = parts.pop();
    for (const part of parts) {
      const { id, error, result, method, params } = JSON.parse(part);
      if (id === undefined) heard.get(method)?.(params);
      else {
        const [resolve, reject] = waiting.get(id);
        waiting.delete(id);
        if (error) reject(new Error(error.message));
        else resolve(result);
      }
    }
  });
  const ask = (method, params = {}, sessionId = undefined) =>
    new Promise((resolve, reject) => {
      const id = ++count;
      waiting.set(id, [resolve, reject]);
      child.stdio[3].write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    });
  const { targetInfos } = await ask('Target.getTargets');
  const { targetId } = targetInfos.find(({ type }) => type === 'page');
  const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true });
  return {
    /** Asks the browser. */
    send: ask,
    /** Asks its page. */
    toPage: (method, params) => ask(method, params, sessionId),
    on: (method, hear) => heard.set(method, hear),
    async close() {
      const gone = new Promise((resolve) => child.once('exit', resolve));
      await ask('Browser.close').catch(() => undefined);
      await gone;
      await rm(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
