import { describe, expect, it } from 'vitest';
import { findSeparator } from './findSeparator.ts';

const columns = ['siteId', 'name', 'people'];

describe('findSeparator', () => {
  it.each([
    ['siteId,name,people\nS;1,x,2', ','],
    ['siteId;name;people\nS1;x,y;2', ';'],
    ['siteId\tname\tpeople\n', '\t'],
    ['"siteId";"name";"people"\n', ';'],
    ['SITEID;NAME\n', ';'],
    ['siteId,notes; and more,name\n', ','],
    ['siteId\n', ','],
    ['nothing;known;here\n', ';'],
    ['', ','],
  ])('of %j is %j', (text, separator) => {
    expect(findSeparator(text, columns)).toBe(separator);
  });
});
