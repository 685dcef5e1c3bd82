import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import type { FastifyRequest } from 'fastify';

/** The cookie a page carries once it was opened with the key. Ports share cookies, so each program has its own. */
export const cookieAt = (port: number): string => `eavewell-${port}`;

/** What lets somebody in: the key in the opened address, and what the cookie then holds. Both are made at each start. */
export interface Keys {
  readonly address: string;
  readonly cookie: string;
}

/** Fresh keys of 256 bits. */
export const freshKeys = (): Keys => ({
  address: randomBytes(32).toString('base64url'),
  cookie: randomBytes(32).toString('base64url'),
});

/** Are two keys the same? Takes as long for a wrong key as for a nearly right one. */
export function isSameKey(given: string | undefined, key: string): boolean {
  const [a, b] = [Buffer.from(given ?? ''), Buffer.from(key)];
  return a.length === b.length && timingSafeEqual(a, b);
}

/** The names this program answers to at a port: only those of this computer itself. */
function hostsAt(port: number): readonly string[] {
  return ['127.0.0.1', 'localhost', '[::1]'].map((name) => `${name}:${port}`);
}

/**
 * Does a browser say that another site's page asks? A picture, a script or a blind request bears no Origin, and another program
 * at this computer counts as the same site, cookie and all. A link that a person follows is no such request.
 */
function isAskedFromOutside(headers: FastifyRequest['headers']): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== 'cross-site' && site !== 'same-site') return false;
  return headers['sec-fetch-mode'] !== 'navigate' || headers['sec-fetch-dest'] !== 'document';
}

/**
 * Why is a request not let in? A name that was bound to this computer by somebody else shows in Host, a foreign page in Origin,
 * and neither has the key.
 *
 * @param request - host, origin and cookie of the request
 * @param port - where this program listens
 * @param keys - what lets somebody in
 * @returns the problem; null where it is let in
 * @problem request.refused - reason: host, origin or token
 * @definition ours: docs/decisions/0102-server-libraries.md
 */
export function refusal(
  { headers, cookies }: Pick<FastifyRequest, 'headers' | 'cookies'>,
  port: number,
  keys: Keys,
  isOpening: boolean,
): Problem | null {
  const refused = (reason: string) => recordProblem('request.refused', {}, { reason });
  const { host, origin } = headers;
  if (host === undefined || !hostsAt(port).includes(host.toLowerCase())) return refused('host');
  if (origin !== undefined && origin.toLowerCase() !== `http://${host.toLowerCase()}`) return refused('origin');
  if (isAskedFromOutside(headers)) return refused('origin');
  if (isOpening) return null;
  return isSameKey(cookies[cookieAt(port)], keys.cookie) ? null : refused('token');
}
