import { describe, expect, it } from 'vitest';
import { SiteFinder } from '../sites/findSites.ts';
import {
  type Cup,
  chosenCups,
  dueSets,
  foundCups,
  monthsTo,
  type SiteOfSafety,
  safetyAskedOf,
  safetyTally,
  withAsked,
  worstFirst,
} from './cups.ts';

const cup: Cup = {
  ...{ verdict: 'holds', mayDrink: 'yes', because: 'shown', worst: null, target_DALY_per_person_per_year: 1e-6 },
  last: { takenOn: '2026-03-01', point: 'tap', sign: 'less', count_per_100mL: 1, band: 'low' },
  ...{
    clean_count: 4,
    setsUndated_count: 0,
    sets: [],
    reasons: ['shown'],
    notes: [],
    needsTest: [],
    failedUnits: [],
    withheldBy: [],
  },
  unusable: [],
};

const site = (key: string, own: Partial<Cup> | null, more: Partial<SiteOfSafety> = {}): SiteOfSafety => ({
  ...{ key, siteId: key, name: key, area: 'North', people: 100, isJudged: true },
  cup: own === null ? null : { ...cup, ...(own.because ? { reasons: [own.because] } : {}), ...own },
  ...more,
});

const risk = (high: number): Cup['worst'] => ({
  ...{ pathogen: 'rotavirus', secondSourceId: null, sourceName: null, sourceDays_per_year: null },
  ...{ DALY_per_person_per_year: high / 10, DALYHigh_per_person_per_year: high },
});

const set = (serial: string, middle: string) => ({ serial, early: middle, middle, late: middle });

const fit = site('FIT', {});
const found = site('FOUND', { verdict: 'short', mayDrink: 'no', because: 'found', worst: risk(1e-7) });
const over = site('OVER', { verdict: 'short', mayDrink: 'no', because: 'overTarget', worst: risk(1e-3) });
const tight = site('TIGHT', {
  verdict: 'tight',
  mayDrink: 'notShown',
  because: 'noSample',
  needsTest: ['none'],
  last: null,
});
const unknown = site('UNKNOWN', {
  verdict: 'unknown',
  mayDrink: 'notShown',
  because: 'rawUnknown',
  needsTest: ['none'],
  last: null,
});
const none = site('NONE', null, { area: 'South' });
const all = [fit, none, tight, over, unknown, found];

const today = '2026-11-01';

const keys = (sites: readonly SiteOfSafety[]) => sites.map(({ key }) => key);

describe('the cups of a programme', () => {
  it('stand the worst first: germs found, sums over the target, not shown, fit, not judged', () => {
    expect(keys([...all].sort(worstFirst))).toEqual(['FOUND', 'OVER', 'UNKNOWN', 'TIGHT', 'FIT', 'NONE']);
  });

  it('a unit that failed its test stands straight after what must not be drunk', () => {
    const failed = site('FAILED', { verdict: 'tight', mayDrink: 'notShown', because: 'unitFailed' });
    expect(keys([...all, failed].sort(worstFirst)).slice(0, 3)).toEqual(['FOUND', 'OVER', 'FAILED']);
  });

  it('among those that are alike the one that costs most people most comes first', () => {
    const few = site('FEW', { mayDrink: 'no', verdict: 'short', worst: risk(1e-4) }, { people: 10 });
    const many = site('MANY', { mayDrink: 'no', verdict: 'short', worst: risk(1e-4) }, { people: 900 });
    expect(keys([few, many].sort(worstFirst))).toEqual(['MANY', 'FEW']);
  });

  it('are shown by what is asked: without a wish those that need somebody', () => {
    expect(keys(chosenCups(all, {}, today))).toEqual(['TIGHT', 'OVER', 'UNKNOWN', 'FOUND']);
    expect(keys(chosenCups(all, { drink: 'yes' }, today))).toEqual(['FIT']);
    expect(keys(chosenCups(all, { due: 'sample' }, today))).toEqual(['TIGHT', 'UNKNOWN']);
    const old = site('OLD', { needsTest: ['tooOld'] });
    // Fit by all else, and a test is due: it needs somebody as well.
    expect(keys(chosenCups([fit, old], {}, today))).toEqual(['OLD']);
    expect(keys(chosenCups([fit, old], { due: 'sample' }, today))).toEqual(['OLD']);
    expect(keys(chosenCups(all, { drink: 'notJudged', area: 'North' }, today))).toEqual([]);
  });

  it('with sets asked of stand the soonest due first', () => {
    const late = site('LATE', { sets: [set('A', '2027-04-01')] });
    const soon = site('SOON', { sets: [set('B', '2027-01-01'), set('C', '2030-01-01')] });
    const far = site('FAR', { sets: [set('D', '2031-01-01')] });
    expect(keys(chosenCups([fit, late, soon, far], { due: 'set' }, today))).toEqual(['SOON', 'LATE']);
    expect(dueSets([late, soon]).map((one) => one.set.serial)).toEqual(['B', 'A', 'C']);
  });

  it('a village is found by its name, whatever is said of it, with a mistake or two', () => {
    const sites = [fit, site('S7', {}, { name: 'Mirrémossa village hall' }), none];
    const finder = new SiteFinder(sites);
    expect(keys(foundCups(sites, finder, 'miremossa')!)).toEqual(['S7']);
    expect(keys(foundCups(sites, finder, 'none')!)).toEqual(['NONE']);
    expect(foundCups(sites, finder, 'zzzz')).toEqual([]);
    expect(foundCups(sites, finder, '  ')).toBeNull();
  });

  it('are counted', () => {
    const { drink, due } = safetyTally(all, today);
    expect(drink).toEqual({ no: 2, notShown: 2, yes: 1, notJudged: 1 });
    expect(due).toEqual({ sample: 2, set: 0 });
  });

  it('an address is read, and what it does not know is left out', () => {
    expect(safetyAskedOf({ drink: 'no', due: 'set', area: 7, other: 1 })).toEqual({
      drink: 'no',
      due: 'set',
      area: '7',
    });
    expect(safetyAskedOf({ drink: 'maybe', due: '', area: ' ' })).toEqual({});
    expect(withAsked({ drink: 'no' }, 'drink', 'no')).toEqual({});
    expect(withAsked({ drink: 'no' }, 'due', 'set')).toEqual({ drink: 'no', due: 'set' });
  });

  it('months are counted from today, and none that has passed', () => {
    expect(monthsTo('2027-01-01', '2026-01-01')).toBe(12);
    expect(monthsTo('2025-01-01', '2026-01-01')).toBe(0);
  });
});
