import { describe, expect, it } from 'vitest';
import { defaultSettings, type SiteFacts, type TankFacts, unmeasuredSite, unmeasuredTank } from '../../kernel/index.ts';
import { leastSafety_factor } from './constants.ts';
import { standFindings } from './standFindings.ts';
import { waterMass_kg } from './waterMass.ts';

/** 5,000 L at most on a low and wide stand, in firm clay. */
const raised: TankFacts = {
  ...unmeasuredTank,
  tankId: 'A',
  nominal_L: 4000,
  diameter_m: 1.8,
  height_m: 1.6,
  standHeight_m: 0.5,
  emptyMass_kg: 150,
  standMass_kg: 900,
  groundClass: 'firmClay',
  pads_count: 4,
  padSide_m: 0.6,
  baseWidth_m: 2.4,
  isFastened: true,
  signedBy: 'R. Aldane',
  signedOn: 20_000,
};

const site = (tanks: readonly TankFacts[], more: Partial<SiteFacts> = {}) =>
  ({ ...unmeasuredSite, siteId: 'S1', tanks, windSpeed_m_per_s: 30, ...more }) as SiteFacts;

function found(tank: Partial<TankFacts>, more: Partial<SiteFacts> = {}, settings = defaultSettings) {
  const { finding, problems, working, gate } = standFindings({
    site: site([{ ...raised, ...tank }], more),
    settings,
  });
  return { finding: finding?.[0] ?? null, codes: problems.map(({ code }) => code), problems, working, gate };
}

describe('what is judged', () => {
  it('is nothing where nothing of a stand was measured, and all where that is asked', () => {
    const bare = { ...unmeasuredTank, tankId: 'A' };
    const given = { site: site([bare]), settings: defaultSettings };
    expect(standFindings(given)).toEqual({ finding: null, problems: [], working: [], gate: 'notNeeded' });
    const always = standFindings({ ...given, settings: { ...defaultSettings, judgeStand: 'always' } });
    expect(always.finding).toMatchObject([{ verdict: 'unknown', bearing_kPa: null }]);
  });

  it('is nothing where that is switched off, but the gate stays', () => {
    const off = { ...defaultSettings, judgeStand: 'never' } as const;
    const { finding, gate, codes } = found({ signedBy: null }, {}, off);
    expect([finding, gate, codes]).toEqual([null, 'closed', ['stand.not_signed']]);
  });
});

describe('a stand that holds', () => {
  it('holds, with every figure', () => {
    const { finding, codes, gate, working } = found({});
    expect(codes).toEqual([]);
    expect(gate).toBe('open');
    expect(finding!.verdict).toBe('holds');
    // To the rim: π ÷ 4 × 1.8² × 1.6 m³, more than what is written on it.
    expect(finding!.mostHeld_L).toBeCloseTo(4071.504, 3);
    const mass_kg = waterMass_kg(4071.504) + 1050;
    expect(finding!.massFull_kg).toBeCloseTo(mass_kg, 2);
    expect(finding!.bearing_kPa).toBeCloseTo((mass_kg * 9.81) / 1.44 / 1000, 3);
    // 0.613 × 0.85 × 0.95 × 30² Pa on 1.8 × 1.6 m, × 0.85 × 0.7.
    const push_N = 0.613 * 0.85 * 0.95 * 900 * 0.85 * 0.7 * 1.8 * 1.6;
    expect(finding!.windForce_N).toBeCloseTo(push_N, 6);
    expect(finding!.empty.overturning_factor).toBeCloseTo((1050 * 9.81 * 1.2) / (push_N * 1.3), 6);
    expect(finding!.empty.sliding_factor).toBeCloseTo((0.3 * 1050 * 9.81) / push_N, 6);
    expect(finding!.leastHeld_L).toBe(0);
    expect(working.map(({ code }) => code)).toContain('stand.verdict');
  });

  it('is tight where the margin takes it over, and where it must be fastened and nobody says so', () => {
    const use = found({}).finding!.bearingUse_factor!;
    const nearly = 0.6 * Math.sqrt(use * 1.02);
    expect(found({ padSide_m: nearly }).finding!.verdict).toBe('tight');
    const assumed = found({ isFastened: null });
    expect(assumed.finding).toMatchObject({ verdict: 'tight', cappedBy: 'stand.fastening_assumed' });
    expect(assumed.codes).toEqual(['stand.fastening_assumed']);
    expect(found({ isFastened: false }).finding).toMatchObject({ verdict: 'short', lacks: ['fastening'] });
  });
});

describe('a stand that does not hold', () => {
  it('is short of ground, of weight, or of both, and says which', () => {
    expect(found({ padSide_m: 0.3 }).finding).toMatchObject({ verdict: 'short', lacks: ['bearing'] });
    const windy = found({ standMass_kg: 100 }, { windSpeed_m_per_s: 60 }).finding!;
    expect(windy).toMatchObject({ verdict: 'short', lacks: ['overturning', 'sliding'] });
  });

  it('stands with so much water in it, and with less it does not', () => {
    const { leastHeld_L, massEmpty_kg, empty } = found({ standMass_kg: 100 }, { windSpeed_m_per_s: 45 }).finding!;
    expect(leastHeld_L).toBeGreaterThan(0);
    const more = (massEmpty_kg! + waterMass_kg(leastHeld_L!)) / massEmpty_kg!;
    const least = Math.min(empty.overturning_factor!, empty.sliding_factor!) * more;
    expect(least).toBeCloseTo(leastSafety_factor, 9);
  });

  /** 60 kg on 1,000 kg in 35 m/s: 6 m² of tank for the wind to push on. */
  const light = { diameter_m: 2.5, height_m: 2.4, emptyMass_kg: 60, standMass_kg: 1000, baseWidth_m: 6, padSide_m: 3 };
  const gale = { windSpeed_m_per_s: 35 };

  it('where the tank is not fastened, stands only with so much water that neither it nor its stand goes', () => {
    const fastened = found({ ...light, isFastened: true }, gale).finding!;
    expect(fastened.lacks).toEqual(['sliding']);
    // 0.613 × 0.85 × 0.95 × 35² Pa × 0.85 × 0.7 × 6 m²; friction 0.3 of 60 kg and of 1,060 kg; 998.2 kg/m³ to two digits.
    const push_N = 0.613 * 0.85 * 0.95 * 35 ** 2 * 0.85 * 0.7 * 6;
    const wanted_kg = (1.5 * push_N) / (0.3 * 9.81);
    expect(fastened.leastHeld_L! * 0.9982).toBeCloseTo(wanted_kg - 1060, 1);
    const loose = found({ ...light, isFastened: false }, gale).finding!;
    expect(loose.lacks).toEqual(['sliding', 'fastening']);
    expect(loose.leastHeld_L! * 0.9982).toBeCloseTo(wanted_kg - 60, 1);
    expect(found({ ...light, isFastened: null }, gale).finding!.leastHeld_L).toBe(fastened.leastHeld_L);
  });

  it('where even a full tank that is not fastened would go, no water keeps it', () => {
    const heavyStand = { ...light, diameter_m: 1.2, nominal_L: null, standMass_kg: 9000, isFastened: false };
    expect(found(heavyStand, { windSpeed_m_per_s: 90 }).finding).toMatchObject({
      lacks: ['fastening'],
      leastHeld_L: null,
    });
    expect(found({ ...heavyStand, isFastened: true }, { windSpeed_m_per_s: 90 }).finding!.leastHeld_L).toBe(0);
  });

  it('is short even where something else is not known', () => {
    const { finding, codes } = found({ padSide_m: 0.3 }, { windSpeed_m_per_s: null });
    expect(finding).toMatchObject({ verdict: 'short', lacks: ['bearing'] });
    expect(codes).toEqual(['stand.wind_unknown']);
  });
});

describe('what is not known', () => {
  it.each([
    ['the ground', { groundClass: null }, 'stand.ground_unknown'],
    ['ground that carries nothing', { groundClass: 'softOrMadeGround' }, 'stand.ground_to_investigate'],
    ['the mass of the tank', { emptyMass_kg: null }, 'stand.not_measured'],
    ['the mass of the stand', { standMass_kg: null }, 'stand.not_measured'],
    ['the pads', { padSide_m: null }, 'stand.not_measured'],
    ['the base', { baseWidth_m: null }, 'stand.not_measured'],
    ['the height of the tank', { height_m: null }, 'stand.not_measured'],
    ['the height of the stand', { standHeight_m: null }, 'stand.not_measured'],
  ] as const)('%s leaves it unknown, with one problem', (_name, lacks, code) => {
    const { finding, codes } = found(lacks);
    expect(finding!.verdict).toBe('unknown');
    expect(codes).toEqual([code]);
  });

  it('names every measure that is missing, once', () => {
    const { problems } = found({ diameter_m: null, pads_count: null, standMass_kg: null });
    expect(problems[0]!.facts['columns']).toEqual(['diameter_m', 'standMass_kg', 'pads']);
  });

  it('takes the mass of the catalogue, and the settings for the wind', () => {
    expect(found({ emptyMass_kg: null, partMass_kg: 150 }).finding!.verdict).toBe('holds');
    const settings = { ...defaultSettings, windSpeed_m_per_s: 30 };
    expect(found({}, { windSpeed_m_per_s: null }, settings).finding!.verdict).toBe('holds');
    expect(found({}, { windSpeed_m_per_s: null }).codes).toEqual(['stand.wind_unknown']);
    expect(found({}, { windSpeed_m_per_s: 0 }).codes).toEqual(['stand.wind_unknown']);
  });

  it('does not believe a wind of 120 m/s, and says what it would be', () => {
    const { finding, problems } = found({}, { windSpeed_m_per_s: 120 });
    expect(finding!.verdict).toBe('unknown');
    expect(problems[0]).toMatchObject({ code: 'stand.wind_in_other_unit', place: { file: 'sites.csv' } });
    expect(problems[0]!.facts['asKmh_m_per_s']).toBeCloseTo(33.33, 2);
  });
});

describe('on the ground', () => {
  const ground = { standHeight_m: 0, pads_count: null, padSide_m: null, baseWidth_m: null, standMass_kg: null };

  it('rests on its own foot and tips over its own edge', () => {
    const { finding, codes } = found({ ...ground, emptyMass_kg: 4000, signedBy: null }, { windSpeed_m_per_s: 20 });
    expect(codes).toEqual([]);
    expect(finding).toMatchObject({ verdict: 'holds', loose: null });
    const area_m2 = (Math.PI / 4) * 1.8 * 1.8;
    expect(finding!.bearing_kPa).toBeCloseTo((finding!.massFull_kg! * 9.81) / area_m2 / 1000, 9);
  });
});

it('tells of consent for a tank that is large for its height, and judges nothing by it', () => {
  const { codes, finding } = found({ standHeight_m: 1.5, standMass_kg: 3000 }, { windSpeed_m_per_s: 20 });
  expect(codes).toEqual(['stand.consent_likely']);
  expect(finding!.verdict).toBe('holds');
});

it('puts the worst first', () => {
  const tanks = [raised, { ...raised, tankId: 'B', padSide_m: 0.3 }, { ...raised, tankId: 'C', groundClass: null }];
  const { finding } = standFindings({ site: site(tanks), settings: defaultSettings });
  expect(finding!.map(({ tankId }) => tankId)).toEqual(['B', 'C', 'A']);
});
