import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, type Planted } from './folder.ts';

/** A fault in one cell of the first site, whose row is row 2. */
function cell(
  fault: string,
  [file, from, to]: readonly [string, string, string],
  code: string,
  column: string,
  value: string,
): Planted {
  const used = code.startsWith('cell.missing');
  return {
    fault,
    files: () => changed(file, from, to),
    problems: [`${code} blocker @ ${file} 2 ${column} = ${JSON.stringify(value)}`],
    notUsed: used ? [] : [`${file} 2 ${column} ${code}`],
    inDoubt: ['S001'],
  };
}

const people = (text: string) => ['sites.csv', ',120,', `,${text},`] as const;
const handOver = (text: string) => ['sites.csv', '2027-03-01', text] as const;
const roofLength = (text: string) => ['roofs.csv', 'school,24,', `school,${text},`] as const;

const cells: readonly Planted[] = [
  cell('text in a number', people('many'), 'cell.not_a_number', 'people', 'many'),
  cell('no people at all', people('0'), 'cell.out_of_range', 'people', '0'),
  cell('fewer people than none', people('-12'), 'cell.out_of_range', 'people', '-12'),
  cell('absurdly many people', people('1200000'), 'cell.out_of_range', 'people', '1200000'),
  cell('half a person', people('120.5'), 'cell.not_whole', 'people', '120.5'),
  cell('not a number by name', people('NaN'), 'cell.not_finite', 'people', 'NaN'),
  cell('infinity by name', people('Infinity'), 'cell.not_finite', 'people', 'Infinity'),
  cell('a number beyond any', people('1e400'), 'cell.not_finite', 'people', '1e400'),
  cell('a number too small to hold', roofLength('1e-400'), 'cell.not_finite', 'length_m', '1e-400'),
  cell('a decimal comma among commas', roofLength('"7,5"'), 'cell.decimal_comma', 'length_m', '7,5'),
  cell('a comma that may be either', roofLength('"1,500"'), 'cell.comma_ambiguous', 'length_m', '1,500'),
  cell('a space for thousands', people('1 200'), 'cell.thousands', 'people', '1 200'),
  cell('an apostrophe for thousands', people("1'200"), 'cell.thousands', 'people', "1'200"),
  cell('two marks for thousands', people('"1,234,567"'), 'cell.thousands', 'people', '1,234,567'),
  cell('a unit behind the number', roofLength('24 m'), 'cell.unit_in_number', 'length_m', '24 m'),
  cell(
    'a share in percent',
    ['roofs.csv', ',,corrugatedMetal,0.85,1\nS001', ',,corrugatedMetal,85%,1\nS001'],
    'cell.unit_in_number',
    'runoffFraction',
    '85%',
  ),
  cell(
    'a share above one',
    ['roofs.csv', ',,corrugatedMetal,0.85,1\nS001', ',,corrugatedMetal,85,1\nS001'],
    'cell.out_of_range',
    'runoffFraction',
    '85',
  ),
  cell('a roof of no length', roofLength('0'), 'cell.out_of_range', 'length_m', '0'),
  cell('an absurd roof', roofLength('2400'), 'cell.out_of_range', 'length_m', '2400'),
  cell(
    'a tank of nothing',
    ['tanks.csv', 'S001,T1,tank-10,10000', 'S001,T1,tank-10,0'],
    'cell.out_of_range',
    'nominal_L',
    '0',
  ),
  cell(
    'an absurd tank',
    ['tanks.csv', 'S001,T1,tank-10,10000', 'S001,T1,tank-10,1e9'],
    'cell.out_of_range',
    'nominal_L',
    '1e9',
  ),
  cell('a rain factor of nothing', ['sites.csv', ',1.1,', ',0,'], 'cell.out_of_range', 'rainFactor', '0'),
  cell('a date day first', handOver('01/03/2027'), 'cell.date_form', 'handOverDay', '01/03/2027'),
  cell('a date without its zeros', handOver('2027-3-1'), 'cell.date_form', 'handOverDay', '2027-3-1'),
  cell('a date counted by a spreadsheet', handOver('36892'), 'cell.date_serial', 'handOverDay', '36892'),
  cell('a day that is not', handOver('2027-02-30'), 'cell.date_not_real', 'handOverDay', '2027-02-30'),
  cell('a date in words', handOver('March'), 'cell.not_a_date', 'handOverDay', 'March'),
  cell('a date far off', handOver('0227-03-01'), 'cell.out_of_range', 'handOverDay', '0227-03-01'),
  cell(
    'a covering that is not known',
    ['roofs.csv', ',,corrugatedMetal,0.85,1\nS001', ',,Corrugated metal,0.85,1\nS001'],
    'cell.not_a_choice',
    'material',
    'Corrugated metal',
  ),
  cell(
    'a drain hole neither open nor blocked',
    ['diverters.csv', ',open', ',Opened'],
    'cell.not_a_choice',
    'drainHole',
    'Opened',
  ),
  cell('an id that would be a path', ['sites.csv', '120,G-east', '120,../x'], 'cell.unsafe_id', 'gaugeId', '../x'),
  cell('a needed name left empty', ['sites.csv', 'S001,Upper Tarn,', 'S001,,'], 'cell.missing', 'name', ''),
  cell(
    'a name with a control character',
    ['sites.csv', 'S001,Upper', 'S001,\u001b[2JUpper'],
    'cell.control_characters',
    'name',
    '\u001b[2JUpper Tarn',
  ),
];

/** Two more columns of the first tank, which stands in row 2. */
const tankCells = (cells: string) => ({
  ...good,
  'tanks.csv': `siteId,tankId,nominal_L,role,peopleFraction,joinedTo\nS001,T1,10000,${cells},\nS001,T2,10000,,,T1\nS002,T1,5000,,,\nS003,T1,20000,,,\n`,
});

const tankFaults: readonly Planted[] = [
  {
    fault: 'a role nobody knows',
    files: () => tankCells('setling,'),
    problems: ['cell.not_a_choice blocker @ tanks.csv 2 role = "setling"'],
    notUsed: ['tanks.csv 2 role cell.not_a_choice'],
    inDoubt: ['S001'],
    differ: ['S002', 'S003'],
  },
  {
    fault: 'a share of people in percent',
    files: () => tankCells('settling,40'),
    problems: ['cell.out_of_range blocker @ tanks.csv 2 peopleFraction = "40"'],
    notUsed: ['tanks.csv 2 peopleFraction cell.out_of_range'],
    inDoubt: ['S001'],
    differ: ['S002', 'S003'],
  },
];

describe('a cell of a tank', () => {
  it.each(tankFaults)('$fault', async (planted) => {
    await assertPlanted(planted);
  });
});

describe('a cell that cannot be used', () => {
  it.each(cells)('$fault', async (planted) => {
    const read = await assertPlanted(planted);
    for (const { facts } of read.problems) expect(facts['expected']).not.toBe('');
    // The site stands, with the fact unknown.
    expect(read.facts.sites.map(({ siteId }) => siteId)).toEqual(['S001', 'S002', 'S003']);
  });

  it('leaves its fact unknown and every other fact of the row as it was', async () => {
    const read = await assertPlanted(cell('', people('many'), 'cell.not_a_number', 'people', 'many'));
    const [site] = read.facts.sites;
    expect([site!.people, site!.name, site!.rainFactor, site!.gaugeId]).toEqual([null, 'Upper Tarn', 1.1, 'G-east']);
  });
});

describe('what a problem of a cell says', () => {
  const factsOf = async (planted: Planted) => (await assertPlanted(planted)).problems[0]!.facts;

  it('names both ends of a range with the unit', async () => {
    const facts = await factsOf(cell('', roofLength('2400'), 'cell.out_of_range', 'length_m', '2400'));
    expect([facts['low'], facts['high'], facts['unit']]).toEqual(['0.5', '500', 'm']);
  });

  it('names both numbers a comma could mean', async () => {
    const facts = await factsOf(cell('', roofLength('"1,500"'), 'cell.comma_ambiguous', 'length_m', '1,500'));
    expect(facts['readings']).toEqual(['1.500', '1500']);
  });

  it('names both days that a date could be', async () => {
    const facts = await factsOf(cell('', handOver('01/03/2027'), 'cell.date_form', 'handOverDay', '01/03/2027'));
    expect(facts['readings']).toEqual(['2027-03-01', '2027-01-03']);
  });

  it('turns a spreadsheet count into its day', async () => {
    // 36892 is 2001-01-01 in the 1900 date system: common practice, no source.
    const facts = await factsOf(cell('', handOver('36892'), 'cell.date_serial', 'handOverDay', '36892'));
    expect(facts['readings']).toEqual(['2001-01-01']);
  });

  it('proposes the nearest choice', async () => {
    const planted = cell('', ['diverters.csv', ',open', ',Opened'], 'cell.not_a_choice', 'drainHole', 'Opened');
    const facts = await factsOf(planted);
    expect([facts['likely'], facts['choices']]).toEqual(['open', ['open', 'blocked']]);
  });
});

describe('a cell outside the usual range', () => {
  it('is used, with a warning', async () => {
    const read = await assertPlanted({
      fault: 'many people',
      files: () => changed('sites.csv', ',120,', ',9000,'),
      problems: ['cell.unusual warning @ sites.csv 2 people = "9000"'],
      notUsed: [],
      inDoubt: [],
      differ: ['S001'],
    });
    expect(read.facts.sites[0]!.people).toBe(9000);
  });
});

describe('a fault in a row that is about no one site', () => {
  it('in the programme’s own demand puts the sites without their own in doubt', async () => {
    await assertPlanted({
      fault: 'demand in words',
      files: () => changed('demand.csv', ',drinking,7.5,yes\n,w', ',drinking,little,yes\n,w'),
      problems: ['cell.not_a_number blocker @ demand.csv 2 litres_per_person_per_day = "little"'],
      notUsed: ['demand.csv 2 whole cell.not_a_number'],
      inDoubt: ['S001', 'S002'],
    });
  });

  it('in a part puts the sites whose tanks are that part in doubt', async () => {
    await assertPlanted({
      fault: 'a part’s volume in words',
      files: () => changed('parts.csv', 'Tank of five,4900', 'Tank of five,much'),
      problems: ['cell.not_a_number blocker @ parts.csv 3 volume_L = "much"'],
      notUsed: ['parts.csv 3 volume_L cell.not_a_number'],
      inDoubt: ['S002'],
    });
  });

  it('in a price costs the price only', async () => {
    const read = await assertPlanted({
      fault: 'a price in words',
      files: () => changed('prices.csv', '1450,USD', 'dear,usd'),
      problems: [
        'cell.not_a_number blocker @ prices.csv 2 amount = "dear"',
        'cell.not_a_currency blocker @ prices.csv 2 currency = "usd"',
      ],
      notUsed: ['prices.csv 2 whole cell.not_a_number'],
      inDoubt: [],
    });
    expect(read.facts.prices.map(({ partId }) => partId)).toEqual(['tank-5']);
  });

  it('in a reading time leaves it not said, and puts the sites on that gauge in doubt', async () => {
    const read = await assertPlanted({
      fault: 'a time without its zero',
      files: () => changed('gauges.csv', '07:00', '7:00'),
      problems: ['cell.not_a_time blocker @ gauges.csv 2 readingTime = "7:00"'],
      notUsed: ['gauges.csv 2 readingTime cell.not_a_time'],
      inDoubt: ['S001', 'S002'],
      gauges: ['G-east'],
    });
    expect(read.facts.gauges[0]!.readingTime).toBeNull();
  });
});
