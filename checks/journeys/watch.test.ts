import { expect } from 'vitest';
import { journey } from './journey.ts';
import { Watch } from './watch.ts';

/** The faults a page of the program can have without anybody seeing them, made on purpose. */
const made: Readonly<Record<string, readonly [script: string, told: RegExp]>> = {
  'an error in the console': ["console.error('a made-up trouble')", /a made-up trouble/],
  'an error nobody caught': ["setTimeout(() => { throw new Error('a made-up throw') })", /a made-up throw/],
  'a promise nobody caught': ["void Promise.reject(new Error('a made-up refusal'))", /a made-up refusal/],
  'script in the page, which the policy forbids': [
    "const script = document.createElement('script'); script.textContent = '1'; document.body.append(script)",
    /Content Security Policy/,
  ],
  'something asked of another host': [
    "new Image().src = 'https://example.org/a.png'",
    /https:\/\/example\.org\/a\.png/,
  ],
  'something that is not there': ["void fetch('/api/nothing')", /404/],
};

journey(
  'what goes wrong unseen is noticed: each fault made, and none where nothing is wrong',
  async ({ browser, served }) => {
    const context = await browser.newContext({ locale: 'en-GB' });
    const watch = new Watch(context, served.origin);
    const page = await context.newPage();
    await page.goto(served.address);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.waitForTimeout(300);
    expect(watch.unexpected).toEqual([]);
    for (const [script] of Object.values(made)) await page.evaluate(script);
    await page.waitForTimeout(500);
    await context.close();
    for (const [what, [, told]] of Object.entries(made)) {
      expect(watch.unexpected.join('\n'), what).toMatch(told);
      watch.expect(told);
      expect(watch.unexpected.join('\n'), what).not.toMatch(told);
    }
  },
);
