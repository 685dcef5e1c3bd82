import { describe, expect, it } from 'vitest';
import type { Carrier, PartsApart } from '../../kernel/index.ts';
import type { CarrierLoads } from './foundLoads.ts';
import { loadsOf } from './loadsOf.ts';
import type { Piece } from './piece.ts';
import { carrier, piece } from './pieces.testing.ts';

interface LoadsCase {
  readonly pieces: readonly Piece[];
  readonly carrier: Carrier;
  readonly keptApart: readonly PartsApart[];
}
const found = ({ pieces, carrier: by, keptApart }: LoadsCase): CarrierLoads => loadsOf(pieces, by, keptApart);
const boat = carrier('boat', 100);
const person = carrier('person', null);
const codesOf = (given: LoadsCase) => found(given).problems.map(({ code }) => code);
const inside = ({ loads }: CarrierLoads) =>
  loads.map(({ pieces }) => pieces.map(({ partId, count }) => `${count} ${partId}`));

describe('loads of a boat', () => {
  it('are the fewest that hold everything', () => {
    const result = found({ pieces: [piece('A', 60, 2), piece('B', 40, 2)], carrier: boat, keptApart: [] });
    expect(inside(result)).toEqual([
      ['1 A', '1 B'],
      ['1 A', '1 B'],
    ]);
    expect(result).toMatchObject({ leastLoads_count: 2, isLeast: true, cannotCarry: [], noMass: [] });
    expect(result.loads[0]).toMatchObject({ carriedBy: 'carrier', mass_kg: 100, bulk_L: null });
  });

  it('are none where nobody stated what it holds', () => {
    const checked = found({ pieces: [piece('A', 1)], carrier: carrier('boat', null), keptApart: [] });
    expect(checked).toMatchObject({ loads: [], limits: null, leastLoads_count: null, isLeast: false });
    expect(checked.problems).toMatchObject([{ code: 'loads.no_limit', severity: 'blocker', facts: { mode: 'boat' } }]);
  });

  it('never put chlorine with fuel, nor what the programme keeps apart', () => {
    const pieces = [
      piece('chlorine', 5, 1, { danger: 'chlorine' }),
      piece('fuel', 5, 1, { danger: 'fuel' }),
      piece('food', 5),
      piece('pipe', 5, 3),
    ];
    const result = found({ pieces, carrier: boat, keptApart: [{ partId: 'food', otherPartId: 'fuel' }] });
    expect(result.loads).toHaveLength(2);
    expect(result.isLeast).toBe(true);
    const withFuel = result.loads.find(({ pieces: some }) => some.some(({ partId }) => partId === 'fuel'))!;
    expect(withFuel.pieces.map(({ partId }) => partId)).not.toContain('chlorine');
    expect(withFuel.pieces.map(({ partId }) => partId)).not.toContain('food');
    expect(result.cautions).toContain('dangerApart');
  });

  it('have chlorine and fuel in two loads, though both fit one and no pair is stated', () => {
    const pieces = [piece('chlorine', 5, 1, { danger: 'chlorine' }), piece('fuel', 5, 1, { danger: 'fuel' })];
    const result = found({ pieces, carrier: boat, keptApart: [] });
    expect(inside(result)).toEqual([['1 chlorine'], ['1 fuel']]);
    expect(result.isLeast).toBe(true);
  });

  it('name what is over a limit, and by how much, and carry the rest', () => {
    const pieces = [
      piece('tank', 130, 1, { sides_m: [1, 1, 2] }),
      piece('bar', 4, 6, { sides_m: [6, 0.1, 0.1] }),
      piece('mat', 10, 1, { bulk_L: 1500 }),
      piece('tap', 1, 4, { sides_m: [0.1, 0.1, 0.1] }),
    ];
    const given = { pieces, carrier: carrier('boat', 100, { limit_L: 1000, longest_m: 4 }), keptApart: [] };
    const result = found(given);
    expect(result.cannotCarry).toEqual([
      { partId: 'tank', name: 'tank', each_count: 1, count: 1, over_kg: 30, over_L: 1000, over_m: null },
      { partId: 'bar', name: 'bar', each_count: 1, count: 6, over_kg: null, over_L: null, over_m: 2 },
      { partId: 'mat', name: 'mat', each_count: 1, count: 1, over_kg: null, over_L: 500, over_m: null },
    ]);
    expect(inside(result)).toEqual([['4 tap']]);
    expect(result.loads[0]!.bulk_L).toBeCloseTo(4, 12);
    expect(codesOf(given).filter((code) => code === 'loads.cannot_carry')).toHaveLength(3);
  });

  it('never count an unknown mass as nothing', () => {
    const given = { pieces: [piece('A', null, 3), piece('B', 5, 2)], carrier: boat, keptApart: [] };
    const result = found(given);
    expect(result.noMass).toEqual([{ partId: 'A', name: 'A', each_count: 1, count: 3 }]);
    expect(inside(result)).toEqual([['2 B']]);
    expect(codesOf(given)).toEqual(['loads.mass_unknown']);
  });

  it('say where bulk or length is limited and not known', () => {
    const given = {
      pieces: [piece('A', 5)],
      carrier: carrier('boat', 100, { limit_L: 10, longest_m: 2 }),
      keptApart: [],
    };
    expect(codesOf(given)).toEqual(['loads.bulk_unknown', 'loads.length_unknown']);
    expect(found(given).loads[0]).toMatchObject({ mass_kg: 5, bulk_L: null, longest_m: null });
  });

  it('keep to bulk as well as to mass', () => {
    const pieces = [piece('A', 1, 5, { bulk_L: 40 })];
    const result = found({ pieces, carrier: carrier('boat', 100, { limit_L: 100 }), keptApart: [] });
    expect(result.loads.map(({ bulk_L }) => bulk_L)).toEqual([80, 80, 40]);
    expect(result.isLeast).toBe(true);
  });

  it('tell of a freeboard that is too small, and of who decides', () => {
    const low = carrier('boat', 100, { freeboard_cm: 20, leastFreeboard_cm: 30 });
    const given = { pieces: [piece('A', 5)], carrier: low, keptApart: [] };
    expect(codesOf(given)).toEqual(['loads.freeboard_short']);
    expect(found(given).cautions).toEqual([
      'lifting',
      'lifeVests',
      'localSkipperDecides',
      'freeboardMark',
      'nobodyOnLoad',
      'lashed',
    ]);
  });
});

describe('loads of people', () => {
  it('are cartons of 15 kg, single pieces of 23 kg, pieces of 30 kg for two, and nothing above', () => {
    const pieces = [piece('box', 7.5, 4), piece('pump', 23), piece('stand', 30), piece('tank', 31)];
    const result = found({ pieces, carrier: person, keptApart: [] });
    expect(result.loads.map(({ carriedBy, mass_kg }) => [carriedBy, mass_kg])).toEqual([
      ['two', 30],
      ['one', 23],
      ['one', 15],
      ['one', 15],
    ]);
    expect(result.cannotCarry).toEqual([
      { partId: 'tank', name: 'tank', each_count: 1, count: 1, over_kg: 1, over_L: null, over_m: null },
    ]);
  });

  it('are never more than is safe to lift, whatever is stated', () => {
    const given = { pieces: [piece('box', 10, 2)], carrier: carrier('person', 40), keptApart: [] };
    expect(found(given).loads).toHaveLength(2);
    expect(found(given).problems).toMatchObject([
      { code: 'loads.limit_over_lifting', facts: { limit_kg: 40, most_kg: 23 } },
    ]);
    expect(found({ pieces: [piece('box', 4, 4)], carrier: carrier('person', 8), keptApart: [] }).loads).toHaveLength(2);
    expect(
      found({ pieces: [piece('box', 12, 4)], carrier: carrier('twoPeople', 50), keptApart: [] }).loads,
    ).toHaveLength(2);
  });

  it('have nothing heavy beside what is fragile', () => {
    const pieces = [piece('glass', 2, 2, { isFragile: true }), piece('bag', 0.5, 2), piece('bar', 5, 2)];
    const result = found({ pieces, carrier: person, keptApart: [] });
    expect(result.loads).toHaveLength(2);
    expect(result.loads[0]!.pieces.map(({ partId }) => partId)).not.toContain('glass');
    // What is fragile goes last, and lies on top.
    expect(result.loads[1]!.isFragile).toBe(true);
    expect(result.loads[1]!.pieces.at(-1)!.partId).toBe('glass');
  });
});

describe('the order of loads', () => {
  it('is that in which the parts are needed', () => {
    const kinds = ['tap', 'treatmentUnit', 'pipe', 'gutter', 'tank', 'stand', 'other'];
    const pieces = kinds.map((kind) => piece(kind, 90, 1, { kind }));
    const { loads } = found({ pieces, carrier: boat, keptApart: [] });
    expect(loads.map(({ pieces: [first] }) => first!.partId)).toEqual([
      'stand',
      'tank',
      'gutter',
      'pipe',
      'treatmentUnit',
      'tap',
      'other',
    ]);
  });

  it('does not change with the order of the rows', () => {
    const pieces = [piece('A', 60, 2), piece('B', 40, 3), piece('C', 40, 1, { kind: 'tap' }), piece('D', 3, 9)];
    const one = found({ pieces, carrier: boat, keptApart: [] });
    expect(found({ pieces: [...pieces].reverse(), carrier: boat, keptApart: [] })).toEqual({ ...one });
  });
});

describe('figures that are none', () => {
  it.each([Number.NaN, -1, 0, Number.POSITIVE_INFINITY])('leave a piece of %s kg out, and name it', (mass_kg) => {
    const given = { pieces: [piece('A', mass_kg), piece('B', 5)], carrier: boat, keptApart: [] };
    expect(inside(found(given))).toEqual([['1 B']]);
    expect(codesOf(given)).toEqual(['loads.figure_unusable']);
  });

  it('of the carrier give no load', () => {
    for (const limit_kg of [Number.NaN, 0, -5]) {
      const checked = found({ pieces: [piece('A', 1)], carrier: carrier('boat', limit_kg), keptApart: [] });
      expect(checked).toMatchObject({ loads: [], limits: null, problems: [{ code: 'loads.figure_unusable' }] });
    }
    for (const count of [0.5, -1, Number.NaN])
      expect(codesOf({ pieces: [piece('A', 1, count)], carrier: boat, keptApart: [] })).toEqual([
        'loads.figure_unusable',
      ]);
  });

  it('are not nothing: no piece, no load', () => {
    expect(found({ pieces: [], carrier: boat, keptApart: [] })).toMatchObject({
      loads: [],
      leastLoads_count: 0,
      isLeast: true,
    });
    expect(found({ pieces: [piece('A', 1, 0)], carrier: boat, keptApart: [] }).loads).toEqual([]);
  });
});

describe('the working of loads', () => {
  it('opens the numbers told', () => {
    const by = carrier('boat', 100, { limit_L: 100, stowage_fraction: 0.8 });
    const { working } = loadsOf([piece('A', 30, 5, { bulk_L: 10 })], by, []);
    expect(working.map(({ code, value, unit }) => [code, value, unit])).toEqual([
      ['loads.carried', 150, 'kg'],
      ['loads.limit', 100, 'kg'],
      ['loads.room', 80, 'L'],
      ['loads.least', 2, 'load'],
      ['loads.loads', 2, 'load'],
    ]);
    expect(loadsOf([], carrier('person', null), []).working[1]!.inputs.map(({ name }) => name)).toEqual([
      'carton',
      'onePiece',
    ]);
  });
});

describe('a mistyped count', () => {
  it('gives no million of loads, but a problem', () => {
    const many = [piece('A', 14, 1e6), piece('B', 20, 1e6), piece('C', 1, 1e6), piece('D', 2), piece('E', 3)];
    const result = found({ pieces: many, carrier: person, keptApart: [] });
    expect(result).toMatchObject({ loads: [], leastLoads_count: null, isLeast: false });
    expect(result.problems.map(({ code }) => code)).toEqual(['loads.too_many']);
  });

  it('of a whole programme, 40,000 loads, is no trouble', () => {
    const result = found({ pieces: [piece('A', 7.5, 60_000), piece('B', 9, 10_000)], carrier: person, keptApart: [] });
    expect(result.loads).toHaveLength(40_000);
    expect(result.isLeast).toBe(true);
  });
});

it('two people carry no more than each of them is said to', () => {
  const pieces = [piece('box', 20), piece('tank', 25)];
  const by = (limit_kg: number | null) => found({ pieces, carrier: carrier('person', limit_kg), keptApart: [] });
  expect(by(10).cannotCarry).toEqual([expect.objectContaining({ partId: 'tank', over_kg: 5 })]);
  expect(by(10).loads.map(({ carriedBy, mass_kg }) => [carriedBy, mass_kg])).toEqual([['two', 20]]);
  expect(by(15).cannotCarry).toEqual([]);
  expect(by(null).loads.map(({ carriedBy, mass_kg }) => [carriedBy, mass_kg])).toEqual([
    ['two', 25],
    ['one', 20],
  ]);
});
