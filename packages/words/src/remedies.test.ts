import type { AsFitted, Remedy, RemedyCost } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { english } from './index.ts';

const words = english.remedies;
const priced: RemedyCost = { amount: 2600, currency: 'XTS', reason: null, bought: [] };
const remedy: Remedy = {
  changes: [{ kind: 'secondTank', tankId: null, partId: 'T', volume_L: 26_000, mass_kg: null }],
  verdict: 'holds',
  promiseCut_count: 0,
  tankVolume_L: 40_000,
  dryDays_per_year: 5.4,
  goodYears: 29,
  sourceDays_per_year: null,
  besides: [],
  standGate: 'notNeeded',
  cost: priced,
};

it('says what to do, what it makes of the site and what it costs', () => {
  expect(words.smallest(remedy)).toBe('Would hold: join a tank of 26,000 L; 2,600 XTS.');
  const cut: Remedy = {
    ...remedy,
    changes: [{ kind: 'litres', judged_L_per_person_per_day: 6, isJudgedCut: true }],
    verdict: 'tight',
    promiseCut_count: 2,
    cost: { ...priced, amount: 0, currency: null },
  };
  expect(words.smallest(cut)).toBe(
    'Would be tight, not more: promise 6 L a person, which promises less; nothing to buy.',
  );
});

it('never reads a cost that is not known as nothing', () => {
  const unknown: RemedyCost = { amount: null, currency: null, reason: 'noPrice', bought: [] };
  expect(words.cost(unknown)).toBe('not known');
  expect(words.smallest({ ...remedy, cost: unknown })).toContain('cost not known (no price)');
  const together = { sites: 2, people: 9, withoutPeople_count: 0, costs: [], withoutCost_count: 2 };
  expect(words.costs(together)).toBe('2 not known');
  expect(words.costs({ ...together, costs: [{ amount: 500, currency: 'XTS' }], withoutCost_count: 1 })).toBe(
    '500 XTS + 1 not known',
  );
});

it('names a few sites that none mends, counts the rest, and says why', () => {
  const ids = Array.from({ length: 11 }, (_, i) => `S${i}`);
  expect(words.noneMends('tank', ids)).toBe(
    'Made to hold by none: S0, S1, S2, S3, S4, S5, S6, S7 and 3 more. No tank of the catalogue, nor two, is large enough.',
  );
});

it('asks for a survey where a station is tight by an assumption alone, and names the catalogue where it is by its figures', () => {
  const stations = { gutter: 'tight' } as AsFitted['stations'];
  const saidOf = (cappedBy: string | null) =>
    words.beside(
      { besides: ['gutter'], remedies: [] },
      {
        ...{ stations, drainage: { verdict: 'tight', cappedBy }, settling: [], stands: [], head: [] },
        ...{ treatment: [], safety: null },
      },
    );
  expect(saidOf('drainage.pitch_unknown')).toEqual([
    'The gutters stay tight, whatever is changed here: survey what is missing.',
  ]);
  expect(saidOf(null)).toEqual(['The gutters stay tight, whatever is changed here: no part of the catalogue does it.']);
});

it('says of a treatment unit and of the cup that no tank, gutter or pipe mends them', () => {
  const stations = { treatmentUnit: 'short', cup: 'short' } as AsFitted['stations'];
  const design = { stations, drainage: null, settling: [], stands: [], head: [], treatment: [], safety: null };
  expect(words.beside({ besides: ['treatmentUnit', 'cup'], remedies: [] }, design)).toEqual([
    'The treatment unit stays short, whatever is changed here: no change to tanks, gutters or pipes does it: see its page.',
    'Whether the water is fit to drink stays short, whatever is changed here: no change to tanks, gutters or pipes does it: see its page.',
  ]);
});
