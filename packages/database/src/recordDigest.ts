import { createHash } from 'node:crypto';

/**
 * What a record's text comes to when nothing of it was changed since.
 *
 * @param programmeId - its programme [text]
 * @param text - the record as it stands in the file [text]
 * @returns the first half of its SHA-256, in hexadecimal [text]
 * @source fips180-4, section 6.2
 */
export function recordDigest(programmeId: string, text: string): string {
  return createHash('sha256').update(`${programmeId}\n${text}`).digest('hex').slice(0, 32);
}
