import { designSites, isoDay, type Problem, readIsoDay, readyProgramme, type SiteDesign } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

/** Tables of one site of which everything that a storm meets is measured, by column. */
const measured = {
  roofs: {
    ...{ siteId: 'S001', roofId: 'school', length_m: '12', width_m: '6', material: 'corrugatedMetal' },
    ...{
      runoffFraction: '0.85',
      gutteredFraction: '1',
      form: 'gable',
      pitch_deg: '20',
      eaveHeight_m: '3',
      valleys: '',
    },
  },
  diverters: {
    ...{ siteId: 'S001', roofId: 'school', firstFlush_mm: '', chamber_L: '40', drainHole: 'open' },
    ...{ chamberBore_mm: '200', drainHole_mm: '4' },
  },
  gutters: {
    ...{ siteId: 'S001', gutterId: 'G1', roofId: 'school', shape: 'trapezoidal', width_mm: '200', depth_mm: '120' },
    ...{ length_m: '12', fall_mm_per_m: '4', outlet_mm: '110', baseWidth_mm: '140', outlets: '2', runToOutlet_m: '' },
    ...{ bends: '', outletGrate: 'open' },
  },
  downpipes: { siteId: 'S001', downpipeId: 'D1', roofId: 'school', bore_mm: '110', length_m: '2.5' },
  tanks: {
    ...{ siteId: 'S001', tankId: 'T1', nominal_L: '10000', outletHeight_m: '0.1', overflowHeight_m: '2' },
    ...{ diameter_m: '2.5', height_m: '2.2', standHeight_m: '0.3', inletHeight_m: '', overflowBore_mm: '110' },
    ...{ overflows: '', overflowScreen: 'open' },
  },
  storms: {
    ...{ gaugeId: 'G-east', returnPeriod_years: '20', intensity_mm_per_h: '150', low_mm_per_h: '', high_mm_per_h: '' },
    source: 'An invented weather service',
  },
} as const;
type Table = keyof typeof measured;
type Change = { readonly [T in Table]?: Partial<Record<keyof (typeof measured)[T], string>> };

const longRain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');

/** The good folder with its first site measured, but for what is changed; the stand is not asked about. */
function gutteredHouse(change: Change, without: readonly Table[] = []): Files {
  const files: Record<string, string> = { ...good, 'rain/G-east.csv': longRain };
  for (const table of Object.keys(measured) as Table[]) {
    if (without.includes(table)) continue;
    const cells: Readonly<Record<string, string>> = { ...measured[table], ...change[table] };
    files[`${table}.csv`] = `${Object.keys(cells).join(',')}\n${Object.values(cells).join(',')}\n`;
  }
  files['sites.csv'] = `${good['sites.csv']!.split('\n').slice(0, 2).join('\n')}\n`.replace(',1.1,', ',1,');
  files['demand.csv'] = 'siteId,purpose,litres_per_person_per_day,judged\n,drinking,7.5,yes\n';
  files['settings.json'] = '{ "judgeStand": "never" }';
  return files;
}

async function designed(files: Files): Promise<{ read: ProgrammeRead; site: SiteDesign; told: readonly Problem[] }> {
  const read = await readFiles(files);
  const [site] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
  return { read, site: site!, told: site!.problems.filter(({ code }) => /^(?:drainage|storm)\./.test(code)) };
}
const lines = (problems: readonly Problem[]) =>
  problems.map(({ code, severity, place }) => `${code} ${severity} @ ${place.file} ${place.column}`);

it('a house with everything measured has no fault, and its gutters hold', async () => {
  const { read, site, told } = await designed(gutteredHouse({}));
  expect([lines(read.problems), lines(told)]).toEqual([[], []]);
  expect(site.stations.gutter).toBe('holds');
  expect(site.drainage!.parts.map(({ part }) => part)).toEqual(['gutter', 'outlet', 'downpipe', 'overflow']);
});

describe('what is missing or cannot be leaves the gutters unknown and the tank judged', () => {
  const faults: readonly (readonly [string, Files, string])[] = [
    [
      'a level gutter',
      gutteredHouse({ gutters: { fall_mm_per_m: '0' } }),
      'drainage.gutter_level warning @ gutters.csv fall_mm_per_m',
    ],
    [
      'a gutter that falls backwards',
      gutteredHouse({ gutters: { fall_mm_per_m: '-3' } }),
      'drainage.gutter_backwards warning @ gutters.csv fall_mm_per_m',
    ],
    [
      'an outlet wider than its gutter',
      gutteredHouse({ gutters: { outlet_mm: '250' } }),
      'drainage.outlet_wider warning @ gutters.csv outlet_mm',
    ],
    [
      'no outlet',
      gutteredHouse({ gutters: { outlet_mm: '' } }),
      'drainage.outlet_not_measured warning @ gutters.csv outlet_mm',
    ],
    ...(['shape', 'width_mm', 'depth_mm', 'length_m', 'baseWidth_mm'] as const).map(
      (column) =>
        [
          `no ${column}`,
          gutteredHouse({ gutters: { [column]: '' } }),
          `drainage.gutter_not_measured warning @ gutters.csv ${column}`,
        ] as const,
    ),
    [
      'a sole wider than the top',
      gutteredHouse({ gutters: { baseWidth_mm: '220' } }),
      'drainage.sole_wider warning @ gutters.csv baseWidth_mm',
    ],
    [
      'a run longer than its gutter',
      gutteredHouse({ gutters: { runToOutlet_m: '13' } }),
      'drainage.run_impossible warning @ gutters.csv runToOutlet_m',
    ],
    [
      'a run beyond what is known',
      gutteredHouse({ gutters: { length_m: '130' } }),
      'drainage.run_too_long warning @ gutters.csv runToOutlet_m',
    ],
    [
      'no gutter of a roof that has pipes',
      gutteredHouse({}, ['gutters']),
      'drainage.gutter_missing warning @ gutters.csv undefined',
    ],
    [
      'gutters on a roof of which no share has any',
      gutteredHouse({ roofs: { gutteredFraction: '0' } }),
      'drainage.guttered_share_zero warning @ roofs.csv gutteredFraction',
    ],
    [
      'no bore of a downpipe',
      gutteredHouse({ downpipes: { bore_mm: '' } }),
      'drainage.downpipe_not_measured warning @ downpipes.csv bore_mm',
    ],
    [
      'an overflow at the rim',
      gutteredHouse({ tanks: { height_m: '2' } }),
      'drainage.overflow_at_rim warning @ tanks.csv overflowHeight_m',
    ],
    [
      'a tank taller than the eave',
      gutteredHouse({ roofs: { eaveHeight_m: '2.4' } }),
      'drainage.tank_above_eave warning @ roofs.csv eaveHeight_m',
    ],
    [
      'a roof like a wall',
      gutteredHouse({ roofs: { pitch_deg: '73' } }),
      'drainage.roof_too_steep warning @ roofs.csv pitch_deg',
    ],
    ['no storm', gutteredHouse({}, ['storms']), 'drainage.no_storm warning @ storms.csv undefined'],
  ];

  it.each(faults)('%s', async (_name, files, wanted) => {
    const { site, told } = await designed(files);
    expect(lines(told)).toEqual([wanted]);
    expect(site.stations.gutter).toBe('unknown');
    expect(site.storages).toHaveLength(1);
    expect(site.stations.storage).not.toBe('unknown');
    const { what, todo } = problemSentence(told[0]!);
    expect(`${what} ${todo}`).not.toContain('(not said)');
  });
});

describe('what is taken for granted keeps the gutters from holding', () => {
  const assumed: readonly (readonly [string, Change, string])[] = [
    ['pitch', { roofs: { pitch_deg: '' } }, 'drainage.pitch_unknown warning @ roofs.csv pitch_deg'],
    ['fall', { gutters: { fall_mm_per_m: '' } }, 'drainage.fall_unknown warning @ gutters.csv fall_mm_per_m'],
    ['rim', { tanks: { height_m: '' } }, 'drainage.overflow_head_assumed warning @ tanks.csv height_m'],
  ];
  it.each(assumed)('%s', async (_name, change, wanted) => {
    const { site, told } = await designed(gutteredHouse(change));
    expect(lines(told)).toEqual([wanted]);
    expect(site.stations.gutter).toBe('tight');
  });
});

describe('what is told and changes no verdict', () => {
  const notes: readonly (readonly [string, Files, string])[] = [
    ['valleys', gutteredHouse({ roofs: { valleys: '2' } }), 'drainage.valleys warning @ roofs.csv valleys'],
    ['no downpipe', gutteredHouse({}, ['downpipes']), 'drainage.downpipe_missing note @ downpipes.csv undefined'],
    [
      'no bore of the overflow',
      gutteredHouse({ tanks: { overflowBore_mm: '' } }),
      'drainage.overflow_not_measured note @ tanks.csv overflowBore_mm',
    ],
    [
      'a small chamber',
      gutteredHouse({ diverters: { chamber_L: '30' } }),
      'drainage.first_flush_small warning @ diverters.csv chamber_L',
    ],
    [
      'a hole that takes days',
      gutteredHouse({ diverters: { chamber_L: '5000', chamberBore_mm: '2000', drainHole_mm: '2' } }),
      'drainage.first_flush_slow warning @ diverters.csv drainHole_mm',
    ],
    [
      'a hole that lets a rain through',
      gutteredHouse({ diverters: { drainHole_mm: '15' } }),
      'drainage.first_flush_fast warning @ diverters.csv drainHole_mm',
    ],
    [
      'a chamber nobody measured',
      gutteredHouse({ diverters: { chamberBore_mm: '' } }),
      'drainage.first_flush_not_measured note @ diverters.csv chamberBore_mm',
    ],
  ];
  it.each(notes)('%s', async (_name, files, wanted) => {
    const { site, told } = await designed(files);
    expect(lines(told)).toEqual([wanted]);
    expect(site.stations.gutter).toBe('holds');
    const { what, todo } = problemSentence(told[0]!);
    expect(`${what} ${todo}`).not.toContain('(not said)');
  });

  it('rain that fell harder than the gutters carry is told where short intervals were measured', async () => {
    const rows = ['2016-02-03,14:05,5,2', '2016-02-03,14:10,5,60', '2016-02-03,14:15,5,2'].map(
      (row) => `G-east,${row}`,
    );
    const shortRain = ['gaugeId,date,time,interval_min,rain_mm', ...rows, ''].join('\n');
    const { site, told } = await designed({ ...gutteredHouse({}), 'shortRain.csv': shortRain });
    expect(lines(told)).toContain('drainage.rain_lost warning @ gutters.csv undefined');
    // 60 mm in five minutes; what is over the rain that the roof's parts carry is lost, of 64 mm in all.
    const uses = site.drainage!.parts.filter(({ roofId }) => roofId !== null).map(({ use_fraction }) => use_fraction!);
    const carried_mm = 150 / Math.max(...uses) / 12;
    expect(carried_mm).toBeLessThan(59);
    expect(site.drainage!.lost_fraction).toBeCloseTo((60 - carried_mm) / 64, 2);
    expect(site.stations.gutter).toBe('holds');
  });

  it('a blocked diverter lets nothing go', async () => {
    const { site } = await designed(gutteredHouse({ diverters: { drainHole: 'blocked' } }));
    expect(site.drainage!.firstFlush).toMatchObject([{ isBlocked: true, diverted_mm: 0, loadLeft_fraction: 1 }]);
    expect(site.problems.map(({ code }) => code)).toContain('site.diverter_blocked');
  });
});

it('a cell that cannot be read puts the gutters in doubt and nothing else', async () => {
  const { read, site } = await designed(gutteredHouse({ gutters: { width_mm: 'wide' } }));
  expect(read.problems.map(({ code }) => code)).toEqual(['cell.not_a_number']);
  expect(site.stations.gutter).toBe('unknown');
  expect(site.stations.storage).not.toBe('unknown');
});
