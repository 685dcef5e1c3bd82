import type { Station, StationVerdict, Verdict } from '../kernel/index.ts';

/** What was found of a station, as far as it tells whether an assumption alone keeps it from holding. */
interface Capped {
  readonly verdict: Verdict;
  readonly cappedBy: string | null;
}

/** What tells why the other stations of a site do not hold, as it is or with gutters and pipes changed. */
export interface AsFitted {
  readonly stations: Readonly<Record<Station, StationVerdict>>;
  readonly drainage: Capped | null;
  readonly settling: readonly Capped[];
  readonly stands: readonly Capped[];
  readonly head: readonly Capped[];
  readonly treatment: readonly Capped[];
  readonly safety: Capped | null;
}

/**
 * Does a station want facts before anything else: is it unknown, or tight by an assumption alone?
 *
 * @param station - a station that does not hold
 * @param design - the site it is of
 * @returns whether a survey is what it wants
 * @definition ours: docs/decisions/0190-stations-no-remedy-moves.md
 */
export function wantsFacts(station: Station, design: AsFitted): boolean {
  const { stations, drainage, settling, stands, head, treatment, safety } = design;
  if (stations[station] === 'unknown') return true;
  const found: Partial<Record<Station, readonly Capped[]>> = {
    gutter: drainage ? [drainage] : [],
    stand: stands,
    settling,
    treatmentUnit: treatment,
    tap: head,
    cup: safety ? [safety] : [],
  };
  const wanting = found[station]?.filter(({ verdict }) => verdict !== 'holds') ?? [];
  return wanting.length > 0 && wanting.every(({ verdict, cappedBy }) => verdict === 'tight' && cappedBy !== null);
}
