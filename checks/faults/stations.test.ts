import { isoDay, readIsoDay } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { july1976, november1962, october1962 } from '../records/stationLines.ts';
import { type Files, good, line, listed, readFiles } from './folder.ts';

const { 'rain/G-east.csv': _table, ...rest } = good;
const dly = 'rain/G-east.dly';
const csv = 'rain/G-east.csv';

const fixed = (...lines: readonly string[]): Files => ({ ...rest, [dly]: lines.map((one) => `${one}\n`).join('') });
const separated = (...lines: readonly string[]): Files => ({ ...rest, [csv]: lines.map((one) => `${one}\n`).join('') });

/** A line of an invented station: the values of its first days; the others are missing. */
function month(element: string, slots: readonly string[], { id = 'XX000000001', when = '200102' } = {}): string {
  return `${id}${when}${element}${[...slots, ...Array.from({ length: 31 - slots.length }, () => '-9999   ')].join('')}`;
}
const slot = (value: number, flags = '  a') => `${String(value).padStart(5)}${flags}`;

const readingsOf = (read: ProgrammeRead) => read.facts.gauges[0]!.readings;
const rainOn = (read: ProgrammeRead, day: string) => readingsOf(read).find((one) => isoDay(one.day) === day)?.rain_mm;
const codes = (read: ProgrammeRead) => read.problems.map(line);
const taken = (file: string, station = 'XX000000001') => `station.file note @ ${file} - - = "${station}"`;

describe('a station file of fixed width', () => {
  it('gives mm for tenths, null for missing, 0 for a trace, and no day behind the end of a month', async () => {
    const read = await readFiles(fixed(october1962, november1962));
    const readings = readingsOf(read);
    expect(readings).toHaveLength(31 + 30);
    expect(readings.slice(0, 14).every(({ rain_mm }) => rain_mm === null)).toBe(true);
    expect(readings.filter(({ rain_mm }) => rain_mm === null)).toHaveLength(14);
    expect([rainOn(read, '1962-10-16'), rainOn(read, '1962-10-21'), rainOn(read, '1962-10-31')]).toEqual([0, 10.2, 3]);
    const november = readings.slice(31).map(({ rain_mm }) => rain_mm!);
    expect(november.reduce((sum, rain_mm) => sum + rain_mm, 0)).toBeCloseTo(113.6, 9);
    expect(november.filter((rain_mm) => rain_mm >= 1)).toHaveLength(7);
    expect(codes(read)).toEqual([taken(dly, 'USW00003870'), `station.trace note @ ${dly} 1 VALUE16 = "T"`]);
    expect(read.problems[1]!.facts['count']).toBe(1 + 8);
    expect(read.facts.gauges[0]!.file).toBe(dly);
    expect(read.files.find(({ file }) => file === dly)).toEqual({ file: dly, rows: 2, used: 2 });
  });

  it('does not use a value that failed a check, and names it', async () => {
    const read = await readFiles(fixed(july1976));
    expect(rainOn(read, '1976-07-29')).toBeNull();
    const kept = readingsOf(read).flatMap(({ rain_mm }) => rain_mm ?? []);
    expect(kept).toHaveLength(30);
    expect(kept.reduce((sum, rain_mm) => sum + rain_mm, 0)).toBeCloseTo(55.3, 9);
    expect(codes(read)).toContain(`station.failed_check warning @ ${dly} 1 VALUE29 = "S"`);
    expect(listed(read)).toEqual([`${dly} 1 VALUE29 station.failed_check`]);
  });

  it('takes "missing presumed zero" for unknown, never for a dry day', async () => {
    const read = await readFiles(fixed(month('PRCP', [slot(12), slot(0, 'P a'), '-9999P  ', slot(0)])));
    expect([1, 2, 3, 4].map((i) => rainOn(read, `2001-02-0${i}`))).toEqual([1.2, null, null, 0]);
    expect(codes(read)).toEqual([taken(dly), `station.presumed_zero warning @ ${dly} 1 VALUE2 = "P"`]);
    expect(read.problems[1]!.facts['days']).toEqual(['2001-02-02', '2001-02-03']);
  });

  it('reads a line whose blanks at the end were taken off, and never half a value', async () => {
    const short = `${month('PRCP', []).slice(0, 21)}${slot(12)}${slot(345)}`;
    const whole = await readFiles(fixed(short, month('PRCP', [slot(7)], { when: '200103' })));
    expect([rainOn(whole, '2001-02-02'), rainOn(whole, '2001-02-03')]).toEqual([34.5, null]);
    expect(readingsOf(whole)).toHaveLength(28 + 31);
    const half = await readFiles(fixed(short.slice(0, -4), month('PRCP', [slot(7)], { when: '200103' })));
    expect(rainOn(half, '2001-02-02')).toBeNull();
    expect(codes(half)).toContain(`rainFile.value_unreadable warning @ ${dly} 1 VALUE2 = "34…"`);
  });

  it('leaves out a last line that stops within its month', async () => {
    const last = month('PRCP', [slot(7), slot(8)], { when: '200103' }).slice(0, 60);
    const read = await readFiles({ ...rest, [dly]: `${month('PRCP', [slot(12)])}\n${last}` });
    expect(readingsOf(read)).toHaveLength(28);
    expect(codes(read)).toContain(`file.cut_off blocker @ ${dly} 2 - = ${JSON.stringify(last)}`);
    expect(listed(read)).toEqual([`${dly} 2 whole file.cut_off`]);
  });

  it('leaves the days of one total unknown, and names the total', async () => {
    const read = await readFiles(
      fixed(
        month('PRCP', [slot(12), slot(0), '-9999   ', '-9999   ', slot(5)]),
        month('MDPR', ['-9999   ', '-9999   ', '-9999   ', slot(541), '-9999   ', slot(30)]),
        month('DAPR', ['-9999   ', '-9999   ', '-9999   ', slot(3)]),
      ),
    );
    expect([1, 2, 3, 4, 5].map((i) => rainOn(read, `2001-02-0${i}`))).toEqual([1.2, null, null, null, 0.5]);
    expect(codes(read)).toEqual([
      taken(dly),
      `station.accumulated warning @ ${dly} 2 VALUE4 = 54.1`,
      `station.accumulated_unsaid warning @ ${dly} 2 VALUE6 = 3`,
    ]);
    expect(read.problems[1]!.facts).toMatchObject({ days: 3, from: '2001-02-02', to: '2001-02-04' });
  });

  it('names a value on a day that is not, a trace that is not 0 and a value that is no whole number', async () => {
    const full = Array.from({ length: 28 }, () => slot(0));
    const read = await readFiles(fixed(month('PRCP', [slot(3, 'T a'), '  1.5  a', ...full.slice(2), slot(9)])));
    expect(codes(read).slice(1)).toEqual([
      `rainFile.value_unreadable warning @ ${dly} 1 VALUE1 = "3 T"`,
      `rainFile.value_unreadable warning @ ${dly} 1 VALUE2 = "1.5"`,
      `rainFile.day_unreadable warning @ ${dly} 1 VALUE29 = "2001-02-29"`,
    ]);
    expect(readingsOf(read)).toHaveLength(28);
  });

  it('lists a line of another form, and leaves other elements with a note', async () => {
    const read = await readFiles(fixed('not a line', month('PRCP', [slot(12)]), month('TMAX', [slot(250)])));
    expect(codes(read)).toEqual([
      `station.line_unreadable warning @ ${dly} 1 - = "not a line"`,
      `station.other_elements note @ ${dly} - - = "TMAX"`,
      taken(dly),
    ]);
    expect(read.files.find(({ file }) => file === dly)).toEqual({ file: dly, rows: 2, used: 1 });
  });

  it('warns of daily rain summed from reports by the hour', async () => {
    const read = await readFiles(fixed(month('PRCP', [slot(12, '  S')])));
    expect(codes(read)[1]).toBe(`station.from_synoptic warning @ ${dly} 1 VALUE1 = "S"`);
    expect(rainOn(read, '2001-02-01')).toBe(1.2);
  });

  it('without rain, empty or of another kind is a blocker of its gauge', async () => {
    expect(codes(await readFiles(fixed(month('TMAX', [slot(250)]))))).toContain(
      `station.none blocker @ ${dly} - - = "${dly}"`,
    );
    expect(codes(await readFiles({ ...rest, [dly]: '' }))).toEqual([`file.empty blocker @ ${dly} - - = "${dly}"`]);
    const zip = new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]);
    expect(codes(await readFiles({ ...rest, [dly]: zip }))).toEqual([
      `file.wrong_encoding blocker @ ${dly} - - = "${dly}"`,
    ]);
  });
});

describe('a station file with several stations', () => {
  const two = (id: string) =>
    fixed(month('PRCP', [slot(12)], { id }), month('PRCP', [slot(99)], { id: 'XX000000002' }));

  it('is not used where none has the id of the gauge', async () => {
    const read = await readFiles(two('XX000000001'));
    expect(readingsOf(read)).toEqual([]);
    expect(codes(read)).toEqual([`station.several blocker @ ${dly} - - = "${dly}"`]);
    expect(listed(read)).toEqual([1, 2].map((row) => `${dly} ${row} whole station.several`));
  });

  it('gives the lines of the one with the id of the gauge, and names the others', async () => {
    const gauges = good['gauges.csv']!.replace('G-east,', 'XX000000001,');
    const sites = good['sites.csv']!.replaceAll('G-east', 'XX000000001');
    const lines = two('XX000000001')[dly]!;
    const read = await readFiles({ ...rest, 'gauges.csv': gauges, 'sites.csv': sites, 'rain/XX000000001.dly': lines });
    const file = 'rain/XX000000001.dly';
    expect(codes(read)).toEqual([taken(file), `station.others_left note @ ${file} - - = "XX000000001"`]);
    expect(rainOn(read, '2001-02-01')).toBe(1.2);
  });
});

describe('a station file of commas', () => {
  const rows = [
    'XX000000001,20010201,PRCP,12,,,a,0700',
    'XX000000001,20010202,PRCP,0,T,,a,0700',
    'XX000000001,20010203,PRCP,907,,S,a,0700',
    'XX000000001,20010204,TMAX,250,,,a,0700',
    'XX000000001,20010205,PRCP,-9999,,,,',
    'XX000000001,20010206,PRCP,0,P,,a,0700',
  ];
  const rain = [
    ['2001-02-01', 1.2],
    ['2001-02-02', 0],
    ['2001-02-03', null],
    ['2001-02-05', null],
    ['2001-02-06', null],
  ];
  const headers = [
    'ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME',
    'ID,YYYYMMDD,ELEMENT,VALUE,M,Q,S,HHMM',
    'ID,DATE,ELEMENT,DATA VALUE,M-FLAG,Q-FLAG,S-FLAG,OBS-TIME',
  ];

  it.each([...headers, null])('with the first line %s', async (header) => {
    const read = await readFiles(separated(...(header === null ? [] : [header]), ...rows));
    expect(readingsOf(read).map(({ day, rain_mm }) => [isoDay(day), rain_mm])).toEqual(rain);
    const first = header === null ? 1 : 2;
    expect(readingsOf(read)[0]!.row).toBe(first);
    expect(codes(read).map((one) => one.split(' ')[0])).toEqual([
      'station.other_elements',
      'station.file',
      'station.trace',
      'station.failed_check',
      'station.presumed_zero',
    ]);
    expect(read.problems[3]!.place.row).toBe(first + 2);
    expect(read.files.find(({ file }) => file === csv)).toEqual({ file: csv, rows: 5, used: 5 });
  });

  it('without the column of failed checks is not used', async () => {
    const read = await readFiles(separated('ID,DATE,ELEMENT,VALUE,M', 'XX000000001,20010201,PRCP,12,'));
    expect(codes(read)).toEqual([`header.column_missing blocker @ ${csv} 1 Q = ""`]);
    expect(listed(read)).toEqual([`${csv} 2 whole header.column_missing`]);
    expect(readingsOf(read)).toEqual([]);
  });

  it('lists a row of another form and uses the others', async () => {
    const read = await readFiles(separated(headers[0]!, rows[0]!, 'XX000000001,2001-02-30,PRCP,5,,,a,', rows[1]!));
    expect(listed(read)).toEqual([`${csv} 3 whole station.line_unreadable`]);
    expect(readingsOf(read).map(({ day }) => day)).toEqual([0, 1].map((i) => readIsoDay('2001-02-01')! + i));
  });
});

describe('two rain files for one gauge', () => {
  it('are a blocker, and neither is used', async () => {
    const read = await readFiles({ ...good, [dly]: `${november1962}\n` });
    expect(codes(read)).toEqual([`rainFile.two_files blocker @ ${csv} - - = "${csv}"`]);
    expect([read.problems[0]!.facts['other'], read.problems[0]!.place.gaugeId]).toEqual([dly, 'G-east']);
    expect(readingsOf(read)).toEqual([]);
  });

  it('without a gauge are named each', async () => {
    const read = await readFiles({ ...good, 'rain/G-easy.dly': `${november1962}\n` });
    expect(codes(read)).toEqual(['rainFile.without_gauge warning @ rain/G-easy.dly - - = "rain/G-easy.dly"']);
  });
});

describe('station files damaged at random', () => {
  const header = 'ID,DATE,ELEMENT,VALUE,M,Q,S,HHMM\n';
  const days = ['01', '02', '03', '04'].map((day) => `XX000000001,200102${day},PRCP,12,,,a,0700\n`);
  const whole: Readonly<Record<string, Uint8Array>> = {
    [dly]: new Uint8Array(Buffer.from(`${october1962}\n${november1962}\n${july1976}\n`)),
    [csv]: new Uint8Array(Buffer.from(header + days.join(''))),
  };
  const damage = fc.record({
    file: fc.constantFrom(dly, csv),
    from: fc.nat(),
    length: fc.nat({ max: 30 }),
    bytes: fc.oneof(
      fc.uint8Array({ maxLength: 20 }),
      fc.string({ maxLength: 12 }).map((text) => new Uint8Array(Buffer.from(text))),
    ),
  });

  it('never stop the reading, never give what is no number, and every line about rain is used or listed', async () => {
    let [faulty, used] = [0, 0];
    await fc.assert(
      fc.asyncProperty(damage, async ({ file, from, length, bytes }) => {
        const sound = whole[file]!;
        const start = from % sound.length;
        const damaged = new Uint8Array([...sound.slice(0, start), ...bytes, ...sound.slice(start + length)]);
        const read = await readFiles({ ...rest, [file]: damaged });
        const lost = read.notUsed.filter(({ column }) => column === undefined).length;
        expect(lost).toBe(read.files.reduce((sum, one) => sum + one.rows - one.used, 0));
        for (const { rain_mm } of readingsOf(read)) expect(rain_mm === null || Number.isFinite(rain_mm)).toBe(true);
        faulty += read.problems.some(({ severity }) => severity !== 'note') ? 1 : 0;
        used += readingsOf(read).length > 0 ? 1 : 0;
      }),
      { numRuns: 300, seed: 20261128 },
    );
    expect(faulty).toBeGreaterThan(100);
    expect(used).toBeGreaterThan(100);
  });
});
