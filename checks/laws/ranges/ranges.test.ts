import { describe, expect, it } from 'vitest';
import { type Coverage, type CoverageCase, coverageOf } from './coverage.ts';
import { oneSeason, twoSeasons } from './madeYears.ts';

/** `npm run coverage:ranges` sets this: many records, every case, and the table of docs/methods/storage.md is printed. */
const long = process.env['EAVEWELL_COVERAGE'] !== undefined;

const everyYear = { name: 'fills and empties every year', asked_fraction: 0.45 };
const carries = { name: 'carries water over', asked_fraction: 0.85 };

/** Every case of the long run. */
function allCases(): readonly CoverageCase[] {
  const cases: CoverageCase[] = [];
  for (const climate of [oneSeason, twoSeasons])
    for (const kind of [everyYear, carries])
      for (const correlation of [0, 0.5])
        for (const tank of ['justMisses', 'rarelyBad', 'roomy'] as const)
          cases.push({ ...kind, climate, correlation, tank });
  return cases;
}

const percent = (share: number) => `${Math.round(100 * share)} %`.padStart(5);
const cells = ({ dryDays_fraction, drierThanTold_fraction, goodYears_fraction, holds_fraction }: Coverage) =>
  [dryDays_fraction, drierThanTold_fraction, goodYears_fraction, holds_fraction].map(percent).join(' ');

describe.runIf(long)('how often the 90 % ranges hold the truth', () => {
  it('is printed for every case', { timeout: 1_800_000 }, () => {
    const lines = ['dry days held / drier than told / good years held / called holds, for 10, 15 and 30 years'];
    for (const one of allCases()) {
      const { truth, found } = coverageOf(one, [10, 15, 30], 300, 6000);
      const label = `${one.climate.name} ${one.name} ${one.correlation} ${one.tank}`;
      const true_ = `${truth.dryDays_per_year.toFixed(2)} d, ${percent(truth.goodYears_fraction)} good`;
      lines.push(`${label.padEnd(58)} ${true_.padEnd(20)} ${found.map(cells).join(' | ')}`);
    }
    console.log(lines.join('\n'));
  });
});

/** Two hundred records, the same every time; a share of them is off by a fortieth of all, one time in four. */
describe('the 90 % ranges against a known truth, years independent, a climate that nothing was chosen by', () => {
  const measured = (kind: Pick<CoverageCase, 'name' | 'asked_fraction'>, tank: CoverageCase['tank'], years: number) =>
    coverageOf({ ...kind, tank, correlation: 0, climate: twoSeasons }, [years], 200, 3000).found[0]!;

  it('hold the dry days of tanks that just miss the target, and seldom call them good', () => {
    const [full, over] = [measured(everyYear, 'justMisses', 15), measured(carries, 'justMisses', 15)];
    expect(full.dryDays_fraction).toBeGreaterThan(0.84);
    expect(over.dryDays_fraction).toBeGreaterThan(0.88);
    for (const one of [full, over]) {
      expect(one.goodYears_fraction).toBeGreaterThan(0.88);
      expect(one.holds_fraction).toBeLessThan(0.08);
    }
  });

  it('hold the dry days of tanks that are seldom or never dry on record', () => {
    for (const kind of [everyYear, carries])
      for (const tank of ['rarelyBad', 'roomy'] as const)
        expect(measured(kind, tank, 15).dryDays_fraction).toBeGreaterThan(0.88);
  });

  it('still let tanks hold that are hardly ever bad', () => {
    expect(measured(everyYear, 'roomy', 30).holds_fraction).toBeGreaterThan(0.9);
    expect(measured(carries, 'roomy', 30).holds_fraction).toBeGreaterThan(0.8);
  });
});
