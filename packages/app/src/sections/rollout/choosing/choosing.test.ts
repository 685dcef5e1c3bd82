import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { candidateWith } from '../sheetForTests.ts';
import { choosingAskedOf, whyOf } from './choosingAsked.ts';
import { tallySentence } from './choosingWords.ts';
import { candidateTally, chosenCandidates, inOrder, notHolding } from './chosenCandidates.ts';
import { settingWork, workFaults } from './settingWork.ts';

const english = await loadAppLanguage('en');
await english.more();

const left = (siteId: string, reason: string | null, people: number | null = 100) =>
  candidateWith({ siteId, name: siteId, tripId: null, reason, people });

const all = [
  candidateWith({ siteId: 'P1', name: 'P1', people: 300 }),
  left('N1', null, 70),
  left('A1', 'notAgreed'),
  left('S1', 'short', 40),
  left('S2', 'short', 60),
  left('S3', 'short', null),
  left('X1', 'a word of later', 5),
];

describe('which sites go in', () => {
  it('those that are left out and could be mended come first, the most people first; those that are planned last', () => {
    expect(inOrder(all).map(({ siteId }) => siteId)).toEqual(['S2', 'S1', 'S3', 'A1', 'N1', 'X1', 'P1']);
  });

  it('a site that is planned and does not hold is an exception too', () => {
    const bold = candidateWith({ siteId: 'B1', verdict: 'unknown', people: 9 });
    expect(
      inOrder([...all, bold])
        .map(({ siteId }) => siteId)
        .slice(-3),
    ).toEqual(['X1', 'B1', 'P1']);
  });

  it('sites and people are counted, each once', () => {
    const { byWhy } = candidateTally(all);
    expect([...byWhy]).toEqual([
      ['short', { sites_count: 3, people: 100 }],
      ['notAgreed', { sites_count: 1, people: 100 }],
      ['noTrip', { sites_count: 1, people: 70 }],
      ['other', { sites_count: 1, people: 5 }],
      ['planned', { sites_count: 1, people: 300 }],
    ]);
  });

  it('a site in a trip that cannot be done any more is an exception; one whose trip is under way is not', () => {
    expect(whyOf({ tripId: 'T1', reason: 'short' })).toBe('short');
    expect(whyOf({ tripId: 'T1', reason: 'underWay' })).toBe('planned');
  });

  it('are told in one sentence; where no plan is kept, how many can be planned', () => {
    expect(tallySentence(candidateTally(all), true, english)).toBe(
      '1 site not handed over yet is planned, with 300 people. 6 with 275 people are left out: 3 fall short of water, 1 has not agreed, 1 is in no trip yet, 1 for another reason.',
    );
    const open = all.filter(({ tripId }) => tripId === null);
    expect(tallySentence(candidateTally(open), false, english)).toMatch(
      /^1 site with 70 people can be planned\. 5 with 205 people are left out: 3 fall/,
    );
    expect(tallySentence(candidateTally(all.slice(0, 1)), true, english)).toMatch(/None is left out\.$/);
  });

  it('are filtered by reason, verdict, area and site together', () => {
    const ids = (asked: Parameters<typeof choosingAskedOf>[0]) =>
      chosenCandidates(all, choosingAskedOf(asked)).map(({ siteId }) => siteId);
    expect(ids({ why: 'notAgreed' })).toEqual(['A1']);
    expect(ids({ why: 'planned', verdict: 'short' })).toEqual([]);
    expect(ids({ site: 'S2' })).toEqual(['S2']);
    expect(ids({ area: 'elsewhere' })).toEqual([]);
    expect(choosingAskedOf({ why: 'nonsense', verdict: 3, week: '2027-06-07', plan: 'P' })).toEqual({ plan: 'P' });
  });

  it('those that do not hold are told apart: left out for it, or planned all the same', () => {
    const bold = [...all, candidateWith({ siteId: 'B1', verdict: 'short', people: 9 })];
    expect(notHolding(bold)).toEqual({
      left: { sites_count: 3, people: 100 },
      planned: { sites_count: 1, people: 9 },
    });
  });
});

describe('agreement, days and priority of many sites', () => {
  const row = (key: string, cells: Record<string, string> = {}) => ({
    table: 'sites',
    key,
    cells: { siteId: key, ...cells },
  });

  it('are one change a row, with what stands there; rows that have all of it are left out', () => {
    const cells = { agreedOn: '2027-05-01', priority_factor: '2', priorityReason: 'cholera' };
    const rows = [row('S1', { agreedOn: '2027-05-01' }), row('S2', { ...cells })];
    expect(settingWork(rows, cells)).toEqual([
      [
        {
          ...{ kind: 'edited', table: 'sites', key: 'S1' },
          before: { priority_factor: null, priorityReason: null },
          after: { priority_factor: '2', priorityReason: 'cholera' },
        },
      ],
    ]);
    expect(settingWork([row('S1', { agreedOn: '2027-05-01' })], { agreedOn: null })[0]![0]).toMatchObject({
      before: { agreedOn: '2027-05-01' },
      after: { agreedOn: null },
    });
  });

  it('a priority wants its reason, unless it is there already or the priority is that of all', () => {
    const wanted = (cells: Parameters<typeof workFaults>[1], ...rows: ReturnType<typeof row>[]) =>
      workFaults(rows, cells).isReasonWanted;
    expect(wanted({ priority_factor: '2' }, row('S1'))).toBe(true);
    expect(wanted({ priority_factor: '2' }, row('S1', { priorityReason: 'clinic' }), row('S2'))).toBe(true);
    expect(wanted({ priority_factor: '2' }, row('S1', { priorityReason: 'clinic' }))).toBe(false);
    expect(wanted({ priority_factor: '1' }, row('S1'))).toBe(false);
    expect(wanted({ priorityReason: null }, row('S1', { priority_factor: '3', priorityReason: 'clinic' }))).toBe(true);
    expect(wanted({ agreedOn: '2027-05-01' }, row('S1', { priority_factor: '3' }))).toBe(false);
  });

  it('nobody is to be finished before it is ready', () => {
    const rows = [row('S1', { readyFrom: '2027-06-01' }), row('S2', { readyFrom: '2027-04-01' })];
    expect(workFaults(rows, { finishBy: '2027-05-01' }).turnedRound_count).toBe(1);
    expect(workFaults(rows, { finishBy: null }).turnedRound_count).toBe(0);
  });
});
