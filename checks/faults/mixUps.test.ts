import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, line, type Planted, readFiles } from './folder.ts';

const east = ['S001', 'S002'];

/** A fault of the first site that leaves cells of its second row unused. */
function planted(
  fault: string,
  [file, from, to]: readonly [string, string, string],
  problem: string,
  columns: readonly string[],
  inDoubt: readonly string[] = ['S001'],
  gauges: readonly string[] = [],
): Planted {
  const [code] = problem.split(' ');
  return {
    fault,
    files: () => changed(file, from, to),
    problems: [`${code} blocker @ ${file} 2 ${problem.slice(code!.length + 1)}`],
    notUsed: columns.map((column) => `${file} 2 ${column} ${code}`),
    inDoubt,
    gauges,
  };
}

const tank = (text: string) => ['tanks.csv', 'S001,T1,tank-10,10000', `S001,T1,tank-10,${text}`] as const;
const position = (text: string) => ['sites.csv', 'Upper Tarn,-8.5,125.25', `Upper Tarn,${text}`] as const;
const roof = (text: string) => ['roofs.csv', 'S001,school,24,8.5,,', `S001,school,${text},`] as const;
const degrees = (written: string) =>
  planted(
    `a latitude written ${written}`,
    position(`"${written.replaceAll('"', '""')}",125.25`),
    `cell.degrees_written latitude_deg = ${JSON.stringify(written)}`,
    ['latitude_deg'],
  );

const cases: readonly Planted[] = [
  planted('a tank in m³', tank('10'), 'cell.other_unit nominal_L = "10"', ['nominal_L']),
  planted('a small tank in m³', tank('1.5'), 'cell.other_unit nominal_L = "1.5"', ['nominal_L']),
  planted(
    'a tank of the catalogue in m³: the sites that have it are in doubt',
    ['parts.csv', 'Tank of ten,9800', 'Tank of ten,9.8'],
    'cell.other_unit volume_L = "9.8"',
    ['volume_L'],
  ),
  planted(
    'latitude and longitude swapped',
    position('125.25,-8.5'),
    'row.coordinates_swapped latitude_deg = "125.25, -8.5"',
    ['latitude_deg', 'longitude_deg'],
  ),
  planted(
    'latitude and longitude of a gauge swapped',
    ['gauges.csv', '-8.5,125.2,', '125.2,-8.5,'],
    'row.coordinates_swapped latitude_deg = "125.2, -8.5"',
    ['latitude_deg', 'longitude_deg'],
    east,
    ['G-east'],
  ),
  ...['8.30.15', "8°30'", '8°30\'15"S', '8.5 S', 'S 8 30.25'].map(degrees),
  planted('a plan area in square feet', roof('24,8.5,2196'), 'row.area_in_square_feet roofPlanArea_m2 = "2196"', [
    'roofPlanArea_m2',
  ]),
  {
    fault: 'length and width in feet beside the plan area: the area is used',
    files: () => changed(...roof('24,8.5,18.95')),
    problems: ['row.sides_in_feet warning @ roofs.csv 2 length_m = "24 × 8.5"'],
    notUsed: [],
    inDoubt: [],
    differ: ['S001'],
  },
];

describe('a good number in the wrong unit or place', () => {
  it.each(cases)('$fault', async (one) => {
    await assertPlanted(one);
  });

  it('is named with what is likely meant', async () => {
    const likely = async (file: string, from: string, to: string) =>
      (await readFiles(changed(file, from, to))).problems[0]!.facts['likely'];
    expect(await likely(...tank('10'))).toBe('10000');
    expect(await likely(...position('125.25,-8.5'))).toBe('-8.5, 125.25');
    expect(await likely(...position("8°30'S,125.25"))).toBe('-8.5');
    expect(await likely(...roof('24,8.5,2196'))).toBe('204');
    expect(await likely(...roof('24,8.5,18.95'))).toBe('7.315 × 2.591');
  });

  it.each([
    ['a tank just over 50 L is small, but litres', tank('51'), ['cell.unusual']],
    ['an L-shaped plan is no mix-up', roof('24,8.5,150'), []],
    ['a part that is no tank may hold little', ['parts.csv', 'Gutter,,5.5', 'Gutter,12,5.5'], []],
    ['a latitude that is no longitude either', position('195.25,-8.5'), ['cell.out_of_range']],
    ['a latitude beyond 90 beside a longitude beyond 90', position('125.25,98.5'), ['cell.out_of_range']],
    ['degrees with 75 minutes', position("8°75',125.25"), ['cell.not_a_number']],
  ] as const)('%s', async (_, [file, from, to], codes) => {
    const read = await readFiles(changed(file, from, to));
    expect(read.problems.map(({ code }) => code)).toEqual(codes);
  });
});

describe('a position among others', () => {
  const sites = (...positions: readonly string[]) => {
    const [header] = good['sites.csv']!.split('\n');
    const rows = positions.map((one, i) => `S00${i + 1},Place,${one},50,G-east,,\n`);
    return { ...good, 'sites.csv': `${header}\n${rows.join('')}` };
  };
  const others = ['7.1,3.3', '7.2,3.4', '7.3,3.2', '7.05,3.35'];
  const found = async (...positions: readonly string[]) =>
    (await readFiles(sites(...positions))).problems.filter(({ code }) => code === 'row.coordinates_far').map(line);

  it('that is near them only the other way round is named, and used', async () => {
    const far = ['45.1,13.2', '45.3,13.5', '45.2,13.1', '45.6,13.3'];
    expect(await found(...far, '13.4,45.25')).toEqual([
      'row.coordinates_far warning @ sites.csv 6 latitude_deg = "13.4, 45.25"',
    ]);
  });

  it('that is near them with a sign that was lost, or both, is named with what is likely meant', async () => {
    const south = ['-8.5,125.2', '-8.4,125.3', '-8.6,125.1', '-8.45,125.25', '-8.55,125.15'];
    const likely = async (position: string, ...positions: readonly string[]) => {
      const { problems } = await readFiles(sites(...positions, position));
      const found = problems.filter(({ code }) => code.startsWith('row.coordinates'));
      return found.map(({ code, facts }) => `${code} ${facts['likely']} ${facts['how'] ?? ''}`);
    };
    expect(await likely('8.52,125.22', ...south)).toEqual(['row.coordinates_far -8.52, 125.22 sign']);
    // A latitude beyond 90 is none; what is meant is guessed by the others, and where none is near not at all.
    expect(await likely('125.22,8.52', ...south)).toEqual(['row.coordinates_swapped -8.52, 125.22 ']);
    expect(await likely('100.5,40.1', ...south)).toEqual(['row.coordinates_swapped  ']);
    const west = ['45.1,-13.2', '45.3,-13.5', '45.2,-13.1', '45.6,-13.3', '45.4,-13.4'];
    expect(await likely('45.25,13.3', ...west)).toEqual(['row.coordinates_far 45.25, -13.3 sign']);
    expect(await likely('13.3,45.25', ...west)).toEqual(['row.coordinates_far 45.25, -13.3 both']);
  });

  it('is not named where both ways are near, both far, or the others are few', async () => {
    expect(await found(...others, '3.3,7.1')).toEqual([]);
    expect(await found('45.1,13.2', '45.3,13.5', '45.2,13.1', '45.6,13.3', '13.4,80.2')).toEqual([]);
    expect(await found('45.1,13.2', '45.3,13.5', '45.2,13.1', '13.4,45.25')).toEqual([]);
  });
});
