import { type CarrierLoads, kitOfSite, loadsOf, type Problem, piecesOf, readIsoDay } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

const textOf = (lines: readonly string[]) => `${lines.join('\n')}\n`;
const parts = [
  'partId,kind,name,length_m,width_m,height_m,mass_kg,packSize,fragile,danger',
  'tank-10,tank,Tank of ten,2.6,2.6,2.1,210,1,,',
  'tank-5,tank,Tank of five,1.9,1.9,1.6,120,1,,',
  'gutter-4,gutter,Gutter,4,0.15,0.1,4.2,1,,',
  'tap,tap,Tap,0.12,0.08,0.05,0.3,5,,',
  'tin,other,Tin of chlorine,0.2,0.2,0.2,1.1,1,,chlorine',
  'can,other,Can of petrol,0.4,0.2,0.4,17,1,,fuel',
  'glass,other,Bottles,0.3,0.2,0.2,2.2,1,yes,',
];
const rules = [
  'R-gutter,gutter-4,gutterMetre,1',
  'R-tap,tap,tap,1',
  'R-tin,tin,site,1',
  'R-can,can,site,1',
  'R-glass,glass,site,2',
];
const carriers = [
  'carrierId,name,mode,limit_kg,limit_L,longest_m,freeboard_cm,leastFreeboard_cm',
  'canoe,Canoe,boat,320,,4.5,30,25',
  'porter,Porter,person,20,,4.5,,',
];

/** The good folder with a kit and carriers; a row of one of its tables in place of another. */
function loaded(given: Readonly<Record<string, readonly [from: string, to: string]>> = {}): Files {
  const files: Record<string, string> = {
    'parts.csv': textOf(parts),
    'kitRules.csv': textOf(['ruleId,partId,countedBy,each_count', ...rules]),
    'carriers.csv': textOf(carriers),
    'gutters.csv': 'siteId,gutterId,roofId,shape,width_mm,depth_mm,length_m\nS001,G1,school,halfRound,150,75,23.5\n',
    'sites.csv': good['sites.csv']!.replace(/$/m, ',taps').replace(/^(S00\d.*)$/gm, '$1,3'),
  };
  for (const [file, [from, to]] of Object.entries(given)) {
    expect(files[file]!.split(from)).toHaveLength(2);
    files[file] = files[file]!.replace(from, to);
  }
  return { ...good, ...files };
}

async function carried(files: Files, carrierId: string): Promise<{ loads: CarrierLoads; read: readonly Problem[] }> {
  const { facts, problems } = await readFiles(files);
  const site = kitOfSite(facts.sites[0]!, { ...facts, today: readIsoDay('2026-06-01') });
  const carrier = facts.kit.carriers.find((one) => one.carrierId === carrierId)!;
  return { loads: loadsOf(piecesOf(site.lines, facts.parts), carrier, facts.kit.keptApart), read: problems };
}
const codes = ({ problems }: CarrierLoads) => problems.map(({ code }) => code);
const inside = ({ loads }: CarrierLoads) => loads.flatMap(({ pieces }) => pieces.map(({ partId }) => partId));
const sentence = ({ problems }: CarrierLoads, code: string) =>
  problemSentence(problems.find((one) => one.code === code)!).what;

it('a kit goes in loads of its carriers', async () => {
  const { loads } = await carried(loaded(), 'canoe');
  expect(codes(loads)).toEqual([]);
  expect(new Set(inside(loads))).toEqual(new Set(['tank-10', 'gutter-4', 'tap', 'tin', 'can', 'glass']));
  // Tanks of 210 kg in pairs are over 320 kg, and chlorine is not with petrol.
  expect(loads.loads).toHaveLength(2);
  expect(loads.isLeast).toBe(true);
});

it('a part without a mass is named and in no load; the rest goes', async () => {
  const { loads } = await carried(loaded({ 'parts.csv': ['0.1,4.2,1', '0.1,,1'] }), 'canoe');
  expect(codes(loads)).toEqual(['loads.mass_unknown']);
  expect(sentence(loads, 'loads.mass_unknown')).toBe('8 pieces have no mass and are in no load of Canoe: Gutter.');
  expect(inside(loads)).not.toContain('gutter-4');
  expect(inside(loads)).toContain('tap');
});

it('a piece longer than any boat is named, with how much too long it is', async () => {
  const { loads } = await carried(loaded({ 'parts.csv': ['Gutter,4,0.15', 'Gutter,6,0.15'] }), 'canoe');
  // Of 6 m: four for 23.5 m, and two for 3 m on each eave of the store, as a cut takes 3 mm.
  expect(codes(loads)).toEqual(['loads.cannot_carry']);
  expect(sentence(loads, 'loads.cannot_carry')).toBe('Canoe cannot take Gutter (6): 1.5 m too long.');
  expect(inside(loads)).toContain('tap');
});

it('a piece that nobody may lift is named; what is for two goes by two', async () => {
  const { loads } = await carried(loaded(), 'porter');
  expect(sentence(loads, 'loads.cannot_carry')).toBe('Porter cannot take Tank of ten (2): 180 kg too heavy.');
  expect(Math.max(...loads.loads.map(({ mass_kg }) => mass_kg))).toBeLessThanOrEqual(20);
  expect(loads.cautions).toContain('lifting');
});

it('a boat whose limit nobody stated has no load', async () => {
  const { loads } = await carried(loaded({ 'carriers.csv': ['boat,320', 'boat,'] }), 'canoe');
  expect(codes(loads)).toEqual(['loads.no_limit']);
  expect(loads.loads).toEqual([]);
  expect(sentence(loads, 'loads.no_limit')).toBe(
    'Nobody has stated how much Canoe may carry, so no load is made for it.',
  );
});

it('a boat that lies too low at its limit is told of', async () => {
  const { loads } = await carried(loaded({ 'carriers.csv': ['30,25', '20,25'] }), 'canoe');
  expect(sentence(loads, 'loads.freeboard_short')).toBe(
    'With its load aboard Canoe has 20 cm of freeboard, and at least 25 cm is to be kept.',
  );
});

it('a mass below nothing is a fault of its cell, and then not known', async () => {
  const { loads, read } = await carried(loaded({ 'parts.csv': ['0.1,4.2,1', '0.1,-4.2,1'] }), 'canoe');
  expect(read.map(({ place }) => [place.file, place.column])).toContainEqual(['parts.csv', 'mass_kg']);
  expect(codes(loads)).toEqual(['loads.mass_unknown']);
});
