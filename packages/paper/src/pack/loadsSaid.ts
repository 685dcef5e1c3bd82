import { type Carrier, type CarrierLoads, carriedBy, type PartFacts } from '@eavewell/engine';
import type { Language } from '@eavewell/words';
import type { PackItem, PackLoad } from './content.ts';

/** How a kit goes: the loads of a carrier, and what is known of its parts. */
export interface Carried {
  readonly carrier: Carrier;
  readonly found: CarrierLoads;
  readonly parts: readonly PartFacts[];
}

/** So many of a part. */
interface Pieces {
  readonly partId: string;
  readonly name: string;
  /** So many of the part are in one piece. */
  readonly each_count: number;
  readonly count: number;
}

/**
 * The loads of one carrier as a pack tells them: what that carrier cannot take and what nobody weighed, then each load in the order it goes,
 * so that every piece stands in the pack once.
 *
 * @param carried - the carrier, what was found, the catalogue
 * @param language - of the pack
 * @returns loads; the cautions stand at the first
 * @definition ours: docs/methods/paper.md
 */
export function loadsSaid({ carrier, found, parts }: Carried, language: Language): readonly PackLoad[] {
  const { say } = language;
  const byId = new Map(parts.map((part) => [part.partId, part]));
  const cautions = found.cautions.map((caution) => say(`loads.caution.${caution}`));
  const loads = found.loads.map(
    (load, nth): PackLoad => ({
      loadId: String(nth + 1),
      carrier: load.carriedBy === 'carrier' ? carrier.name : say(`loads.by.${load.carriedBy}`),
      weight_kg: load.mass_kg,
      limit_kg: load.carriedBy === 'carrier' ? carrier.limit_kg : null,
      longest_m: load.longest_m,
      items: load.pieces.map((piece) => itemOf(piece, byId.get(piece.partId), language)),
      cautions: nth === 0 ? cautions : [],
    }),
  );
  const beside = (said: string, pieces: readonly Pieces[]): readonly PackLoad[] =>
    pieces.length === 0
      ? []
      : [
          {
            ...{ loadId: '–', carrier: said, limit_kg: null, longest_m: null },
            weight_kg: weightOf(pieces, byId),
            items: pieces.map((piece) => itemOf(piece, byId.get(piece.partId), language)),
            cautions: loads.length === 0 ? cautions : [],
          },
        ];
  return [
    ...beside(say('pack.not_by', { carrier: carrier.name }), found.cannotCarry),
    ...beside(say('pack.not_weighed'), found.noMass),
    ...loads,
  ];
}

/** Of all of them; null where one is not known. */
function weightOf(pieces: readonly Pieces[], byId: ReadonlyMap<string, PartFacts>): number | null {
  return pieces.reduce<number | null>((sum, { partId, each_count, count }) => {
    const mass_kg = byId.get(partId)?.mass_kg ?? null;
    return sum === null || mass_kg === null ? null : sum + mass_kg * each_count * count;
  }, 0);
}

function itemOf(
  { partId, name, each_count, count }: Pieces,
  part: PartFacts | undefined,
  { say, numbers }: Language,
): PackItem {
  const mass_kg = part?.mass_kg == null ? null : part.mass_kg * each_count;
  const hands = { one: 1, two: 2, more: null } as const;
  return {
    ...{ partId, count },
    what: whatOf(name, each_count, { say, numbers }),
    size: part === undefined || part.length_m === null ? null : numbers.quantity(part.length_m, 'm'),
    weight_kg: mass_kg === null ? null : mass_kg * count,
    hands_count: mass_kg === null ? null : hands[carriedBy(mass_kg)],
  };
}

/**
 * A part, a pack of it, or one of the pieces it travels in.
 *
 * @param name - of the part
 * @param each_count - so many of the part are in one piece [count]
 * @param language - of the paper
 * @returns what a piece is called [text]
 * @definition ours
 */
export function whatOf(name: string, each_count: number, { say, numbers }: Pick<Language, 'say' | 'numbers'>): string {
  if (each_count === 1) return name;
  return each_count < 1
    ? say('pack.part_of', { name, count: numbers.given(Math.round(1 / each_count), '') })
    : say('pack.pack_of', { name, count: numbers.given(each_count, '') });
}
