import { isoDay, type WearFinding } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type WearReport = NonNullable<SiteReport['wear']>[number];

/** One set of cartridges field by field, so that a new field of the engine reaches the report only once the schema has it. */
export function wearReport(f: WearFinding, language: Language): WearReport {
  return wearIn(
    {
      serial: f.serial,
      partId: f.partId,
      finding: '',
      setSince: f.setSince === null ? null : isoDay(f.setSince),
      unknownBy: f.unknownBy,
      endsOn: f.endsOn && { p10: isoDay(f.endsOn.p10), p50: isoDay(f.endsOn.p50), p90: isoDay(f.endsOn.p90) },
      litres_L: f.litres_L && { ...f.litres_L },
      passedSoFar_L: f.passedSoFar_L,
      endsBy_fraction: { ...f.endsBy_fraction },
      fouling_ratio: { ...f.fouling_ratio },
      readings_count: f.readings_count,
      futures_count: f.futures_count,
    },
    language,
  );
}

/** The same, said again in a language. No figure changes. */
export function wearIn(reported: WearReport, { findings }: Language): WearReport {
  return { ...reported, finding: findings.wear(reported) };
}
