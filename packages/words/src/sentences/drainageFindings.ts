import type { DrainageFinding, DrainagePartFinding, FirstFlushFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

/** What a drainage finding is said from; a report writes its codes as plain text. */
export type DrainageSaid = Omit<DrainageFinding, 'cappedBy'> & { readonly cappedBy: string | null };

/** What is said of gutters, pipes and overflows in the storm. */
export interface DrainageWords {
  /** The finding in one or two sentences. */
  drainage(finding: DrainageSaid): string;
  /** A part by its name, as it stands in a sentence. */
  drainagePart(part: Pick<DrainagePartFinding, 'part' | 'id'>): string;
  /** What a first-flush chamber does, in a sentence. */
  firstFlush(finding: FirstFlushFinding): string;
}

/** What the storm is: how seldom, and how hard. */
const stormOf = ({ numbers }: Speech, f: DrainageSaid) => ({
  years: numbers.years(f.returnPeriod_years ?? 0),
  storm: numbers.quantity(f.storm_mm_per_h, 'mm_per_h'),
});

/** A part, what the storm asks of it and what it carries. */
function loadOf({ say, numbers }: Speech, part: DrainagePartFinding) {
  return {
    part: say(`findings.drainage.part.${part.part}`),
    id: part.id,
    flow: numbers.quantity(part.flow_L_per_s, 'L_per_s'),
    range: numbers.quantity(part.flow_L_per_s_range, 'L_per_s'),
    capacity: numbers.quantity(part.capacity_L_per_s, 'L_per_s'),
  };
}

/** What would hold in its place, where the catalogue has it. */
function smallest({ say, numbers }: Speech, { smallestPartId, smallest_mm }: DrainagePartFinding): string {
  if (smallestPartId === null) return say('findings.drainage.noPart');
  const size = numbers.quantity(smallest_mm, 'mm');
  return say('findings.drainage.smallest', { size, partId: smallestPartId });
}

/** How many parts beside the governing one do not hold by their figures. */
function others({ say }: Speech, { parts, governing }: DrainageSaid): string {
  const count = parts.filter(
    ({ verdict }, index) => index !== governing && (verdict === 'short' || verdict === 'tight'),
  ).length;
  return count === 0 ? '' : ` ${say('findings.drainage.others', { count })}`;
}

function drainage(w: Speech, f: DrainageSaid): string {
  const part = f.governing === null ? undefined : f.parts[f.governing];
  if (f.verdict === 'unknown' || part === undefined) return w.say('findings.drainage.unknown');
  const storm = stormOf(w, f);
  if (f.verdict === 'holds')
    return f.carries_mm_per_h === null
      ? w.say('findings.drainage.holdsAsKnown', storm)
      : w.say('findings.drainage.holds', { ...storm, carries: w.numbers.quantity(f.carries_mm_per_h, 'mm_per_h') });
  if (f.cappedBy !== null) return w.say('findings.drainage.tightCap', storm);
  const said = w.say(`findings.drainage.${f.verdict}`, { ...storm, ...loadOf(w, part) });
  return `${said} ${smallest(w, part)}${others(w, f)}`;
}

function firstFlush({ say, numbers }: Speech, f: FirstFlushFinding): string {
  if (f.isBlocked) return say('findings.drainage.flushBlocked', { roof: f.roofId });
  return say('findings.drainage.flush', {
    roof: f.roofId,
    diverted: numbers.quantity(f.diverted_mm, 'mm'),
    left: numbers.percent(f.loadLeft_fraction),
    hasHours: f.emptying_h === null ? 'no' : 'yes',
    hours: numbers.quantity(f.emptying_h, 'h'),
  });
}

/** What is said of drainage, in a language. */
export const drainageIn = (w: Speech): DrainageWords => ({
  drainage: (finding) => drainage(w, finding),
  drainagePart: ({ part, id }) => `${w.say(`findings.drainage.part.${part}`)} ${id}`,
  firstFlush: (finding) => firstFlush(w, finding),
});
