import { describe, expect, it } from 'vitest';
import { kitAskedOf, tripOf, tripWith } from './kitAsked.ts';

describe('what the address asks of the kit', () => {
  it('keeps the order of the stops, each once', () =>
    expect(kitAskedOf({ sites: 'S3,S1,S3,' })).toEqual({ sites: 'S3,S1' }));
  it('leaves out what is no day and no site', () => expect(kitAskedOf({ sites: '', neededOn: 'soon' })).toEqual({}));
  it('reads a number as the id it is', () => expect(kitAskedOf({ sites: 12 })).toEqual({ sites: '12' }));
  it('puts a site at the end, and takes it out again', () => {
    expect(tripWith('S3,S1', 'S2')).toBe('S3,S1,S2');
    expect(tripWith('S3,S1', 'S3')).toBe('S1');
    expect(tripOf(undefined)).toEqual([]);
  });
});
