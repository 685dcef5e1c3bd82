import { engineProblem, type Problem, type TankFacts } from '../../kernel/index.ts';
import { commonlyExempt_L } from './commonlyExempt.ts';
import { isUnsigned } from './standGate.ts';
import { type StandGiven, windOf } from './standGiven.ts';
import type { StandMeasures } from './standMeasures.ts';
import { windInOtherUnit } from './windUnits.ts';

/** What is missing of one tank's stand, and what its ground asks for. */
export function tankProblems(siteId: string, tank: TankFacts, measures: StandMeasures): readonly Problem[] {
  const problems: Problem[] = [];
  const { tankId, groundClass } = tank;
  const place = { file: 'tanks.csv', siteId };
  const { missing, standHeight_m, held } = measures;
  if (missing.length > 0)
    problems.push(
      engineProblem('stand.not_measured', { ...place, column: missing[0]! }, { tank: tankId, columns: missing }),
    );
  const at = { ...place, column: 'groundClass' };
  if (groundClass === null) problems.push(engineProblem('stand.ground_unknown', at, { tank: tankId }));
  if (groundClass === 'softOrMadeGround')
    problems.push(engineProblem('stand.ground_to_investigate', at, { tank: tankId }));
  if (standHeight_m === null || held === null) return problems;
  const exempt_L = commonlyExempt_L(standHeight_m);
  if (held.mostHeld_L > exempt_L)
    problems.push(
      engineProblem(
        'stand.consent_likely',
        { ...place, column: 'standHeight_m' },
        { tank: tankId, standHeight_m, held_L: held.mostHeld_L, exempt_L },
      ),
    );
  return problems;
}

/** What is wrong with the wind that a site's stands are held against. */
export function windProblems(given: StandGiven): readonly Problem[] {
  const { site } = given;
  const { windSpeed_m_per_s } = windOf(given);
  const file = site.windSpeed_m_per_s === null ? 'settings.json' : 'sites.csv';
  const place = { file, siteId: site.siteId, column: 'windSpeed_m_per_s' };
  if (windSpeed_m_per_s === null || windSpeed_m_per_s <= 0)
    return [engineProblem('stand.wind_unknown', { ...place, file: 'sites.csv' })];
  const other = windInOtherUnit(windSpeed_m_per_s);
  return other === null ? [] : [engineProblem('stand.wind_in_other_unit', place, { windSpeed_m_per_s, ...other })];
}

/** The stands nobody has signed for; they are not to be filled, whatever the sums say. */
export function signatureProblems({ site, today = null }: StandGiven): readonly Problem[] {
  const unsigned = site.tanks.filter((tank) => isUnsigned(tank, today));
  if (unsigned.length === 0) return [];
  const place = { file: 'tanks.csv', siteId: site.siteId, column: 'signedBy' };
  const isToCome = unsigned.every(({ signedBy, signedOn }) => signedBy !== null && signedOn !== null);
  const facts = { tanks: unsigned.map(({ tankId }) => tankId), signed: isToCome ? 'toCome' : 'no' };
  return [engineProblem('stand.not_signed', place, facts)];
}
