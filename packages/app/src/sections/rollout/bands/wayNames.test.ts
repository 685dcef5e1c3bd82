import { english } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { candidateWith, sheetWith } from '../sheetForTests.ts';
import { closingWays, wayNames } from './wayNames.ts';

const way = (wayId: string, name: string | null, to: string) => ({
  ...{ wayId, name, mode: 'river' as const, from: 'base', to, line_deg: null },
});

describe('ways of a strip', () => {
  it('are all told by name, or by their ends', () => {
    const sheet = sheetWith({
      ways: [way('w1', 'Tavilo', 'V1'), way('w2', null, 'V1'), way('w3', 'Brenna', 'V1'), way('w4', null, 'V9')],
      places: [{ placeId: 'base', name: 'Foot', kind: null, latitude_deg: null, longitude_deg: null }],
      candidates: [candidateWith({})],
    });
    expect(wayNames({ wayIds: ['w1', 'w2', 'w4'] }, sheet, english)).toEqual([
      'Tavilo',
      'Foot to Vennaro',
      'Foot to V9',
    ]);
  });

  it('are those that close today or later, or may be closed still as their last day was a guess', () => {
    const span = (from: string, to: string, isToGuessed = false) => ({
      ...{ from, to, isToGuessed, kind: 'closed' as const, said: 'closed' },
    });
    const strip = (stripId: string, spans: readonly ReturnType<typeof span>[]) => ({
      ...{ stripId, name: stripId, mode: 'river' as const, wayIds: [], weeks: [], spans: [...spans] },
    });
    const strips = [
      strip('past', [span('2027-05-01', '2027-05-31')]),
      strip('guess', [span('2027-05-01', '2027-05-18', true)]),
      strip('long ago', [span('2027-05-01', '2027-05-17', true)]),
      strip('both', [span('2027-05-01', '2027-05-02'), span('2027-06-01', '2027-06-01')]),
    ];
    // On 1 June; the 18th is fourteen days before it.
    const told = closingWays({ strips, day: '2027-06-01' });
    expect(told.map(({ strip: { stripId }, spans }) => [stripId, spans.length])).toEqual([
      ['guess', 1],
      ['both', 1],
    ]);
  });
});
