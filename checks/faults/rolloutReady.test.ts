import { keptPlan, readIsoDay, readyKit, readyProgramme, readyRollout, rolloutSites } from '@eavewell/engine';
import { loadLanguage, problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, readFiles } from './folder.ts';
import { but, sound } from './rolloutFolder.ts';

const today = readIsoDay('2026-11-26')!;

/** The folder made ready, whatever its sites' water: all of them are taken to hold. */
async function readied(files: Files) {
  const { facts } = await readFiles(files);
  const verdicts = new Map(facts.sites.map(({ siteId }) => [siteId, 'holds' as const]));
  const programme = readyProgramme(facts, { today });
  const sites = [...rolloutSites(facts.sites, programme, readyKit(facts, today), verdicts)];
  const ready = readyRollout(facts, sites, { today });
  const told = [...ready.problem.jobs.map(({ siteId }) => siteId), ...ready.leftOut.map(({ siteId }) => siteId)];
  expect(told.sort()).toEqual(facts.sites.map(({ siteId }) => siteId).sort());
  return ready;
}

const cases: readonly (readonly [name: string, files: Files, code: string, said: RegExp])[] = [
  [
    'hours that contradict the length',
    but('ways.csv', ['W5,Ferry,jetty,S003,river,42,6,7', 'W5,Ferry,jetty,S003,river,4200,6,7']),
    'ways.hours_contradict',
    /W5.*6 h.*4,200 km/,
  ],
  [
    'a way without hours, whose carrier has no speed',
    but('ways.csv', ['river,42,6,7', 'river,42,,']),
    'ways.no_hours',
    /W5.*river/,
  ],
  [
    'levels for a way that names no gauge',
    but('ways.csv', ['400,,hills,R-tarn', '400,,hills,']),
    'ways.level_without_gauge',
    /boat.*W3/,
  ],
  ['a gauge read in one year alone', sound, 'ways.levels_short', /R-tarn/],
  [
    'a boat without a stated limit',
    but('carriers.csv', ['boat,Boat,boat,600', 'boat,Boat,boat,']),
    'ways.carrier_no_limit',
    /Boat/,
  ],
  ['a boat without fuel', but('carriers.csv', [',,1.2,45', ',,,45']), 'ways.fuel_unknown', /Boat/],
  [
    'a network in two pieces',
    but('ways.csv', ['W2,Shed road,shed,jetty,road,4,,,,,coast,\n', '']),
    'ways.in_pieces',
    /jetty|shed/,
  ],
  ['a way that is always closed', but('closures.csv', ['W3,,1 to 2', 'W3,,1 to 12']), 'ways.closed_always', /W3/],
  [
    'a crew that always rests',
    but(
      'crews.csv',
      ['feasts,sat;sun', 'feasts,mon;tue;wed;thu;fri;sat;sun'],
      ['2027-01-04,,120', '2027-01-04,2027-04-01,120'],
    ),
    'rollout.crew_never_works',
    /east/,
  ],
  ['a crew whose cost nobody states', sound, 'rollout.cost_unknown', /west/],
];

/** Faults of a plan that are seen on a day alone: the kept plan, the day, and what is told. */
const planCases: readonly (readonly [name: string, files: Files, today: string, code: string, said: RegExp])[] = [
  ['a trip that left on a day to come', sound, '2027-02-01', 'rollout.left_after_today', /T1.*23.Feb\w*.2027/],
  [
    'two trips of a crew under way at once',
    but(
      'planTrips.csv',
      ['T2,east,1.5,2027-04-01,yes,2027-04-05,2027-04-09,,', 'T2,west,1.5,,,,,2027-02-25,'],
      ['2027-03-06', ''],
    ),
    '2027-03-05',
    'rollout.two_under_way',
    /T1, T2.*west/,
  ],
  [
    'a trip that is back, and its site is not handed over',
    but('sites.csv', [',2027-03-01,,hills', ',,,hills']),
    '2027-03-10',
    'rollout.not_handed_over',
    /T1.*S001/,
  ],
  [
    'trips of a crew that is not planned with',
    but('crews.csv', ['East crew,store,', 'East crew,S009,']),
    '2027-03-10',
    'rollout.trips_without_crew',
    /T2.*east/,
  ],
];

describe('a kept plan on a day', () => {
  it.each(planCases)('%s', async (_name, files, text, code, said) => {
    const { facts } = await readFiles(files);
    const day = readIsoDay(text)!;
    const ready = readyRollout(facts, [], { today: day, planId: 'P1' });
    const { problems } = keptPlan(ready, facts, 'P1', day)!;
    const found = problems.find((one) => one.code === code);
    expect(found, problems.map((one) => one.code).join()).toBeDefined();
    for (const language of [undefined, await loadLanguage('es')]) {
      const { what, todo } = problemSentence(found!, language);
      if (language === undefined) expect(what).toMatch(said);
      expect(todo.length).toBeGreaterThan(5);
      expect(what).not.toMatch(/not said|undefined|NaN|\{/);
    }
  });
});

describe('a rollout made ready of a folder with a fault', () => {
  it.each(cases)('%s', async (_name, files, code, said) => {
    const { problems } = await readied(files);
    const found = problems.find((one) => one.code === code);
    expect(found, problems.map((one) => one.code).join()).toBeDefined();
    const { what, todo } = problemSentence(found!);
    expect(what).toMatch(said);
    expect(todo.length).toBeGreaterThan(5);
    expect(what).not.toMatch(/not said|undefined|NaN|\{/);
  });

  it('is told in Spanish too, in words of its own', async () => {
    const { problems } = await readied(sound);
    const spanish = await loadLanguage('es');
    expect(problems.length).toBeGreaterThan(2);
    for (const problem of problems) {
      const { what } = problemSentence(problem, spanish);
      expect(what).not.toBe(problemSentence(problem).what);
      expect(what).not.toMatch(/undefined|NaN|\{/);
    }
  });

  it('without ways no site is planned, and each is told', async () => {
    const { problem, leftOut } = await readied({ ...sound, 'ways.csv': 'wayId,name,from,to,mode,length_km\n' });
    expect(problem.jobs).toEqual([]);
    expect(leftOut.map(({ siteId, reason }) => `${siteId} ${reason}`)).toEqual([
      'S002 notAgreed',
      'S003 notAgreed',
      'S001 noWay',
    ]);
    // With its ways the river takes 400 kg in one go, less than the kit of S001.
    const [, , heavy] = (await readied(sound)).leftOut;
    expect(heavy).toMatchObject({ siteId: 'S001', reason: 'tooHeavy' });
    expect(heavy!.over_kg).toBeGreaterThan(0);
  });
});
