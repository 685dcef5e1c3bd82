import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import {
  harmSentences,
  hasCleanBefore,
  riskRows,
  type SafetyReport,
  type SiteReport,
  safetyProblems,
  sampleDots,
  stopNumber,
  wayOf,
} from './safetyFigures.ts';

const words = await loadAppLanguage('en');

const steps = (bacteria_log10: number, viruses_log10: number, protozoa_log10: number) => ({
  ...{ bacteria_log10, viruses_log10, protozoa_log10 },
});
const risk = (
  pathogen: SafetyReport['risks'][number]['pathogen'],
  secondSourceId: string | null,
  needed_log10: number,
): SafetyReport['risks'][number] => ({
  ...{ pathogen, needed_log10 },
  waters: [{ secondSourceId, days_per_year: 365, raw_per_L: 1, rawHigh_per_L: 5, drinking_per_L: 1e-4 }],
  ...{ infection_per_year: 0.01, illness_per_year: 0.005, fromSkipping_fraction: 0.9 },
  ...{ DALY_per_person_per_year: 2e-6, DALYHigh_per_person_per_year: 2e-5 },
});
const report: SafetyReport = {
  ...{ verdict: 'short', cappedBy: null, finding: '', mayDrink: 'notShown' },
  barriers: [{ kind: 'membrane', barrierId: 'U1', evidence: 'challengeTest', credited: steps(6, 0, 6), leaking: null }],
  ...{ credited: steps(6, 0, 6), leaking: null, effective: steps(2, 0, 2), tier: 1 },
  ...{ skipping_fraction: 0.06, daysOff_per_year: null, reasons: [], notes: [], needsTest: [], failedUnits: [] },
  ...{ withheldBy: [], isReckoned: true },
  sourceDays: {
    ...{ secondSourceId: 'RIVER', name: 'The river', finding: '', days_per_year: null, days_per_year_range: null },
  },
  risks: [risk('rotavirus', null, 4), risk('rotavirus', 'RIVER', 6), risk('campylobacter', null, 3)],
  target_DALY_per_person_per_year: 1e-6,
  waterTests: {
    ...{ finding: '', tests: [], last: null, clean_count: 0, cleanBelow_per_100mL: null, cleanWanted_count: 59 },
    ...{ inspection: null, priority: null, unusable: [], isUnusableOpen: false, lastCleanOn: null },
  },
  ...{ chlorine: null, boilsAt_C: null },
};

it('the way begins at the roof, ends at the cup, and wants of a class what the worst water wants', () => {
  const { stops, needed } = wayOf(report, words);
  expect(stops.map(({ kind }) => kind)).toEqual(['roof', 'membrane', 'cup']);
  expect(needed).toEqual({ bacteria: 3, viruses: 6, protozoa: null });
  const river = wayOf({ ...report, risks: [risk('rotavirus', 'RIVER', 6)] }, words);
  expect(river.stops[0]?.kind).toBe('source');
});

it('cartridges side by side are one stop, which takes out what they do together', () => {
  const unit = (barrierId: string) => ({ ...report.barriers[0]!, barrierId, leaking: steps(2, 0, 2) });
  const filter = { ...unit('F1'), kind: 'filter' as const, credited: steps(1, 0, 1), leaking: null };
  const both = {
    ...report,
    barriers: [filter, unit('U1'), unit('U2')],
    credited: steps(7, 0, 7),
    leaking: steps(3.5, 0, 3.5),
  };
  const { stops } = wayOf(both, words);
  expect(stops.map(({ kind }) => kind)).toEqual(['roof', 'filter', 'membrane', 'cup']);
  expect(stops[2]).toMatchObject({ credited: steps(6, 0, 6), leaking: steps(2.5, 0, 2.5) });
  expect([filter, unit('U1'), unit('U2')].map((_, nth) => stopNumber(both.barriers, nth))).toEqual([2, 3, 3]);
});

it('risks are told as multiples of the target', () => {
  expect(riskRows(report, words)[0]).toMatchObject({ name: 'rotavirus (viruses), roof water', typical_ratio: 2 });
  expect(riskRows({ ...report, target_DALY_per_person_per_year: 0 }, words)).toEqual([]);
});

it('what nobody stated is said to be not stated, and never taken for none', () => {
  const said = harmSentences(report, words).join(' ');
  expect(said).toMatch(/6 % of the people drink untreated water, and bear 90 % of the harm of rotavirus/);
  expect(said).toMatch(/On how many days a year it goes untreated is not stated/);
  expect(harmSentences({ ...report, skipping_fraction: null }, words)[0]).toMatch(/not stated/);
  expect(harmSentences({ ...report, skipping_fraction: 0, daysOff_per_year: 0 }, words)).toEqual([
    'Nobody is said to drink untreated water.',
    'It is said to be treated on every day.',
  ]);
});

it('samples in which E. coli was not looked for are no dots', () => {
  const test = (sign: 'less' | null): SafetyReport['waterTests']['tests'][number] => ({
    ...{ testId: 'W', takenOn: '2026-01-02', point: 'tap', sign, count_per_100mL: sign === null ? null : 1 },
    ...{ low_per_100mL: 0, high_per_100mL: 3, rarity: null, band: 'low', isBeforeHandOver: false },
  });
  expect(sampleDots({ ...report.waterTests, tests: [test('less'), test(null)] })).toHaveLength(1);
});

it('what is wrong in a row that keeps the water from being judged is told with what was found of it; of other rows not', () => {
  const at = { file: 'testPortions.csv', row: 48, column: 'positive', siteId: 'S1' };
  const problem = (code: string, what: string, place: object) =>
    ({ code, what, place, severity: 'blocker', todo: '' }) as unknown as SiteReport['problems'][number];
  const design = {
    safety: { ...report, withheldBy: [at] },
    problems: [problem('safety.bare_metal', 'metal', {}), problem('drainage.pitch_unknown', 'pitch', {})],
  } as unknown as SiteReport;
  const ofRows = [
    problem('row.positive_over_portions', 'turned', at),
    problem('row.other', 'roof', { file: 'roofs.csv', row: 48 }),
    problem('row.file', 'whole file', { file: 'testPortions.csv' }),
  ];
  expect(safetyProblems(design, ofRows).map(({ what }) => what)).toEqual(['turned', 'metal']);
});

it('a clean sample before one that was not is no lack of clean ones since hand-over', () => {
  const test = (sign: 'less' | 'equal', isBeforeHandOver = false) =>
    ({ sign, isBeforeHandOver }) as unknown as SafetyReport['waterTests']['tests'][number];
  expect(hasCleanBefore({ clean_count: 0, tests: [test('less'), test('equal')] })).toBe(true);
  expect(hasCleanBefore({ clean_count: 0, tests: [test('less', true), test('equal')] })).toBe(false);
  expect(hasCleanBefore({ clean_count: 1, tests: [test('less')] })).toBe(false);
});
