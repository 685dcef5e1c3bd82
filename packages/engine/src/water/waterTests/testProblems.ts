import {
  engineProblem,
  type Facts,
  isoDay,
  type Problem,
  type SiteFacts,
  type TestPortion,
} from '../../kernel/index.ts';
import { ecoliBand } from './bands.ts';
import type { TestRead } from './testFinding.ts';

/** What is wrong with samples, or worth knowing of them; the last that counts is told when it held E. coli. Those of before hand-over say nothing, unless they stand. */
export function testProblems(
  site: SiteFacts,
  read: readonly TestRead[],
  standing: readonly TestRead[],
  last: TestRead | null,
): readonly Problem[] {
  const { siteId, handOverDay } = site;
  const place = { file: 'waterTests.csv', siteId };
  const problems: Problem[] = [];
  if (read.length > 0 && handOverDay === null)
    problems.push(engineProblem('waterTests.handover_unknown', { file: 'sites.csv', siteId, column: 'handOverDay' }));
  const before = read
    .filter((one) => one.finding.isBeforeHandOver && !standing.includes(one))
    .map(({ finding }) => finding.testId);
  if (before.length > 0)
    problems.push(engineProblem('waterTests.before_handover', place, { tests: before, count: before.length }));
  for (const one of read) problems.push(...ownProblems(siteId, one));
  if (last !== null) problems.push(...foundIn(siteId, last));
  return problems;
}

/** A sample by itself: portions that cannot be used, patterns and scatter that are rare. */
function ownProblems(siteId: string, { finding, read, estimate }: TestRead): readonly Problem[] {
  const { testId, rarity } = finding;
  const place = { file: 'testPortions.csv', siteId };
  const problems: Problem[] = read.faulty.map((portion) =>
    engineProblem('waterTests.portions_contradict', { ...place, column: columnOf(portion) }, factsOf(testId, portion)),
  );
  if (rarity !== null && estimate?.isRare)
    problems.push(engineProblem('waterTests.rare', place, { test: testId, rarity_fraction: rarity }));
  if (estimate?.isScattered)
    problems.push(
      engineProblem('waterTests.scatter', place, { test: testId, scatter_fraction: estimate.scatter_fraction! }),
    );
  return problems;
}

/** The cell that a portion's fault is most likely in. */
function columnOf({ kind, uncountable_count, uncountableFrom_count }: TestPortion): string {
  if (kind === 'tubes') return 'positive';
  return uncountable_count > 0 && uncountableFrom_count === null ? 'uncountableFrom' : 'colonies';
}

function factsOf(testId: string, { kind, volume_mL }: TestPortion): Facts {
  return { test: testId, kind, volume_mL: toldFigure(volume_mL) };
}

/** A figure as a problem tells it; one that is none as the text it would be. */
export function toldFigure(value: number): number | string {
  return Number.isFinite(value) ? value : String(value);
}

function foundIn(siteId: string, { finding, estimate }: TestRead): readonly Problem[] {
  const { testId, point, sign, count_per_100mL: count, takenOn } = finding;
  const place = { file: 'waterTests.csv', siteId };
  if (sign === 'more' && estimate === null)
    return [engineProblem('waterTests.found_uncounted', place, { test: testId, point, day: isoDay(takenOn) })];
  if (sign === 'more')
    return [
      engineProblem('waterTests.all_positive', place, {
        test: testId,
        point,
        day: isoDay(takenOn),
        least_per_100mL: count!,
      }),
    ];
  if (sign !== 'equal') return [];
  const band = ecoliBand(count!);
  return [
    engineProblem('waterTests.found', place, {
      test: testId,
      point,
      day: isoDay(takenOn),
      count_per_100mL: count!,
      band,
    }),
  ];
}
