import {
  designSites,
  isoDay,
  type Problem,
  readIsoDay,
  readyProgramme,
  type SiteDesign,
  type Station,
} from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

/** Tables of one site with a settling tank, a storage tank and a way to its taps, all measured, by column. */
const measured = {
  sites: {
    ...{ siteId: 'S001', name: 'Upper Tarn', people: '40', gaugeId: 'G-east' },
    ...{ taps: '2', tapHeight_m: '0.5', unitHeight_m: '0.8', handPump: 'no' },
  },
  roofs: {
    siteId: 'S001',
    roofId: 'school',
    length_m: '12',
    width_m: '6',
    runoffFraction: '0.85',
    gutteredFraction: '1',
  },
  tanks: {
    ...{ siteId: 'S001', tankId: 'T1', nominal_L: '10000', outletHeight_m: '0.1', overflowHeight_m: '2' },
    ...{ diameter_m: '2.5', joinedTo: '', role: 'storage', standHeight_m: '3', inletHeight_m: '', cells: '' },
  },
  settler: {
    ...{ siteId: 'S001', tankId: 'T2', nominal_L: '', outletHeight_m: '0.4', overflowHeight_m: '2' },
    ...{ diameter_m: '4', joinedTo: 'T1', role: 'settling', standHeight_m: '3', inletHeight_m: '2.1', cells: '3' },
  },
  pipes: {
    ...{ siteId: 'S001', pipeId: 'P1', leg: 'tankToUnit', tankId: 'T1', bore_mm: '40', length_m: '5' },
    ...{ material: 'plastic', elbows: '2', valves: '1', otherLoss_k: '' },
  },
  tapPipe: {
    ...{ siteId: 'S001', pipeId: 'P2', leg: 'unitToTap', tankId: '', bore_mm: '32', length_m: '3' },
    ...{ material: '', elbows: '', valves: '', otherLoss_k: '' },
  },
  storms: {
    gaugeId: 'G-east',
    returnPeriod_years: '20',
    intensity_mm_per_h: '120',
    source: 'An invented weather service',
  },
} as const;
type Row = keyof typeof measured;
type Change = { readonly [R in Row]?: Partial<Record<keyof (typeof measured)[R], string>> };
/** The second rows of tables. */
const below: Partial<Record<Row, Row>> = { settler: 'tanks', tapPipe: 'pipes' };
const settings = { judgeStand: 'never', judgeDrainage: 'never', unitHead_m: 0.3, roofSolids_g_per_m2_per_year: 40 };

const longRain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');

/** The good folder with its first site measured, but for what is changed. */
function waterWay(change: Change, set: Readonly<Record<string, unknown>> = {}, without: readonly Row[] = []): Files {
  const { 'diverters.csv': _, ...others } = good;
  const files: Record<string, string> = { ...others, 'rain/G-east.csv': longRain };
  for (const row of Object.keys(measured) as Row[]) {
    const cells: Readonly<Record<string, string>> = { ...measured[row], ...change[row] };
    const [file, text] = [`${below[row] ?? row}.csv`, `${Object.values(cells).join(',')}\n`];
    const head = `${Object.keys(cells).join(',')}\n`;
    if (below[row] === undefined) files[file] = without.includes(row) ? head : `${head}${text}`;
    else if (!without.includes(row)) files[file] += text;
  }
  files['demand.csv'] = 'siteId,purpose,litres_per_person_per_day,judged\n,drinking,7.5,yes\n';
  files['settings.json'] = JSON.stringify({ ...settings, ...set });
  return files;
}

async function designed(files: Files): Promise<{ read: ProgrammeRead; site: SiteDesign; told: readonly Problem[] }> {
  const read = await readFiles(files);
  const [site] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
  return { read, site: site!, told: site!.problems.filter(({ code }) => /^(?:settling|head)\./.test(code)) };
}
const lines = (problems: readonly Problem[]) =>
  problems.map(({ code, severity, place }) => `${code} ${severity} @ ${place.file} ${place.column ?? '-'}`);

it('a site with everything measured has no fault: what settles does, and water comes to the taps', async () => {
  const { read, site, told } = await designed(waterWay({}));
  expect([lines(read.problems), lines(told)]).toEqual([[], []]);
  expect(site.stations).toMatchObject({ settling: 'holds', tap: 'holds' });
  expect(site.settling[0]).toMatchObject({ tankId: 'T2', cells_count: 3, cappedBy: null });
  expect(site.head[0]).toMatchObject({ tankIds: ['T1', 'T2'], lowLevel_m: 3.1, hasHandPump: false, pumpAdds_m: null });
});

type Fault = readonly [string, Files, readonly string[], Station, string];

describe('what is missing or cannot be is told, and the tank is judged none the less', () => {
  const ofTank = (column: string, code: string, verdict: string, cells: Change['settler']): Fault => [
    `${column} ${Object.values(cells!)[0] || 'empty'}`,
    waterWay({ settler: cells! }),
    [`settling.${code} warning @ tanks.csv ${column}`],
    'settling',
    verdict,
  ];
  const missing: readonly Fault[] = [
    ofTank('inletHeight_m', 'inlet_unknown', 'tight', { inletHeight_m: '' }),
    ofTank('inletHeight_m', 'inlet_low', 'tight', { inletHeight_m: '0.45' }),
    ofTank('outletHeight_m', 'draw_off_low', 'short', { outletHeight_m: '0' }),
    ofTank('outletHeight_m', 'draw_off_unknown', 'unknown', { outletHeight_m: '' }),
    ofTank('diameter_m', 'diameter_unknown', 'unknown', { diameter_m: '' }),
    ['no storm', waterWay({}, {}, ['storms']), ['settling.storm_unknown warning @ tanks.csv -'], 'settling', 'tight'],
    [
      'no settling tank where all are to be judged',
      waterWay({}, { judgeSettling: 'always' }, ['settler']),
      ['settling.none warning @ tanks.csv -'],
      'settling',
      'unknown',
    ],
    [
      'nothing known of the dirt of roofs',
      waterWay({}, { roofSolids_g_per_m2_per_year: null }),
      ['settling.solids_unknown note @ settings.json roofSolids_g_per_m2_per_year'],
      'settling',
      'holds',
    ],
    ...(
      [
        ['taps', 'taps_unknown'],
        ['tapHeight_m', 'tap_height_unknown'],
        ['unitHeight_m', 'unit_height_unknown'],
      ] as const
    ).map(
      ([column, code]): Fault => [
        `no ${column}`,
        waterWay({ sites: { [column]: '' } }),
        [`head.${code} warning @ sites.csv ${column}`],
        'tap',
        'unknown',
      ],
    ),
    [
      'nothing said of a hand pump',
      waterWay({ sites: { handPump: '' } }),
      ['head.hand_pump_assumed warning @ sites.csv handPump'],
      'tap',
      'holds',
    ],
    [
      'nothing known of what the unit takes',
      waterWay({}, { unitHead_m: null }),
      ['head.unit_head_unknown warning @ settings.json unitHead_m'],
      'tap',
      'unknown',
    ],
    ...(['bore_mm', 'length_m'] as const).map(
      (column): Fault => [
        `a pipe without ${column}`,
        waterWay({ pipes: { [column]: '' } }),
        [`head.pipe_not_measured warning @ pipes.csv ${column}`],
        'tap',
        'unknown',
      ],
    ),
    [
      'no pipe to the taps',
      waterWay({}, {}, ['tapPipe']),
      ['head.leg_missing warning @ pipes.csv leg'],
      'tap',
      'unknown',
    ],
    [
      'no pipe where all ways are to be judged',
      waterWay({}, { judgeHead: 'always' }, ['pipes', 'tapPipe']),
      ['head.none warning @ pipes.csv -'],
      'tap',
      'unknown',
    ],
    [
      'no stand height',
      waterWay({ tanks: { standHeight_m: '' } }),
      ['head.stand_unknown warning @ tanks.csv standHeight_m'],
      'tap',
      'unknown',
    ],
    [
      'no outlet height',
      waterWay({ tanks: { outletHeight_m: '' } }),
      ['head.outlet_unknown warning @ tanks.csv outletHeight_m'],
      'tap',
      'unknown',
    ],
    [
      'no overflow height',
      waterWay({ tanks: { overflowHeight_m: '' } }),
      ['head.overflow_unknown note @ tanks.csv overflowHeight_m'],
      'tap',
      'holds',
    ],
    [
      'taps higher than the water and no hand pump',
      waterWay({ sites: { tapHeight_m: '3.4' } }),
      ['head.tap_above warning @ sites.csv tapHeight_m'],
      'tap',
      'short',
    ],
    [
      'a unit higher than the water and no hand pump',
      waterWay({ sites: { unitHeight_m: '3.2' } }),
      ['head.unit_above warning @ sites.csv unitHeight_m'],
      'tap',
      'short',
    ],
    [
      'a hand pump far above the water',
      waterWay({ sites: { unitHeight_m: '9.5', handPump: 'yes' } }),
      ['head.suction warning @ sites.csv unitHeight_m'],
      'tap',
      'short',
    ],
  ];

  it.each(missing)('%s', async (_, files, wanted, station, verdict) => {
    const { read, site, told } = await designed(files);
    expect(read.problems.filter(({ severity }) => severity === 'blocker')).toEqual([]);
    expect(lines(told)).toEqual(wanted);
    expect(site.stations[station]).toBe(verdict);
    expect(site.storages.length).toBe(1);
    expect(JSON.stringify([site.settling, site.head, site.working])).not.toMatch(/NaN|Infinity/);
    for (const { what, todo } of told.map((problem) => problemSentence(problem)))
      expect(`${what} ${todo}`).not.toMatch(/undefined|NaN|\(not said\)|\{/);
  });

  it('a pipe of a tank nobody named, with several bodies of water', async () => {
    const files = waterWay({ settler: { role: 'storage', joinedTo: '', nominal_L: '8000' }, pipes: { tankId: '' } });
    const { told, site } = await designed(files);
    expect(lines(told)).toEqual(['head.pipe_tank_unknown warning @ pipes.csv tankId']);
    expect(site.stations.tap).toBe('unknown');
  });

  it('a settling tank no roof leads to', async () => {
    const files = waterWay({});
    const roofs = String(files['roofs.csv']).trimEnd().split('\n');
    const leading = `${roofs[0]},tankId\n${roofs[1]},T1\n`;
    const { told, site } = await designed({ ...files, 'roofs.csv': leading });
    expect(lines(told)).toEqual(['settling.no_roof warning @ tanks.csv -']);
    expect(site.stations.settling).toBe('tight');
  });
});

describe('what cannot be read puts its own station in doubt, and no other', () => {
  it.each([
    ['a bore in words', { pipes: { bore_mm: 'wide' } }, 'tap', 'settling'],
    ['a bore under 0', { tapPipe: { bore_mm: '-32' } }, 'tap', 'settling'],
    ['a height of taps in words', { sites: { tapHeight_m: 'low' } }, 'tap', 'settling'],
    ['half a wall', { settler: { cells: '1.5' } }, 'settling', 'tap'],
    ['an inlet under the floor', { settler: { inletHeight_m: '-1' } }, 'settling', 'tap'],
  ] as const)('%s', async (_, change, station, other) => {
    const { read, site } = await designed(waterWay(change));
    expect(read.problems.map(({ severity }) => severity)).toEqual(['blocker']);
    expect(site.stations[station]).toBe('unknown');
    expect(site.stations[other]).toBe('holds');
    expect(site.storages.length).toBe(1);
  });

  it('a temperature no water has is not taken from the settings', async () => {
    const { read } = await designed(waterWay({}, { waterTemperature_C: 90 }));
    expect(read.problems.map(({ severity, place }) => `${severity} ${place.column}`)).toEqual([
      'blocker waterTemperature_C',
    ]);
  });
});
