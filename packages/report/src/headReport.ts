import type { HeadFinding } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/** One way to the taps field by field, so that a new field of the engine reaches the report only once the schema has it. */
export function headReport(f: HeadFinding, language: Language): SiteReport['head'][number] {
  return {
    tankIds: [...f.tankIds],
    verdict: f.verdict,
    cappedBy: f.cappedBy,
    finding: language.findings.head(f),
    flowWanted_L_per_min: f.flowWanted_L_per_min,
    lowLevel_m: f.lowLevel_m,
    fullLevel_m: f.fullLevel_m,
    fallToTap_m: f.fallToTap_m,
    fallToUnit_m: f.fallToUnit_m,
    lossToUnit_m: f.lossToUnit_m,
    lossInUnit_m: f.lossInUnit_m,
    lossToTap_m: f.lossToTap_m,
    flowLow_L_per_min: f.flowLow_L_per_min,
    flowFull_L_per_min: f.flowFull_L_per_min,
    headLeft_m: f.headLeft_m,
    headLeftFull_m: f.headLeftFull_m,
    hasHandPump: f.hasHandPump,
    pumpAdds_m: f.pumpAdds_m,
    pumpPower_W: f.pumpPower_W,
    onePerson_L_per_min: f.onePerson_L_per_min,
    suction_m: f.suction_m,
    segments: f.segments.map((segment) => ({ ...segment })),
    grade: f.grade.map((point) => ({ ...point })),
    leastBore_mm: f.leastBore_mm,
    leastPartId: f.leastPartId,
    leastPart_mm: f.leastPart_mm,
  };
}
