import { describe, expect, it } from 'vitest';
import {
  type CartridgeFacts,
  defaultSettings,
  type FlowReading,
  isoDay,
  meanYear_days,
  readIsoDay,
  type SiteTreatmentFacts,
  type UnitFigures,
  unmeasuredUnit,
} from '../../kernel/index.ts';
import { type WearGiven, wearFindings } from './wearFindings.ts';

const day = (text: string) => readIsoDay(text)!;
const put = day('2027-03-01');

const figures: UnitFigures = {
  ...unmeasuredUnit,
  ratedFlow_L_per_h: 900,
  ratedPressure_kPa: 60,
  lowestFlow_L_per_h: 300,
  ratedLitres_L: 2_000_000,
  ratedTurbidity_NTU: 5,
  lifeLimit_years: 3,
};
const unit = { serial: 'U1', partId: 'unit', figures, installedOn: put, removedOn: null };
const cartridge = (serial: string, installedOn: string | null, removedOn: string | null = null): CartridgeFacts => ({
  ...{ serial, unitSerial: 'U1', partId: null, batch: null, reason: null },
  installedOn: installedOn === null ? null : day(installedOn),
  removedOn: removedOn === null ? null : day(removedOn),
});
const reading = (readOn: string, flow_L_per_h: number, more: Partial<FlowReading> = {}): FlowReading => ({
  ...{ unitSerial: 'U1', readOn: day(readOn), flow_L_per_h, pressure_kPa: 60, waterTemperature_C: 20, passed_L: null },
  ...more,
});

/** A site whose unit has 2,000 L a day in every future. */
function given(
  treatment: Partial<SiteTreatmentFacts> = {},
  more: Partial<WearGiven> = {},
  site: Partial<WearGiven['site']> = {},
): WearGiven {
  const facts: SiteTreatmentFacts = {
    units: [unit],
    cartridges: [],
    flowReadings: [],
    pressureTests: [],
    ...treatment,
  };
  return {
    site: { siteId: 'S1', secondSource: null, handOverDay: null, ...site, treatment: facts },
    settings: { ...defaultSettings, roofTurbidity_NTU: 1, roofTurbidityHigh_NTU: 2, cartridgeFailures_per_year: 0 },
    today: day('2027-09-01'),
    pressure_kPa: null,
    futureOf: (_, __, days) => ({
      roof_L: new Float64Array(days).fill(2000),
      secondSource_L: new Float64Array(days),
    }),
    ...more,
  };
}

const found = (input: WearGiven) => {
  const { finding, problems, working } = wearFindings(input);
  return { unit: finding![0]!, codes: problems.map(({ code }) => code), problems, working, all: finding! };
};
const settings = given().settings;

describe('a set of cartridges', () => {
  it('is due when its rated litres have passed: 2,000,000 L at 2,000 L a day is 1,000 days', () => {
    const { unit: f, codes, working } = found(given());
    expect(f.unknownBy).toBeNull();
    expect(f.setSince).toBe(put);
    expect([f.endsOn!.p10, f.endsOn!.p50, f.endsOn!.p90].map((end) => end - put)).toEqual([1000, 1000, 1000]);
    expect(f.litres_L!.p50).toBeCloseTo(2e6, 6);
    expect(f.endsBy_fraction.litres).toBeGreaterThan(0.95);
    expect(f.passedSoFar_L).toBe((day('2027-09-01') - put) * 2000);
    expect(codes).toEqual([]);
    expect(working.map(({ code }) => code)).toEqual([
      'wear.litres',
      'wear.turbidity',
      'wear.fouling',
      'wear.ends',
      'wear.endsOn',
    ]);
  });

  it('is due by its age where little passes, counted from the day it was new', () => {
    const few = given(
      {},
      {
        futureOf: (_, __, days) => ({
          roof_L: new Float64Array(days).fill(500),
          secondSource_L: new Float64Array(days),
        }),
      },
    );
    const { unit: f } = found(few);
    expect(f.endsOn!.p50 - put).toBe(Math.floor(3 * meanYear_days));
    expect(f.endsBy_fraction.age).toBeGreaterThan(0.9);
  });

  it('is as old as its newest change, and a set that is out is not looked at', () => {
    const cartridges = [
      cartridge('A', '2027-03-01', '2028-01-10'),
      cartridge('B', '2028-01-10'),
      cartridge('C', '2027-03-01'),
    ];
    expect(isoDay(found(given({ cartridges })).unit.setSince!)).toBe('2028-01-10');
  });

  it('named by a cartridge without a unit is of the only unit there is', () => {
    const loose = { ...cartridge('A', '2027-06-01'), unitSerial: null };
    expect(isoDay(found(given({ cartridges: [loose] })).unit.setSince!)).toBe('2027-06-01');
    const two = found(given({ units: [unit, { ...unit, serial: 'U2' }], cartridges: [loose] }));
    expect(two.all.map(({ setSince }) => setSince)).toEqual([put, put]);
  });

  it('of one of two units has half the water', () => {
    const { all } = found(given({ units: [unit, { ...unit, serial: 'U2' }] }));
    expect(all.map(({ serial }) => serial)).toEqual(['U1', 'U2']);
    expect(all[0]!.passedSoFar_L).toBe((day('2027-09-01') - put) * 1000);
    expect(all[0]!.endsBy_fraction.age).toBeGreaterThan(0.9);
  });

  it('is new on the day of hand-over where nobody says when the unit was installed', () => {
    const planned = given({ units: [{ ...unit, installedOn: null }] }, {}, { handOverDay: day('2028-05-01') });
    const { unit: f } = found(planned);
    expect(isoDay(f.setSince!)).toBe('2028-05-01');
    expect(f.passedSoFar_L).toBeNull();
    expect(f.endsOn!.p50 - f.setSince!).toBe(1000);
  });

  it('that was due is told as overdue, with by how many days', () => {
    const { problems } = found(given({}, { today: put + 1100 }));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ code: 'wear.overdue', severity: 'warning', facts: { unit: 'U1', days: 100 } });
  });

  it('of a site without a unit in use is not looked for', () => {
    expect(wearFindings(given({ units: [] })).finding).toBeNull();
    expect(wearFindings(given({ units: [{ ...unit, removedOn: put + 1 }] })).finding).toBeNull();
  });
});

describe('what is missing leaves the date unknown, and is told', () => {
  const without = (changed: Partial<UnitFigures>) =>
    given({ units: [{ ...unit, figures: { ...figures, ...changed } }] });
  it.each([
    ['wear.water_unknown', given({}, { futureOf: null })],
    ['wear.rating_unknown', without({ ratedLitres_L: null })],
    ['wear.rating_unknown', given({ units: [{ ...unit, figures: null }] })],
    ['wear.rated_turbidity_unknown', without({ ratedTurbidity_NTU: null })],
    ['wear.turbidity_unknown', given({}, { settings: { ...settings, roofTurbidity_NTU: null } })],
    ['wear.temperature', given({}, { settings: { ...settings, waterTemperature_C: 60 } })],
    ['wear.set_day_unknown', given({ cartridges: [cartridge('A', null)] })],
  ] as const)('%s', (code, input) => {
    const { unit: f, codes } = found(input);
    expect(f.unknownBy).toBe(code);
    expect(f.endsOn).toBeNull();
    expect(codes).toContain(code);
  });

  it('but the latest day there can be is told where only a turbidity is missing', () => {
    for (const input of [
      without({ ratedTurbidity_NTU: null }),
      given({}, { settings: { ...settings, roofTurbidity_NTU: null } }),
    ])
      expect(found(input).problems.find(({ facts }) => facts['latest'])!.facts['latest']).toBe(isoDay(put + 1000));
  });

  it('but the litres of a new set are told where only its day is missing', () => {
    const { unit: f } = found(given({ cartridges: [cartridge('A', null)] }));
    expect(f.litres_L!.p50).toBeCloseTo(2e6, 6);
    expect(f.passedSoFar_L).toBeNull();
  });

  it('and what is not rated is told where the date stands without it', () => {
    const bare = without({ lowestFlow_L_per_h: null, lifeLimit_years: null });
    const { unit: f, codes } = found({ ...bare, settings: { ...settings, cartridgeFailures_per_year: null } });
    expect(f.endsOn!.p50 - put).toBe(1000);
    expect(codes).toEqual(['wear.flow_not_rated', 'wear.life_unknown', 'wear.failures_unknown']);
  });

  it('a lowest flow that is no lower than the clean one is no rating', () => {
    expect(found(without({ lowestFlow_L_per_h: 900 })).codes).toEqual(['wear.flow_not_rated']);
  });

  it('the clean flow may come from area and permeability', () => {
    expect(
      found(without({ ratedFlow_L_per_h: null, membraneArea_m2: 3, permeability_L_per_m2_h_bar: 500 })).codes,
    ).toEqual([]);
  });

  it('ends beyond what is looked ahead stand at its last day', () => {
    const long = without({ lifeLimit_years: null, ratedLitres_L: 1e9, lowestFlow_L_per_h: null });
    const { unit: f, codes } = found(long);
    expect(codes).toContain('wear.beyond_sight');
    expect(f.endsOn!.p90 - put).toBe(Math.ceil(15 * meanYear_days));
    expect(f.litres_L).toBeNull();
  });
});

describe('a second source', () => {
  const source = { secondSourceId: 'R', name: 'Stream', kind: 'river' as const, months: [1], turbidity_NTU: 20 };
  const half = {
    futureOf: (_: number, __: number, days: number) => ({
      roof_L: new Float64Array(days).fill(1000),
      secondSource_L: new Float64Array(days).fill(1000),
    }),
  };

  it('wears by its own turbidity: 20 NTU at 5 rated is four litres for one', () => {
    const { unit: f } = found(given({}, half, { secondSource: source }));
    expect(f.endsOn!.p50 - put).toBeLessThanOrEqual(2_000_000 / (1000 + 4 * 1000));
  });

  it('whose turbidity is not known leaves the date unknown, but only if its water passes', () => {
    const unknown = { ...source, turbidity_NTU: null };
    expect(found(given({}, half, { secondSource: unknown })).unit.unknownBy).toBe('wear.source_turbidity_unknown');
    expect(found(given({}, {}, { secondSource: unknown })).unit.unknownBy).toBeNull();
  });

  it('or a roof muddier than the unit may be given is told', () => {
    const delicate = { units: [{ ...unit, figures: { ...figures, highestTurbidity_NTU: 1.5 } }] };
    const { problems } = found(given(delicate, half, { secondSource: source }));
    const told = problems.filter(({ code }) => code === 'wear.too_turbid');
    expect(told.map(({ facts }) => facts['water'])).toEqual(['roof', 'secondSource']);
  });
});

describe('readings of the flow', () => {
  // At a fouling of 4, 2,000 L a day of 1 NTU bring the resistance to 1 + 4 × 2 × 2000 × 184 ÷ 1e7 in 184 days.
  const grown = (days: number) => 1 + (4 * 2 * 2000 * days) / 1e7;
  const on = (text: string) => reading(text, 900 / grown(day(text) - put));
  const flowReadings = ['2027-05-01', '2027-07-01', '2027-09-01'].map(on);
  const narrow = { ...settings, roofTurbidityHigh_NTU: null, flowReadingError_fraction: 0.03 };

  it('tell how fast it clogs here', () => {
    const { unit: f, codes } = found(given({ flowReadings }, { settings: narrow }));
    expect(f.readings_count).toBe(3);
    expect(f.fouling_ratio.p10).toBeLessThan(4);
    expect(f.fouling_ratio.p90).toBeGreaterThan(3.2);
    expect(f.fouling_ratio.p90).toBeLessThan(4.6);
    // By its flow after 1e7 ÷ (4 × 2000) = 1,250 days at a fouling of 4: its litres come first still.
    expect(f.endsBy_fraction.litres).toBeGreaterThan(0.9);
    expect(codes).toEqual([]);
  });

  it('of an earlier set tell it too', () => {
    const cartridges = [cartridge('A', '2027-03-01', '2027-10-01'), cartridge('B', '2027-10-01')];
    const { unit: f } = found(given({ flowReadings, cartridges }, { settings: narrow }));
    expect(f.readings_count).toBe(3);
    expect(f.fouling_ratio.p50).toBeGreaterThan(3);
  });

  it('count from what the meter says, and the set goes on from there', () => {
    const metered = [reading('2027-09-01', 850, { passed_L: 1_500_000 })];
    const { unit: f } = found(given({ flowReadings: metered }));
    expect(f.passedSoFar_L).toBe(1_500_000);
    expect(f.endsOn!.p50).toBe(day('2027-09-01') + 250);
  });

  it('whose meter ran backwards are told, and the balance is taken', () => {
    const back = [reading('2027-05-01', 880, { passed_L: 300_000 }), reading('2027-06-01', 870, { passed_L: 200_000 })];
    const { problems, unit: f } = found(given({ flowReadings: back }));
    expect(problems.map(({ code }) => code)).toEqual(['wear.meter_backwards']);
    expect(problems[0]!.facts).toMatchObject({ day: '2027-06-01', value: 200_000, before: 300_000 });
    expect(f.readings_count).toBe(2);
    expect(f.passedSoFar_L).toBe(300_000 + (day('2027-09-01') - day('2027-05-01')) * 2000);
  });

  it('from before any set that is known are left out, and told', () => {
    const { codes, unit: f } = found(given({ flowReadings: [reading('2026-12-01', 500)] }));
    expect(codes).toEqual(['wear.reading_before_set']);
    expect(f.readings_count).toBe(0);
  });

  it('that go with nothing are told', () => {
    const odd = [reading('2027-03-05', 90), reading('2027-08-30', 890)];
    expect(found(given({ flowReadings: odd }, { settings: narrow })).codes).toContain('wear.readings_disagree');
  });

  it('cannot be used where flow or its pressure is not rated', () => {
    const bare = { units: [{ ...unit, figures: { ...figures, ratedPressure_kPa: null } }], flowReadings };
    const { codes, unit: f } = found(given(bare));
    expect(codes).toContain('wear.readings_not_used');
    expect(f.readings_count).toBe(0);
  });

  it('without pressure or temperature say less', () => {
    const vague = flowReadings.map((one) => ({ ...one, pressure_kPa: null, waterTemperature_C: null }));
    const width = (readings: readonly FlowReading[]) => {
      const { p10, p90 } = found(given({ flowReadings: readings }, { settings: narrow })).unit.fouling_ratio;
      return p90 / p10;
    };
    expect(width(vague)).toBeGreaterThan(width(flowReadings) * 1.5);
  });
});
