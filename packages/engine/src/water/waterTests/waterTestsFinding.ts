import {
  type DayIndex,
  engineProblem,
  type InspectionFacts,
  type Judged,
  type Problem,
  type SiteFacts,
  type WaterTestFinding,
  type WaterTestsFinding,
} from '../../kernel/index.ts';
import { combinedPriority, inspectionBand } from './bands.ts';
import { meanWhenClean_per_sample, samplesForClaim_count } from './cleanSamples.ts';
import { standsBeforeHandOver_days } from './constants.ts';
import { type TestRead, testFinding } from './testFinding.ts';
import { testProblems, toldFigure } from './testProblems.ts';
import { unusableTests } from './unusableTests.ts';
import { waterTestsWorking } from './waterTestsWorking.ts';

/** The same for every site, so worked out once. */
const cleanWanted_count = /* @__PURE__ */ samplesForClaim_count(0);

/**
 * What do the samples and the walks at a site say? Samples of tap and container since hand-over count: the last of each, of those of
 * one day the worst, and of the two the worse. One of the tap that held E. coli shortly before hand-over stands until one after it is clean.
 *
 * @param site - the site's facts: samples with their portions [mL] and counts, inspections, the day of hand-over
 * @returns what each sample holds [per 100 mL] and what they say together; null where there is neither sample nor walk
 * @problem waterTests.none - no sample of tap or container since hand-over tells of E. coli
 * @problem waterTests.before_handover - samples were taken before hand-over
 * @problem waterTests.handover_unknown - there are samples, and the day of hand-over is not known
 * @problem waterTests.found - the last sample held E. coli
 * @problem waterTests.found_uncounted - the last sample held E. coli, and how many cannot be told
 * @problem waterTests.all_positive - every portion of the last sample held E. coli
 * @problem waterTests.rare - a pattern that is so rare that it should be looked at again
 * @problem waterTests.scatter - plates scatter more than chance allows
 * @problem waterTests.portions_contradict - a portion that cannot be used
 * @problem waterTests.few_clean - too few clean samples in a row to claim much
 * @problem waterTests.inspection_none - nobody walked the site with a list of questions
 * @problem waterTests.inspection_contradicts - a walk with more risks than questions
 * @definition ours: docs/decisions/0216-which-samples-count.md
 */
export function waterTestsFinding(site: SiteFacts): Judged<WaterTestsFinding> {
  const { tests, inspections } = site.safety;
  const read = tests.map((test) => testFinding(test, site.handOverDay));
  const standing = read.filter((one) => isStanding(one, site.handOverDay, read));
  const counting = read.filter((one) => isCounted(one) || standing.includes(one));
  const last = lastOf(counting);
  const walks = inspections.map(walkOf);
  const inspection = walks.findLast((walk) => walk !== null) ?? null;
  const clean = last?.estimate?.reach === 'below' ? cleanInARow(counting) : [];
  const clean_count = clean.length;
  const { unusable, isOpen } = unusableTests(site, read, (one) => isCleanSince(one.finding, laterThan(one, counting)));
  const found: WaterTestsFinding = {
    tests: read.map(({ finding }) => finding),
    ...{ unusable, isUnusableOpen: isOpen },
    last: last?.finding ?? null,
    clean_count,
    lastCleanOn: clean.at(-1)?.finding.takenOn ?? null,
    cleanBelow_per_100mL: clean_count > 0 ? meanWhenClean_per_sample(clean_count) : null,
    cleanWanted_count,
    inspection,
    priority: combinedPriority(last?.finding.band ?? null, inspection?.band ?? null),
  };
  const faultyWalks = inspections.filter((_, i) => walks[i] === null);
  const problems = [
    ...testProblems(site, read, standing, last),
    ...walkProblems(site, faultyWalks),
    ...togetherProblems(site, found),
  ];
  const isNothing = tests.length === 0 && inspections.length === 0 && unusable.length === 0;
  return isNothing
    ? { finding: null, problems, working: [] }
    : { finding: found, problems, working: waterTestsWorking(found, read) };
}

/** Of what people draw and drink, since hand-over, and with something to say of E. coli. */
function isCounted({ finding }: TestRead): boolean {
  return (
    (finding.point === 'tap' || finding.point === 'container') && !finding.isBeforeHandOver && finding.sign !== null
  );
}

/** Held the tap E. coli shortly before hand-over, and was none clean after it until then? */
function isStanding(one: TestRead, handOverDay: DayIndex | null, read: readonly TestRead[]): boolean {
  const { point, isBeforeHandOver, takenOn, sign } = one.finding;
  if (!isBeforeHandOver || handOverDay === null || point !== 'tap' || sign === null || !isFound(one)) return false;
  return takenOn >= handOverDay - standsBeforeHandOver_days && !isCleanSince(one.finding, laterThan(one, read));
}

function laterThan({ finding }: TestRead, read: readonly TestRead[]): readonly TestRead[] {
  return read.filter((other) => other.finding.takenOn > finding.takenOn);
}

/** The last at the tap and the last in a container, of several on one day the worst; and of the two points the worse. */
function lastOf(counting: readonly TestRead[]): TestRead | null {
  const ofPoints = (['tap', 'container'] as const).map((point) => {
    const there = counting.filter(({ finding }) => finding.point === point);
    const day = there.at(-1)?.finding.takenOn;
    return worstOf(there.filter(({ finding }) => finding.takenOn === day));
  });
  return worstOf(ofPoints.filter((one) => one !== null));
}

/** The worst; of equally bad ones the later. */
function worstOf(read: readonly TestRead[]): TestRead | null {
  return read.reduce<TestRead | null>((worst, one) => (worst === null || isWorse(one, worst) ? one : worst), null);
}

function isWorse(one: TestRead, than: TestRead): boolean {
  const [own, other] = [badness(one), badness(than)];
  return own > other || (own === other && one.finding.takenOn > than.finding.takenOn);
}

/** Found before not found, and more before less; where nothing bounds a count it is the worst there is. */
function badness({ finding: { sign, count_per_100mL } }: TestRead): number {
  if (sign === 'more') return Infinity;
  return sign === 'equal' ? count_per_100mL! : -1 / count_per_100mL!;
}

/** Clean ones from the last back to the one that held E. coli; one of too little water neither counts nor breaks the row. None while the point that held them has no clean one since. */
function cleanInARow(counting: readonly TestRead[]): readonly TestRead[] {
  if (counting.some((one, index) => isFound(one) && !isCleanSince(one.finding, counting.slice(index + 1)))) return [];
  const lastFound = counting.findLastIndex(isFound);
  const since = counting.slice(lastFound + 1);
  const day = counting[lastFound]?.finding.takenOn;
  // A clean one of the same day as one that held E. coli proves nothing.
  return since.filter(({ isClean, finding }) => isClean && finding.takenOn !== day);
}

function isFound({ estimate }: TestRead): boolean {
  return estimate?.reach !== 'below';
}

function isCleanSince({ point, takenOn }: WaterTestFinding, later: readonly TestRead[]): boolean {
  return later.some(({ isClean, finding }) => isClean && finding.point === point && finding.takenOn !== takenOn);
}

function walkOf({ inspectedOn, risks_count, questions_count }: InspectionFacts): WaterTestsFinding['inspection'] {
  const scored = inspectionBand(risks_count, questions_count);
  return scored === null ? null : { inspectedOn, score: scored.score_count, band: scored.band };
}

function walkProblems({ siteId }: SiteFacts, faulty: readonly InspectionFacts[]): readonly Problem[] {
  return faulty.map(({ risks_count, questions_count }) =>
    engineProblem(
      'waterTests.inspection_contradicts',
      { file: 'inspections.csv', siteId, column: 'risks' },
      { risks: toldFigure(risks_count), questions: toldFigure(questions_count) },
    ),
  );
}

/** What is missing to say more. */
function togetherProblems({ siteId, safety }: SiteFacts, found: WaterTestsFinding): readonly Problem[] {
  const problems: Problem[] = [];
  const place = { file: 'waterTests.csv', siteId };
  const { last, clean_count, cleanBelow_per_100mL, cleanWanted_count } = found;
  if (last === null) problems.push(engineProblem('waterTests.none', place));
  else if (isFewClean(last, clean_count, cleanWanted_count))
    problems.push(
      engineProblem('waterTests.few_clean', place, {
        count: clean_count,
        below_per_100mL: cleanBelow_per_100mL!,
        wanted: cleanWanted_count,
      }),
    );
  if (safety.inspections.length === 0)
    problems.push(engineProblem('waterTests.inspection_none', { file: 'inspections.csv', siteId }));
  return problems;
}

function isFewClean({ sign }: WaterTestFinding, clean: number, wanted: number): boolean {
  return sign === 'less' && clean > 0 && clean < wanted;
}
