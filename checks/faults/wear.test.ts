import { isoDay, type Problem, readIsoDay, readyProgramme, type WearFinding, wearOf } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

// When cartridges are due, from tables that are wrong, to what is told of it.

const today = readIsoDay('2028-01-01')!;
const longRain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');
const part = {
  ...{ partId: 'unit-3', kind: 'treatmentUnit', name: 'A made-up unit', cartridges: '3', ratedFlow_L_per_h: '900' },
  ...{ ratedPressure_kPa: '60', ratedLitres_L: '2000000', ratedTurbidity_NTU: '5', lifeLimit_years: '3' },
  ...{ lowestFlow_L_per_h: '300', highestTurbidity_NTU: '50' },
};
type Part = Partial<typeof part>;
const table = (...rows: readonly Readonly<Record<string, string>>[]) =>
  `${[Object.keys(rows[0]!), ...rows.map((row) => Object.values(row))].map((cells) => cells.join(',')).join('\n')}\n`;
const read = (day: string, flow: string, passed = '') => ({
  ...{ siteId: 'S001', unitSerial: 'U1', readOn: day, flow_L_per_h: flow },
  ...{ pressure_kPa: '60', waterTemperature_C: '20', passed_L: passed },
});

/** The good folder with a unit at its first site. */
function withUnit(files: Files = {}, ofPart: Part = {}, set: Readonly<Record<string, unknown>> = {}): Files {
  const settings = { roofTurbidity_NTU: 1.5, cartridgeFailures_per_year: 0.05, ...set };
  return {
    ...good,
    'rain/G-east.csv': longRain,
    'rain/G-west.csv': longRain,
    'parts.csv': table({ ...part, ...ofPart }),
    'prices.csv': 'partId,priceDate,amount,currency\nunit-3,2026-02-01,900,USD\n',
    'tanks.csv': good['tanks.csv']!.replaceAll('tank-10', '').replaceAll('tank-5', ''),
    'treatmentUnits.csv': table({ siteId: 'S001', serial: 'U1', partId: 'unit-3', installedOn: '2027-03-01' }),
    'settings.json': JSON.stringify(settings),
    ...files,
  };
}

async function found(
  files: Files,
): Promise<{ faults: readonly Problem[]; told: readonly Problem[]; unit: WearFinding }> {
  const { facts, problems } = await readFiles(files);
  const { finding, problems: told } = wearOf(facts.sites[0]!, readyProgramme(facts, { today }));
  return { faults: problems, told, unit: finding![0]! };
}
const lines = (problems: readonly Problem[]) =>
  problems.map(({ code, severity, place }) => `${code} ${severity} @ ${place.file} ${place.column ?? '-'}`);

it('a unit with all its figures has a date, and nothing is told', async () => {
  const { faults, told, unit } = await found(withUnit());
  expect([lines(faults), lines(told)]).toEqual([[], []]);
  expect(unit.unknownBy).toBeNull();
  const { p10, p50, p90 } = unit.endsOn!;
  expect(p10).toBeLessThanOrEqual(p50);
  expect(p50).toBeLessThanOrEqual(p90);
  expect(isoDay(p90) <= '2030-03-01').toBe(true);
});

describe('what is missing is told, and no date is made up', () => {
  it.each([
    [
      'no rated turbidity',
      withUnit({}, { ratedTurbidity_NTU: '' }),
      ['wear.rated_turbidity_unknown warning @ parts.csv ratedTurbidity_NTU'],
      true,
    ],
    [
      'no rated litres',
      withUnit({}, { ratedLitres_L: '' }),
      ['wear.rating_unknown warning @ parts.csv ratedLitres_L'],
      true,
    ],
    [
      'no turbidity of roof water',
      withUnit({}, {}, { roofTurbidity_NTU: null }),
      ['wear.turbidity_unknown warning @ settings.json roofTurbidity_NTU'],
      true,
    ],
    [
      'no lowest flow',
      withUnit({}, { lowestFlow_L_per_h: '' }),
      ['wear.flow_not_rated note @ parts.csv lowestFlow_L_per_h'],
      false,
    ],
    [
      'a lowest flow above the clean one',
      withUnit({}, { lowestFlow_L_per_h: '950' }),
      ['wear.flow_not_rated note @ parts.csv lowestFlow_L_per_h'],
      false,
    ],
    [
      'no longest life',
      withUnit({}, { lifeLimit_years: '' }),
      ['wear.life_unknown note @ parts.csv lifeLimit_years'],
      false,
    ],
    [
      'no rate of failures',
      withUnit({}, {}, { cartridgeFailures_per_year: null }),
      ['wear.failures_unknown note @ settings.json cartridgeFailures_per_year'],
      false,
    ],
    [
      'cartridges of which nobody wrote the day',
      withUnit({ 'cartridges.csv': table({ siteId: 'S001', serial: 'C1', unitSerial: 'U1', installedOn: '' }) }),
      ['wear.set_day_unknown warning @ cartridges.csv -'],
      true,
    ],
    [
      'water muddier than the unit may be given',
      withUnit({}, { highestTurbidity_NTU: '1' }),
      ['wear.too_turbid warning @ settings.json -'],
      false,
    ],
  ] as const)('%s', async (_, files, wanted, isUnknown) => {
    const { told, unit } = await found(files);
    expect(lines(told)).toEqual(wanted);
    expect(unit.endsOn === null).toBe(isUnknown);
    expect(unit.unknownBy === null).toBe(!isUnknown);
    for (const problem of told) expect(problemSentence(problem).what).not.toMatch(/WRITE|undefined|NaN|\{/);
  });

  it('without a rated turbidity the latest day there can be is told', async () => {
    const { told } = await found(withUnit({}, { ratedTurbidity_NTU: '' }));
    expect(String(told[0]!.facts['latest'])).toMatch(/^20\d\d-\d\d-\d\d$/);
    expect(problemSentence(told[0]!).what).toMatch(/hardly be later than \d+ \w+ 20\d\d/);
  });
});

describe('readings that cannot be', () => {
  const readings = (...rows: readonly ReturnType<typeof read>[]) => withUnit({ 'flowReadings.csv': table(...rows) });

  it('a meter that runs backwards with the same set is told, and the balance taken for it', async () => {
    const { faults, told, unit } = await found(
      readings(read('2027-06-01', '880', '60000'), read('2027-09-01', '860', '20000')),
    );
    expect([lines(faults), lines(told)]).toEqual([[], ['wear.meter_backwards warning @ flowReadings.csv -']]);
    expect(unit.readings_count).toBe(2);
    expect(unit.passedSoFar_L).toBeGreaterThan(60_000);
    expect(problemSentence(told[0]!).what).toContain('20,000 L on 1 September 2027');
  });

  it('and is none where a new set was put in between', async () => {
    const cartridges = table(
      { siteId: 'S001', serial: 'C1', unitSerial: 'U1', installedOn: '2027-03-01', removedOn: '2027-07-01' },
      { siteId: 'S001', serial: 'C2', unitSerial: 'U1', installedOn: '2027-07-01', removedOn: '' },
    );
    const files = readings(read('2027-06-01', '880', '60000'), read('2027-09-01', '860', '20000'));
    const { told, unit } = await found({ ...files, 'cartridges.csv': cartridges });
    expect(lines(told)).toEqual([]);
    expect(isoDay(unit.setSince!)).toBe('2027-07-01');
  });

  it('a reading from before the set is left out, and told', async () => {
    const { told, unit } = await found(readings(read('2026-06-01', '700'), read('2027-09-01', '860')));
    expect(lines(told)).toEqual(['wear.reading_before_set note @ flowReadings.csv -']);
    expect(unit.readings_count).toBe(1);
  });

  it('readings that go with no rating are told', async () => {
    const { told } = await found(readings(read('2027-03-05', '90'), read('2027-12-01', '890')));
    expect(lines(told)).toEqual(['wear.readings_disagree note @ flowReadings.csv -']);
  });

  it('a reading of a unit that is not there leaves the rest as it is', async () => {
    const other = { ...read('2027-09-01', '300'), unitSerial: 'U9' };
    const { faults, unit } = await found(readings(other));
    expect(faults.length).toBeGreaterThan(0);
    expect(unit.readings_count).toBe(0);
    expect(unit.endsOn).not.toBeNull();
  });
});

it('a second source of which nobody knows how turbid it is, where tanks run dry', async () => {
  const dry = longRain.replaceAll(',12', ',2');
  const files = withUnit({
    'rain/G-east.csv': dry,
    'sites.csv': good['sites.csv']!.replace('handOverDay', 'handOverDay,secondSourceId')
      .replace('2027-03-01', '2027-03-01,stream')
      .replace('G-east,,', 'G-east,,,')
      .replace('2027-05-15', '2027-05-15,'),
    'secondSources.csv': table({
      secondSourceId: 'stream',
      name: 'Lower stream',
      kind: 'river',
      months: '1 2 3 4 5 6 7 8 9 10 11 12',
      turbidity_NTU: '',
    }),
  });
  const { told, unit } = await found(files);
  expect(lines(told)).toEqual(['wear.source_turbidity_unknown warning @ secondSources.csv turbidity_NTU']);
  expect(unit.unknownBy).toBe('wear.source_turbidity_unknown');
  expect(problemSentence(told[0]!).what).toContain('Lower stream');
});
