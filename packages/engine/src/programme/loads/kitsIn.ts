import { type Carrier, type Checked, engineProblem, type PartsApart, type Problem } from '../../kernel/index.ts';
import { roomOf } from '../../parts/index.ts';
import type { BindingLimit, KitsFound, LoadPieces } from './foundLoads.ts';
import { kitsWorking } from './loadsWorking.ts';
import { arePartsApart, meetApart } from './meetApart.ts';
import { named, partsNamed } from './namedPieces.ts';
import type { Piece } from './piece.ts';
import { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';
import { unusablePieces } from './unusablePieces.ts';

/**
 * How many whole kits go into a container, on a pallet or a truck? By mass, by bulk with the share of the room that can be filled, and by the
 * longest piece against the length inside; the smallest of these.
 *
 * @param kit - pieces of one kit [kg], [m], [L]
 * @param carrier - limits of the carrier [kg], [L], [m], and the share of its room that can be filled [fraction]
 * @param keptApart - parts that the programme keeps apart
 * @returns whole kits [count], and which limit decides
 * @problem loads.no_limit - the carrier has no limit of mass
 * @problem loads.figure_unusable - a figure of a piece or of the carrier is no number one can reckon with
 * @problem loads.mass_unknown - a piece of the kit has no mass: kits are not counted
 * @problem loads.bulk_unknown - bulk is limited and that of a piece is not known: kits are not counted
 * @problem loads.kit_kept_apart - the kit holds parts that never travel together: no whole kit goes in
 * @problem loads.cannot_carry - a piece of the kit is longer than the space
 * @law so many kits are over no limit, and one more is
 * @definition ours: docs/decisions/0250-kits-in-a-container.md
 */
export function kitsIn(kit: readonly Piece[], carrier: Carrier, keptApart: readonly PartsApart[]): Checked<KitsFound> {
  const { usable, problems: wrong, isCarrierUsable } = unusablePieces(kit, carrier);
  const { carrierId, name: carrierName, mode, limit_kg } = carrier;
  const problems: Problem[] = [...wrong];
  if (limit_kg === null) problems.push(engineProblem('loads.no_limit', {}, { carrierId, carrierName, mode }));
  if (limit_kg === null || !isCarrierUsable) return { ok: false, problems };
  const one = kitFigures(usable);
  const tooLong = usable.filter((piece) => overLength_m(piece, carrier) > 0);
  const isApart = meetApart(usable, keptApart);
  // A kit without a piece that could not be used is not the whole kit.
  const isWhole = wrong.length === 0;
  problems.push(...kitProblems(one, carrier, tooLong, isApart));
  const counted = oneOnly(countedKits(one, carrier), usable, keptApart);
  const never: BindingLimit | null = tooLong.length > 0 ? 'longest' : isApart ? 'keptApart' : null;
  const noBulk = carrier.limit_L === null ? [] : one.noBulk;
  const value = { carrierId, ...counted, ...one, noBulk };
  const unknown = { kits_count: null, limitedBy: null };
  const found = { ...value, ...(never !== null ? { kits_count: 0, limitedBy: never } : isWhole ? {} : unknown) };
  return { ok: true, value: { ...found, working: kitsWorking(found, carrier) }, problems };
}

interface KitFigures {
  readonly kit_kg: number;
  readonly kit_L: number;
  readonly longest_m: number | null;
  readonly noMass: readonly LoadPieces[];
  readonly noBulk: readonly LoadPieces[];
}

function kitFigures(pieces: readonly Piece[]): KitFigures {
  const lengths = pieces.map(pieceLongest_m).filter((length) => length !== null);
  return {
    kit_kg: pieces.reduce((sum, { mass_kg, count }) => sum + (mass_kg ?? 0) * count, 0),
    kit_L: pieces.reduce((sum, piece) => sum + (pieceBulk_L(piece) ?? 0) * piece.count, 0),
    longest_m: lengths.length === 0 ? null : Math.max(...lengths),
    noMass: pieces.filter(({ mass_kg }) => mass_kg === null).map(named),
    noBulk: pieces.filter((piece) => pieceBulk_L(piece) === null).map(named),
  };
}

/** Whole kits by mass and by bulk, and the fewer of these where all of it is known. */
function countedKits(
  { kit_kg, kit_L, noMass, noBulk }: KitFigures,
  { limit_kg, limit_L, stowage_fraction }: Carrier,
): Pick<KitsFound, 'kits_count' | 'limitedBy' | 'byMass_count' | 'byBulk_count'> {
  const byMass_count = kit_kg > 0 ? Math.floor(roomOf(limit_kg!) / kit_kg) : null;
  const isBulkKnown = limit_L !== null && noBulk.length === 0 && kit_L > 0;
  const byBulk_count = isBulkKnown ? Math.floor(roomOf(limit_L * stowage_fraction) / kit_L) : null;
  const isKnown = byMass_count !== null && noMass.length === 0 && (limit_L === null || isBulkKnown);
  if (!isKnown) return { kits_count: null, limitedBy: null, byMass_count, byBulk_count };
  const isMassLess = byBulk_count === null || byMass_count <= byBulk_count;
  const kits_count = isMassLess ? byMass_count : byBulk_count;
  return { kits_count, limitedBy: isMassLess ? 'mass' : 'bulk', byMass_count, byBulk_count };
}

/** Of a kit with a part that is kept apart from its own kind, there is one and no more. */
function oneOnly<T extends Pick<KitsFound, 'kits_count' | 'limitedBy'>>(
  counted: T,
  kit: readonly Piece[],
  keptApart: readonly PartsApart[],
): T {
  const isOne = kit.some((piece) => arePartsApart(piece, piece, keptApart));
  return isOne && (counted.kits_count ?? 0) > 1 ? { ...counted, kits_count: 1, limitedBy: 'keptApart' } : counted;
}

function overLength_m(piece: Piece, { longest_m }: Carrier): number {
  const own_m = pieceLongest_m(piece);
  return longest_m === null || own_m === null || own_m <= roomOf(longest_m) ? 0 : own_m - longest_m;
}

function kitProblems(
  { noMass, noBulk }: KitFigures,
  carrier: Carrier,
  tooLong: readonly Piece[],
  isApart: boolean,
): readonly Problem[] {
  const of = { carrierId: carrier.carrierId, carrierName: carrier.name };
  const problems: Problem[] = tooLong.map((piece) =>
    engineProblem(
      'loads.cannot_carry',
      {},
      { ...of, part: piece.name, count: piece.count, over_m: overLength_m(piece, carrier) },
    ),
  );
  if (isApart) problems.push(engineProblem('loads.kit_kept_apart', {}, of));
  if (noMass.length > 0) problems.push(engineProblem('loads.mass_unknown', {}, { ...of, ...partsNamed(noMass) }));
  if (carrier.limit_L === null) return problems;
  if (noBulk.length > 0) problems.push(engineProblem('loads.bulk_unknown', {}, { ...of, ...partsNamed(noBulk) }));
  return problems;
}
