import { designSites, isoDay, type Problem, readIsoDay, readyProgramme, type SiteDesign } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, line, readFiles } from './folder.ts';

/** Twelve years in which it rains every third day, so that tanks can be judged. */
const longRain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');

const partColumns = [
  ...['partId', 'kind', 'name', 'volume_L', 'mass_kg', 'length_m', 'width_m', 'height_m', 'packSize', 'supplier'],
  ...['leadTime_days', 'cartridges', 'membraneArea_m2', 'permeability_L_per_m2_h_bar', 'ratedFlow_L_per_h'],
  ...['ratedPressure_kPa', 'highestPressure_kPa', 'pore_nm', 'lowestFlow_L_per_h', 'backwash_fraction'],
  ...['backwash_min_per_day', 'pistonBore_mm', 'pistonStroke_mm', 'leverRatio', 'protozoa_log10', 'evidence'],
  'evidenceSource',
] as const;
type PartColumn = (typeof partColumns)[number];

/** A treatment unit of the catalogue with all of it known. */
const unit: Readonly<Partial<Record<PartColumn, string>>> = {
  partId: 'unit-3',
  kind: 'treatmentUnit',
  name: 'Unit of three',
  packSize: '1',
  cartridges: '3',
  ratedFlow_L_per_h: '1500',
  ratedPressure_kPa: '100',
  highestPressure_kPa: '200',
  pore_nm: '15',
  lowestFlow_L_per_h: '600',
  backwash_fraction: '0.05',
  backwash_min_per_day: '10',
  pistonBore_mm: '75',
  pistonStroke_mm: '200',
  leverRatio: '5',
  protozoa_log10: '4',
  evidence: 'challengeTest',
  evidenceSource: 'Report 12 of the maker',
};

interface Planted {
  readonly part?: Readonly<Partial<Record<PartColumn, string>>>;
  readonly units?: readonly string[];
  readonly readings?: readonly string[];
  readonly tests?: readonly string[];
  readonly site?: { readonly taps?: string; readonly handPump?: string };
  readonly readingHeader?: string;
}

function withUnit(planted: Planted): Files {
  const [head, ...parts] = good['parts.csv']!.trimEnd().split('\n');
  expect(partColumns.join(',').startsWith(head!)).toBe(true);
  const own = { ...unit, ...planted.part };
  const blanks = ','.repeat(partColumns.length - head!.split(',').length);
  const catalogue = [
    partColumns.join(','),
    ...parts.map((row) => `${row}${blanks}`),
    partColumns.map((name) => own[name] ?? '').join(','),
    '',
  ];
  const [sites, first, ...others] = good['sites.csv']!.trimEnd().split('\n');
  const { taps = '3', handPump = 'yes' } = planted.site ?? {};
  const readings = [planted.readingHeader ?? 'siteId,unitSerial,readOn,flow_L_per_h,pressure_kPa,waterTemperature_C'];
  const tests = 'siteId,unitSerial,testedOn,pressure_kPa,fall_kPa_per_min,airVolume_L';
  return {
    ...good,
    'parts.csv': catalogue.join('\n'),
    'sites.csv': [
      `${sites},taps,handPump`,
      `${first},${taps},${handPump}`,
      ...others.map((row) => `${row},,`),
      '',
    ].join('\n'),
    'treatmentUnits.csv': [
      'siteId,serial,partId,installedOn',
      ...(planted.units ?? ['S001,U1,unit-3,2027-03-01']),
      '',
    ].join('\n'),
    ...(planted.readings ? { 'flowReadings.csv': [...readings, ...planted.readings, ''].join('\n') } : {}),
    ...(planted.tests ? { 'pressureTests.csv': [tests, ...planted.tests, ''].join('\n') } : {}),
    'rain/G-east.csv': longRain,
  };
}

async function designed(planted: Planted): Promise<{ read: ProgrammeRead; site: SiteDesign; own: readonly Problem[] }> {
  const read = await readFiles(withUnit(planted));
  const [site] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
  return { read, site: site!, own: site!.problems.filter(({ code }) => code.startsWith('treatment.')) };
}

const told = (problems: readonly Problem[]) =>
  problems.map(({ code, severity, place }) => `${code} ${severity} @ ${place.file} ${place.column ?? '-'}`);

it('a unit of which all is known has no fault, and is judged', async () => {
  const { read, site, own } = await designed({});
  expect([read.problems.map(line), told(own)]).toEqual([[], []]);
  expect(site.stations.treatmentUnit).not.toBe('notJudged');
  expect(site.stations.treatmentUnit).not.toBe('unknown');
  const [f] = site.treatment;
  expect(f).toMatchObject({ serial: 'U1', partId: 'unit-3', drive: 'handPump' });
  expect(f!.flowNow_L_per_h).toBeGreaterThan(0);
  expect(f!.hoursNeeded_h).toBeGreaterThan(0);
});

describe('what is missing, or does not fit, is told and the rest judged', () => {
  const faults: readonly (readonly [string, Planted, string, string])[] = [
    [
      'a unit without a part',
      { units: ['S001,U1,,'] },
      'treatment.part_unknown warning @ treatmentUnits.csv partId',
      'unknown',
    ],
    [
      'no rated flow',
      { part: { ratedFlow_L_per_h: '' } },
      'treatment.flow_unknown warning @ parts.csv ratedFlow_L_per_h',
      'unknown',
    ],
    [
      'a flow that area and permeability contradict',
      { part: { membraneArea_m2: '3', permeability_L_per_m2_h_bar: '250' } },
      'treatment.rating_differs warning @ parts.csv ratedFlow_L_per_h',
      'judged',
    ],
    [
      'no lowest flow',
      { part: { lowestFlow_L_per_h: '' } },
      'treatment.lowest_flow_unknown warning @ parts.csv lowestFlow_L_per_h',
      'judged',
    ],
    [
      'a lowest flow over the clean one',
      { part: { lowestFlow_L_per_h: '2000' } },
      'treatment.lowest_flow_high warning @ parts.csv lowestFlow_L_per_h',
      'judged',
    ],
    [
      'no backwash',
      { part: { backwash_fraction: '' } },
      'treatment.backwash_unknown note @ parts.csv backwash_fraction',
      'judged',
    ],
    ['no piston', { part: { pistonBore_mm: '' } }, 'treatment.pump_unknown note @ parts.csv pistonBore_mm', 'judged'],
    [
      'a pump of which nobody spoke',
      { site: { handPump: '' } },
      'treatment.pressure_unknown warning @ sites.csv handPump',
      'judged',
    ],
    ['taps nobody counted', { site: { taps: '' } }, 'treatment.taps_unknown warning @ sites.csv taps', 'judged'],
    [
      'two units',
      { units: ['S001,U1,unit-3,', 'S001,U2,unit-3,'] },
      'treatment.units_several note @ treatmentUnits.csv -',
      'judged',
    ],
    [
      'a reading without its pressure',
      { readings: ['S001,,2027-09-01,900,,24'] },
      'treatment.reading_not_used warning @ flowReadings.csv pressure_kPa',
      'judged',
    ],
    [
      'a reading of far more than a clean set gives',
      { readings: ['S001,U1,2027-09-01,9000,100,24'] },
      'treatment.reading_not_used warning @ flowReadings.csv flow_L_per_h',
      'judged',
    ],
    [
      'a reading of an earlier set',
      { readings: ['S001,U1,2026-09-01,900,100,24'] },
      'treatment.reading_early note @ flowReadings.csv -',
      'judged',
    ],
    [
      'a test whose pressure falls too fast for what is claimed',
      { tests: ['S001,U1,2027-09-01,100,40,2'] },
      'treatment.test_fails warning @ pressureTests.csv fall_kPa_per_min',
      'judged',
    ],
    [
      'a test at too little pressure',
      { tests: ['S001,U1,2027-09-01,35,0.01,2'] },
      'treatment.test_sees_little note @ pressureTests.csv -',
      'judged',
    ],
    [
      'a test of an earlier set',
      { tests: ['S001,U1,2026-09-01,100,1,2'] },
      'treatment.test_not_used warning @ pressureTests.csv -',
      'judged',
    ],
  ];

  it.each(faults)('%s', async (_, planted, problem, verdict) => {
    const { read, site, own } = await designed(planted);
    expect(read.problems.filter(({ severity }) => severity === 'blocker')).toEqual([]);
    expect(told(own)).toEqual([problem]);
    const { what, todo } = problemSentence(own[0]!);
    for (const text of [what, todo]) {
      expect(text).not.toMatch(/WRITE|undefined|NaN|\{/);
      expect(text.length).toBeGreaterThan(20);
    }
    const { treatmentUnit } = site.stations;
    expect(verdict === 'unknown' ? treatmentUnit : ['short', 'tight', 'holds'].includes(treatmentUnit)).toBe(
      verdict === 'unknown' ? 'unknown' : true,
    );
    expect(site.stations.storage).not.toBe('unknown');
  });
});

describe('what cannot be read leaves the unit unknown and the tank judged', () => {
  const faults: readonly (readonly [string, Planted, RegExp])[] = [
    [
      'a part that is a tank',
      { units: ['S001,U1,tank-5,'] },
      /link\.part_not_unit blocker @ treatmentUnits\.csv 2 partId/,
    ],
    ['a part that no row has', { units: ['S001,U1,unit-9,2027-03-01'] }, /parts\.csv|treatmentUnits\.csv .*partId/],
    [
      'a reading hotter than water is',
      { readings: ['S001,U1,2027-09-01,900,100,86'] },
      /flowReadings\.csv .*waterTemperature_C/,
    ],
    [
      'a reading of a unit that is not there',
      { readings: ['S001,U7,2027-09-01,900,100,24'] },
      /flowReadings\.csv .*unitSerial/,
    ],
    ['a flow that is no number', { readings: ['S001,U1,2027-09-01,much,100,24'] }, /flowReadings\.csv .*flow_L_per_h/],
  ];

  it.each(faults)('%s', async (_, planted, problem) => {
    const { read, site } = await designed(planted);
    expect(read.problems.map(line).join('\n')).toMatch(problem);
    expect(site.stations.treatmentUnit).toBe('unknown');
    expect(site.stations.storage).not.toBe('unknown');
  });
});

it('a pore written in µm is told, and changes nothing of what the unit passes', async () => {
  const { read, site, own } = await designed({ part: { pore_nm: '0.015' } });
  expect(read.problems.map(line).join('\n')).toMatch(/parts\.csv .*pore_nm/);
  expect(told(own)).toEqual([]);
  const { site: whole } = await designed({});
  expect(site.treatment[0]?.flowNow_L_per_h ?? null).toBe(whole.treatment[0]!.flowNow_L_per_h);
});

it('a temperature headed in °F is named, and leaves the unit unknown and the tank judged', async () => {
  const { read, site } = await designed({
    readingHeader: 'siteId,unitSerial,readOn,flow_L_per_h,pressure_kPa,waterTemperature_F',
    readings: ['S001,U1,2027-09-01,900,100,86'],
  });
  expect(read.problems.map(line)).toEqual([
    'header.column_misspelt blocker @ flowReadings.csv 1 waterTemperature_F = "waterTemperature_F"',
  ]);
  expect(site.stations.treatmentUnit).toBe('unknown');
  expect(site.stations.storage).not.toBe('unknown');
});
