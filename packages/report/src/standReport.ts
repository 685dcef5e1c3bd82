import type { SiteDesign, StandFinding } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type StandsReport = Pick<SiteReport, 'stands' | 'standGate' | 'cautions' | 'heaviestPiece'>;

/** Stands, their signatures and the cautions of a site, with their sentences. */
export function standsReport(design: SiteDesign, language: Language): StandsReport {
  const { standGate: gate, heaviestPiece: piece } = design;
  const { findings } = language;
  return {
    stands: design.stands.map((finding) => standReport(finding, language)),
    standGate: { gate, said: findings.standGate(gate) },
    cautions: design.cautions.map((caution) => ({ caution, said: language.cautions[caution] })),
    heaviestPiece: piece && { ...piece, said: findings.heaviestPiece(piece) },
  };
}

/** The finding field by field, so that a new field of the engine reaches the report only once the schema has it. */
function standReport(f: StandFinding, language: Language): SiteReport['stands'][number] {
  return {
    tankId: f.tankId,
    verdict: f.verdict,
    said: language.findings.stand(f),
    standHeight_m: f.standHeight_m,
    mostHeld_L: f.mostHeld_L,
    massEmpty_kg: f.massEmpty_kg,
    massFull_kg: f.massFull_kg,
    bearing_kPa: f.bearing_kPa,
    bearingAllowed_kPa: f.bearingAllowed_kPa,
    bearingUse_factor: f.bearingUse_factor,
    windSpeed_m_per_s: f.windSpeed_m_per_s,
    windForce_N: f.windForce_N,
    empty: { ...f.empty },
    full: { ...f.full },
    loose: f.loose && { ...f.loose },
    leastHeld_L: f.leastHeld_L,
    lacks: [...f.lacks],
    cappedBy: f.cappedBy,
  };
}

/** The same, said again in a language. No figure changes. */
export function standsIn(site: SiteReport, { findings, cautions }: Language): StandsReport {
  const { standGate, heaviestPiece: piece } = site;
  return {
    stands: site.stands.map((one) => ({ ...one, said: findings.stand(one) })),
    standGate: { ...standGate, said: findings.standGate(standGate.gate) },
    cautions: site.cautions.map((one) => ({ ...one, said: cautions[one.caution] })),
    heaviestPiece: piece && { ...piece, said: findings.heaviestPiece(piece) },
  };
}
