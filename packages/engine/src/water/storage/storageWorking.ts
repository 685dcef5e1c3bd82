import {
  type DesignSettings,
  explain,
  isoDay,
  type Range,
  type StorageFinding,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';

/**
 * Writes down how each figure of a storage finding was reached. It computes nothing: every value is taken from the finding.
 *
 * @param finding - the finding
 * @param settings - the settings it was judged by
 * @param judgedDays - days of the judged years [day]
 * @returns working lines in the order of the steps
 * @definition ours
 */
// long: one line after another, nothing else
export function storageWorking(
  finding: StorageFinding,
  settings: DesignSettings,
  judgedDays: number,
): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const { target } = settings;
  const dryDays = finding.years.reduce((sum, year) => sum + (year.judged ? year.dryDays : 0), 0);
  const line = (
    code: WorkingCode,
    value: number | string | Range | null,
    unit: string,
    inputs: WorkingInput[],
    source = 'definition',
  ) => explain(lines, { code, value, unit, inputs, source });
  const tank = workingInput('tankVolume', finding.tankVolume_L, 'L');
  const asked = workingInput('judgedDemand', finding.judgedDemand_L_per_day, 'L/day');
  // Sizes are asked for without the second source.
  const left = finding.secondSource ? [workingInput('withoutSource', finding.secondSource.name, 'text')] : [];
  const years = workingInput('judgedYears', finding.judgedYears, 'year');
  const run = workingInput('longestDryRun', target.longestDryRun_days, 'day');
  line('storage.order', finding.order, '', [
    tank,
    asked,
    workingInput('otherDemand', finding.otherDemand_L_per_day, 'L/day'),
  ]);
  if (finding.ration && finding.rationedDays_per_year !== null)
    line('storage.rationedDays', finding.rationedDays_per_year, 'day/year', [
      workingInput('rationBelow', finding.ration.below_fraction, 'fraction'),
      workingInput('rationedJudged', finding.ration.judged_fraction, 'fraction'),
      workingInput('rationedOther', finding.ration.other_fraction, 'fraction'),
      tank,
    ]);
  line('storage.dryDays', finding.dryDays_per_year, 'day/year', [workingInput('dryDays', dryDays, 'day'), years]);
  line('storage.dryDaysRange', finding.dryDays_per_year_range, 'day/year', [
    workingInput('draws', settings.draws, 'count'),
    workingInput('seed', settings.seed, 'number'),
    workingInput('range', settings.range_fraction, 'fraction'),
  ]);
  line('storage.daysMet', finding.daysMet_fraction, 'fraction', [
    workingInput('dryDays', dryDays, 'day'),
    workingInput('judgedDays', judgedDays, 'day'),
    workingInput('daysMetTarget', target.daysMet_fraction, 'fraction'),
  ]);
  line('storage.goodYears', finding.goodYears, 'year', [
    years,
    run,
    workingInput('goodYearsNeeded', finding.goodYearsNeeded, 'year'),
  ]);
  line(
    'storage.goodYearsRange',
    finding.goodYears_fraction_range,
    'fraction',
    [workingInput('goodYears', finding.goodYears, 'year'), years],
    'brown-cai-dasgupta-2001, Jeffreys interval',
  );
  line('storage.goodYearsNext', finding.comingGood_years_range, 'year', [
    workingInput('goodYears', finding.goodYears, 'year'),
    years,
    workingInput('range', settings.range_fraction, 'fraction'),
  ]);
  if (finding.noExactSize === null) {
    line('storage.tankForDays', finding.tankForDays_L, 'L', [
      asked,
      workingInput('daysMetTarget', target.daysMet_fraction, 'fraction'),
      ...left,
    ]);
    line('storage.tankForRuns', finding.tankForRuns_L, 'L', [
      run,
      workingInput('goodYearsNeeded', finding.goodYearsNeeded, 'year'),
      years,
      ...left,
    ]);
    line('storage.tankForTarget', finding.tankForTarget_L, 'L', [
      workingInput('tankForDays', finding.tankForDays_L ?? 'none', 'L'),
      workingInput('tankForRuns', finding.tankForRuns_L ?? 'none', 'L'),
    ]);
  } else
    line('storage.catalogueTank', finding.catalogueForTarget_L, 'L', [
      asked,
      workingInput('order', finding.order, 'text'),
      ...left,
    ]);
  if (finding.tankToHold_L !== null)
    line('storage.tankToHold', finding.tankToHold_L, 'L', [
      workingInput('tankForTarget', finding.tankForTarget_L ?? 'none', 'L'),
      workingInput('range', settings.range_fraction, 'fraction'),
    ]);
  line('storage.shortfall', finding.shortfall_L_per_year, 'L/year', [asked, tank]);
  if (finding.otherDemand_L_per_day > 0)
    line('storage.otherShort', finding.otherShortDays_per_year, 'day/year', [
      workingInput('otherDemand', finding.otherDemand_L_per_day, 'L/day'),
      tank,
    ]);
  line(
    'storage.yieldBeforeSpill',
    finding.yieldBeforeSpill.dryDays_per_year,
    'day/year',
    [tank],
    'jenkins-1978, yield before spill',
  );
  if (finding.secondSource)
    line(
      'storage.secondSource',
      finding.secondSource.days_per_year,
      'day/year',
      [
        workingInput('secondSource', finding.secondSource.name, 'text'),
        workingInput('givenPerYear', finding.secondSource.given_L_per_year, 'L/year'),
        workingInput('dryDaysAlone', finding.secondSource.aloneDryDays_per_year, 'day/year'),
        workingInput('aloneGoodYears', finding.secondSource.aloneGoodYears, 'year'),
      ],
      'survey',
    );
  if (finding.firstService)
    line('storage.firstService', finding.firstService.wait_days, 'day', [
      workingInput('handOverDay', isoDay(finding.firstService.handOverDay), 'date'),
      workingInput('waitLow', finding.firstService.wait_days_range.low, 'day'),
      workingInput('waitHigh', finding.firstService.wait_days_range.high, 'day'),
    ]);
  line('storage.verdict', finding.verdict, '', [
    workingInput('goodYears', finding.goodYears, 'year'),
    workingInput('goodYearsNeeded', finding.goodYearsNeeded, 'year'),
    workingInput('daysMetWorstEnd', finding.daysMet_fraction_range.low, 'fraction'),
    workingInput('goodYearsWorstEnd', finding.goodYears_fraction_range.low, 'fraction'),
    workingInput('leastYears', settings.leastYears, 'year'),
  ]);
  return lines;
}
