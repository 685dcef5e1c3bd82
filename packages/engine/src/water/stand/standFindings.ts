import {
  engineProblem,
  type Judged,
  type Problem,
  type StandFinding,
  type StandGate,
  type TankFacts,
  verdictOrder,
  type WorkingLine,
} from '../../kernel/index.ts';
import { standChecks } from './standChecks.ts';
import { standGate } from './standGate.ts';
import { judgedTanks, type StandGiven } from './standGiven.ts';
import { signatureProblems, tankProblems, windProblems } from './standProblems.ts';
import { standVerdict } from './standVerdict.ts';
import { standWorking } from './standWorking.ts';

/**
 * Do the stands of this site and the ground under them carry their tanks, full and in the wind, as far as sums can tell? Screening for
 * planning and lists of parts, no structural design: a licensed engineer decides at each site, and the gate stays closed until one has signed.
 *
 * @param given - the site's facts [m, kg, L], the settings, and the day it is asked on [day] where that is known
 * @returns a finding for each tank that is judged, the worst first (masses [kg], pressures [kPa], push [N], factors of safety); null where none
 *   is judged; and the gate, whether or not anything is judged
 * @problem stand.not_signed - when a tank is on a stand that nobody has signed for
 * @problem stand.not_measured - when a measure is missing
 * @problem stand.ground_unknown - when the class of the ground is not known
 * @problem stand.ground_to_investigate - when it is ground that may not be presumed to carry anything
 * @problem stand.wind_unknown - when no wind speed is stated
 * @problem stand.wind_in_other_unit - when the wind is faster than any in metres a second
 * @problem stand.fastening_assumed - when it stands only if the tank is fastened to its stand
 * @problem stand.consent_likely - when a tank is larger than is commonly exempt at its height
 * @law the gate is closed while a stand is not signed for, whatever the verdict
 * @definition ours: docs/methods/stand.md
 */
export function standFindings(given: StandGiven): Judged<readonly StandFinding[]> & { readonly gate: StandGate } {
  const { site, today = null } = given;
  const gate = standGate(site.tanks, today);
  const problems: Problem[] = [...signatureProblems(given)];
  const working: WorkingLine[] = [];
  const tanks = judgedTanks(given);
  if (tanks.length === 0) return { finding: null, problems, working, gate };
  problems.push(...windProblems(given));
  const findings = tanks.map((tank) => standOf(tank, given, problems, working));
  findings.sort((a, b) => verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict));
  return { finding: findings, problems, working, gate };
}

function standOf(tank: TankFacts, given: StandGiven, problems: Problem[], working: WorkingLine[]): StandFinding {
  const { site, settings } = given;
  const checks = standChecks(tank, given);
  const { measures } = checks;
  problems.push(...tankProblems(site.siteId, tank, measures));
  const { verdict, lacks, isFasteningAssumed } = standVerdict(checks, tank.isFastened, settings.standMargin_fraction);
  const cappedBy = isFasteningAssumed && verdict === 'tight' ? 'stand.fastening_assumed' : null;
  if (cappedBy !== null)
    problems.push(
      engineProblem(cappedBy, { file: 'tanks.csv', siteId: site.siteId, column: 'fastened' }, { tank: tank.tankId }),
    );
  const finding: StandFinding = {
    tankId: tank.tankId,
    verdict,
    standHeight_m: measures.standHeight_m,
    mostHeld_L: measures.held?.mostHeld_L ?? null,
    massEmpty_kg: checks.massEmpty_kg,
    massFull_kg: checks.massFull_kg,
    bearing_kPa: checks.bearing_kPa,
    bearingAllowed_kPa: checks.bearingAllowed_kPa,
    bearingUse_factor: checks.bearingUse_factor,
    windSpeed_m_per_s: checks.windSpeed_m_per_s,
    windForce_N: checks.windForce_N,
    empty: checks.empty,
    full: checks.full,
    loose: checks.loose,
    leastHeld_L: checks.leastHeld_L,
    lacks,
    cappedBy,
  };
  working.push(...standWorking(tank, checks, finding, settings));
  return finding;
}
