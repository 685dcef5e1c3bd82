import type { SiteFacts, UnusableTestFinding } from '../../kernel/index.ts';
import { hasSigns, type TestRead } from './testFinding.ts';

/** The samples of a site that cannot be used, and whether one of them may be the one that says no. */
export interface UnusableTests {
  readonly unusable: readonly UnusableTestFinding[];
  readonly isOpen: boolean;
}

/**
 * Which samples cannot be used, and is one of them open? One whose day or place is not known is open where E. coli were found in it; one of tap or container since hand-over whose
 * portions cannot be used is open until a clean one has come after it.
 *
 * @param isCleanSince - is there a clean one of the same point after it?
 */
export function unusableTests(
  { siteId, safety, doubtsBeside }: SiteFacts,
  read: readonly TestRead[],
  isCleanSince: (one: TestRead) => boolean,
): UnusableTests {
  const found = new Set(read.flatMap(({ finding }) => (isFoundIn(finding.sign) ? [finding.testId] : [])));
  const told = safety.unusableTests
    .filter(({ because, testId }) => because !== 'portions' || !found.has(testId))
    .map(({ testId, because, at, point, portions }) => ({
      finding: { testId, because, at, hasGerms: portions.some(hasSigns) },
      isDrunk: point === null || point === 'tap' || point === 'container',
    }));
  const known = new Set(told.map(({ finding }) => finding.testId));
  // Which row it is in is known where a single one of the file is in doubt.
  const file = 'testPortions.csv';
  const rows = doubtsBeside.safety.filter((place) => place.file === file);
  const faulty = read.filter((one) => one.finding.sign === null && one.read.faulty.length > 0);
  return {
    unusable: [
      ...told.map(({ finding }) => finding),
      ...faulty
        .filter(({ finding }) => !known.has(finding.testId))
        .map(({ finding: { testId }, read: { faulty: portions } }): UnusableTestFinding => {
          const at = rows.length === 1 ? rows[0]! : { file, siteId };
          return { testId, because: 'portions', at, hasGerms: portions.some(hasSigns) };
        }),
    ],
    isOpen:
      told.some(({ finding, isDrunk }) => finding.hasGerms && isDrunk) ||
      faulty.some((one) => isDrunkNow(one) && !isCleanSince(one)),
  };
}

function isFoundIn(sign: TestRead['finding']['sign']): boolean {
  return sign === 'more' || sign === 'equal';
}

function isDrunkNow({ finding: { point, isBeforeHandOver } }: TestRead): boolean {
  return (point === 'tap' || point === 'container') && !isBeforeHandOver;
}
