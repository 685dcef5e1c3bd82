import { describe, expect, it } from 'vitest';
import { stopsOfLoads } from './stopsOfLoads.ts';

const piece = (partId: string, count: number) => ({ partId, name: partId, each_count: 1, count });
const stowed = (siteId: string, partId: string, count: number, mass_kg: number) => ({
  ...{ siteId, partId, each_count: 1, count, mass_kg },
});

describe('which part of a load goes ashore where', () => {
  const aboard = [stowed('B', 'pipe', 2, 10), stowed('A', 'pipe', 3, 10), stowed('A', 'tank', 1, 80)];

  it('gives each stop what it takes', () =>
    expect(stopsOfLoads([{ pieces: [piece('pipe', 5), piece('tank', 1)] }], aboard, ['A', 'B'])).toEqual([
      [
        { siteId: 'A', nth: 1, mass_kg: 110 },
        { siteId: 'B', nth: 2, mass_kg: 20 },
      ],
    ]));

  it('puts what is for the last stop into the first loads', () =>
    expect(stopsOfLoads([{ pieces: [piece('pipe', 3)] }, { pieces: [piece('pipe', 2)] }], aboard, ['A', 'B'])).toEqual([
      [
        { siteId: 'A', nth: 1, mass_kg: 10 },
        { siteId: 'B', nth: 2, mass_kg: 20 },
      ],
      [{ siteId: 'A', nth: 1, mass_kg: 20 }],
    ]));
});
