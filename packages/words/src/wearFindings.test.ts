import { readIsoDay } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { english, loadLanguage, problemSentence } from './index.ts';
import type { WearSaid } from './sentences/wearFindings.ts';

const due: WearSaid = {
  serial: 'U1',
  partId: 'unit',
  unknownBy: null,
  endsOn: { p10: readIsoDay('2028-11-02')!, p50: readIsoDay('2029-06-14')!, p90: readIsoDay('2030-02-28')! },
  litres_L: { p10: 1_240_321.4, p50: 1_650_499, p90: 2_000_000 },
  passedSoFar_L: 300_000,
  endsBy_fraction: { litres: 0.22, flow: 0.61, age: 0.17, failure: 0 },
  fouling_ratio: { p10: 0.52, p50: 1, p90: 1.9 },
  readings_count: 0,
  futures_count: 200,
};

describe('what is said of cartridges', () => {
  it('is the day they are due with its range, why, what they pass, and what it rests on', () => {
    expect(english.findings.wear(due)).toBe(
      'Change the cartridges of U1 about 14 June 2029, likely between 2 November 2028 and 28 February 2030: first too little flows through them (the likeliest end, 61 %). ' +
        'By then they have passed about 1,650,000 L (likely 1,240,000 to 2,000,000 L). By the rating alone: a reading of the flow would narrow it.',
    );
  });

  it('takes days as a report writes them', () => {
    const reported = { ...due, endsOn: { p10: '2028-11-02', p50: '2029-06-14', p90: '2030-02-28' } };
    expect(english.findings.wear(reported)).toBe(english.findings.wear(due));
  });

  it('tells what readings say of how fast they clog here', () => {
    const read = { ...due, readings_count: 3, fouling_ratio: { p10: 1.31, p50: 1.52, p90: 1.8 } };
    expect(english.findings.wear(read)).toContain(
      'By 3 readings of the flow they clog 1.52 times as fast as rated (likely 1.3 to 1.8).',
    );
  });

  it('is one day where all futures end on it', () => {
    const one = {
      ...due,
      endsOn: { p10: 22_000, p50: 22_000, p90: 22_000 },
      endsBy_fraction: { litres: 0, flow: 0, age: 1, failure: 0 },
    };
    expect(english.findings.wear(one)).toContain(
      'about 27 March 2030: first they are too old (the likeliest end, 100 %).',
    );
  });

  it('says no day where none is known, and the litres of a new set where only its day is missing', () => {
    const unknown = { ...due, unknownBy: 'wear.rating_unknown', endsOn: null, litres_L: null };
    expect(english.findings.wear(unknown)).toBe('When the cartridges of U1 are due is not known.');
    const noDay = { ...due, unknownBy: 'wear.set_day_unknown', endsOn: null };
    expect(english.findings.wear(noDay)).toMatch(/^A new set of U1 passes about 1,650,000 L here .* not known\.$/);
  });

  it('is said in Spanish too', async () => {
    const spanish = await loadLanguage('es');
    expect(spanish.findings.wear(due)).toMatch(
      /^Cambie los cartuchos de U1 hacia el 14 de junio de 2029, probablemente entre .*: primero pasa muy poco caudal/,
    );
  });
});

describe('what wear finds', () => {
  const said = (code: string, facts: Record<string, string | number>) =>
    problemSentence({ code, severity: 'warning', place: { siteId: 'S1' }, facts } as Parameters<
      typeof problemSentence
    >[0]);

  it('tells the latest day where there is one', () => {
    const { what } = said('wear.rated_turbidity_unknown', { unit: 'U1', part: 'P', latest: '2029-11-25' });
    expect(what).toContain('It can hardly be later than 25 November 2029, and may be much sooner.');
    expect(said('wear.rated_turbidity_unknown', { unit: 'U1', part: 'P' }).what).not.toContain('later than');
  });

  it('names the water that is too muddy', () => {
    const muddy = (water: string) =>
      said('wear.too_turbid', { unit: 'U1', water, value_NTU: 40, most_NTU: 25, source: 'Lower stream' }).what;
    expect(muddy('roof')).toBe('Roof water may reach U1 with 40 NTU, and it may be given 25 NTU at most.');
    expect(muddy('secondSource')).toMatch(/^Water of Lower stream may reach U1/);
  });

  it('counts a meter that ran backwards', () => {
    const { what } = said('wear.meter_backwards', { unit: 'U1', day: '2027-06-01', value: 200_000, before: 300_000 });
    expect(what).toMatch(/^The meter of U1 stood at 200,000 L on 1 June 2027, and at 300,000 L before that/);
  });
});
