import 'fake-indexeddb/auto';
import { QueryClient } from '@tanstack/react-query';
import { IDBFactory } from 'fake-indexeddb';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import { NotDone } from '../api/client.ts';
import { KeptAnswers } from './keptAnswers.ts';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
// The browser of a test ends with it: other files share this process.
afterAll(() => void Reflect.deleteProperty(globalThis, 'indexedDB'));

/** A page that is opened: it knows nothing but what the browser kept. */
function page(form = 'one', settle_ms = 5) {
  const answers = new KeptAnswers(form, settle_ms);
  const client = new QueryClient({ defaultOptions: { queries: { persister: answers.persister, retry: false } } });
  const ask = (answer: () => Promise<unknown>, queryKey: readonly unknown[] = ['programme', 'p-1', 'state']) =>
    client.fetchQuery({ queryKey, queryFn: answer });
  return { answers, client, ask };
}
const away = (reason: NotDone['reason']) => () => Promise.reject(new NotDone(reason));
const settled = () => vi.waitFor(async () => expect(await isWritten()).toBe(true), { timeout: 5000 });
async function isWritten() {
  const probe = page();
  return probe.ask(away('unreachable')).then(
    () => true,
    () => false,
  );
}

test('what was read is there when the program is away or was started again, with the time it was read', async () => {
  const before = Date.now();
  await page().ask(async () => ({ name: 'Tarn water' }));
  await settled();
  for (const reason of ['unreachable', 'refused'] as const) {
    const later = page();
    expect(await later.ask(away(reason))).toEqual({ name: 'Tarn water' });
    const at = later.answers.whenRead('["programme","p-1","state"]')!;
    expect(at >= before && at <= Date.now()).toBe(true);
  }
});

test('what is read first is kept at once: a page may be left right after', async () => {
  await page('one', 60_000).ask(async () => 1);
  await settled();
});

test('what the program says is wrong is said, whatever was kept; and what was never read is not there', async () => {
  await page().ask(async () => 1);
  await settled();
  await expect(page().ask(away('problems'))).rejects.toThrow('problems');
  await expect(page().ask(away('unreachable'), ['programme', 'p-2', 'state'])).rejects.toThrow('unreachable');
});

test('an answer of another form of the program is not shown, and is thrown away', async () => {
  await page().ask(async () => 1);
  await settled();
  const newer = page('two');
  await expect(newer.ask(away('unreachable'))).rejects.toThrow('unreachable');
  await newer.answers.tidy();
  await expect(page('one').ask(away('unreachable'))).rejects.toThrow('unreachable');
});

test('what is forgotten is gone', async () => {
  const first = page();
  await first.ask(async () => 1);
  await settled();
  await first.answers.forget();
  await expect(page().ask(away('unreachable'))).rejects.toThrow('unreachable');
});

test('reviews of files are not kept', async () => {
  await page().ask(async () => 1, ['programme', 'p-1', 'import', 'x']);
  await page().ask(async () => 1);
  await settled();
  await expect(page().ask(away('unreachable'), ['programme', 'p-1', 'import', 'x'])).rejects.toThrow('unreachable');
});
