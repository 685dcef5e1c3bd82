import { describe, expect, it } from 'vitest';
import { type CountedBy, noKitFigures, type PartFacts, unmeasuredPart } from '../../kernel/index.ts';
import { type CarriedLine, piecesOf } from './piecesOf.ts';

const line = (
  partId: string,
  total_count: number | null,
  kind = 'other',
  countedBy: CountedBy = 'site',
): CarriedLine => ({
  ...{ partId, name: partId, kind, total_count },
  counts: [{ countedBy }],
});
function part(partId: string, mass_kg: number | null, kit: Partial<PartFacts['kit']> = {}): PartFacts {
  const sides = { length_m: 0.2, kit: { ...noKitFigures, width_m: 0.1, height_m: 0.1, ...kit } };
  return { ...unmeasuredPart, partId, kind: 'other', name: partId, mass_kg, ...sides };
}
const amounts = (lines: readonly CarriedLine[], parts: readonly PartFacts[]) =>
  piecesOf(lines, parts).map(({ count, each_count, mass_kg }) => [count, each_count, mass_kg]);

describe('pieces of a kit', () => {
  it('are parts one by one, with what the catalogue says of them', () => {
    const glass = part('glass', 2, { isFragile: true, danger: 'chlorine' });
    expect(piecesOf([line('glass', 3)], [glass])).toEqual([
      {
        ...{ partId: 'glass', name: 'glass', kind: 'other', each_count: 1, count: 3, mass_kg: 2 },
        ...{ sides_m: [0.2, 0.1, 0.1], bulk_L: null, isFragile: true, danger: 'chlorine' },
      },
    ]);
  });

  it('stay in the packs they are sold in where these are light, and the rest goes in an opened one', () => {
    const screws = part('screws', 0.25, { packSize_count: 20 });
    expect(amounts([line('screws', 47)], [screws])).toEqual([
      [2, 20, 5],
      [1, 7, 1.75],
    ]);
    const [pack] = piecesOf([line('screws', 47)], [screws]);
    expect(pack!.sides_m).toEqual([0.2, null, null]);
    expect(pack!.bulk_L).toBeCloseTo(40, 12);
    expect(amounts([line('bars', 47)], [part('bars', 0.26, { packSize_count: 20 })])).toEqual([[47, 1, 0.26]]);
    expect(amounts([line('bars', 47)], [part('bars', null, { packSize_count: 20 })])).toEqual([[47, 1, null]]);
  });

  it('of what is measured out are packs, the last one whole', () => {
    const cement = part('cement', null, { countedIn: 'kg', packSize_count: 25 });
    expect(amounts([line('cement', 60)], [cement])).toEqual([[3, 25, 25]]);
    expect(amounts([line('cement', 75)], [cement])).toEqual([[3, 25, 25]]);
    const weighed = part('cement', 25, { countedIn: 'kg', packSize_count: 25 });
    expect(amounts([line('cement', 60)], [weighed])).toEqual([[3, 25, 25]]);
    const hose = part('hose', 0.3, { countedIn: 'm' });
    expect(amounts([line('hose', 12.5)], [hose])).toEqual([[1, 12.5, 3.75]]);
  });

  it('of a part that travels in several are each a share of it, as long as the longest', () => {
    const shells = part('tank', 84, { pieces_count: 7, bulk_L: 2100, width_m: null });
    const [piece] = piecesOf([line('tank', 2)], [shells]);
    expect(piece).toMatchObject({ count: 14, sides_m: [0.2, null, null] });
    expect(piece!.mass_kg).toBeCloseTo(12, 12);
    expect(piece!.bulk_L).toBeCloseTo(300, 9);
    // Together they are the parts of the line.
    expect(piece!.count * piece!.each_count).toBeCloseTo(2, 12);
    expect(amounts([line('tank', 2)], [part('tank', 84, { pieces_count: 1 })])).toEqual([[2, 1, 84]]);
    expect(piecesOf([line('tank', 1)], [part('tank', null, { pieces_count: 3 })])[0]).toMatchObject({
      ...{ count: 3, mass_kg: null },
    });
  });

  it('are none of a line that nobody could count, and of unknown mass without a part', () => {
    expect(piecesOf([line('a', null), line('b', 0)], [])).toEqual([]);
    expect(amounts([line('c', 2)], [])).toEqual([[2, 1, null]]);
  });

  it('of no kind of their own are needed with what they are counted by', () => {
    const kinds = piecesOf(
      [
        line('cement', 1, 'other', 'standPad'),
        line('joint', 1, 'other', 'gutterJoint'),
        line('sheet', 1),
        line('t', 1, 'tap', 'unit'),
      ],
      [],
    ).map(({ kind }) => kind);
    expect(kinds).toEqual(['stand', 'gutter', 'other', 'tap']);
  });
});
