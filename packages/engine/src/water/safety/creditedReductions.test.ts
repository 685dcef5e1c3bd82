import { describe, expect, it } from 'vitest';
import { type Barrier, creditedReductions, rowReductions } from './creditedReductions.ts';

const cartridge: Barrier = {
  barrierId: 'F1',
  evidence: 'challengeTest',
  claimed: { bacteria_log10: 8, viruses_log10: 3.5, protozoa_log10: null },
  most: null,
};
const nothing = { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 };

describe('creditedReductions', () => {
  it('is what is claimed, up to 6, and nothing where nothing is claimed', () => {
    expect(creditedReductions(cartridge)).toEqual({ bacteria_log10: 6, viruses_log10: 3.5, protozoa_log10: 0 });
  });

  it('is nothing without evidence, whatever is claimed', () => {
    expect(creditedReductions({ ...cartridge, evidence: 'none' })).toEqual(nothing);
  });

  it('is no more than what its own test can see', () => {
    const most = { bacteria_log10: 2.1, viruses_log10: null, protozoa_log10: 0 };
    expect(creditedReductions({ ...cartridge, evidence: 'credited', most })).toEqual({
      bacteria_log10: 2.1,
      viruses_log10: 3.5,
      protozoa_log10: 0,
    });
  });

  it('never credits a claim under 0, one that is no number, or a most under 0', () => {
    const claimed = { bacteria_log10: -1, viruses_log10: Number.NaN, protozoa_log10: 4 };
    const most = { bacteria_log10: null, viruses_log10: null, protozoa_log10: -3 };
    expect(creditedReductions({ ...cartridge, claimed, most })).toEqual(nothing);
  });
});

describe('rowReductions', () => {
  it('adds up what each is credited with', () => {
    const chlorine: Barrier = {
      barrierId: 'chlorine',
      evidence: 'credited',
      claimed: { bacteria_log10: 3, viruses_log10: 4, protozoa_log10: 0 },
      most: null,
    };
    expect(rowReductions([cartridge, chlorine])).toEqual({ bacteria_log10: 9, viruses_log10: 7.5, protozoa_log10: 0 });
    expect(rowReductions([])).toEqual(nothing);
  });
});
