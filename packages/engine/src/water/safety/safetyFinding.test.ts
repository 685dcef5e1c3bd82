// long: one site, judged with every change that has a say in what people drink
import { describe, expect, it } from 'vitest';
import {
  type BarrierFacts,
  type ChlorineFinding,
  type DesignSettings,
  defaultSettings,
  noSafety,
  noTreatment,
  type PressureTestFinding,
  type RawWater,
  type SiteFacts,
  type SiteSafetyFacts,
  type StatedReductions,
  type TreatmentUnitFacts,
  type UnitFigures,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredUnit,
  type WaterTestFinding,
  type WaterTestsFinding,
} from '../../kernel/index.ts';
import { referencePathogens } from './constants.ts';
import { type SafetyGiven, safetyFinding } from './safetyFinding.ts';

const tested: StatedReductions = {
  ...{ bacteria_log10: 6, viruses_log10: 5.9, protozoa_log10: 6 },
  ...{ evidence: 'challengeTest', source: 'An invented laboratory, 2026' },
};
const unit = (serial: string, figures: Partial<UnitFigures> | null = {}): TreatmentUnitFacts => ({
  ...{ serial, partId: 'unit-3', installedOn: null, removedOn: null },
  figures: figures === null ? null : { ...unmeasuredUnit, cartridges_count: 3, reductions: tested, ...figures },
});
const raw = (pathogen: RawWater['pathogen'], typical_per_L: number, more: Partial<RawWater> = {}): RawWater => ({
  ...{ secondSourceId: null, pathogen, typical_per_L, low_per_L: null, high_per_L: typical_per_L * 3 },
  source: 'An invented survey',
  ...more,
});
/** A hundredth of what the unit takes down to the target. */
const mild = [raw('campylobacter', 0.3), raw('rotavirus', 0.05), raw('cryptosporidium', 0.05)];
const clean: WaterTestFinding = {
  ...{ testId: 'W1', takenOn: 20_000, point: 'tap', sign: 'less', count_per_100mL: 1, low_per_100mL: null },
  ...{ high_per_100mL: 1, rarity: null, band: 'low', isBeforeHandOver: false },
};
const tests = (last: WaterTestFinding | null, clean_count: number): WaterTestsFinding => ({
  ...{ tests: last === null ? [] : [last], last, clean_count, cleanBelow_per_100mL: null, cleanWanted_count: 38 },
  ...{ inspection: null, priority: null, unusable: [], isUnusableOpen: false },
  lastCleanOn: clean_count > 0 ? (last?.takenOn ?? null) : null,
});
const said: Partial<DesignSettings> = { skipping_fraction: 0, daysOff_per_year: 0, recontamination_fraction: 0 };

interface Change {
  readonly safety?: Partial<SiteSafetyFacts>;
  readonly units?: readonly TreatmentUnitFacts[];
  readonly site?: Partial<SiteFacts>;
  readonly set?: Partial<DesignSettings>;
  readonly given?: Partial<SafetyGiven>;
}
function judged({ safety, units = [unit('U1')], site, set, given }: Change = {}) {
  const facts = {
    ...unmeasuredSite,
    siteId: 'S1',
    roofs: [{ ...unmeasuredRoof, roofId: 'R1', material: 'tile', hasLead: false }],
    secondSource: null,
    treatment: { ...noTreatment, units },
    safety: { ...noSafety, rawWater: mild, ...safety },
    ...site,
  } as unknown as SiteFacts;
  return safetyFinding({
    ...{ site: facts, waterTests: tests(clean, 1), chlorine: null, boilsAt_C: null, treatment: [] },
    settings: { ...defaultSettings, ...said, ...set },
    ...given,
  });
}
const found = (change: Change = {}) => judged(change).finding!;
const codes = (change: Change = {}) => judged(change).problems.map(({ code }) => code);
const verdicts = (change: Change = {}) => {
  const { verdict, cappedBy, mayDrink } = found(change);
  return [verdict, cappedBy, mayDrink];
};

describe('safetyFinding is judged', () => {
  it('where something of it was told, everywhere or nowhere', () => {
    const nothing: Change = { safety: noSafety, units: [] };
    expect(judged(nothing)).toEqual({ finding: null, problems: [], working: [] });
    expect(judged({ set: { judgeSafety: 'never' } }).finding).toBeNull();
    expect(verdicts({ ...nothing, set: { judgeSafety: 'always' } })).toEqual(['unknown', null, 'notShown']);
    const inspections = [{ inspectedOn: 20_000, risks_count: 2, questions_count: 10, by: null }];
    expect(judged({ safety: { ...noSafety, inspections }, units: [] }).finding).not.toBeNull();
    expect(judged({ safety: noSafety }).finding).not.toBeNull();
    expect(judged({ safety: noSafety, units: [unit('U1', null)] }).finding).toBeNull();
    expect(judged({ safety: noSafety, units: [{ ...unit('U1'), removedOn: 19_000 }] }).finding).toBeNull();
  });
});

describe('a clean sample grows old', () => {
  it('and beyond the age of the settings no verdict of fit rests on it', () => {
    const on = (today: number | null, set: Partial<DesignSettings> = {}) => verdicts({ given: { today }, set });
    expect(on(20_400)).toEqual(['holds', null, 'yes']);
    expect(on(20_401)).toEqual(['tight', 'safety.sample_too_old', 'notShown']);
    expect(on(20_401, { sampleAge_days: 401 })).toEqual(['holds', null, 'yes']);
    expect(on(null)).toEqual(['holds', null, 'yes']);
    const old = judged({ given: { today: 20_401 } });
    expect(old.finding).toMatchObject({ reasons: ['sampleTooOld'], needsTest: ['tooOld'] });
    expect(old.problems[0]).toMatchObject({
      code: 'safety.sample_too_old',
      facts: { age_days: 401, most_days: 400 },
    });
  });
});

describe('why it is said', () => {
  const saysOf = (change: Change) => {
    const { reasons, notes, needsTest } = found(change);
    return { reasons, notes, needsTest };
  };

  it('stands in the finding, all of it, the first told first', () => {
    expect(saysOf({})).toEqual({ reasons: ['shown'], notes: [], needsTest: [] });
    expect(saysOf({ given: { waterTests: null } })).toMatchObject({ reasons: ['noSample'], needsTest: ['none'] });
    expect(saysOf({ safety: { rawWater: [] } }).reasons).toEqual(['rawUnknown']);
    const unshown = unit('U1', { reductions: { ...tested, evidence: null } });
    expect(saysOf({ units: [unshown], safety: { rawWater: [] } }).reasons).toEqual(['noEvidence', 'rawUnknown']);
    expect(saysOf({ set: { skipping_fraction: null } }).reasons).toEqual(['skippingUnknown']);
  });

  it('names a walk that found many risks beside a fit site, without a verdict of its own', () => {
    const walked = (band: 'low' | 'high') => ({
      given: { waterTests: { ...tests(clean, 1), inspection: { inspectedOn: 20_000, score: 7, band } } },
    });
    expect(saysOf(walked('high'))).toEqual({ reasons: ['shown'], notes: ['walkAtRisk'], needsTest: [] });
    expect(found(walked('high')).mayDrink).toBe('yes');
    expect(saysOf(walked('low')).notes).toEqual([]);
  });

  it('tells a unit that failed its last test with air before all but germs, shown or not what it takes out', () => {
    const pressureTest = { supports_log10: 5.5 } as PressureTestFinding;
    const failed = { given: { treatment: [{ serial: 'U1', pressureTest }] } };
    expect(found(failed)).toMatchObject({ mayDrink: 'notShown', failedUnits: ['U1'], needsTest: ['unitFailed'] });
    expect(saysOf(failed).reasons[0]).toBe('unitFailed');
    const unshown = [unit('U1', { reductions: { ...tested, evidence: null } })];
    expect(saysOf({ ...failed, units: unshown }).reasons[0]).toBe('unitFailed');
    const germs: WaterTestFinding = { ...clean, sign: 'equal', count_per_100mL: 4 };
    const both = { given: { ...failed.given, waterTests: tests(germs, 0) } };
    expect(saysOf(both).reasons.slice(0, 2)).toEqual(['found', 'unitFailed']);
    expect(saysOf(both).needsTest).toEqual(['failed', 'unitFailed']);
  });

  it('a sample that cannot be used and may be the one that says no leaves it unknown', () => {
    const open = { given: { waterTests: { ...tests(clean, 1), isUnusableOpen: true } } };
    expect(verdicts(open)).toEqual(['unknown', null, 'notShown']);
    expect(saysOf(open).reasons).toEqual(['sampleUnusable']);
  });
});

describe('nobody is told to drink', () => {
  const cartridge = (serial: string, installedOn: number, removedOn: number | null) => ({
    ...{ serial, unitSerial: 'U1', partId: null, batch: null, installedOn, removedOn, reason: null },
  });
  const withCartridges = (removed: readonly (number | null)[], more: readonly number[] = []): Change => {
    const cartridges = [
      ...removed.map((on, index) => cartridge(`C${index}`, 19_000, on)),
      ...more.map((on, index) => cartridge(`D${index}`, on, null)),
    ];
    return { site: { treatment: { ...noTreatment, units: [unit('U1')], cartridges } }, given: { today: 20_100 } };
  };

  it('while a row of samples or of units could not be read: it may be the one that says no', () => {
    const place = { file: 'waterTests.csv', row: 3 };
    for (const of of ['safety', 'treatment'] as const) {
      const doubtsBeside = { ...unmeasuredSite.doubtsBeside, [of]: [place] };
      expect(found({ site: { doubtsBeside } }).mayDrink).toBe('notShown');
    }
  });

  it('while a unit is still to be installed, or its cartridges are out', () => {
    const planned = [{ ...unit('U1'), installedOn: 20_200 }];
    const outOfPlace = ['tight', 'safety.unit_not_in_place', 'notShown'];
    expect(verdicts({ units: planned, given: { today: 20_100 } })).toEqual(outOfPlace);
    expect(verdicts({ units: planned, given: { today: 20_200 } })).toEqual(['holds', null, 'yes']);
    expect(verdicts(withCartridges([20_000, 20_000, 20_000]))).toEqual(outOfPlace);
    expect(verdicts(withCartridges([20_000, null, null]))).toEqual(outOfPlace);
    expect(verdicts(withCartridges([20_000, 20_000, 20_000], [20_200, 20_200, 20_200]))).toEqual(outOfPlace);
    expect(verdicts(withCartridges([20_000, 20_000, 20_000], [20_000, 20_000, 20_000]))).toEqual([
      'holds',
      null,
      'yes',
    ]);
    expect(verdicts(withCartridges([20_000], [20_000]))).toEqual(['holds', null, 'yes']);
    expect(codes(withCartridges([20_000, null, null]))).toEqual(['safety.unit_not_in_place']);
  });

  it('while more chlorine is left than may be drunk', () => {
    const left = (residualBand: ChlorineFinding['residualBand']): Change => {
      const credited = { bacteria_log10: 2, viruses_log10: 2, protozoa_log10: 0 };
      return { given: { chlorine: { residualBand, credited } as ChlorineFinding } };
    };
    expect(found(left('tooHigh')).mayDrink).toBe('notShown');
    expect(found(left('high')).mayDrink).toBe('yes');
  });
});

describe('the verdict of the cup', () => {
  it('holds, and people may drink, where sums, their range and a clean sample say so', () => {
    expect(verdicts()).toEqual(['holds', null, 'yes']);
    expect(codes()).toEqual([]);
  });

  it('is short where the last sample held E. coli, whatever the sums', () => {
    const germs = tests({ ...clean, sign: 'equal', count_per_100mL: 4 }, 0);
    expect(verdicts({ given: { waterTests: germs } })).toEqual(['short', null, 'no']);
    expect(judged({ given: { waterTests: germs } }).problems[0]).toMatchObject({
      code: 'safety.do_not_drink',
      facts: { reason: 'sample' },
    });
    expect(verdicts({ given: { waterTests: tests({ ...clean, sign: 'more', count_per_100mL: 100 }, 0) } })[0]).toBe(
      'short',
    );
  });

  it('is short where a germ is too many as a rule, and tight where only at the worse end', () => {
    const needed = found().risks.find(({ pathogen }) => pathogen === 'rotavirus')!.needed_log10;
    const just = 0.05 * 10 ** (5.9 - needed);
    const viruses = (typical: number) => ({ safety: { rawWater: [mild[0]!, raw('rotavirus', typical), mild[2]!] } });
    expect(verdicts(viruses(just * 1.01))).toEqual(['short', null, 'notShown']);
    expect(verdicts(viruses(just * 0.99))).toEqual(['tight', null, 'yes']);
    expect(verdicts(viruses(just / 5))).toEqual(['holds', null, 'yes']);
  });

  it('is tight at best, and not shown, without a clean sample since hand-over', () => {
    for (const waterTests of [null, tests(null, 0)]) {
      expect(verdicts({ given: { waterTests } })).toEqual(['tight', 'safety.no_clean_sample', 'notShown']);
      expect(codes({ given: { waterTests } })).toEqual(['safety.no_clean_sample']);
    }
  });

  it.each([
    [{ set: { skipping_fraction: null } }, 'safety.skipping_unknown'],
    [{ set: { daysOff_per_year: null } }, 'safety.days_off_unknown'],
    [{ safety: { rawWater: mild.map((one) => ({ ...one, high_per_L: null })) } }, 'safety.raw_without_range'],
    [{ safety: { rawWater: mild.map((one) => ({ ...one, source: null })) } }, 'safety.raw_without_source'],
    [{ safety: { rawWater: mild.map((one) => ({ ...one, high_per_L: 0.001 })) } }, 'safety.raw_range_backwards'],
    [{ safety: { rawWater: mild.map((one) => ({ ...one, low_per_L: 1 })) } }, 'safety.raw_range_backwards'],
    [{ units: [unit('U1', { reductions: { ...tested, source: null } })] }, 'safety.evidence_without_source'],
  ] as const)('is tight at best with %o', (change, code) => {
    expect(verdicts(change)).toEqual(['tight', code, 'yes']);
    expect(codes(change)).toContain(code);
  });

  it('tells what comes back as a note alone', () => {
    expect(codes({ set: { recontamination_fraction: null } })).toEqual(['safety.recontamination_unknown']);
    expect(found({ set: { recontamination_fraction: null } }).verdict).toBe('holds');
  });

  it('is unknown without the raw water of a germ, but short where another is too many', () => {
    const two = { safety: { rawWater: mild.slice(1) } };
    expect(verdicts(two)).toEqual(['unknown', null, 'notShown']);
    expect(judged(two).problems[0]).toMatchObject({ code: 'safety.raw_unknown', facts: { germs: ['campylobacter'] } });
    expect(verdicts({ safety: { rawWater: [raw('rotavirus', 1e6)] } })[0]).toBe('short');
  });

  it('is unknown where nothing shows that any barrier works', () => {
    const unshown = { units: [unit('U1', { reductions: { ...tested, evidence: 'none' } })] };
    expect(verdicts(unshown)).toEqual(['unknown', null, 'notShown']);
    expect(codes(unshown)).toEqual(['safety.no_evidence', 'safety.viruses_by_pore']);
    expect(verdicts({ units: [unit('U1', null)] })[0]).toBe('unknown');
  });

  it('is short, and not to be drunk, where there is no barrier at all', () => {
    expect(verdicts({ units: [] })).toEqual(['short', null, 'no']);
    expect(codes({ units: [] })).toEqual(['safety.do_not_drink', 'safety.no_barrier']);
  });

  it('has no viruses of a membrane without a challenge test', () => {
    const byPore = { units: [unit('U1', { reductions: { ...tested, evidence: 'credited' } })] };
    expect(found(byPore).credited).toEqual({ bacteria_log10: 6, viruses_log10: 0, protozoa_log10: 6 });
    expect(codes(byPore)).toEqual(['safety.viruses_by_pore']);
    expect(found(byPore).verdict).toBe('short');
  });

  it('says so where more is stated than is credited', () => {
    expect(codes({ units: [unit('U1', { reductions: { ...tested, protozoa_log10: 7 } })] })).toEqual([
      'safety.over_most',
    ]);
  });
});

describe('the waters of a site', () => {
  const site = { secondSource: { secondSourceId: 'river', name: 'The river' } } as unknown as Partial<SiteFacts>;
  it('are those of roofs and of the second source in use, the worst first', () => {
    expect(verdicts({ site })[0]).toBe('unknown');
    expect(judged({ site }).problems[0]).toMatchObject({
      code: 'safety.source_raw_unknown',
      facts: { source: 'The river' },
    });
    const river = mild.map((one) => ({ ...one, secondSourceId: 'river', typical_per_L: 1, high_per_L: 2 }));
    const { risks } = found({ site, safety: { rawWater: [...mild, ...river] } });
    expect(risks).toHaveLength(6);
    expect(risks[0]!.waters.map(({ secondSourceId }) => secondSourceId)).toEqual(['river']);
    const far = river.map((one) => ({ ...one, secondSourceId: 'lake' }));
    expect(found({ safety: { rawWater: [...mild, ...far] } }).risks).toHaveLength(3);
  });

  const bodyOf = (people: number, ...days_by_year: readonly number[]) => ({ people, days_by_year });
  const river = [raw('campylobacter', 300), raw('rotavirus', 30), raw('cryptosporidium', 30)].map((one) => ({
    ...one,
    secondSourceId: 'river',
  }));
  const drunk = (...sourceDays: ReturnType<typeof bodyOf>[]): Change => ({
    ...{ site, safety: { rawWater: [...mild, ...river] }, given: { sourceDays } },
  });
  const daysTold = 'safety.source_days_unknown';

  it('are each judged as if drunk every day, and that is said, where the days are not known', () => {
    const unknown: Change = { site, safety: { rawWater: [...mild, ...river] } };
    expect(codes(unknown)).toContain(daysTold);
    expect(found(unknown).sourceDays).toEqual({
      ...{ secondSourceId: 'river', name: 'The river', days_per_year: null, days_per_year_range: null },
    });
    expect(found(unknown).risks.map(({ waters }) => waters.map((one) => one.days_per_year))).toEqual(
      Array.from({ length: 6 }, () => [365]),
    );
    expect(codes(drunk())).toContain(daysTold);
    expect(codes(drunk(bodyOf(10)))).toContain(daysTold);
  });

  it('are one year together, each with its days, where the days are known', () => {
    const { risks, sourceDays } = found(drunk(bodyOf(100, 0, 30, 60)));
    expect(sourceDays).toMatchObject({ days_per_year: 30, days_per_year_range: { low: 0, high: 60 } });
    expect(codes(drunk(bodyOf(100, 0, 30, 60)))).not.toContain(daysTold);
    expect(risks.map(({ pathogen }) => pathogen).sort()).toEqual(['campylobacter', 'cryptosporidium', 'rotavirus']);
    const crypto = risks.find(({ pathogen }) => pathogen === 'cryptosporidium')!;
    expect(crypto.waters.map(({ secondSourceId, days_per_year }) => [secondSourceId, days_per_year])).toEqual([
      [null, 335],
      ['river', 30],
    ]);
    // One chance in r = 0.2 of each organism, a litre a day, six steps credited: by hand.
    const [p, q] = [1 - Math.exp(-0.2 * 0.05e-6), 1 - Math.exp(-0.2 * 30e-6)];
    const years = [0, 30, 60].map((days) => 1 - (1 - p) ** (365 - days) * (1 - q) ** days);
    expect(crypto.infection_per_year / (years.reduce((sum, one) => sum + one, 0) / 3)).toBeCloseTo(1, 6);
    expect(crypto.DALY_per_person_per_year / (crypto.infection_per_year * 0.7 * 0.0015)).toBeCloseTo(1, 9);
  });

  it('are that of roofs alone where the tanks leave no day to the source, and nothing is asked of it', () => {
    const none = drunk(bodyOf(100, 0, 0));
    const alone = found({ safety: { rawWater: mild } });
    expect(found(none).risks).toEqual(alone.risks);
    expect(found(none).sourceDays!.days_per_year).toBe(0);
    expect(verdicts({ site, given: { sourceDays: [bodyOf(5, 0)] } })).toEqual(['holds', null, 'yes']);
    expect(verdicts({ site, given: { sourceDays: [bodyOf(5, 1)] } })[0]).toBe('unknown');
  });

  it('weigh bodies of water by the people who draw from them, and treat a year of 366 days as one of 365', () => {
    const { sourceDays, risks } = found(drunk(bodyOf(30, 366, 366), bodyOf(10, 0, 0)));
    expect(sourceDays!.days_per_year).toBe(0.75 * 365);
    const [rain, source] = [found({ safety: { rawWater: mild } }), found(drunk(bodyOf(1, 365)))];
    const of = ({ risks: all }: typeof rain) =>
      all.find(({ pathogen }) => pathogen === 'rotavirus')!.DALY_per_person_per_year;
    expect(of({ ...rain, risks }) / (0.25 * of(rain) + 0.75 * of(source))).toBeCloseTo(1, 9);
    expect(found(drunk(bodyOf(0, 20), bodyOf(0, 40))).sourceDays!.days_per_year).toBe(30);
  });

  it('are tight at best, and nobody is told to drink, where those of the source could not be borne every day', () => {
    const mildly = drunk(bodyOf(1, ...Array.from({ length: 30 }, (_, year) => Number(year === 0))));
    const at = { ...mildly, set: { healthTarget_DALY_per_person_per_year: 2e-6 } };
    expect(verdicts(at)).toEqual(['tight', 'safety.source_over_target', 'notShown']);
    expect(codes(at)).toContain('safety.source_over_target');
    const borne = { ...at, set: { healthTarget_DALY_per_person_per_year: 1e-1 } };
    expect(verdicts(borne)).toEqual(['holds', null, 'yes']);
  });

  it('with a germ of roofs nobody counted are short by what is known of the source alone', () => {
    const change = { ...drunk(bodyOf(1, 365)), safety: { rawWater: [...river, ...mild.slice(1)] } };
    expect(verdicts(change)[0]).toBe('short');
    expect(codes(change)).toContain('safety.raw_unknown');
  });
});

describe('barriers', () => {
  it('of two units side by side are the mean of what they let through, not their sum', () => {
    const half = { ...tested, bacteria_log10: 1, viruses_log10: 1, protozoa_log10: 1 };
    const { credited, barriers } = found({ units: [unit('U1'), unit('U2', { reductions: half })] });
    expect(barriers.map(({ barrierId }) => barrierId)).toEqual(['U1', 'U2']);
    expect(credited.bacteria_log10).toBeCloseTo(-Math.log10((0.1 + 1e-6) / 2), 12);
  });

  it('add up one after another, chlorine among them, and tell what one leaking cartridge of three would leave', () => {
    const chlorine = { credited: { bacteria_log10: 2, viruses_log10: 2, protozoa_log10: 0 } } as ChlorineFinding;
    const { credited, leaking, barriers, tier } = found({ given: { chlorine } });
    expect(credited).toEqual({ bacteria_log10: 8, viruses_log10: 7.9, protozoa_log10: 6 });
    expect(tier).toBe(3);
    expect(leaking!.protozoa_log10).toBeCloseTo(-Math.log10((0.01 + 2.99e-6) / 3), 12);
    expect(leaking!.bacteria_log10).toBeCloseTo(leaking!.protozoa_log10 + 2, 9);
    expect(barriers.map(({ kind, evidence }) => [kind, evidence])).toEqual([
      ['membrane', 'challengeTest'],
      ['chlorine', 'credited'],
    ]);
    const none = { credited: { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 } } as ChlorineFinding;
    expect(found({ given: { chlorine: none } }).barriers[1]!.evidence).toBe('none');
    expect(found({ units: [] }).leaking).toBeNull();
  });

  it('have no more than the last test with air of the unit supports, of any class', () => {
    const test = (supports_log10: number | null) => ({
      given: { treatment: [{ serial: 'U1', pressureTest: { supports_log10 } as PressureTestFinding }] },
    });
    expect(found(test(2.1)).credited).toEqual({ bacteria_log10: 2.1, viruses_log10: 2.1, protozoa_log10: 2.1 });
    expect(verdicts(test(2.1))).toEqual(['short', null, 'no']);
    expect(
      judged(test(2.1)).problems.map(({ code, facts }) => [code, facts['reason'] ?? facts['supports_log10']]),
    ).toEqual([
      ['safety.do_not_drink', 'test'],
      ['safety.test_supports_less', 2.1],
    ]);
    expect(judged(test(2.1)).problems[1]!.place.file).toBe('pressureTests.csv');
    expect(found(test(-1)).credited.bacteria_log10).toBe(0);
    const set = { healthTarget_DALY_per_person_per_year: 1e-2 };
    expect(verdicts({ ...test(2.1), set })).toEqual(['tight', 'safety.test_supports_less', 'notShown']);
    const smaller = { ...test(4), units: [unit('U1', { reductions: { ...tested, protozoa_log10: 3.5 } })], set };
    expect(found(smaller).credited).toEqual({ bacteria_log10: 4, viruses_log10: 4, protozoa_log10: 3.5 });
    expect([verdicts(smaller), codes(smaller)]).toEqual([['holds', null, 'yes'], ['safety.test_limits']]);
    for (const supports of [null, 6.5]) {
      expect(verdicts(test(supports))).toEqual(['holds', null, 'yes']);
      expect(codes(test(supports))).toEqual([]);
    }
  });

  it('that half of the people use are those of half of the people', () => {
    const boiling: BarrierFacts = { barrierId: 'B1', kind: 'boiling', reductions: tested, used_fraction: 0.5 };
    const rawWater = [raw('cryptosporidium', 1)];
    const risk = found({ units: [], safety: { rawWater, barriers: [boiling] } }).risks[0]!;
    const all = found({ units: [], safety: { rawWater, barriers: [{ ...boiling, used_fraction: null }] } }).risks[0]!;
    const untreated = 1 - Math.exp(-365 * 0.2);
    expect(risk.infection_per_year).toBeCloseTo((untreated + all.infection_per_year) / 2, 9);
    expect(risk.waters[0]!.drinking_per_L).toBeCloseTo(1e-6, 12);
  });
});

describe('people', () => {
  it('who skip bear nearly all of it, and are counted with those who leave out a barrier', () => {
    const one = found({ set: { skipping_fraction: 0.1 } });
    const [viruses, all] = [
      one.risks.find(({ pathogen }) => pathogen === 'rotavirus')!,
      found().risks.find(({ pathogen }) => pathogen === 'rotavirus')!,
    ];
    const { alpha_shape, beta_shape } = referencePathogens.rotavirus.response;
    const untreated = 1 - (1 + 0.05 / beta_shape) ** (-alpha_shape * 365);
    expect(viruses.infection_per_year).toBeCloseTo(0.1 * untreated + 0.9 * all.infection_per_year, 9);
    expect(viruses.fromSkipping_fraction).toBeGreaterThan(0.99);
    expect(all.fromSkipping_fraction).toBe(0);
    expect(one.effective.bacteria_log10).toBeCloseTo(-Math.log10(0.1 + 0.9e-6), 9);
    expect(one.verdict).toBe('short');
  });

  it('are those of the site before those of the settings', () => {
    const { skipping_fraction, daysOff_per_year } = found({
      safety: { skipping_fraction: 0.2, daysOff_per_year: 4 },
      set: { skipping_fraction: 0.5, daysOff_per_year: 9 },
    });
    expect([skipping_fraction, daysOff_per_year]).toEqual([0.2, 4]);
  });

  it('fall ill of rotavirus as the settings have it', () => {
    const burden = (susceptibleToRotavirus_fraction: number) =>
      found({ set: { susceptibleToRotavirus_fraction } }).risks.find(({ pathogen }) => pathogen === 'rotavirus')!;
    expect(burden(0.12).DALY_per_person_per_year / burden(0.06).DALY_per_person_per_year).toBeCloseTo(2, 12);
  });
});

describe('roofs', () => {
  const roof = (change: object) =>
    ({ roofs: [{ ...unmeasuredRoof, roofId: 'R1', hasLead: false, ...change }] }) as Partial<SiteFacts>;
  it('warn once with every roof, say what is not taken out, and change no verdict', () => {
    const lead = { roofs: [...roof({ hasLead: true }).roofs!, { ...unmeasuredRoof, roofId: 'R2', hasLead: true }] };
    const { problems, finding } = judged({ site: lead });
    expect(problems.map(({ code, facts }) => [code, facts['roofs']])).toEqual([
      ['safety.lead', ['R1', 'R2']],
      ['safety.not_taken_out', undefined],
    ]);
    expect(finding!.verdict).toBe('holds');
  });

  it('of metal in acid water: the last pH that was measured', () => {
    const water = (pH: number | null, takenOn: number) => ({ testId: `W${takenOn}`, takenOn, pH }) as never;
    const metal = roof({ material: 'corrugatedMetal', coating: 'forDrinkingWater' });
    const of = (...values: (number | null)[]) =>
      codes({ site: metal, safety: { tests: values.map((pH, index) => water(pH, index)) } });
    expect(of(6.4)).toEqual(['safety.ph_low', 'safety.not_taken_out']);
    expect(of(6.4, 6.5, null)).toEqual([]);
    expect(of()).toEqual([]);
    expect(codes({ site: roof({ material: 'tile' }), safety: { tests: [water(5, 1)] } })).toEqual([]);
  });
});

describe('the working', () => {
  it('has a line of each step of each germ, with its inputs, and no figure that is none', () => {
    const { working } = judged({ given: { boilsAt_C: 98 } });
    const count = (code: string) => working.filter((line) => line.code === code).length;
    expect(count('safety.barrier')).toBe(1);
    for (const code of ['raw', 'drinking', 'infectionYear', 'illness', 'daly', 'dalyRange', 'needed'])
      expect(count(`safety.${code}`), code).toBe(3);
    expect(count('safety.verdict')).toBe(1);
    expect(working.at(-1)!.code).toBe('safety.verdict');
    for (const { value, inputs } of working)
      for (const one of [value, ...inputs.map((input) => input.value)])
        expect(typeof one === 'string' || Number.isFinite(one)).toBe(true);
  });
});
