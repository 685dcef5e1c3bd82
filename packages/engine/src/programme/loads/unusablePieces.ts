import { type Carrier, engineProblem, type Problem } from '../../kernel/index.ts';
import { largestBulk_L, largestPiece_kg, largestSide_m, mostPieces_count } from './constants.ts';
import type { Piece } from './piece.ts';

/** Pieces that can be reckoned with. A piece with a figure that is none is left out and named; nothing of which there is none is carried. */
export function unusablePieces(
  pieces: readonly Piece[],
  carrier: Carrier,
): { readonly usable: readonly Piece[]; readonly problems: readonly Problem[]; readonly isCarrierUsable: boolean } {
  const problems: Problem[] = [];
  const say = (name: string, column: string, value: number) =>
    problems.push(engineProblem('loads.figure_unusable', {}, { of: name, column, value: String(value) }));
  const usable = pieces.filter((piece) => {
    const { name, count, each_count, mass_kg, bulk_L, sides_m } = piece;
    const wrong = [
      ...(Number.isInteger(count) && count >= 0 && count <= mostPieces_count ? [] : [['count', count] as const]),
      ...(isBetween(each_count, mostPieces_count) ? [] : [['each_count', each_count] as const]),
      ...(isBetween(mass_kg, largestPiece_kg) ? [] : [['mass_kg', mass_kg!] as const]),
      ...(isBetween(bulk_L, largestBulk_L) ? [] : [['bulk_L', bulk_L!] as const]),
      ...sides_m.flatMap((side) => (isBetween(side, largestSide_m) ? [] : [['sides_m', side!] as const])),
    ];
    for (const [column, value] of wrong) say(name, column, value);
    return wrong.length === 0 && count > 0;
  });
  const { limit_kg, limit_L, longest_m, stowage_fraction } = carrier;
  const limits = { limit_kg, limit_L, longest_m, stowage_fraction };
  let isCarrierUsable = true;
  for (const [column, value] of Object.entries(limits)) {
    const most = column === 'stowage_fraction' ? 1 : Number.MAX_VALUE;
    if (value === null || (value > 0 && value <= most)) continue;
    say(carrier.name, column, value);
    isCarrierUsable = false;
  }
  return { usable: merged(usable), problems, isCarrierUsable };
}

/** Null, or above 0 and no more than so much. */
function isBetween(value: number | null, most: number): boolean {
  return value === null || (value > 0 && value <= most);
}

/** One row for each part: rows of one part are added up, as long as they say the same of it. */
function merged(pieces: readonly Piece[]): readonly Piece[] {
  const byText = new Map<string, Piece>();
  for (const piece of pieces) {
    const key = JSON.stringify({ ...piece, count: 0 });
    const before = byText.get(key);
    byText.set(key, before ? { ...before, count: before.count + piece.count } : piece);
  }
  return [...byText.values()];
}
