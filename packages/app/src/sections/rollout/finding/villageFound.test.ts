import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import type { OverviewBody } from '../../sites/overview.ts';
import { Overview } from '../../sites/overviewOpened.ts';
import { packedOf } from '../../sites/overviewPacked.ts';
import { candidateWith, crewWith, sheetWith, stopWith, tripWith } from '../sheetForTests.ts';
import { mendingOf } from './mending.ts';
import { villageCautions } from './villageCautions.ts';
import { villageFound, villagesOf } from './villageFound.ts';
import { villageWords } from './villageWords.ts';

const english = await loadAppLanguage('en');
const none = new Map<string, never>();

const told = (sheet: ReturnType<typeof sheetWith>, siteId = 'V1') => {
  const found = villageFound(sheet, siteId, none);
  return found === null ? null : villageWords(found, sheet, english);
};

const withTrip = (change: Parameters<typeof tripWith>[0]) =>
  sheetWith({ crews: [crewWith({ trips: [tripWith(change)] })] });

describe('when a village drinks', () => {
  it('says the day as likely as not, the day nine times in ten, and who comes', () => {
    const { first, more, why } = told(sheetWith({}))!;
    expect(first).toBe('Vennaro drinks by 14 June 2027, as likely as not; by 3 July 2027, nine times in ten.');
    expect(more).toContain('In the week of 7 June 2027 Crew 2 comes');
    expect(more).toContain('12 June 2027');
    expect(why).toEqual([]);
  });

  it('tells the hand-over apart from the day of water, and what waits between them', () => {
    const { more } = told(sheetWith({}))!;
    expect(more).toContain('handed over on 11 June 2027 and drinks from 12 June 2027, once rain has filled its tank.');
    const atOnce = told(withTrip({ stops: [stopWith({ served: '2027-06-11' })] }))!;
    expect(atOnce.more).toContain('handed over on 11 June 2027 and drinks from 11 June 2027.');
  });

  it('promises no day where nobody knows when the tank fills', () => {
    const dry = withTrip({ stops: [stopWith({ served: null, futures: null })] });
    for (const futures of ['there', 'beingDrawn', 'none'] as const) {
      const { first, more } = told({ ...dry, futures })!;
      expect(first).toMatch(/handed over on 11 June 2027 if all goes as likely; when its tank fills .* not known/);
      expect(`${first} ${more}`).not.toMatch(/drinks|being worked out|Promise/);
    }
  });

  it('tells one day once where it is as likely as not and nine times in ten, and says when it is seldom so soon', () => {
    const of = (p10: string, p50: string, p90: string) =>
      withTrip({ stops: [stopWith({ futures: { p10, p50, p90 } })] });
    const one = told(of('2027-06-12', '2027-06-14', '2027-06-14'))!;
    expect(one.first).toBe('Vennaro drinks by 14 June 2027, as likely as not, and nine times in ten too.');
    expect(one.more).toContain('Promise that day.');
    expect(one.more).not.toContain('Nine times in ten it is later');
    expect(told(of('2027-06-13', '2027-06-14', '2027-06-15'))!.more).toContain(
      'Nine times in ten it is later than that',
    );
  });

  it('never tells a day as sure: without futures it says that nobody knows', () => {
    const alone = withTrip({ stops: [stopWith({ futures: null })] });
    expect(told({ ...alone, futures: 'none' })!.more).toContain('not known');
    expect(told({ ...alone, futures: 'beingDrawn' })!.more).toContain('being worked out');
    expect(told({ ...alone, futures: 'there' })!.more).toContain('not known');
  });

  it('says so where the late day, or even the middle one, is not within the days looked at', () => {
    const at = (p50: string | null) => withTrip({ stops: [stopWith({ futures: { p10: null, p50, p90: null } })] });
    expect(told(at('2027-07-01'))!.first).toMatch(/1 July 2027, as likely as not; .*one time in ten/);
    expect(told(at(null))!.first).toMatch(/less likely than not/);
  });

  it('says what it waits for, what is broken there, and nothing of other stops', () => {
    const { why } = told(
      withTrip({
        ...{ waitsFor: 'stock', waited_days: 9.2 },
        broken: [
          { kind: 'late', siteId: 'V1', said: 'Too late for Vennaro.' },
          { kind: 'late', siteId: 'V9', said: 'Too late for Osk.' },
        ],
      }),
    )!;
    expect(why).toHaveLength(2);
    expect(why[0]).toMatch(/9 days/);
    expect(why[1]).toBe('Too late for Vennaro.');
  });

  it('where no plan is kept, no day is told', () => {
    const open = sheetWith({ planId: null, crews: [], candidates: [candidateWith({ tripId: null })] });
    expect(told(open)!.first).toBe('No plan is kept yet, so no day is known for Vennaro.');
    expect(told(open)!.why).toEqual([]);
  });

  it('a village that is handed over is not promised again', () => {
    const { first } = told(withTrip({ state: 'underWay', stops: [stopWith({ isHandedOver: true })] }))!;
    expect(first).toBe('Vennaro was handed over on 11 June 2027.');
  });

  it('a stop that is done in no way is not told as coming', () => {
    const sheet = withTrip({ stops: [stopWith({ isWayUp: false })] });
    expect(villageFound(sheet, 'V1', none)?.kind).toBe('notPlanned');
  });
});

describe('what is not sure of a village', () => {
  const cautions = (sheet: ReturnType<typeof sheetWith>) =>
    villageCautions(villageFound(sheet, 'V1', none)!, sheet, english);

  it('where nothing treats its water nobody is said to drink, and it is told', () => {
    const sheet = withTrip({ stops: [stopWith({ isUntreated: true })] });
    const { first, more } = told(sheet)!;
    expect(first).toMatch(/^Water runs at Vennaro by 14 June 2027/);
    expect(`${first} ${more}`).not.toMatch(/drink/);
    expect(cautions(sheet).join(' ')).toMatch(/No treatment unit is entered for Vennaro.*is to be treated/);
    expect(cautions(sheetWith({}))).toEqual([]);
  });

  it('that its water may not last, and that more is carried there than told', () => {
    const short = sheetWith({ candidates: [candidateWith({ verdict: 'short' })] });
    const unknown = sheetWith({ candidates: [candidateWith({ verdict: 'unknown' })] });
    expect(cautions(short)).toEqual([expect.stringContaining('as designed it falls short')]);
    expect(cautions(unknown)).toEqual([expect.stringContaining('facts are missing')]);
    expect(cautions(withTrip({ stops: [stopWith({ isKitInPart: true })] }))).toEqual([
      expect.stringContaining('could not be counted'),
    ]);
  });

  it('of a trip that left the day is the one reckoned last, today at the least, and nothing is being worked out', () => {
    const gone = (kept: string | null, back = '2027-06-16') =>
      told(withTrip({ state: 'underWay', back, stops: [stopWith({ served: null, futures: null, kept })] }))!;
    expect(gone('2027-06-11').first).toBe('Vennaro is to be handed over about 11 June 2027.');
    expect(gone(null).first).toContain('16 June 2027');
    expect(gone('2027-05-20').first).toContain('1 June 2027');
    expect(gone('2027-06-11').more).not.toContain('being worked out');
  });

  it('in a trip that does not get it done, it is not said to be in none', () => {
    const sheet = sheetWith({
      crews: [crewWith({ trips: [tripWith({ stops: [stopWith({ isWayUp: false, handOver: null, served: null })] })] })],
      candidates: [candidateWith({ said: 'In trip T1, which does not get it done.' })],
    });
    const { first, why } = told(sheet)!;
    expect(first).toBe('A crew goes to Vennaro, and this plan does not get it done there.');
    expect(why).toEqual(['In trip T1, which does not get it done.']);
  });
});

describe('a village no trip goes to', () => {
  const left = sheetWith({
    crews: [],
    candidates: [candidateWith({ tripId: null, reason: 'short', said: 'It does not hold as designed.' })],
  });

  it('says why, and where that is changed', () => {
    expect(told(left)).toEqual({
      first: 'Vennaro is in no trip of this plan.',
      more: '',
      why: ['It does not hold as designed.'],
    });
    expect(mendingOf(left.candidates[0]!)?.to).toBe('site');
  });

  it('every reason that somebody can change leads there; a site that is planned leads nowhere', () => {
    const to = (reason: string | null, tripId: string | null = null) => mendingOf({ reason, tripId })?.to ?? null;
    expect(['notAgreed', 'noKit', 'tooHeavy', 'noWay', 'noSkill', 'noPeople', 'unknown'].map((one) => to(one))).toEqual(
      [...['agree', 'kit', 'kit', 'ways', 'crews', 'facts', 'site']],
    );
    expect(to(null)).toBe('plan');
    expect(to(null, 'T1')).toBeNull();
    expect(to('handedOver')).toBeNull();
  });

  it('a site nobody knows is none; one that is known and no candidate is handed over', () => {
    expect(villageFound(left, 'V7', none)).toBeNull();
    const known = new Map([['V7', { siteId: 'V7', name: 'Osk', area: null, people: 30 }]]);
    expect(villageFound(left, 'V7', known)?.kind).toBe('handedOver');
  });

  it('may be asked for where the list of all sites alone knows it, each once', () => {
    const site = { area: 'West', people: 30, stations: null, remedy: null };
    const list = [
      { ...site, key: 'V7', siteId: 'V7', name: 'Osk' },
      { ...site, key: 'V1', siteId: 'V1', name: 'Vennaro of the list' },
      { ...site, key: 'V7 2', siteId: 'V7', name: 'Osk again' },
      { ...site, key: '#4', siteId: '', name: '', area: null, people: null },
    ];
    const all = new Overview(packedOf({ sites: list } as unknown as OverviewBody, (a, b) => a.localeCompare(b)));
    const villages = villagesOf(left, all);
    const [first, ...others] = Array.from({ length: villages.count }, (_, i) => villages.at(i));
    expect(first!.name).toBe('Vennaro');
    expect(others).toEqual([
      { siteId: 'V7', name: 'Osk', area: 'West', people: 30 },
      { siteId: '#4', name: '#4', area: null, people: null },
    ]);
    expect(villagesOf(left, null).count).toBe(1);
  });
});
