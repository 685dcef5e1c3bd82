import { describe, expect, it } from 'vitest';
import type { StatedReductions } from '../../kernel/index.ts';
import { creditedReductions, rowReductions } from './creditedReductions.ts';

const tested: StatedReductions = {
  ...{ bacteria_log10: 8, viruses_log10: 3.5, protozoa_log10: null },
  ...{ evidence: 'challengeTest', source: 'a laboratory' },
};
const nothing = { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 };
const membrane = { kind: 'membrane', stated: tested, most: null } as const;

describe('creditedReductions', () => {
  it('is what is stated, up to 6, and nothing where nothing is stated', () => {
    expect(creditedReductions(membrane)).toEqual({ bacteria_log10: 6, viruses_log10: 3.5, protozoa_log10: 0 });
  });

  it('is nothing without evidence, whatever is stated', () => {
    for (const evidence of ['none', null] as const)
      expect(creditedReductions({ ...membrane, stated: { ...tested, evidence } })).toEqual(nothing);
  });

  it('has no viruses of a membrane without a challenge test, and those of another barrier', () => {
    const stated = { ...tested, evidence: 'credited' } as const;
    expect(creditedReductions({ ...membrane, stated }).viruses_log10).toBe(0);
    expect(creditedReductions({ ...membrane, stated }).bacteria_log10).toBe(6);
    expect(creditedReductions({ kind: 'ultraviolet', stated, most: null }).viruses_log10).toBe(3.5);
  });

  it('is no more than its own most', () => {
    const most = { bacteria_log10: 2.1, viruses_log10: 9, protozoa_log10: 0 };
    expect(creditedReductions({ ...membrane, most })).toEqual({
      bacteria_log10: 2.1,
      viruses_log10: 3.5,
      protozoa_log10: 0,
    });
  });

  it('never credits what is stated under 0, what is no number, or a most under 0', () => {
    const stated = { ...tested, bacteria_log10: -1, viruses_log10: Number.NaN, protozoa_log10: 4 };
    expect(creditedReductions({ ...membrane, stated, most: { ...nothing, protozoa_log10: -3 } })).toEqual(nothing);
  });
});

describe('rowReductions', () => {
  it('adds up', () => {
    const chlorine = { bacteria_log10: 3, viruses_log10: 4, protozoa_log10: 0.5 };
    const both = rowReductions([creditedReductions(membrane), chlorine]);
    expect(both).toEqual({ bacteria_log10: 9, viruses_log10: 7.5, protozoa_log10: 0.5 });
    expect(rowReductions([])).toEqual(nothing);
  });
});
