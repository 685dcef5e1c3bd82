import { type SiteFacts, unmeasuredGutter } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { changed, type Files, good, type Planted, readFiles } from './folder.ts';

/** The good folder with its building measured. */
const measured: Files = {
  ...good,
  'roofs.csv': [
    'siteId,roofId,length_m,width_m,roofPlanArea_m2,material,runoffFraction,gutteredFraction,form,pitch_deg,eaveHeight_m',
    'S001,school,24,8.5,,corrugatedMetal,0.85,1,gable,22,3.1',
    'S001,store,6,4,,corrugatedMetal,,0.5,,,',
    'S002,hall,,,150,tile,0.8,0.9,hip,30,2.9',
    'S003,school,30,9,,corrugatedMetal,0.85,1,oneSlope,5,',
    '',
  ].join('\n'),
  'gutters.csv': [
    'siteId,gutterId,roofId,shape,width_mm,depth_mm,length_m,fall_mm_per_m,outlet_mm',
    'S001,G1,school,halfRound,150,75,24,5,90',
    'S001,G2,school,cutPipe,,,23.5,0,',
    '',
  ].join('\n'),
  'downpipes.csv': ['siteId,downpipeId,roofId,bore_mm,length_m', 'S001,D1,school,90,2.6', ''].join('\n'),
  'pipes.csv': [
    'siteId,pipeId,leg,tankId,bore_mm,length_m,material,elbows,tees,valves,meters,otherLoss_k',
    'S001,P1,tankToUnit,T1,26.2,4.5,plastic,3,,1,,',
    'S001,P2,unitToTap,,20.4,1.2,galvanised,2,1,,1,0.5',
    '',
  ].join('\n'),
};

function inMeasured(file: string, from: string, to: string): Files {
  const text = String(measured[file]);
  if (!text.includes(from)) throw new Error(`${file} has no "${from}"`);
  return { ...measured, [file]: text.replace(from, to) };
}

it('reads the measures of a building; what was not measured is not known', async () => {
  const { facts, problems, notUsed } = await readFiles(measured);
  expect([problems, notUsed]).toEqual([[], []]);
  const [first, , third] = facts.sites;
  expect(first!.roofs).toMatchObject([
    { form: 'gable', pitch_deg: 22, eaveHeight_m: 3.1 },
    { form: null, pitch_deg: null, eaveHeight_m: null },
  ]);
  expect(first!.gutters).toEqual([
    {
      ...unmeasuredGutter,
      gutterId: 'G1',
      roofId: 'school',
      shape: 'halfRound',
      width_mm: 150,
      depth_mm: 75,
      length_m: 24,
      fall_mm_per_m: 5,
      outlet_mm: 90,
    },
    {
      ...unmeasuredGutter,
      gutterId: 'G2',
      roofId: 'school',
      shape: 'cutPipe',
      length_m: 23.5,
      fall_mm_per_m: 0,
    },
  ]);
  expect(first!.downpipes).toEqual([{ downpipeId: 'D1', roofId: 'school', bore_mm: 90, length_m: 2.6 }]);
  expect([third!.gutters, third!.downpipes, third!.pipes]).toEqual([[], [], []]);
  const fittings = { tees_count: null, valves_count: 1, meters_count: null, otherLoss_k: null };
  expect(first!.pipes).toEqual([
    {
      ...{ pipeId: 'P1', tankId: 'T1', leg: 'tankToUnit', bore_mm: 26.2, length_m: 4.5, material: 'plastic' },
      ...{ elbows_count: 3, ...fittings },
    },
    {
      ...{ pipeId: 'P2', tankId: null, leg: 'unitToTap', bore_mm: 20.4, length_m: 1.2, material: 'galvanised' },
      ...{ elbows_count: 2, tees_count: 1, valves_count: null, meters_count: 1, otherLoss_k: 0.5 },
    },
  ]);
});

/** What one station alone is judged by leaves that station in doubt, and the rest of its site judged as before. */
interface PlantedBeside extends Planted {
  /** The site and its station. */
  readonly beside: readonly string[];
}

const planted: readonly PlantedBeside[] = [
  {
    fault: 'a gutter of a roof that is not there',
    files: () => inMeasured('gutters.csv', 'G2,school', 'G2,shool'),
    problems: ['link.pipe_roof_unknown blocker @ gutters.csv 3 roofId = "shool"'],
    notUsed: ['gutters.csv 3 whole link.pipe_roof_unknown'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'a downpipe of a roof of another site',
    files: () => inMeasured('downpipes.csv', 'D1,school', 'D1,hall'),
    problems: ['link.pipe_roof_unknown blocker @ downpipes.csv 2 roofId = "hall"'],
    notUsed: ['downpipes.csv 2 whole link.pipe_roof_unknown'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'a gutter of a site that is not there, whose id is nearly that of one',
    files: () => inMeasured('gutters.csv', 'S001,G2', 'S0O1,G2'),
    problems: ['link.unknown_site blocker @ gutters.csv 3 siteId = "S0O1"'],
    notUsed: ['gutters.csv 3 whole link.unknown_site'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'a gutter with words where its width belongs',
    files: () => inMeasured('gutters.csv', 'halfRound,150', 'halfRound,wide'),
    problems: ['cell.not_a_number blocker @ gutters.csv 2 width_mm = "wide"'],
    notUsed: ['gutters.csv 2 width_mm cell.not_a_number'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'a shape nobody knows',
    files: () => inMeasured('gutters.csv', 'cutPipe', 'cutpip'),
    problems: ['cell.not_a_choice blocker @ gutters.csv 3 shape = "cutpip"'],
    notUsed: ['gutters.csv 3 shape cell.not_a_choice'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'two gutters of one id',
    files: () => inMeasured('gutters.csv', 'S001,G2', 'S001,G1'),
    problems: ['row.key_twice blocker @ gutters.csv 3 gutterId = "S001 G1"'],
    notUsed: ['gutters.csv 3 whole row.key_twice'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'a pitch that is a wall',
    files: () => inMeasured('roofs.csv', 'gable,22', 'gable,85'),
    problems: ['cell.out_of_range blocker @ roofs.csv 2 pitch_deg = "85"'],
    notUsed: ['roofs.csv 2 pitch_deg cell.out_of_range'],
    inDoubt: [],
    beside: ['S001 drainage'],
  },
  {
    fault: 'an eave in feet',
    files: () => inMeasured('roofs.csv', 'hip,30,2.9', 'hip,30,9.5'),
    problems: ['cell.unusual warning @ roofs.csv 4 eaveHeight_m = "9.5"'],
    notUsed: [],
    inDoubt: [],
    beside: [],
  },
  {
    fault: 'a pipe of a site that is not there, whose id is nearly that of one',
    files: () => inMeasured('pipes.csv', 'S001,P2', 'S0O1,P2'),
    problems: ['link.unknown_site blocker @ pipes.csv 3 siteId = "S0O1"'],
    notUsed: ['pipes.csv 3 whole link.unknown_site'],
    inDoubt: [],
    beside: ['S001 head'],
  },
  {
    fault: 'a pipe from a tank that is not there',
    files: () => inMeasured('pipes.csv', 'tankToUnit,T1', 'tankToUnit,T9'),
    problems: ['link.unknown_tank blocker @ pipes.csv 2 tankId = "T9"'],
    notUsed: ['pipes.csv 2 tankId link.unknown_tank'],
    inDoubt: [],
    beside: ['S001 head'],
  },
  {
    fault: 'two pipes of one id',
    files: () => inMeasured('pipes.csv', 'S001,P2', 'S001,P1'),
    problems: ['row.key_twice blocker @ pipes.csv 3 pipeId = "S001 P1"'],
    notUsed: ['pipes.csv 3 whole row.key_twice'],
    inDoubt: [],
    beside: ['S001 head'],
  },
  {
    fault: 'a pipe that leads nowhere we know',
    files: () => inMeasured('pipes.csv', 'unitToTap', 'unitToTank'),
    problems: ['cell.not_a_choice blocker @ pipes.csv 3 leg = "unitToTank"'],
    notUsed: ['pipes.csv 3 whole cell.not_a_choice'],
    inDoubt: [],
    beside: ['S001 head'],
  },
  {
    fault: 'a bore with its unit',
    files: () => inMeasured('pipes.csv', 'T1,26.2', 'T1,26.2 mm'),
    problems: ['cell.unit_in_number blocker @ pipes.csv 2 bore_mm = "26.2 mm"'],
    notUsed: ['pipes.csv 2 bore_mm cell.unit_in_number'],
    inDoubt: [],
    beside: ['S001 head'],
  },
];

/** Each site with each station of it that is in doubt. */
const besideOf = (sites: readonly SiteFacts[]) =>
  sites.flatMap(({ siteId, doubtsBeside }) =>
    Object.entries(doubtsBeside).flatMap(([station, places]) => (places.length > 0 ? [`${siteId} ${station}`] : [])),
  );

it.each(planted)('$fault: the site is judged as before', async ({ files, problems, notUsed, inDoubt, beside }) => {
  const [read, whole] = [await readFiles(files()), await readFiles(measured)];
  const line = ({ code, severity, place, facts }: (typeof read.problems)[number]) =>
    `${code} ${severity} @ ${place.file} ${place.row} ${place.column} = "${facts['value']}"`;
  expect(read.problems.map(line)).toEqual(problems);
  expect(read.notUsed.map(({ file, row, column, code }) => `${file} ${row} ${column ?? 'whole'} ${code}`)).toEqual(
    notUsed,
  );
  expect(read.facts.sites.filter(({ doubts }) => doubts.length > 0).map(({ siteId }) => siteId)).toEqual(inDoubt);
  expect(besideOf(read.facts.sites)).toEqual(beside);
  const bare = (facts: typeof read.facts) =>
    facts.sites.map(({ doubts: _, doubtsBeside: _b, gutters: _g, downpipes: _d, pipes: _p, roofs, ...site }) => ({
      ...site,
      roofs: roofs.map(({ pitch_deg: _pitch, eaveHeight_m: _e, ...roof }) => roof),
    }));
  expect(bare(read.facts)).toEqual(bare(whole.facts));
});

it('names an overflow above the wall of its tank, and uses both', async () => {
  const files = changed('tanks.csv', 'diameter_m,joinedTo', 'diameter_m,joinedTo,height_m,standHeight_m');
  const withHeight = (height: string) => ({
    ...files,
    'tanks.csv': String(files['tanks.csv']).replace('2.2,2.5,', `2.2,2.5,,${height},0.4`),
  });
  const lines = async (height: string) =>
    (await readFiles(withHeight(height))).problems
      .filter(({ code }) => code !== 'row.cells_missing')
      .map(({ code, severity, place, facts }) => [code, severity, place.row, place.column, facts]);
  expect(await lines('2.4')).toEqual([]);
  expect(await lines('2.2')).toEqual([]);
  expect(await lines('2.1')).toEqual([
    [
      'row.overflow_above_wall',
      'warning',
      2,
      'overflowHeight_m',
      { value: '2.2', wall_m: 2.1, unit: 'm', column: 'overflowHeight_m' },
    ],
  ]);
  const { facts } = await readFiles(withHeight('2.1'));
  expect(facts.sites[0]!.tanks[0]).toMatchObject({ overflowHeight_m: 2.2, height_m: 2.1, standHeight_m: 0.4 });
});

it.each([
  ['gutters.csv', 'x,y\n1,2\n', 'drainage'],
  ['downpipes.csv', 'x,y\n1,2\n', 'drainage'],
  ['pipes.csv', 'x,y\n1,2\n', 'head'],
  ['pipes.csv', new Uint8Array([0xff, 0xfe, 0x00, 0xd8, 0x41]), 'head'],
] as const)('%s that cannot be read puts one station of every site in doubt (%#)', async (file, content, station) => {
  const read = await readFiles({ ...good, [file]: content });
  const whole = await readFiles(good);
  expect(read.problems.filter(({ place, severity }) => place.file === file && severity === 'blocker')).not.toEqual([]);
  const ids = whole.facts.sites.map(({ siteId }) => siteId);
  expect(besideOf(read.facts.sites)).toEqual(ids.map((siteId) => `${siteId} ${station}`));
  const bare = (sites: readonly SiteFacts[]) => sites.map(({ doubtsBeside: _, ...site }) => site);
  expect(bare(read.facts.sites)).toEqual(bare(whole.facts.sites));
});

it.each([
  ['storms.csv', 'x,y\n1,2\n'],
  ['stormCoefficients.csv', new Uint8Array([0xff, 0xfe, 0x00, 0xd8, 0x41])],
])('%s that cannot be read puts the gutters there are in doubt', async (file, content) => {
  const { facts } = await readFiles({ ...measured, [file]: content });
  expect(besideOf(facts.sites)).toEqual(['S001 drainage']);
});
