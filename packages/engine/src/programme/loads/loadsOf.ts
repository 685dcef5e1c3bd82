import { type Carrier, engineProblem, type Facts, type PartsApart, type Problem } from '../../kernel/index.ts';
import { cautionsOfLoads } from './cautionsOfLoads.ts';
import { mostLoadKinds_count } from './constants.ts';
import type { CarrierLoads, LoadLimits, LoadPieces, LoadRule, NotCarried } from './foundLoads.ts';
import { loadLimits } from './loadLimits.ts';
import { inOrderNeeded } from './loadOrder.ts';
import { loadsWorking } from './loadsWorking.ts';
import { named, partsNamed } from './namedPieces.ts';
import { packedLoads } from './packedLoads.ts';
import type { Piece } from './piece.ts';
import { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';
import { type SortedPieces, sortPieces } from './sortPieces.ts';
import { unusablePieces } from './unusablePieces.ts';

/**
 * How are pieces carried, in the fewest loads? No load is over the carrier's limits of mass, bulk and length; what is kept apart meets in none;
 * people carry no more than is safe to lift. Pieces of unknown mass are in no load and are named; what is too heavy, too long or too bulky is named
 * with the limit it breaks.
 *
 * @param pieces - what is carried [kg], [m], [L]
 * @param carrier - its limits [kg], [L], [m]
 * @param keptApart - parts that the programme keeps apart; chlorine and fuel are kept apart always
 * @returns loads in the order they are to go, the number below which there is none, and what is not carried
 * @problem loads.no_limit - nobody stated what the boat, truck, pallet or container holds: no load is made
 * @problem loads.too_many - there are more loads than anybody reads: none is told
 * @problem loads.figure_unusable - a figure of a piece or of the carrier is no number one can reckon with
 * @problem loads.mass_unknown - a piece has no mass
 * @problem loads.bulk_unknown - bulk is limited and that of a piece is not known
 * @problem loads.length_unknown - length is limited and that of a piece is not known
 * @problem loads.cannot_carry - a piece is over a limit
 * @problem loads.limit_over_lifting - people are said to carry more than is safe to lift
 * @problem loads.not_least - there may be a way with fewer loads
 * @problem loads.freeboard_short - the freeboard with the load aboard is less than the least that is kept
 * @law every piece is in one load, or among those not carried, or among those of unknown mass
 * @law no load is over a limit; what is kept apart never meets; leastLoads_count ≤ loads
 * @definition ours: docs/decisions/0247-fewest-loads.md, 0248-fragile-and-apart.md
 */
export function loadsOf(pieces: readonly Piece[], carrier: Carrier, keptApart: readonly PartsApart[]): CarrierLoads {
  const { usable, problems: wrong, isCarrierUsable } = unusablePieces(pieces, carrier);
  const limits = isCarrierUsable ? loadLimits(carrier) : null;
  const { carrierId, name: carrierName, mode } = carrier;
  const about = { carrierId, mode, rules: rulesOf(carrier), cautions: cautionsOfLoads(carrier, usable) };
  if (limits === null) {
    const noLimit = engineProblem('loads.no_limit', {}, { carrierId, carrierName, mode });
    return { ...about, ...noLoads, problems: isCarrierUsable ? [...wrong, noLimit] : wrong };
  }
  const sorted = sortPieces(usable, limits, mode);
  const aboutLoads = loadsAbout(sorted, limits);
  if (aboutLoads * usable.length > mostLoadKinds_count) {
    const facts = { carrierId, carrierName, loads: Math.round(aboutLoads) };
    return { ...about, ...noLoads, limits, problems: [...wrong, engineProblem('loads.too_many', {}, facts)] };
  }
  const { loads, bound_count } = packedLoads(sorted, limits, mode, keptApart);
  const isUnknown = (of: (piece: Piece) => number | null) =>
    sorted.carried.filter((piece) => of(piece) === null).map(named);
  const found = {
    ...about,
    limits,
    loads: inOrderNeeded(loads, usable),
    leastLoads_count: bound_count,
    isLeast: loads.length === bound_count,
    cannotCarry: sorted.cannotCarry,
    noMass: sorted.noMass.map(named),
    noBulk: limits.load_L === null ? [] : isUnknown(pieceBulk_L),
    noLength: limits.longest_m === null ? [] : isUnknown(pieceLongest_m),
    working: loadsWorking(loads, bound_count, limits, carrier),
  };
  return { ...found, problems: [...wrong, ...problemsOf(found, limits.piece_kg, carrier)] };
}

/** So many loads by mass or by bulk, were it sand. */
function loadsAbout({ together, alone, byTwo }: SortedPieces, { load_kg, load_L }: LoadLimits): number {
  const sum = (pieces: readonly Piece[], of: (piece: Piece) => number) =>
    pieces.reduce((all, piece) => all + of(piece) * piece.count, 0);
  const byMass = sum(together, ({ mass_kg }) => mass_kg!) / load_kg;
  const byBulk = load_L === null ? 0 : sum(together, (piece) => pieceBulk_L(piece) ?? 0) / load_L;
  return Math.max(byMass, byBulk) + sum([...alone, ...byTwo], () => 1);
}

/** Where no load is made. */
const noLoads = {
  limits: null,
  loads: [],
  leastLoads_count: null,
  isLeast: false,
  cannotCarry: [],
  noMass: [],
  noBulk: [],
  noLength: [],
  working: [],
} as const satisfies Partial<CarrierLoads>;

/** The rules by which loads are put in order and pieces are put in. */
function rulesOf({ mode }: Carrier): readonly LoadRule[] {
  if (mode === 'person' || mode === 'twoPeople') return ['neededFirst', 'fragileLast'];
  if (mode === 'boat')
    return ['neededFirst', 'fragileLast', 'heavyLow', 'heavyCentral', 'fragileOnTop', 'evenAndLashed'];
  return ['neededFirst', 'fragileLast', 'heavyLow', 'fragileOnTop', 'evenAndLashed'];
}

function problemsOf(found: Omit<CarrierLoads, 'problems'>, most_kg: number, carrier: Carrier): readonly Problem[] {
  const { carrierId, name: carrierName, mode, limit_kg } = carrier;
  const of = { carrierId, carrierName };
  const problems: Problem[] = [];
  const say = (
    code: 'loads.mass_unknown' | 'loads.bulk_unknown' | 'loads.length_unknown',
    which: readonly LoadPieces[],
  ) => {
    if (which.length > 0) problems.push(engineProblem(code, {}, { ...of, ...partsNamed(which) }));
  };
  say('loads.mass_unknown', found.noMass);
  say('loads.bulk_unknown', found.noBulk);
  say('loads.length_unknown', found.noLength);
  for (const one of found.cannotCarry)
    problems.push(engineProblem('loads.cannot_carry', {}, { ...of, ...overFacts(one) }));
  const isPeople = mode === 'person' || mode === 'twoPeople';
  if (isPeople && limit_kg !== null && limit_kg > most_kg)
    problems.push(engineProblem('loads.limit_over_lifting', {}, { ...of, limit_kg, most_kg, mode }));
  if (!found.isLeast) {
    const most = found.loads.length - found.leastLoads_count!;
    problems.push(engineProblem('loads.not_least', {}, { ...of, loads: found.loads.length, most }));
  }
  const { freeboard_cm, leastFreeboard_cm } = carrier;
  if (mode === 'boat' && freeboard_cm !== null && leastFreeboard_cm !== null && freeboard_cm < leastFreeboard_cm)
    problems.push(engineProblem('loads.freeboard_short', {}, { ...of, freeboard_cm, leastFreeboard_cm }));
  return problems;
}

/** A limit that holds has no fact. */
function overFacts({ name, count, ...over }: NotCarried): Facts {
  const broken = (['over_kg', 'over_L', 'over_m'] as const).filter((key) => over[key] !== null);
  return { part: name, count, ...Object.fromEntries(broken.map((key) => [key, over[key]!])) };
}
