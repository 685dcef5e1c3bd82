import { request } from 'node:http';
import { expect, it } from 'vitest';
import { type Page, withServer } from './served.ts';

/** Asks as any program can: with whatever headers it likes. */
function ask(page: Page, path: string, headers: Record<string, string>, method = 'GET') {
  return new Promise<{ status: number; headers: Record<string, unknown>; text: string }>((answered, failed) => {
    const { port } = page.served;
    const asked = request({ host: '127.0.0.1', port, path, method, headers, setHost: false }, (answer) => {
      let text = '';
      answer.on('data', (piece) => {
        text += piece;
      });
      answer.on('end', () => answered({ status: answer.statusCode!, headers: answer.headers, text }));
    });
    asked.on('error', failed);
    asked.end();
  });
}

it('lets in its own page, and nobody else', async () => {
  await withServer(async (page) => {
    const host = `127.0.0.1:${page.served.port}`;
    const { cookie } = page;
    const own = { host, cookie, origin: `http://${host}` };
    const refused: readonly (readonly [what: string, headers: Record<string, string>, reason: string])[] = [
      ['without the key', { host }, 'token'],
      ['with another key', { host, cookie: `${cookie.slice(0, -2)}xx` }, 'token'],
      ['a name bound to this computer', { ...own, host: `weather.example:${page.served.port}` }, 'host'],
      ['another port', { ...own, host: '127.0.0.1:1' }, 'host'],
      ['a foreign page', { ...own, origin: 'https://weather.example' }, 'origin'],
      ['a page out of a file', { ...own, origin: 'null' }, 'origin'],
      ['the same name by another protocol', { ...own, origin: `https://${host}` }, 'origin'],
      ['another program on this computer', { ...own, origin: 'http://127.0.0.1:1' }, 'origin'],
      ['a picture in its page', { host, cookie, 'sec-fetch-site': 'same-site', 'sec-fetch-dest': 'image' }, 'origin'],
      [
        'a script in a foreign page',
        { host, cookie, 'sec-fetch-site': 'cross-site', 'sec-fetch-dest': 'script' },
        'origin',
      ],
      [
        'a frame in one',
        { host, cookie, 'sec-fetch-site': 'same-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'iframe' },
        'origin',
      ],
    ];
    for (const path of ['/', '/api/programmes', '/api/events', '/nowhere']) {
      for (const [what, headers, reason] of refused) {
        for (const method of ['GET', 'POST']) {
          const { status, text } = await ask(page, path, headers, method);
          expect({ what, path, method, status }).toEqual({ what, path, method, status: 403 });
          expect(JSON.parse(text).problems[0]).toMatchObject({ code: 'request.refused', facts: { reason } });
        }
      }
    }
    expect((await ask(page, '/api/programmes', own)).status).toBe(200);
    const followed = { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'document' };
    expect((await ask(page, '/api/programmes', { host, cookie, ...followed })).status).toBe(200);
    expect(
      (
        await ask(page, '/api/programmes', {
          ...own,
          host: `localhost:${page.served.port}`,
          origin: `http://localhost:${page.served.port}`,
        })
      ).status,
    ).toBe(200);
  });
});

it('gives the cookie for the key of the address only, and not to a name bound to this computer', async () => {
  await withServer(async (page) => {
    const host = `127.0.0.1:${page.served.port}`;
    const path = page.served.address.slice(page.served.address.indexOf('/open'));
    const given = await ask(page, path, { host });
    expect(given.status).toBe(303);
    expect(String(given.headers['set-cookie'])).toMatch(/^eavewell-\d+=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
    for (const [wrong, headers] of [
      [`${path}x`, { host }],
      ['/open?key=', { host }],
      ['/open?key=a&key=b', { host }],
      ['/open?', { host }],
      [path, { host: `weather.example:${page.served.port}` }],
      [path, { host, origin: 'https://weather.example' }],
    ] as const) {
      const { status, headers: back } = await ask(page, wrong, headers);
      expect([wrong, status, back['set-cookie']]).toEqual([wrong, 403, undefined]);
    }
  });
});

it('says on every answer what a browser may do with it, and nothing of its inside', async () => {
  await withServer(async (page) => {
    for (const path of ['/', '/api/programmes', '/nowhere', '/api/programmes/none']) {
      const { headers, body } = await page.ask('GET', path);
      expect(headers.get('content-security-policy')).toBe(
        "default-src 'self';style-src 'self' 'unsafe-inline';img-src 'self' data: blob:;worker-src 'self';base-uri 'none';form-action 'self';frame-ancestors 'none';object-src 'none'",
      );
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('x-frame-options')).toBe('DENY');
      expect(headers.get('cache-control')).toBe('no-store');
      expect(headers.get('access-control-allow-origin')).toBeNull();
      expect(JSON.stringify(body)).not.toMatch(/node_modules|\.ts:|\.js:/);
    }
  });
});

it('answers what it does not understand with a problem in words', async () => {
  await withServer(async (page) => {
    const programme = await page.empty();
    const cases: readonly (readonly [method: string, path: string, body: unknown, status: number, code: string])[] = [
      ['GET', '/nowhere', undefined, 404, 'request.not_found'],
      ['GET', '/api/programmes/none', undefined, 404, 'database.programme_unknown'],
      ['GET', '/api/programmes/..%2F..%2Fetc', undefined, 400, 'request.wrong'],
      ['GET', `${programme}/sites/none`, undefined, 404, 'request.not_found'],
      ['GET', `${programme}/tables/passwords`, undefined, 400, 'request.wrong'],
      ['POST', '/api/programmes', { name: '' }, 400, 'request.wrong'],
      ['POST', '/api/programmes', new TextEncoder().encode('{'), 400, 'request.wrong'],
      ['POST', `${programme}/changes`, { by: 'Nadi', changes: [] }, 400, 'request.wrong'],
      ['POST', `${programme}/changes`, { by: 'x'.repeat(6e6), changes: [] }, 413, 'request.too_large'],
      ['POST', `${programme}/undo`, { by: 'Nadi' }, 409, 'change.nothing_to_undo'],
      ['POST', `${programme}/redo`, { by: 'Nadi' }, 409, 'change.nothing_to_redo'],
      ['GET', `${programme}/imports/0123456789abcdef`, undefined, 404, 'import.gone'],
    ];
    for (const [method, path, body, status, code] of cases) {
      const answer = await page.ask(method, path, body);
      expect([path, answer.status, answer.body.problems?.[0]?.code]).toEqual([path, status, code]);
      expect(answer.headers.get('content-type')).toMatch(/^application\/problem\+json/);
      expect(answer.body).toMatchObject({ type: `urn:eavewell:problem:${code}`, status, title: expect.any(String) });
      expect(answer.body.problems[0].todo).not.toBe('');
    }
  });
});
