import type { ProgrammeRead } from '@eavewell/formats';
import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { good, readFiles } from './folder.ts';
import { fuzzRuns } from './fuzzRuns.ts';

/** One random change to one line of one file, or to its cells. Line 0 is the header and is left alone. */
interface Mutation {
  readonly file: string;
  readonly line: number;
  readonly kind: 'cell' | 'insert' | 'quote' | 'comma' | 'drop' | 'double' | 'bytes';
  readonly at: number;
  readonly text: string;
}

const rainFiles = ['rain/G-east.csv', 'rain/G-west.csv'];
const siteFiles = ['sites.csv', 'roofs.csv', 'diverters.csv', 'tanks.csv'];

const mutation: fc.Arbitrary<Mutation> = fc.record({
  file: fc.constantFrom(...siteFiles, ...rainFiles),
  line: fc.nat(),
  kind: fc.constantFrom('cell', 'insert', 'quote', 'comma', 'drop', 'double', 'bytes'),
  at: fc.nat(),
  text: fc.oneof(
    fc.constantFrom(
      '',
      '-1',
      '0',
      '1e9',
      'NaN',
      '7,5',
      '../x',
      '01/02/2001',
      '=1+1',
      '"',
      'S001',
      'S002',
      'G-west',
      '\u0000',
      '1 500',
    ),
    fc.string({ maxLength: 12, unit: 'binary' }).filter((text) => !/[\r\n]/.test(text)),
  ),
});

function mutatedLine(line: string, { kind, at, text }: Mutation): readonly string[] {
  const cells = line.split(',');
  const i = at % (line.length + 1);
  switch (kind) {
    case 'cell':
      return [cells.map((cell, j) => (j === at % cells.length ? text : cell)).join(',')];
    case 'insert':
      return [line.slice(0, i) + text + line.slice(i)];
    case 'quote':
      return [`${line.slice(0, i)}"${line.slice(i)}`];
    case 'comma':
      return [`${line.slice(0, i)},${line.slice(i)}`];
    case 'drop':
      return [cells.slice(0, at % cells.length).join(',')];
    case 'double':
      return [line, line];
    case 'bytes':
      return [`${line.slice(0, i)}\uFFFD${line.slice(i)}`];
  }
}

/** The files with one line changed, and which line it was, counted as the file's row. */
function mutate(chosen: Mutation): { files: Record<string, string>; row: number } {
  const lines = good[chosen.file]!.trimEnd().split('\n');
  const line = 1 + (chosen.line % (lines.length - 1));
  const changed = [...lines.slice(0, line), ...mutatedLine(lines[line]!, chosen), ...lines.slice(line + 1)];
  return { files: { ...good, [chosen.file]: `${changed.join('\n')}\n` }, row: line + 1 };
}

/** Sites named in the changed line, before or after: only these may come out otherwise. */
function touchedSites(chosen: Mutation, files: Record<string, string>, row: number): readonly string[] {
  const before = good[chosen.file]!.split('\n')[row - 1]!;
  const after = files[chosen.file]!.split('\n')[row - 1]!;
  return ['S001', 'S002', 'S003'].filter((siteId) => `${before}\n${after}`.includes(siteId));
}

let whole: ProgrammeRead;
beforeAll(async () => {
  whole = await readFiles(good);
});

/** Long runs are asked for by `npm run fuzz`. */
const longest_ms = 7_200_000;

it(
  'random changes to one line never stop the reading and never cost a line that was not changed',
  async () => {
    let withProblems = 0;
    await fc.assert(
      fc.asyncProperty(mutation, async (chosen) => {
        const { files, row } = mutate(chosen);
        const read = await readFiles(files);
        if (read.problems.length > 0) withProblems++;
        const touched = touchedSites(chosen, files, row);
        for (const site of whole.facts.sites.filter(({ siteId }) => !touched.includes(siteId))) {
          const { doubts, ...facts } = read.facts.sites.find(({ siteId }) => siteId === site.siteId)!;
          expect({ ...facts, doubts: [] }).toEqual(site);
          // A row whose id is nearly a site's puts that site in doubt, and nothing else may.
          for (const doubt of doubts) expect(doubt).toMatchObject({ file: chosen.file, row });
        }
        for (const gauge of whole.facts.gauges) {
          const now = read.facts.gauges.find(({ gaugeId }) => gaugeId === gauge.gaugeId)!;
          const changed = gauge.file === chosen.file;
          const kept = gauge.readings.filter((reading) => !changed || reading.row !== row);
          const days = new Map(now.readings.map(({ day, rain_mm }) => [`${day} ${rain_mm}`, true]));
          for (const { day, rain_mm } of kept) expect(days.has(`${day} ${rain_mm}`)).toBe(true);
        }
        for (const { rain_mm } of read.facts.gauges.flatMap(({ readings }) => readings))
          expect(rain_mm === null || Number.isFinite(rain_mm)).toBe(true);
        // Nothing vanishes: each row of the changed file is used or listed.
        for (const { rows, used } of read.files) expect(used).toBeLessThanOrEqual(rows);
        const listed = read.notUsed.filter(({ column }) => column === undefined).length;
        const left = read.files.reduce((sum, { rows, used }) => sum + rows - used, 0);
        expect(listed).toBe(left);
      }),
      { numRuns: fuzzRuns(500), seed: 20261125 },
    );
    // The changes are no empty ones: most of them are faults.
    expect(withProblems).toBeGreaterThan(fuzzRuns(500) / 2);
  },
  longest_ms,
);

/** The good folder, with a matching that is used. */
const matched: Readonly<Record<string, string>> = {
  ...good,
  'columns.json': JSON.stringify({
    'tanks.csv': { nominal_L: { column: 'nominal_L', unit: 'm3' }, joinedTo: null },
    'roofs.csv': { width_m: { column: 'width_m', unit: 'ft' } },
    'rain/*.csv': { date: { column: 'date', dateOrder: 'dmy' } },
  }),
};

/** A stretch of any file's bytes replaced by other bytes. */
const damage = fc.record({
  file: fc.constantFrom(...Object.keys(matched)),
  from: fc.nat(),
  length: fc.nat({ max: 40 }),
  bytes: fc.uint8Array({ maxLength: 40 }),
});

it(
  'random damages to the bytes of any files never stop the reading, and every row is used or listed',
  async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(damage, { minLength: 1, maxLength: 3 }), async (damages) => {
        const files: Record<string, Uint8Array> = {};
        for (const [name, text] of Object.entries(matched)) files[name] = new Uint8Array(Buffer.from(text));
        for (const { file, from, length, bytes } of damages) {
          const whole = files[file]!;
          const start = from % whole.length;
          files[file] = new Uint8Array([...whole.slice(0, start), ...bytes, ...whole.slice(start + length)]);
        }
        const read = await readFiles(files);
        const ids = read.facts.sites.map(({ siteId }) => siteId);
        expect(new Set(ids).size).toBe(ids.length);
        const listed = read.notUsed.filter(({ column }) => column === undefined).length;
        expect(listed).toBe(read.files.reduce((sum, { rows, used }) => sum + rows - used, 0));
        expect(JSON.stringify(read.facts)).not.toContain('NaN');
        // A site with a blocker of its own in the list of problems is never free of doubt.
        for (const { severity, place } of read.problems) {
          if (severity !== 'blocker' || place.siteId === undefined) continue;
          const site = read.facts.sites.find(({ siteId }) => siteId === place.siteId);
          if (site) expect(site.doubts).toContainEqual(place);
        }
      }),
      { numRuns: fuzzRuns(300), seed: 20261126 },
    );
  },
  longest_ms,
);
