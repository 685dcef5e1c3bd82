import { expect, it } from 'vitest';
import { problemOfError } from './problemReply.ts';

it.each([
  ['ENOSPC', undefined, 'database.disk_full'],
  ['EROFS', undefined, 'database.no_permission'],
  ['FST_ERR_CTP_BODY_TOO_LARGE', 413, 'request.too_large'],
  ['FST_ERR_CTP_INVALID_MEDIA_TYPE', 415, 'request.wrong'],
  ['ERR_SOMETHING', undefined, 'request.our_fault'],
  ['SQLITE_ERROR', 500, 'request.our_fault'],
])('%s with status %s is %s, and says nothing of the inside', (code, statusCode, expected) => {
  const error = { code, message: 'secret.js:12', ...(statusCode === undefined ? {} : { statusCode }) };
  const problem = problemOfError(error, 'water', 5e6);
  expect(problem.code).toBe(expected);
  if (expected === 'request.our_fault') expect(JSON.stringify(problem)).not.toContain('secret');
});
