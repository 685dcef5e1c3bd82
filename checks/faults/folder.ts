import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { isoDay, type Problem, readIsoDay } from '@eavewell/engine';
import { type ProgrammeRead, readProgramme } from '@eavewell/formats';
import { expect } from 'vitest';

/** Files by their path within the folder; bytes where the text would not do. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

function rainText(first: string, depths_mm: readonly string[]): string {
  const start = readIsoDay(first)!;
  return `date,rain_mm\n${depths_mm.map((depth, i) => `${isoDay(start + i)},${depth}\n`).join('')}`;
}

/** A small programme without a fault: three sites, two gauges. Every place and name is invented. */
export const good: Readonly<Record<string, string>> = {
  'sites.csv': [
    'siteId,name,latitude_deg,longitude_deg,people,gaugeId,rainFactor,handOverDay',
    'S001,Upper Tarn,-8.5,125.25,120,G-east,1.1,2027-03-01',
    'S002,Lower Tarn,-8.55,125.3,85,G-east,,',
    'S003,Ferry Stones,-8.75,125.5,240,G-west,,2027-05-15',
    '',
  ].join('\n'),
  'roofs.csv': [
    'siteId,roofId,length_m,width_m,roofPlanArea_m2,material,runoffFraction,gutteredFraction',
    'S001,school,24,8.5,,corrugatedMetal,0.85,1',
    'S001,store,6,4,,corrugatedMetal,,0.5',
    'S002,hall,,,150,tile,0.8,0.9',
    'S003,school,30,9,,corrugatedMetal,0.85,1',
    '',
  ].join('\n'),
  'diverters.csv': [
    'siteId,roofId,firstFlush_mm,chamber_L,drainHole',
    'S001,school,0.5,,open',
    'S003,school,,120,blocked',
    '',
  ].join('\n'),
  'tanks.csv': [
    'siteId,tankId,partId,nominal_L,outletHeight_m,overflowHeight_m,diameter_m,joinedTo',
    'S001,T1,tank-10,10000,0.1,2.2,2.5,',
    'S001,T2,tank-10,10000,,,,T1',
    'S002,T1,tank-5,5000,,,,',
    'S003,T1,,20000,,,,',
    '',
  ].join('\n'),
  'demand.csv': [
    'siteId,purpose,litres_per_person_per_day,judged',
    ',drinking,7.5,yes',
    ',washing,5,no',
    'S003,drinking,10,yes',
    '',
  ].join('\n'),
  'gauges.csv': [
    'gaugeId,name,latitude_deg,longitude_deg,readingTime',
    'G-east,East Landing,-8.5,125.2,07:00',
    'G-west,West Landing,-8.7,125.6,',
    '',
  ].join('\n'),
  'parts.csv': [
    'partId,kind,name,volume_L,mass_kg,length_m,width_m,height_m,packSize,supplier,leadTime_days',
    'tank-10,tank,Tank of ten,9800,210,2.6,2.6,2.4,1,Harbour Yard,40',
    'tank-5,tank,Tank of five,4900,110,1.9,1.9,2.1,1,Harbour Yard,40',
    'gutter-4,gutter,Gutter,,5.5,4,0.15,0.12,10,,',
    '',
  ].join('\n'),
  'prices.csv': [
    'partId,priceDate,amount,currency',
    'tank-10,2026-02-01,1450,USD',
    'tank-5,2026-02-01,820,USD',
    '',
  ].join('\n'),
  'settings.json': '{ "programme": "Tarn water", "target": { "longestDryRun_days": 5 } }\n',
  'rain/G-east.csv': rainText('2001-02-26', ['0', '12.5', '', '3.25', '0.2', '41', '0']),
  'rain/G-west.csv': rainText('2001-02-26', ['1', '0', '0', '7.75', '0.5', '', '2']),
};

/** The good folder with one piece of one file changed; the piece must stand there exactly once. */
export function changed(file: string, from: string, to: string): Files {
  const text = good[file]!;
  expect(text.split(from)).toHaveLength(2);
  return { ...good, [file]: text.replace(from, () => to) };
}

/** Puts the files into a folder of their own, runs the work there, and takes the folder away. */
export async function inFolder<T>(files: Files, work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-faults-'));
  try {
    for (const [path, content] of Object.entries(files)) {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), content);
    }
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Reads the files as a programme. */
export function readFiles(files: Files): Promise<ProgrammeRead> {
  return inFolder(files, readProgramme);
}

/** A problem as one line: code, severity, place and the value found. */
export function line({ code, severity, place, facts }: Problem): string {
  const at = [place.file ?? '-', place.row ?? '-', place.column ?? '-'].join(' ');
  return `${code} ${severity} @ ${at} = ${JSON.stringify(facts['value'])}`;
}

/** What was not used, as lines: file, row, column or `whole`, code. */
export function listed(read: ProgrammeRead): readonly string[] {
  return read.notUsed.map(({ file, row, column, code }) => `${file} ${row} ${column ?? 'whole'} ${code}`);
}

/** Which sites are in doubt. */
export function doubted(read: ProgrammeRead): readonly string[] {
  return read.facts.sites.filter(({ doubts }) => doubts.length > 0).map(({ siteId }) => siteId);
}

/** One fault planted in the good folder, and all that must come of it. */
export interface Planted {
  readonly fault: string;
  readonly files: () => Files;
  /** Every problem, as `line` writes it, in order. */
  readonly problems: readonly string[];
  /** Every entry of the list of what was not used. */
  readonly notUsed: readonly string[];
  /** Sites that may differ from the good folder's, and are in doubt. */
  readonly inDoubt: readonly string[];
  /** Gauges whose readings may differ. */
  readonly gauges?: readonly string[];
  /** Sites that may differ without being in doubt. */
  readonly differ?: readonly string[];
}

/** Reads a planted fault and asserts its problems, its list, its doubts, and that all else is as in the good folder. */
export async function assertPlanted(planted: Planted): Promise<ProgrammeRead> {
  const read = await readFiles(planted.files());
  const whole = await readFiles(good);
  expect(read.problems.map(line)).toEqual(planted.problems);
  expect(listed(read)).toEqual(planted.notUsed);
  expect(doubted(read)).toEqual(planted.inDoubt);
  const touched = [...planted.inDoubt, ...(planted.differ ?? [])];
  const others = (sites: ProgrammeRead['facts']['sites']) => sites.filter(({ siteId }) => !touched.includes(siteId));
  expect(others(read.facts.sites)).toEqual(others(whole.facts.sites));
  const untouched = (gauges: ProgrammeRead['facts']['gauges']) =>
    gauges.filter(({ gaugeId }) => !planted.gauges?.includes(gaugeId));
  expect(untouched(read.facts.gauges)).toEqual(untouched(whole.facts.gauges));
  return read;
}
