import type { DrainageFinding, DrainagePartFinding } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { english, loadLanguage } from './index.ts';

const part = (change: Partial<DrainagePartFinding> = {}): DrainagePartFinding => ({
  part: 'gutter',
  id: 'G2',
  roofId: 'R1',
  flow_L_per_s: 2.5,
  flow_L_per_s_range: { low: 2.2, high: 2.9 },
  capacity_L_per_s: 4.4,
  use_fraction: 0.568,
  verdict: 'holds',
  smallestPartId: null,
  smallest_mm: null,
  ...change,
});
const finding = (change: Partial<DrainageFinding> = {}): DrainageFinding => ({
  verdict: 'holds',
  storm_mm_per_h: 100,
  returnPeriod_years: 20,
  parts: [part(), part({ part: 'downpipe', id: 'D1' })],
  governing: 0,
  carries_mm_per_h: 176,
  firstFlush: [],
  lost_fraction: null,
  cappedBy: null,
  ...change,
});
const said = (change: Partial<DrainageFinding> = {}) => english.findings.drainage(finding(change));

describe('what is said of gutters and pipes', () => {
  it('names the storm, and how much harder a rain they carry', () => {
    expect(said()).toBe(
      'Gutters, pipes and overflow carry the storm that comes once in 20 years: 100 mm an hour, and up to 176 mm an hour.',
    );
    expect(said({ carries_mm_per_h: null })).toBe(
      'What was measured carries the storm that comes once in 20 years: 100 mm an hour.',
    );
  });

  it('names the part that runs over, what would hold in its place, and how many others do not', () => {
    const short = part({ verdict: 'short', capacity_L_per_s: 1.36, smallestPartId: 'gutter-200', smallest_mm: 200 });
    const outlet = part({ part: 'outlet', verdict: 'tight' });
    expect(said({ verdict: 'short', parts: [short, outlet] })).toBe(
      'In the storm that comes once in 20 years (100 mm an hour) gutter G2 is asked for 2.5 L a second and carries 1.36 L a second: it runs over. ' +
        'The smallest part that holds: 200 mm (gutter-200). One other part is short or tight.',
    );
  });

  it('says what to do where the catalogue has nothing', () => {
    expect(said({ verdict: 'tight', parts: [part({ verdict: 'tight' })] })).toContain(
      'No part of the catalogue holds there: more outlets, or a second gutter or pipe, would.',
    );
  });

  it('says what keeps it tight where the figures do not, and that it is not known where it is not', () => {
    expect(said({ verdict: 'tight', cappedBy: 'drainage.pitch_unknown' })).toContain(
      'because of what was not measured',
    );
    expect(said({ verdict: 'unknown', governing: null })).toContain('is not known');
    expect(said({ verdict: 'short', governing: null, parts: [] })).toContain('is not known');
  });

  it('says of a first-flush chamber what comes through, and never calls it a barrier', () => {
    const flush = {
      ...{ roofId: 'R1', diverted_mm: 0.5, chamber_L: 30, chamberWanted_L: 30, emptying_h: 2.2, leak_mm_per_h: 1 },
      ...{ isBlocked: false, loadLeft_fraction: 0.71 },
    };
    expect(english.findings.firstFlush(flush)).toBe(
      'First flush of roof R1: 0.5 mm let go, 71 % of the dirt still comes; empty again in 2.2 hours. No barrier to germs.',
    );
    expect(english.findings.firstFlush({ ...flush, isBlocked: true })).toContain('nothing is let go');
  });

  it('is said in Spanish too', async () => {
    expect((await loadLanguage('es')).findings.drainage(finding())).toContain(
      'la tormenta que viene una vez en 20 años',
    );
  });
});
