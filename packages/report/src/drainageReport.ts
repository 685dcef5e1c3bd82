import type { DrainageFinding } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type DrainageReport = NonNullable<SiteReport['drainage']>;

/** What was found of gutters and pipes, field by field as the report has it, with its sentences. */
export function drainageReport(f: DrainageFinding, language: Language): DrainageReport {
  const { findings } = language;
  return {
    verdict: f.verdict,
    finding: findings.drainage(f),
    storm_mm_per_h: f.storm_mm_per_h,
    returnPeriod_years: f.returnPeriod_years,
    parts: f.parts.map((part) => ({
      part: part.part,
      id: part.id,
      roofId: part.roofId,
      flow_L_per_s: part.flow_L_per_s,
      flow_L_per_s_range: part.flow_L_per_s_range,
      capacity_L_per_s: part.capacity_L_per_s,
      use_fraction: part.use_fraction,
      verdict: part.verdict,
      smallestPartId: part.smallestPartId,
      smallest_mm: part.smallest_mm,
    })),
    governing: f.governing,
    carries_mm_per_h: f.carries_mm_per_h,
    firstFlush: f.firstFlush.map((one) => ({
      roofId: one.roofId,
      diverted_mm: one.diverted_mm,
      chamber_L: one.chamber_L,
      chamberWanted_L: one.chamberWanted_L,
      emptying_h: one.emptying_h,
      leak_mm_per_h: one.leak_mm_per_h,
      isBlocked: one.isBlocked,
      loadLeft_fraction: one.loadLeft_fraction,
      said: findings.firstFlush(one),
    })),
    lost_fraction: f.lost_fraction,
    cappedBy: f.cappedBy,
  };
}

/** The same, said again in a language. No figure changes. */
export function drainageIn(reported: DrainageReport, { findings }: Language): DrainageReport {
  return {
    ...reported,
    finding: findings.drainage(reported),
    firstFlush: reported.firstFlush.map((one) => ({ ...one, said: findings.firstFlush(one) })),
  };
}
