import { readIsoDay } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, line, type Planted, readFiles } from './folder.ts';

const east = 'rain/G-east.csv';
const first = readIsoDay('2001-02-26')!;

function rainOf(read: ProgrammeRead): readonly (number | null)[] {
  return read.facts.gauges[0]!.readings.map(({ rain_mm }) => rain_mm);
}

/** A fault in the second reading (row 3, 2001-02-27, 12.5 mm) that leaves the day unknown. */
function unknownDay(fault: string, text: string, code: string, value = text.replaceAll('"', '')): Planted {
  return {
    fault,
    files: () => changed(east, '27,12.5', `27,${text}`),
    problems: [`${code} warning @ ${east} 3 rain_mm = ${JSON.stringify(value)}`],
    notUsed: [`${east} 3 rain_mm ${code}`],
    inDoubt: [],
    gauges: ['G-east'],
  };
}

const days: readonly Planted[] = [
  unknownDay('text for rain', 'heavy', 'rainFile.value_unreadable'),
  unknownDay('a unit behind the rain', '12.5mm', 'rainFile.value_unreadable'),
  unknownDay('a decimal comma among commas', '"12,5"', 'rainFile.value_unreadable'),
  unknownDay('infinite rain', '1e999', 'rainFile.value_unreadable'),
  unknownDay('-9999 for not read', '-9999', 'rainFile.missing_code'),
  unknownDay('-99.9 for not read', '-99.9', 'rainFile.missing_code'),
  unknownDay('-999.0 for not read', '-999.0', 'rainFile.missing_code'),
  unknownDay('9999 for not read', '9999', 'rainFile.missing_code'),
  unknownDay('NA for not read', 'NA', 'rainFile.missing_code'),
  unknownDay('a dash for not read', '-', 'rainFile.missing_code'),
  unknownDay('NaN for not read', 'NaN', 'rainFile.missing_code'),
  unknownDay('a trace', 'T', 'rainFile.trace'),
];

/** A fault in the day of the second reading: the row is not used. */
function lostDay(fault: string, text: string, value = text): Planted {
  return {
    fault,
    files: () => changed(east, '2001-02-27,', `${text},`),
    problems: [`rainFile.day_unreadable warning @ ${east} 3 date = ${JSON.stringify(value)}`],
    notUsed: [`${east} 3 whole rainFile.day_unreadable`],
    inDoubt: [],
    gauges: ['G-east'],
  };
}

const lost: readonly Planted[] = [
  lostDay('a day month first', '02/27/2001'),
  lostDay('a day without its zeros', '2001-2-27'),
  lostDay('a day counted by a spreadsheet', '36949'),
  lostDay('a day that is not', '2001-02-29'),
  lostDay('a day in another age', '0201-02-27'),
  lostDay('no day', ''),
];

describe('a rain that cannot be read', () => {
  it.each(days)('$fault: the day stays unknown', async (planted) => {
    const read = await assertPlanted(planted);
    expect(rainOf(read)).toEqual([0, null, null, 3.25, 0.2, 41, 0]);
  });

  it('is named with the code of what is wrong with it', async () => {
    const read = await readFiles(changed(east, '27,12.5', '27,12.5mm'));
    const { reason, found, unit } = read.problems[0]!.facts;
    expect([reason, found, unit]).toEqual(['cell.unit_in_number', 'mm', 'mm']);
  });

  it('of one sort is one problem with its count, and every day is listed', async () => {
    const text = good[east]!.replace('12.5', '-9999').replace('3.25', '-9999').replace(',41', ',-9999');
    const read = await readFiles({ ...good, [east]: text });
    expect(read.problems.map(line)).toEqual([`rainFile.missing_code warning @ ${east} 3 rain_mm = "-9999"`]);
    expect([read.problems[0]!.facts['count'], read.problems[0]!.facts['lastRow']]).toEqual([3, 7]);
    expect(read.notUsed.map(({ row }) => row)).toEqual([3, 5, 7]);
    expect(rainOf(read)).toEqual([0, null, null, null, 0.2, null, 0]);
  });

  it('is named row by row up to twenty, and counted from there', async () => {
    const text = `date,rain_mm\n${Array.from({ length: 25 }, (_, i) => `2001-03-${String(i + 1).padStart(2, '0')},x${i}\n`).join('')}`;
    const read = await readFiles({ ...good, [east]: text });
    expect(read.problems.map(({ code }) => code)).toEqual([
      ...Array.from({ length: 20 }, () => 'rainFile.value_unreadable'),
      'rainFile.more',
    ]);
    const more = read.problems.at(-1)!;
    expect([more.place.row, more.facts['count'], more.facts['lastRow']]).toEqual([22, 5, 26]);
    expect(read.notUsed).toHaveLength(25);
  });
});

describe('a day that cannot be read', () => {
  it.each(lost)('$fault: the row is listed', async (planted) => {
    const read = await assertPlanted(planted);
    expect(rainOf(read)).toEqual([0, null, 3.25, 0.2, 41, 0]);
    expect(read.files.find(({ file }) => file === east)).toEqual({ file: east, rows: 7, used: 6 });
  });
});

describe('rain left to the engine, which sees the whole record', () => {
  const left = [
    ['a negative rain', '27,12.5', '27,-3'],
    ['an absurd rain', '27,12.5', '27,2500'],
    ['a day twice', '2001-02-27,12.5', '2001-02-26,12.5'],
    ['days out of order', '2001-02-27,12.5', '2001-03-27,12.5'],
    ['99 mm, which may be rain', '27,12.5', '27,99'],
  ] as const;
  it.each(left)('%s is kept as written', async (_, from, to) => {
    const read = await readFiles(changed(east, from, to));
    expect(read.problems).toEqual([]);
    const [day, rain] = [
      to.includes('-02-26') ? first : to.includes('-03-27') ? first + 29 : first + 1,
      Number(to.split(',')[1]),
    ];
    expect(read.facts.gauges[0]!.readings[1]).toEqual({ day, rain_mm: rain, row: 3 });
  });
});

describe('a rain file at fault', () => {
  it('that is not there is a blocker of its gauge', async () => {
    const { [east]: _east, ...rest } = good;
    const read = await readFiles(rest);
    expect(read.problems.map(line)).toEqual([`rainFile.missing blocker @ ${east} - - = "${east}"`]);
    expect(read.problems[0]!.place.gaugeId).toBe('G-east');
    expect(read.facts.gauges.map(({ readings }) => readings.length)).toEqual([0, 7]);
  });

  it('without a gauge warns, and proposes the nearest', async () => {
    const read = await readFiles({ ...good, 'rain/G-easy.csv': good[east]! });
    expect(read.problems.map(line)).toEqual([
      'rainFile.without_gauge warning @ rain/G-easy.csv - - = "rain/G-easy.csv"',
    ]);
    expect(read.problems[0]!.facts['likely']).toBe('G-east');
  });

  const whole: readonly Planted[] = [
    {
      fault: 'without its rain column',
      files: () => changed(east, 'date,rain_mm', 'date,rain'),
      problems: [`header.column_missing blocker @ ${east} 1 rain_mm = ""`],
      notUsed: [2, 3, 4, 5, 6, 7, 8].map((row) => `${east} ${row} whole header.column_missing`),
      inDoubt: [],
      gauges: ['G-east'],
    },
    {
      fault: 'with a header only',
      files: () => ({ ...good, [east]: 'date,rain_mm\n' }),
      problems: [`file.no_rows blocker @ ${east} - - = "${east}"`],
      notUsed: [],
      inDoubt: [],
      gauges: ['G-east'],
    },
    {
      fault: 'with semicolons and decimal commas',
      files: () => ({ ...good, [east]: good[east]!.replaceAll(',', ';').replaceAll('.', ',').replace('3,25', '3.25') }),
      problems: [
        `file.separator note @ ${east} 1 - = "semicolon"`,
        `column.decimal_comma warning @ ${east} 3 rain_mm = "12,5"`,
      ],
      notUsed: [],
      inDoubt: [],
    },
    {
      fault: 'cut off within a day',
      files: () => changed(east, '2001-03-04,0\n', '2001-03'),
      problems: [`file.cut_off blocker @ ${east} 8 - = "2001-03"`],
      notUsed: [`${east} 8 whole file.cut_off`],
      inDoubt: [],
      gauges: ['G-east'],
    },
    {
      fault: 'without its last line end',
      files: () => changed(east, '2001-03-04,0\n', '2001-03-04,0'),
      problems: [`file.no_last_line_end warning @ ${east} 8 - = "${east}"`],
      notUsed: [],
      inDoubt: [],
    },
    {
      fault: 'with a row of one cell',
      files: () => changed(east, '2001-02-27,12.5', '2001-02-27'),
      problems: [`rainFile.value_unreadable warning @ ${east} 3 rain_mm = "2001-02-27"`],
      notUsed: [],
      inDoubt: [],
      gauges: ['G-east'],
    },
    {
      fault: 'with a row of three cells',
      files: () => changed(east, '27,12.5', '27,12,5'),
      problems: [`rainFile.day_unreadable warning @ ${east} 3 date = "2001-02-27,12,5"`],
      notUsed: [`${east} 3 whole rainFile.day_unreadable`],
      inDoubt: [],
      gauges: ['G-east'],
    },
    {
      fault: 'with a quote that is never closed',
      files: () => changed(east, '27,12.5', '27,"12.5'),
      problems: [`rainFile.day_unreadable warning @ ${east} 3 date = "2001-02-27,12.5"`],
      notUsed: [`${east} 3 whole rainFile.day_unreadable`],
      inDoubt: [],
      gauges: ['G-east'],
    },
    {
      fault: 'with empty rows: no fault, the readings keep their rows',
      files: () => changed(east, '2001-02-27', '\n\n2001-02-27'),
      problems: [],
      notUsed: [],
      inDoubt: [],
      gauges: ['G-east'],
    },
  ];
  it.each(whole)('$fault', async (planted) => {
    await assertPlanted(planted);
  });
});
