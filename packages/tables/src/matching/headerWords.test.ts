import { describe, expect, it } from 'vitest';
import { type FolderTableName, folderTables } from '../contract/allTables.ts';
import type { Table } from '../contract/table.ts';
import { headerWords, isOtherUnit, unitNamed } from './headerWords.ts';
import { proposeColumns } from './proposeColumns.ts';

/** What is thought of a header over one cell, beside the key of its table. */
function found(name: FolderTableName, header: string, cell: string) {
  const table: Table = folderTables[name];
  const [first] = proposeColumns(table, [...table.key, header], [{ row: 2, cells: [...table.key, cell] }], null);
  return first!;
}

describe('units of rain, mass and fall', () => {
  it.each([
    ['in/h', 'in/h'],
    ['in per hour', 'in/h'],
    ['inches per hour', 'in/h'],
    ['in/hr', 'in/h'],
    ['mm/hr', 'mm/h'],
    ['mm per hour', 'mm/h'],
    ['cm/h', 'cm/h'],
    ['in/ft', 'in/ft'],
    ['inches per foot', 'in/ft'],
    ['lbs', 'lb'],
    ['pounds', 'lb'],
    ['in feet', 'ft'],
    ['inches', 'in'],
    ['in', 'in'],
  ])('%s', (written, unit) => {
    expect(unitNamed(written)).toBe(unit);
  });

  it('are told from lengths, behind a line below too', () => {
    expect(headerWords('Rain intensity in/h')).toEqual({ words: ['rain', 'intensity'], unit: 'in/h' });
    expect(headerWords('intensity_in_per_h')).toEqual({ words: ['intensity'], unit: 'in/h' });
    expect(headerWords('intensity_mm_per_h')).toEqual({ words: ['intensity'], unit: 'mm/h' });
    expect(isOtherUnit('intensity_in_per_h', folderTables.storms.columns.intensity_mm_per_h)).toBe(true);
    expect(isOtherUnit('Rain intensity (mm/hr)', folderTables.storms.columns.intensity_mm_per_h)).toBe(false);
  });
});

describe('plain words of the trade', () => {
  it.each([
    ['gutters', 'Gutter width (in)', '5', 'width_mm', 'in'],
    ['gutters', 'Bottom width (in)', '4', 'baseWidth_mm', 'in'],
    ['gutters', 'Outlet diameter (in)', '3', 'outlet_mm', 'in'],
    ['gutters', 'Gutter slope (%)', '0.5', 'fall_mm_per_m', 'percent'],
    ['gutters', 'Fall (in/ft)', '0.06', 'fall_mm_per_m', 'in/ft'],
    ['gutters', 'Gutter profile', 'halfRound', 'shape', null],
    ['gutters', 'Corners', '1', 'bends', null],
    ['gutters', 'Number of outlets', '2', 'outlets', null],
    ['gutters', 'Distance to outlet (m)', '12', 'runToOutlet_m', null],
    ['downpipes', 'Downpipe diameter', '90', 'bore_mm', null],
    ['downpipes', 'Downspout diameter (in)', '3', 'bore_mm', 'in'],
    ['downpipes', 'Downpipe size (mm)', '90', 'bore_mm', null],
    ['pipes', 'Inside diameter (in)', '1', 'bore_mm', 'in'],
    ['pipes', 'Bends', '3', 'elbows', null],
    ['pipes', 'Loss coefficient', '2', 'otherLoss_k', null],
    ['diverters', 'Chamber diameter (in)', '6', 'chamberBore_mm', 'in'],
    ['diverters', 'First flush volume (L)', '40', 'chamber_L', null],
    ['storms', 'Rain intensity in/h', '6', 'intensity_mm_per_h', 'in/h'],
    ['storms', 'Rainfall intensity (mm/hr)', '150', 'intensity_mm_per_h', null],
    ['storms', 'Low (in/hr)', '5', 'low_mm_per_h', 'in/h'],
    ['storms', 'Upper limit (mm/h)', '160', 'high_mm_per_h', null],
    ['shortRain', 'Duration (min)', '5', 'interval_min', null],
    ['tanks', 'Platform height (ft)', '3', 'standHeight_m', 'ft'],
    ['tanks', 'Tank height (ft)', '8', 'height_m', 'ft'],
    ['tanks', 'Overflow pipe diameter (in)', '4', 'overflowBore_mm', 'in'],
    ['tanks', 'Ground type', 'firmClay', 'groundClass', null],
    ['tanks', 'Tank weight (lb)', '300', 'emptyMass_kg', 'lb'],
    ['tanks', 'Stand weight (lbs)', '900', 'standMass_kg', 'lb'],
    ['tanks', 'Number of footings', '4', 'pads', null],
    ['tanks', 'Pad size (ft)', '2', 'padSide_m', 'ft'],
    ['tanks', 'Tied down', 'yes', 'fastened', null],
    ['tanks', 'Overflow mesh', 'open', 'overflowScreen', null],
    ['tanks', 'Date signed', '2026-01-01', 'signedOn', null],
    ['roofs', 'Roof slope (degrees)', '22', 'pitch_deg', null],
    ['roofs', 'Roof shape', 'gable', 'form', null],
    ['sites', 'Design wind (mph)', '90', 'windSpeed_m_per_s', 'mph'],
    ['parts', 'Weight (lb)', '10', 'mass_kg', 'lb'],
    ['parts', 'Membrane area (ft2)', '97', 'membraneArea_m2', 'ft2'],
    ['parts', 'Rated pressure (psi)', '8', 'ratedPressure_kPa', 'psi'],
    ['parts', 'Maximum pressure (bar)', '2', 'highestPressure_kPa', 'bar'],
    ['parts', 'Rated flow (L/min)', '10', 'ratedFlow_L_per_h', 'L/min'],
    ['parts', 'Pore size (micron)', '0.015', 'pore_nm', 'um'],
    ['parts', 'Permeability (L/m2/h/bar)', '300', 'permeability_L_per_m2_h_bar', null],
    ['parts', 'Virus log reduction', '3', 'viruses_log10', null],
    ['parts', 'Piston diameter (in)', '2', 'pistonBore_mm', 'in'],
    ['treatmentUnits', 'Date installed', '2025-01-01', 'installedOn', null],
    ['flowReadings', 'Flow rate (lpm)', '8', 'flow_L_per_h', 'L/min'],
    ['flowReadings', 'Pressure (psi)', '7', 'pressure_kPa', 'psi'],
    ['flowReadings', 'Water temperature (°F)', '77', 'waterTemperature_C', 'F'],
    ['flowReadings', 'Water temp F', '77', 'waterTemperature_C', 'F'],
    ['flowReadings', 'Meter reading (m3)', '90', 'passed_L', 'm3'],
    ['pressureTests', 'Pressure decay (psi/min)', '0.2', 'fall_kPa_per_min', 'psi/min'],
    ['rawWater', 'Upper limit (per 100 mL)', '30', 'high_per_L', '1/100mL'],
    ['waterTests', 'Sampling point', 'tap', 'point', null],
    ['waterTests', 'Residual chlorine (mg/L)', '0.3', 'freeChlorine_mg_per_L', null],
    ['waterTests', 'Turbidity (NTU)', '2', 'turbidity_NTU', null],
    ['testPortions', 'Number of wells', '5', 'portions', null],
    ['testPortions', 'Too numerous to count', '1', 'uncountable', null],
    ['inspections', 'Sanitary risk score', '4', 'risks', null],
    ['chlorination', 'Contact time (h)', '2', 'contact_min', 'h'],
    ['chlorination', 'Stock strength (%)', '1', 'stock_g_per_L', 'percent'],
    ['roofs', 'Overhanging trees', 'yes', 'underTrees', null],
    ['sites', 'Elevation (ft)', '900', 'altitude_m', 'ft'],
  ] as const)('%s: %s', (table, header, cell, column, unit) => {
    expect(found(table, header, cell)).toMatchObject({ match: { column, unit }, open: null, fits: 1 });
  });
});

describe('what is never taken for another', () => {
  it('a tank for its stand misspelt, an inlet for an outlet, inches for a count', () => {
    const columns = (name: FolderTableName, header: string, cell: string) =>
      found(name, header, cell).choices.map(({ column }) => column);
    expect(columns('tanks', 'Tank height (ft)', '8')).toEqual(['height_m']);
    expect(columns('tanks', 'Inlet height (ft)', '6')).toEqual(['inletHeight_m', 'height_m']);
    expect(columns('gutters', 'Outlet diameter (in)', '3')).toEqual(['outlet_mm']);
  });

  it('gallons a minute whose country nobody says, and acidity for hours', () => {
    expect(found('flowReadings', 'Flow (gpm)', '3')).toMatchObject({
      ...{ match: { column: 'flow_L_per_h' }, open: 'gallon' },
      choices: [{ column: 'flow_L_per_h', hows: ['usgpm', 'impgpm'] }],
    });
    expect(found('flowReadings', 'Flow (US gal/min)', '3')).toMatchObject({ match: { unit: 'usgpm' }, open: null });
    expect(headerWords('Water pH')).toEqual({ words: ['water', 'ph'], unit: null });
    expect(found('waterTests', 'pH value', '7.1')).toMatchObject({ match: { column: 'pH', unit: null }, open: null });
  });

  it('the outside of a pipe for its bore', () => {
    for (const header of ['Outside diameter (mm)', 'Outer diameter (mm)', 'External diameter', 'Pipe OD (mm)'])
      expect(found('pipes', header, '110')).toMatchObject({ match: null });
  });

  it('rain an hour for rain of a day', () => {
    expect(found('shortRain', 'Rain (mm/h)', '12')).toMatchObject({ match: { column: 'rain_mm' }, open: 'unit' });
  });
});
