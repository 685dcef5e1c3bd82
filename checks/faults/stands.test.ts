import { designSites, isoDay, type Problem, readIsoDay, readyProgramme, type SiteDesign } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

const tankColumns = [
  ...['siteId', 'tankId', 'nominal_L', 'outletHeight_m', 'overflowHeight_m', 'diameter_m', 'height_m'],
  ...['standHeight_m', 'emptyMass_kg', 'standMass_kg', 'groundClass', 'pads', 'padSide_m', 'baseWidth_m'],
  ...['fastened', 'signedBy', 'signedOn'],
] as const;
type TankColumn = (typeof tankColumns)[number];

/** A tank on a stand with all of it measured. */
const measured: Readonly<Record<TankColumn, string>> = {
  siteId: 'S001',
  tankId: 'T1',
  nominal_L: '4000',
  outletHeight_m: '0.1',
  overflowHeight_m: '1.5',
  diameter_m: '1.8',
  height_m: '1.6',
  standHeight_m: '0.5',
  emptyMass_kg: '150',
  standMass_kg: '900',
  groundClass: 'firmClay',
  pads: '4',
  padSide_m: '0.6',
  baseWidth_m: '2.4',
  fastened: 'yes',
  signedBy: 'R. Aldane',
  signedOn: '2026-05-04',
};

/** Twelve years in which it rains every third day, so that the tank itself can be judged. */
const longRain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');

function standing(tank: Partial<Record<TankColumn, string>>, wind = '30', header = 'windSpeed_m_per_s'): Files {
  const cells = { ...measured, ...tank };
  const others = ['S002,T1,5000', 'S003,T1,20000'].map((row) => `${row}${','.repeat(tankColumns.length - 3)}`);
  const tanks = [tankColumns.join(','), tankColumns.map((name) => cells[name]).join(','), ...others, ''];
  const [head, first, ...rest] = good['sites.csv']!.trimEnd().split('\n');
  const sites = [`${head},${header}`, `${first},${wind}`, ...rest.map((line) => `${line},`), ''];
  return { ...good, 'tanks.csv': tanks.join('\n'), 'sites.csv': sites.join('\n'), 'rain/G-east.csv': longRain };
}

async function designed(files: Files): Promise<{ read: ProgrammeRead; site: SiteDesign; ofStand: readonly Problem[] }> {
  const read = await readFiles(files);
  const [site] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
  return { read, site: site!, ofStand: site!.problems.filter(({ code }) => code.startsWith('stand.')) };
}

const told = (problems: readonly Problem[]) =>
  problems.map(({ code, severity, place }) => `${code} ${severity} @ ${place.file} ${place.column}`);

it('a stand with everything measured has no fault', async () => {
  const { read, site, ofStand } = await designed(standing({}));
  expect([told(read.problems), told(ofStand)]).toEqual([[], []]);
  expect(site.stations.stand).toBe('holds');
  expect(site.standGate).toBe('open');
});

describe('what is missing or cannot be leaves the stand unknown and the tank judged', () => {
  const faults: readonly (readonly [string, Files, string])[] = [
    [
      'ground nobody has looked at',
      standing({ groundClass: '' }),
      'stand.ground_unknown warning @ tanks.csv groundClass',
    ],
    [
      'ground that must be investigated',
      standing({ groundClass: 'softOrMadeGround' }),
      'stand.ground_to_investigate warning @ tanks.csv groundClass',
    ],
    ['no mass of the tank', standing({ emptyMass_kg: '' }), 'stand.not_measured warning @ tanks.csv emptyMass_kg'],
    ['no mass of the stand', standing({ standMass_kg: '' }), 'stand.not_measured warning @ tanks.csv standMass_kg'],
    ['no pads', standing({ pads: '', padSide_m: '' }), 'stand.not_measured warning @ tanks.csv pads'],
    ['no width of the base', standing({ baseWidth_m: '' }), 'stand.not_measured warning @ tanks.csv baseWidth_m'],
    ['no wall of the tank', standing({ height_m: '' }), 'stand.not_measured warning @ tanks.csv height_m'],
    ['no height of the stand', standing({ standHeight_m: '' }), 'stand.not_measured warning @ tanks.csv standHeight_m'],
    ['no wind', standing({}, ''), 'stand.wind_unknown warning @ sites.csv windSpeed_m_per_s'],
    ['a wind of nothing', standing({}, '0'), 'stand.wind_unknown warning @ sites.csv windSpeed_m_per_s'],
    ['a wind in km/h', standing({}, '120'), 'stand.wind_in_other_unit warning @ sites.csv windSpeed_m_per_s'],
    ['a wind in knots', standing({}, '95'), 'stand.wind_in_other_unit warning @ sites.csv windSpeed_m_per_s'],
  ];

  it.each(faults)('%s', async (_name, files, wanted) => {
    const { site, ofStand } = await designed(files);
    expect(told(ofStand)).toEqual([wanted]);
    expect(site.stations.stand).toBe('unknown');
    expect(site.storages).toHaveLength(1);
    expect(site.stations.storage).not.toBe('unknown');
  });

  it('what the wind would be in other units is told', async () => {
    const { ofStand } = await designed(standing({}, '180'));
    const { what } = problemSentence(ofStand[0]!);
    expect(what).toContain('50 m a second');
    expect(what).toContain('92.6 m a second');
  });
});

describe('the gate', () => {
  const unsigned: readonly (readonly [string, Partial<Record<TankColumn, string>>])[] = [
    ['no name', { signedBy: '' }],
    ['no day', { signedOn: '' }],
    ['a day that is none', { signedOn: '2026-13-45' }],
  ];
  it.each(unsigned)('%s keeps it closed, though the sums hold', async (_name, tank) => {
    const { site } = await designed(standing(tank));
    expect(site.standGate).toBe('closed');
    expect(site.stands[0]!.verdict).toBe('holds');
  });

  it('a height that cannot be read keeps it closed', async () => {
    const { site } = await designed(
      standing({ standHeight_m: 'low', standMass_kg: '', baseWidth_m: '', signedBy: '' }),
    );
    expect(site.standGate).toBe('closed');
  });

  it('is there while the site is in doubt', async () => {
    const { site } = await designed({
      ...standing({ signedBy: '' }),
      'roofs.csv': 'siteId,roofId,length_m\nS001,a,wide\n',
    });
    expect(site.verdict).toBe('unknown');
    expect(site.standGate).toBe('closed');
  });

  it('is closed by a signature of a day to come, where the day is known', async () => {
    const read = await readFiles(standing({ signedOn: '2026-05-04' }));
    const on = (today: number) => [...designSites(read.facts.sites, readyProgramme(read.facts, { today }))][0]!;
    const signedOn = read.facts.sites[0]!.tanks[0]!.signedOn!;
    const before = on(signedOn - 1);
    expect(before.standGate).toBe('closed');
    const problem = before.problems.find(({ code }) => code === 'stand.not_signed')!;
    expect(problemSentence(problem).what).toContain('still to come');
    expect(on(signedOn).standGate).toBe('open');
  });
});

describe('a wind written in another unit', () => {
  it.each([
    ['120 km/h', '33.3333'],
    ['65 kn', '33.4389'],
    ['65 knots', '33.4389'],
    ['75 mph', '33.528'],
  ])('%s behind its number is named, with what it is in ours', async (cell, likely) => {
    const { read, site } = await designed(standing({}, cell));
    const [problem] = read.problems;
    expect(problem).toMatchObject({ code: 'cell.unit_in_number', place: { column: 'windSpeed_m_per_s' } });
    expect(problem!.facts['likely']).toBe(likely);
    expect(problemSentence(problem!).todo).toContain(`${likely} m a second`);
    expect(site.stations.stand).toBe('unknown');
    expect(site.stations.storage).not.toBe('unknown');
  });

  it.each([
    ['kmh', '108'],
    ['kn', '58.3153'],
    ['mph', '67.1081'],
  ])('a column accepted in %s is converted', async (unit, wind) => {
    const files = {
      ...standing({}, wind, 'Design wind'),
      'columns.json': JSON.stringify({ 'sites.csv': { 'Design wind': { column: 'windSpeed_m_per_s', unit } } }),
    };
    const { read, site } = await designed(files);
    expect(told(read.problems)).toEqual(['columns.used note @ sites.csv undefined']);
    expect(read.facts.sites[0]!.windSpeed_m_per_s).toBeCloseTo(30, 3);
    expect(site.stations.stand).toBe('holds');
  });
});
