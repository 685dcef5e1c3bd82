import { type DesignSettings, mm_per_m, type PartFacts, risingRoot } from '../../kernel/index.ts';
import { leastBore_m, mostBore_m } from './constants.ts';
import { headAtFlow } from './headAtFlow.ts';
import type { HeadWay, PipeOnWay } from './headWay.ts';

/** The narrowest pipes with which a way holds. */
export interface LeastBore {
  /** Null where no pipe would do, however wide. */
  readonly leastBore_mm: number | null;
  readonly leastPartId: string | null;
  readonly leastPart_mm: number | null;
}

/**
 * How narrow may the pipes be, all of one bore, that the way holds?
 *
 * @param way - the way to the taps
 * @param settings - what it is judged by
 * @param parts - the catalogue: pipes with a bore [mm]
 * @returns the narrowest bore, and the narrowest pipe of the catalogue that is no narrower [mm]
 * @law the way holds with it, and with none that is narrower
 * @definition ours: bisection over the bore, materials and fittings as they are
 */
export function leastBore(way: HeadWay, settings: DesignSettings, parts: readonly PartFacts[]): LeastBore {
  const holdsAt = (bore_m: number) => headAtFlow(withBore(way, bore_m), settings).meetsAtWorstEnd;
  if (!holdsAt(mostBore_m)) return { leastBore_mm: null, leastPartId: null, leastPart_mm: null };
  const least_m = risingRoot((bore_m) => (holdsAt(bore_m) ? 1 : -1), leastBore_m, mostBore_m);
  const least_mm = least_m * mm_per_m;
  const pipes = parts.filter(({ kind, bore_mm }) => kind === 'pipe' && bore_mm !== null && bore_mm >= least_mm);
  const [first] = [...pipes].sort((a, b) => a.bore_mm! - b.bore_mm! || (a.partId < b.partId ? -1 : 1));
  return { leastBore_mm: least_mm, leastPartId: first?.partId ?? null, leastPart_mm: first?.bore_mm ?? null };
}

function withBore(way: HeadWay, bore_m: number): HeadWay {
  const all = (pipes: readonly PipeOnWay[]) => pipes.map((one) => ({ ...one, run: { ...one.run, bore_m } }));
  return { ...way, toUnit: all(way.toUnit), toTap: all(way.toTap) };
}
