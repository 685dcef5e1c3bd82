import { expect, it } from 'vitest';
import { settingFields } from './formTables.ts';
import { settingsChanges, settingsRow, standardOf } from './settingsRows.ts';

const rows = [
  { key: 'programme', cells: { value: '"Tarn"' } },
  { key: 'seed', cells: { value: '1' } },
  { key: 'target', cells: { value: '{"longestDryRun_days":10}' } },
  { key: 'gapFilling', cells: { value: 'not JSON' } },
];

it('shows settings as the cells of one row, the target field by field', () => {
  expect(settingsRow(rows).cells).toEqual({ programme: 'Tarn', seed: '1', 'target.longestDryRun_days': '10' });
});

it('turns changed fields back into the rows that are kept', () => {
  const after = { seed: '2', programme: null, firstFlush_mm: '0.4', 'target.daysMet_fraction': '0.9' };
  expect(settingsChanges(after, rows)).toEqual([
    { kind: 'edited', table: 'settings', key: 'seed', before: { value: '1' }, after: { value: '2' } },
    { kind: 'removed', table: 'settings', key: 'programme', before: { value: '"Tarn"' } },
    { kind: 'added', table: 'settings', key: 'firstFlush_mm', after: { value: '0.4' } },
    {
      kind: 'edited',
      table: 'settings',
      key: 'target',
      before: { value: '{"longestDryRun_days":10}' },
      after: { value: '{"longestDryRun_days":10,"daysMet_fraction":0.9}' },
    },
  ]);
  expect(settingsChanges({ 'target.longestDryRun_days': null }, rows)).toEqual([
    { kind: 'removed', table: 'settings', key: 'target', before: { value: '{"longestDryRun_days":10}' } },
  ]);
  expect(settingsChanges({ seed: '1' }, rows)).toEqual([]);
});

it('says what stands for a setting that is not given, for every one that has a standard', () => {
  const none = settingFields.filter((field) => standardOf(field) === null);
  expect(none).toEqual([
    ...['programme', 'growthFraction_per_year', 'people_per_household', 'fiveMinutesOfDay_fraction'],
    ...['fiveMinutesOfDaySource', 'roofSolids_g_per_m2_per_year', 'windSpeed_m_per_s', 'unitHead_m'],
    ...['roofTurbidity_NTU', 'roofTurbidityHigh_NTU', 'cartridgeFailures_per_year', 'skipping_fraction'],
    ...['daysOff_per_year', 'recontamination_fraction', 'currency', 'priceChange_fraction_per_year'],
    ...['interest_fraction_per_year', 'inflation_fraction_per_year', 'workingService_fraction'],
    ...['workingServiceLow_fraction', 'workingServiceHigh_fraction', 'boughtWater_L_per_person_per_day'],
    ...['boughtWater_amount_per_L', 'boiledWater_L_per_person_per_day', 'fuel_amount_per_kg', 'fuelHeat_MJ_per_kg'],
    ...['stoveEfficiency_fraction', 'pipedScheme_amount_per_person', 'pipedScheme_years'],
    ...['pipedScheme_amount_per_person_per_year', 'rolloutStart', 'mainStore', 'fuelPrice_per_L', 'closedRain_mm'],
    'waterYearStartMonth',
  ]);
});
