import { defaultSettings } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { allTables } from './allTables.ts';
import { settingsColumns, targetColumns } from './settings.ts';

const columns = allTables.flatMap((table) =>
  Object.entries(table.columns).map(([name, column]) => ({ name: `${table.name}.${name}`, column })),
);

describe('every column', () => {
  it.each(columns.map(({ name, column }) => [name, column] as const))(
    '%s says what it means, in its unit',
    (name, column) => {
      expect(column.about).toMatch(/^[A-Z].*\.$|\?$/);
      const suffix = /_(mm_per_m|mg_per_L|g_per_L|per_L|deg|m|m2|mm|nm|kPa|NTU|log10|L_per_h|L|kg|days)$/.exec(
        name,
      )?.[1];
      const spelled = suffix?.replace(/^per_/, '1/').replace('_per_', '/');
      const unit = suffix === 'days' ? 'day' : spelled;
      if (unit !== undefined) expect(column.unit).toBe(unit);
      if (/Fraction$/.test(name)) expect(column.unit).toBe('fraction');
      if (['quantity', 'whole', 'fraction'].includes(column.kind)) expect(column.unit).not.toBe('');
    },
  );

  it('has a usual range inside its hard one', () => {
    const ranged = columns.filter(({ column }) => column.hard && column.usual);
    expect(ranged.length).toBeGreaterThan(5);
    for (const { column } of ranged) {
      expect(column.usual!.low).toBeGreaterThanOrEqual(column.hard!.low);
      expect(column.usual!.high).toBeLessThanOrEqual(column.hard!.high);
    }
  });
});

describe('every table', () => {
  it.each(allTables.map((table) => [table.name, table] as const))('%s has a key among its columns', (_, table) => {
    expect(table.key.length).toBeGreaterThan(0);
    expect(Object.keys(table.columns)).toEqual(expect.arrayContaining([...table.key]));
  });
});

describe('the defaults', () => {
  it('are themselves settings that may be used', () => {
    const { target, ...others } = defaultSettings;
    const notSaid = Object.entries(others).filter(([, value]) => value === null);
    expect(notSaid.map(([key]) => key).sort()).toEqual(
      [
        ...['boiledWater_L_per_person_per_day', 'boughtWater_L_per_person_per_day', 'boughtWater_amount_per_L'],
        ...['cartridgeFailures_per_year', 'currency', 'daysOff_per_year', 'fiveMinutesOfDaySource'],
        ...['fiveMinutesOfDay_fraction', 'fuelHeat_MJ_per_kg', 'fuel_amount_per_kg', 'growthFraction_per_year'],
        ...['rolloutStart', 'fuelPrice_per_L', 'closedRain_mm', 'mainStore'],
        ...['inflation_fraction_per_year', 'interest_fraction_per_year', 'people_per_household'],
        ...['pipedScheme_amount_per_person', 'pipedScheme_amount_per_person_per_year', 'pipedScheme_years'],
        'priceChange_fraction_per_year',
        ...['recontamination_fraction', 'roofSolids_g_per_m2_per_year', 'roofTurbidityHigh_NTU', 'roofTurbidity_NTU'],
        ...['skipping_fraction', 'stoveEfficiency_fraction', 'unitHead_m', 'waterYearStartMonth', 'windSpeed_m_per_s'],
        ...['workingServiceHigh_fraction', 'workingServiceLow_fraction', 'workingService_fraction'],
      ].sort(),
    );
    for (const [key, value] of Object.entries(others))
      if (value !== null)
        expect(settingsColumns[key as keyof typeof others].schema.safeParse(value).success, key).toBe(true);
    for (const [key, value] of Object.entries(target))
      expect(targetColumns[key as keyof typeof target].schema.safeParse(value).success).toBe(true);
  });
});
