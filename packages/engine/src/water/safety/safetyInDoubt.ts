import {
  engineProblem,
  type Judged,
  type Place,
  type SafetyFinding,
  type WaterTestsFinding,
} from '../../kernel/index.ts';
import { cupSaid } from './cupSaid.ts';
import { noReductions } from './reductions.ts';
import { isSafetyJudged, noTests, type SafetyGiven } from './safetyFinding.ts';
import { daysOffOf, skippingOf } from './safetyRisks.ts';
import { samplesSaid } from './samplesSaid.ts';

/**
 * What can be said of the cup of a site of which a row could not be used? Its samples speak for themselves, and the height above the sea is what it is; nothing is reckoned of barriers and germs.
 *
 * @param given - as for safetyFinding
 * @param withheldBy - the rows that keep more from being said
 * @returns `short` and not to be drunk where the last sample held E. coli, else `unknown`; null where safety is not judged
 * @problem safety.do_not_drink - the last sample held E. coli
 * @definition ours: docs/decisions/0241-samples-speak-alone.md
 */
export function safetyInDoubt(given: SafetyGiven, withheldBy: readonly Place[]): Judged<SafetyFinding> {
  const { site, settings, chlorine, boilsAt_C } = given;
  if (!isSafetyJudged(site, settings)) return { finding: null, problems: [], working: [] };
  const samples = samplesSaid(given);
  const verdict = samples.hasGerms ? 'short' : 'unknown';
  const mayDrink = samples.hasGerms ? 'no' : 'notShown';
  const waterTests: WaterTestsFinding = given.waterTests ?? noTests;
  const place = { file: 'waterTests.csv', siteId: site.siteId };
  const problems = samples.hasGerms
    ? [engineProblem('safety.do_not_drink', place, { reason: 'sample' })]
    : samples.problems;
  const said = cupSaid({
    ...{ verdict, mayDrink, samples, waterTests, problems, failedUnits: [], isWithheld: true },
    ...{ isOver: false, isOverAtWorst: false, isChlorineHigh: chlorine?.residualBand === 'tooHigh' },
  });
  const finding: SafetyFinding = {
    ...{ verdict, mayDrink, ...said, cappedBy: null, failedUnits: [], withheldBy, isReckoned: false },
    ...{ barriers: [], credited: noReductions, leaking: null, effective: noReductions, tier: 0, risks: [] },
    skipping_fraction: skippingOf(site, settings),
    daysOff_per_year: daysOffOf(site, settings),
    sourceDays: null,
    target_DALY_per_person_per_year: settings.healthTarget_DALY_per_person_per_year,
    ...{ waterTests, chlorine, boilsAt_C },
  };
  return { finding, problems, working: [] };
}
